// SPDX-License-Identifier: GPL-3.0-or-later
// The demo project, loaded once, and the few questions that its tests ask.
#pragma once

#include "models/logic/solution.h"
#include "models/project/index.h"
#include "models/project/project.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace demo {

using Names = std::set<std::string>;
using Forced = std::map<cutwater::project::Id, bool>;

std::string path();
// Ends the test program where the demo cannot be loaded: then no other test means anything.
const cutwater::project::Project& project();
const cutwater::project::Index& index();

// The node of a top event.
const std::string& nodeOf(const std::string& top);

// A top event as the engine solves it.
struct Solved {
    cutwater::logic::Solution solution;
    std::vector<std::string> events; // id by variable
    std::vector<double> q;           // probability by variable

    std::set<Names> setsOfOrder(std::uint32_t order) const; // of positive events
    Names singles() const;
    Names relevant() const;
    double probability() const;
};
Solved solved(const std::string& top, const Forced& forced = {});

// Does the node (gate or event) hold where these events and no others occur? Walks the gates
// themselves: nothing of the engine is in it.
bool holds(const std::string& node, const Names& events, const Forced& forced = {});

// The events below a node, whatever their kind.
Names eventsBelow(const std::string& node);

} // namespace demo
