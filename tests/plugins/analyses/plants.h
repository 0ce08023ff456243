// SPDX-License-Identifier: GPL-3.0-or-later
// Small plants whose answers can be worked out by hand, and the way to ask the real plug-ins.
#pragma once

#include "plugins/sdk/host.h"

#include <initializer_list>
#include <optional>
#include <string>
#include <utility>

namespace plants {

using namespace cutwater;

project::Event event(const std::string& id, std::optional<double> probability = {});
project::Gate gate(const std::string& id, project::GateKind kind,
                   std::initializer_list<const char*> inputs, std::optional<int> k = {});
project::TopEvent top(const std::string& id, const std::string& node);

// T1: panel dead (0.05), or pump-a (0.1) and pump-b (0.2) fail.
project::Project twoPumps();

// Loads the plug-in as the program does and asks it.
sdk::Answer<sdk::Result> ask(const std::string& analysis, const project::Project& project,
                             const sdk::Values& values = {}, const sdk::Job& job = {});

const sdk::Table& table(const sdk::Result& result, const std::string& id);
// The cell in the column with this id.
const sdk::Cell& cell(const sdk::Table& table, std::size_t row, const std::string& column);
std::string text(const sdk::Table& table, std::size_t row, const std::string& column);
double number(const sdk::Table& table, std::size_t row, const std::string& column);
bool empty(const sdk::Table& table, std::size_t row, const std::string& column);
// All sentences of that kind, one a line.
std::string notes(const sdk::Result& result, sdk::NoteKind kind);

} // namespace plants
