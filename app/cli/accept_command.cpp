// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/accept_command.h"

#include "app/cli/delivery.h"
#include "models/worksheet/accept_cause.h"
#include "models/worksheet/skeleton.h"

#include <fmt/format.h>

#include <ostream>
#include <set>
#include <utility>
#include <vector>

namespace cutwater::cli {
namespace {

// "P1,P2" as its parts; blanks do not count.
std::vector<std::string> listed(const std::string& text) {
    std::vector<std::string> parts;
    std::string part;
    for (const char c : text + ",") {
        if (c == ' ') continue;
        if (c != ',')
            part += c;
        else if (!part.empty())
            parts.push_back(std::exchange(part, {}));
    }
    return parts;
}

int runCauses(const Call& call, const std::string& wanted, Context& context) {
    const auto beta = call.values.number("beta");
    const auto source = call.values.text("source");
    if (call.values.text("effect") || call.values.text("take"))
        return usageError("accept common causes and gates one after the other", context);
    if (!beta || !source)
        return usageError("say with --beta which share of the failures is common, and with "
                          "--source where that number comes from",
                          context);
    auto project = readProject(call.operands.front(), context);
    if (!project) return kFileHasErrors;
    const auto found = worksheet::proposeCauses(*project, project::Index(*project));
    std::set<std::size_t> taken;
    for (const std::string& id : listed(wanted)) {
        std::size_t position = 0;
        while (position < found.proposals.size() && worksheet::causeId(position) != id)
            ++position;
        if (position == found.proposals.size())
            return usageError(fmt::format("there is no proposal {:.40}; `cutwater cause-proposals "
                                          "FILE` lists C1 to C{}",
                                          id, found.proposals.size()),
                              context);
        taken.insert(position);
    }
    if (taken.empty()) return usageError("say with --causes which: C1,C2", context);
    worksheet::CauseTerms terms;
    terms.beta.value = *beta;
    terms.beta.unit = project::Unit::number;
    terms.beta.source.document = *source;
    for (const std::size_t position : taken) {
        auto made = worksheet::acceptCause(*project, found.proposals[position], terms);
        if (!made) return usageError(made.problems(), context);
        *project = std::move(*made);
    }
    const int code = deliverProject(*project, context);
    if (code == kFine && !context.globals.quiet)
        context.err << fmt::format("{} common-cause group{} in the project, with beta {:g}.\n",
                                   taken.size(), taken.size() == 1 ? " is" : "s are", *beta);
    return code;
}

int run(const Call& call, Context& context) {
    if (const auto causes = call.values.text("causes")) return runCauses(call, *causes, context);
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
    for (const std::string& id : listed(*take)) {
        if (id != "all") accepted.insert(id);
        for (const worksheet::Proposal& proposal : skeleton->proposals)
            if (id == "all") accepted.insert(proposal.id);
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
    command.summary = "put proposed gates or common causes into the project";
    command.operands = "FILE";
    command.details = "Writes the project with the accepted gates to --output (or to standard "
                      "output). What a gate that was not accepted holds goes to the one above it, "
                      "where that gate is an \"or\". With --causes it writes the project with "
                      "common-cause groups of `cutwater cause-proposals` instead.";
    sdk::Parameter effect;
    effect.name = "effect";
    effect.sentence = "the end effect, as `cutwater tree-proposals FILE` lists it";
    sdk::Parameter take;
    take.name = "take";
    take.sentence = "the accepted proposals: P1,P2 ... or all";
    sdk::Parameter causes;
    causes.name = "causes";
    causes.sentence =
        "the accepted common causes, as `cutwater cause-proposals FILE` numbers them: "
        "C1,C2 ...";
    sdk::Parameter beta;
    beta.name = "beta";
    beta.type = sdk::ParameterType::number;
    beta.sentence = "with --causes: the share of the failures that is common, above 0, at most 1";
    sdk::Parameter source;
    source.name = "source";
    source.sentence = "with --causes: where that number comes from";
    command.options = {effect, take, causes, beta, source};
    command.run = run;
    return command;
}

} // namespace cutwater::cli
