// SPDX-License-Identifier: GPL-3.0-or-later
// From what was typed into a cell to a fact. Each answers a clause where it cannot ("is not a date
// like 2026-02-28"), and then changes nothing. Private to the folder.
#pragma once

#include "models/project/project.h"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace cutwater::worksheet {

using Fault = std::optional<std::string>;

Fault writeDate(const std::string& typed, std::string& date); // empty is allowed
Fault writeRating(const std::string& typed, std::optional<int>& rating);
// 0..1, or kSharedNumber with the id of a parameter; the source that was there is kept where the
// number stays the same, else dropped.
Fault writeShare(const std::string& typed, std::optional<project::Quantity>& share);
Fault writeTruth(const std::string& typed, bool& truth); // yes, no, true, false, x, 1, 0
Fault writeState(const std::string& typed, project::ActionState& state);
// One part of the cell for each action; actions that are not there yet are made. Fewer parts than
// actions is a fault: nothing is dropped silently.
Fault writeActions(const std::string& typed, project::FailureMode& mode,
                   const std::function<Fault(const std::string&, project::Action&)>& one);

// "4 wk"; without a unit the one that is there stays. Empty: none. A fault where the failure model
// knows no tests.
Fault writeInterval(const std::string& typed, project::FailureModel& model);
inline constexpr const char* kNoTests =
    "needs a failure model that is tested: choose that kind of model first";

// What stands in a cell whose number is a parameter of the project, before its id.
inline const std::string kSharedNumber = "parameter ";
std::string toWords(const project::Quantity& quantity); // "4 wk"

std::string joined(const std::vector<std::string>& texts); // empty where all of them are
std::vector<std::string> split(const std::string& text);   // at kListSeparator; empty: none
std::string trimmed(const std::string& text);
std::string lowered(std::string text);

} // namespace cutwater::worksheet
