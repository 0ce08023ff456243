// SPDX-License-Identifier: GPL-3.0-or-later
// Minimal cut or path sets as tables: counts by order, the sets within the cut-offs, and what the
// cut-offs left out.
#pragma once

#include "plugins/sdk/tree/figures.h"

namespace cutwater::sdk::tree {

struct SetWish {
    logic::ListingWish listing;
    std::size_t limit = 1000; // sets of each top
    Side side = Side::fails;
};

// The parameters max-order, min-probability, limit and sort, and what was given for them.
std::vector<Parameter> setParameters();
SetWish setWish(const Values& values, const Job& job, Side side);

// Rows go in behind those of the tops before.
struct SetTables {
    Table summary, counts, sets;
    std::vector<Mark> marks;
    std::vector<Note> notes;
    bool allListed = true;
};
SetTables emptySetTables(Side side);

// Adds one solved top. Cancelled: an ending and a problem, and the tables are then of no use.
struct Interrupted {
    Ending ending = Ending::finished;
    project::Problem problem;
};
Interrupted addSets(SetTables& tables, const project::Project& project, const project::Index& index,
                    const Solved& solved, const Figures& figures, const SetWish& wish,
                    const Job& job);

} // namespace cutwater::sdk::tree
