// SPDX-License-Identifier: GPL-3.0-or-later
// What may be asked: a tree, or the figures for the formulas, or both.
#pragma once

#include "models/reliability/safety_function.h"
#include "plugins/sdk/interfaces.h"

namespace cutwater::safety_function_plugin {

struct Request {
    std::optional<std::string> top;
    // For the formulas; empty where no voting was given.
    std::optional<reliability::Voting> voting;
    reliability::ChannelData channel;
    std::optional<double> mission;  // hours, for the tree
    std::optional<double> interval; // as given; the channel then has it, too
};

std::vector<sdk::Parameter> requestParameters(const project::Project* project);
// Problems: neither a tree nor a voting; a voting without a rate, or the other way round.
project::Outcome<Request> requestOf(const sdk::Values& values);

} // namespace cutwater::safety_function_plugin
