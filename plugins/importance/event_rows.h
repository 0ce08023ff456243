// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of the importance of single events.
#pragma once

#include "models/reliability/importance.h"
#include "plugins/importance/numbers.h"

#include <string>
#include <vector>

namespace cutwater::importance_plugin {

// What the rows are sorted by; the words of the parameter "sort".
const std::vector<std::string>& sortWords();

struct EventRows {
    const project::Project& project;
    const project::Index& index;
    const sdk::tree::Solved& solved;
    const Numbers& numbers;
    std::string sort;
    std::size_t most = 25;

    // Of a common cause: all that it takes, and its group's name.
    std::string id(std::uint32_t variable) const {
        return sdk::tree::idOf(project, solved, variable);
    }
    std::string name(std::uint32_t variable) const {
        return sdk::tree::nameOf(project, index, solved, variable);
    }
    std::vector<std::string> nodes(std::uint32_t variable) const {
        return sdk::tree::nodesOf(project, solved, variable);
    }
};

sdk::Table eventTable();
sdk::Table otherTable();
sdk::Table frequencyTable();

// Each appends the rows of one top and their marks; answers how many rows were left out. Events go
// into two tables, the second one after `table`.
std::size_t addEvents(sdk::Result& result, std::size_t table, const EventRows& rows,
                      std::vector<reliability::EventImportance> entries);
std::size_t addFrequencies(sdk::Result& result, std::size_t table, const EventRows& rows,
                           std::vector<reliability::FrequencyImportance> entries);

} // namespace cutwater::importance_plugin
