// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/accept_command.h"

#include "app/cli/delivery.h"
#include "models/worksheet/skeleton.h"

#include <fmt/format.h>

#include <ostream>
#include <set>

namespace cutwater::cli {
namespace {

int run(const Call& call, Context& context) {
    const auto effect = call.values.text("effect");
    const auto take = call.values.text("take");
    if (!effect) return usageError("say with --effect which end effect the tree is for", context);
    if (!take)
        return usageError("say with --take which proposals are accepted: P1,P2 or all", context);
    const std::string& path = call.operands.front();
    const auto project = readProject(path, context);
    if (!project) return kFileHasErrors;
    const project::Index index(*project);
    const auto skeleton = worksheet::proposeTree(*project, index, *effect);
    if (!skeleton) return usageError(skeleton.problems(), context);
    std::set<std::string> accepted;
    std::string id;
    for (const char c : *take + ",") {
        if (c != ',' && c != ' ') {
            id += c;
            continue;
        }
        if (id == "all")
            for (const worksheet::Proposal& proposal : skeleton->proposals)
                accepted.insert(proposal.id);
        else if (!id.empty())
            accepted.insert(id);
        id.clear();
    }
    const auto made = worksheet::acceptProposals(*project, *skeleton, accepted);
    if (!made) return usageError(made.problems(), context);
    const int code = deliverProject(*made, context);
    if (code == kFine && !context.globals.quiet)
        context.err << fmt::format("{} of {} proposals are in the project, under the top event {}. "
                                   "Look at each gate: a proposal is a start, not a tree.\n",
                                   accepted.size(), skeleton->proposals.size(), skeleton->top.id);
    return code;
}

} // namespace

Command acceptCommand() {
    Command command;
    command.name = "accept";
    command.summary = "put proposals of `cutwater tree-proposals` into the project";
    command.operands = "FILE";
    command.details = "Writes the project with the accepted gates to --output (or to standard "
                      "output). What a gate that was not accepted holds goes to the one above it, "
                      "where that gate is an \"or\".";
    sdk::Parameter effect;
    effect.name = "effect";
    effect.sentence = "the end effect, as `cutwater tree-proposals FILE` lists it";
    sdk::Parameter take;
    take.name = "take";
    take.sentence = "the accepted proposals: P1,P2 ... or all";
    command.options = {effect, take};
    command.run = run;
    return command;
}

} // namespace cutwater::cli
