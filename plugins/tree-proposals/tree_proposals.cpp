// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/tree-proposals/tree_proposals.h"

#include "models/project/index.h"
#include "models/worksheet/coverage.h"
#include "models/worksheet/skeleton.h"
#include "plugins/sdk/tree/cautions.h"

#include <fmt/format.h>

namespace cutwater::tree_proposals {
namespace {

using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;

sdk::Table effectsTable(const project::Project& project, const project::Index& index) {
    sdk::Table table{"end-effects",
                     "End effects that a tree can be proposed for",
                     {{"end-effect", "End effect", ColumnType::text, ""},
                      {"modes", "Failure modes", ColumnType::integer, ""},
                      {"severity", "Worst severity", ColumnType::text, ""},
                      {"tree", "Tree", ColumnType::text, ""}},
                     {},
                     {}};
    for (const auto& effect : worksheet::coverageOf(project, index).effects) {
        std::vector<std::string> tops;
        for (const std::size_t top : effect.answeredBy)
            tops.push_back(project.tops[top].id);
        table.rows.push_back(
            {effect.text, static_cast<std::int64_t>(effect.modes.size()),
             effect.severity.empty() ? Cell() : Cell(effect.severity),
             tops.empty() ? Cell() : Cell(fmt::format("{}", fmt::join(tops, ", ")))});
    }
    return table;
}

sdk::Table proposalsTable(const worksheet::Skeleton& skeleton) {
    sdk::Table table{"proposals",
                     "Proposed gates, the top first",
                     {{"proposal", "Proposal", ColumnType::text, ""},
                      {"gate", "Gate", ColumnType::text, ""},
                      {"kind", "Kind", ColumnType::text, ""},
                      {"name", "Name", ColumnType::text, ""},
                      {"inputs", "Inputs", ColumnType::text, ""},
                      {"look", "To be looked at", ColumnType::text, ""},
                      {"reason", "Reason", ColumnType::text, ""}},
                     {},
                     {}};
    for (const auto& proposal : skeleton.proposals) {
        std::vector<std::string> inputs;
        for (const auto& input : proposal.gate.inputs)
            inputs.push_back(input.id);
        table.rows.push_back({proposal.id, proposal.gate.id, std::string(word(proposal.gate.kind)),
                              proposal.gate.name, fmt::format("{}", fmt::join(inputs, ", ")),
                              proposal.certain ? Cell() : Cell(std::string("yes")),
                              proposal.reason});
    }
    return table;
}

} // namespace

std::vector<sdk::Parameter> TreeProposals::parameters(const project::Project*) const {
    sdk::Parameter effect;
    effect.name = "effect";
    effect.sentence =
        "the end effect, as the worksheet has it; without it the end effects are listed";
    return {effect};
}

sdk::Answer<sdk::Result> TreeProposals::run(const project::Project& project,
                                            const sdk::Values& values, const sdk::Job&) const {
    using Answer = sdk::Answer<sdk::Result>;
    const project::Index index(project);
    sdk::Result result;
    const auto effect = values.text("effect");
    if (!effect) {
        result.title = "End effects of the worksheet";
        result.tables = {effectsTable(project, index)};
        return Answer::of(std::move(result));
    }
    const auto skeleton = worksheet::proposeTree(project, index, *effect);
    if (!skeleton) return Answer::failed(skeleton.problems());
    result.title = "Tree proposed for: " + skeleton->effect;
    result.tables = {proposalsTable(*skeleton)};
    result.notes.push_back(
        {NoteKind::method,
         "Grouped by the plant breakdown. \"And\" where a part is supplied by two of a kind, else "
         "\"or\". `cutwater accept FILE --effect ... --take P1,P2 --output NEW` puts accepted "
         "gates "
         "into the project; what an \"or\" that was not accepted holds goes to the gate above "
         "it."});
    if (!skeleton->events.empty())
        result.notes.push_back(
            {NoteKind::method,
             fmt::format("{} failure mode{} would become events.", skeleton->events.size(),
                         skeleton->events.size() == 1 ? "" : "s")});
    for (const std::string& remark : skeleton->remarks)
        result.notes.push_back({NoteKind::warning, remark});
    result.notes.push_back({NoteKind::warning, "A proposal is a start, not a tree: redundancy on "
                                               "paper may share a fuse, and a protection "
                                               "that has to fail as well is not in the worksheet's "
                                               "end effect. `cutwater redundancy` traces "
                                               "the wiring."});
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::figures, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::tree_proposals
