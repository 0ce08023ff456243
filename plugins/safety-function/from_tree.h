// SPDX-License-Identifier: GPL-3.0-or-later
// A protection's figures from its tree, integrated over the test interval.
#pragma once

#include "models/reliability/top_event.h"
#include "plugins/sdk/tree/solved.h"

namespace cutwater::safety_function_plugin {

struct TreeFigures {
    sdk::tree::Target target;
    double period = 0; // hours that were integrated over
    reliability::PeriodFigures independent;
    std::optional<reliability::PeriodFigures> common; // where a group has two members in the tree
    std::size_t smallestSet = 0;                      // order; 0: no set
    bool coherent = true, ignoresOrder = false;
    std::vector<std::size_t> longer;      // events tested less often than the period, by position
    std::vector<std::string> mixedGroups; // ids: members with models of different kinds
    double largestLoad = 0;               // the largest rate x interval of a tested event
    std::vector<std::string> warnings;    // of the events' models, one sentence each
};

// `mission`: for models without one of their own. Problems: a demand in the tree, missing numbers.
// Common causes are always counted beside. `interval`: the period; without it the longest test
// interval of the tree, or a year.
sdk::Answer<TreeFigures> figuresFromTree(const project::Project& project,
                                         const project::Index& index, const std::string& top,
                                         std::optional<double> interval,
                                         std::optional<double> mission, const sdk::Job& job,
                                         const sdk::tree::Circumstances& circumstances = {});

} // namespace cutwater::safety_function_plugin
