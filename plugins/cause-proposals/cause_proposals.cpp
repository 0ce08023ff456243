// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/cause-proposals/cause_proposals.h"

#include "models/project/index.h"
#include "models/worksheet/accept_cause.h"
#include "plugins/sdk/tree/cautions.h"

#include <fmt/format.h>

namespace cutwater::cause_proposals {
namespace {

using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;

} // namespace

std::vector<sdk::Parameter> CauseProposalsPlugin::parameters(const project::Project*) const {
    sdk::Parameter kind;
    kind.name = "shared";
    kind.type = sdk::ParameterType::choice;
    kind.choices = {"any", "supply", "location", "type", "fuel", "maintenance"};
    kind.standard = std::string("any");
    kind.sentence = "only what is shared in this way";
    sdk::Parameter fresh;
    fresh.name = "new";
    fresh.type = sdk::ParameterType::flag;
    fresh.sentence = "leave out what a common-cause group of the project holds already";
    return {kind, fresh};
}

sdk::Answer<sdk::Result> CauseProposalsPlugin::run(const project::Project& project,
                                                   const sdk::Values& values,
                                                   const sdk::Job&) const {
    const project::Index index(project);
    const auto found = worksheet::proposeCauses(project, index);
    const std::string wanted = "same " + values.text("shared").value_or("any");
    sdk::Table table{"proposals",
                     "Common causes to think about",
                     {{"proposal", "Proposal", ColumnType::text, ""},
                      {"shared", "What is shared", ColumnType::text, ""},
                      {"by", "Which", ColumnType::text, ""},
                      {"events", "Events", ColumnType::text, ""},
                      {"count", "Number", ColumnType::integer, ""},
                      {"gates", "Gates that count on it", ColumnType::text, ""},
                      {"groups", "In a group already", ColumnType::text, ""},
                      {"reason", "Reason", ColumnType::text, ""}},
                     {},
                     {}};
    sdk::Result result;
    for (std::size_t position = 0; position < found.proposals.size(); ++position) {
        const worksheet::CauseProposal& one = found.proposals[position];
        if (wanted != "same any" && wanted != word(one.kind)) continue;
        if (values.flag("new") && !one.groups.empty()) continue;
        std::vector<std::string> events, gates;
        for (const std::size_t event : one.events)
            events.push_back(project.events[event].id);
        for (const std::size_t gate : one.gates)
            gates.push_back(project.gates[gate].id);
        result.marks.push_back({"proposals", table.rows.size(), events});
        table.rows.push_back(
            {worksheet::causeId(position), std::string(word(one.kind)), one.shared,
             fmt::format("{}", fmt::join(events, ", ")), static_cast<std::int64_t>(events.size()),
             fmt::format("{}", fmt::join(gates, ", ")),
             one.groups.empty() ? Cell() : Cell(fmt::format("{}", fmt::join(one.groups, ", "))),
             one.reason});
    }
    result.title = "Common causes proposed";
    result.tables = {std::move(table)};
    result.notes.push_back(
        {NoteKind::method,
         "Looked at is every gate that needs two or more of its inputs: events below different "
         "inputs of it that share a fact of the plant. A proposal is a reason to think, not a "
         "factor: how strongly the parts fail together has to come from a source or from the "
         "log."});
    if (found.gatesLeftOut > 0)
        result.notes.push_back(
            {NoteKind::warning,
             fmt::format("{} gate{} not looked at: more than 4000 events stand below.",
                         found.gatesLeftOut, found.gatesLeftOut == 1 ? " was" : "s were")});
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::figures, project);
    return sdk::Answer<sdk::Result>::of(std::move(result));
}

} // namespace cutwater::cause_proposals
