// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/redundancy/redundancy.h"

#include "plugins/redundancy/request.h"
#include "plugins/redundancy/tables.h"
#include "plugins/sdk/tree/cautions.h"

#include <algorithm>

namespace cutwater::redundancy_plugin {
namespace {

using sdk::NoteKind;
using Answer = sdk::Answer<sdk::Result>;

void addMethod(std::vector<sdk::Note>& notes) {
    notes.push_back(
        {NoteKind::method,
         "A load has supply where one source works, a feed path leads from it to the load and, "
         "where returns are drawn, a return path leads back to the same source. Every part on the "
         "way must be sound, and what is itself fed (a relay's coil, a pump's motor, a mains unit) "
         "must have that supply, too. A load's own failures count only where it hands the supply "
         "on."});
    notes.push_back(
        {NoteKind::assumption,
         "What is not drawn is not traced: cable routes, one panel, one room, one fire. A short on "
         "one leg is taken to be cleared by the fuse or breaker of that leg, and a diode that "
         "conducts both ways to do no harm by itself: no tracing finds that, a test does."});
    notes.push_back(
        {NoteKind::assumption,
         "Whether one leg alone carries the whole load is not seen from ratings: a test "
         "on one leg shows it."});
}

} // namespace

std::vector<sdk::Parameter> Redundancy::parameters(const project::Project* project) const {
    return requestParameters(project);
}

Answer Redundancy::run(const project::Project& project, const sdk::Values& values,
                       const sdk::Job& job) const {
    const project::Index index(project);
    if (project.connections.empty())
        return Answer::failed(
            {{project::Severity::error, "the project has no supply network",
              "draw its connections: from, to, and what they run through", "", 0}});
    auto wish = wishOf(project, index, values);
    if (!wish) return Answer::failed(wish.problems());
    const reliability::SupplyNetwork network(project, index, std::move(*wish));
    const auto wanted = values.text("load");
    const auto loads = loadsOf(project, network, wanted);
    if (!loads) return Answer::failed(loads.problems());

    Tables tables = emptyTables();
    const auto limit = static_cast<std::size_t>(values.integer("limit").value_or(20));
    for (std::size_t i = 0; i < loads->size(); ++i) {
        const project::Component& component = project.components[(*loads)[i].component];
        if (job.progress)
            job.progress(static_cast<double>(i) / static_cast<double>(loads->size()),
                         "tracing " + component.id);
        auto trace = network.trace((*loads)[i]);
        if (!trace && !wanted) { // one of many: said, and the others go on
            for (const project::Problem& problem : trace.problems())
                tables.notes.push_back({NoteKind::warning, problem.what + "."});
            continue;
        }
        if (!trace) return Answer::failed(trace.problems());
        auto traced = solveTrace(project, index, std::move(*trace), limit, job);
        if (!traced.content) return {traced.ending, {}, std::move(traced.problems)};
        std::optional<Difference> difference;
        auto gate = values.text("drawn");
        if (!gate) gate = mostSimilarGate(project, index, *traced.content);
        if (gate) {
            auto compared = compareWithDrawn(project, index, *traced.content, *gate, job);
            if (!compared.content) return {compared.ending, {}, std::move(compared.problems)};
            difference = std::move(*compared.content);
        }
        addLoad(tables, project, index, *traced.content, difference);
    }

    sdk::Result result;
    result.title = "Redundant on paper, or in fact";
    result.tables = {std::move(tables.loads), std::move(tables.singles), std::move(tables.pairs),
                     std::move(tables.drawn), std::move(tables.paths),   std::move(tables.modes)};
    result.marks = std::move(tables.marks);
    addMethod(result.notes);
    for (sdk::Note& note : tables.notes)
        if (std::find(result.notes.begin(), result.notes.end(), note) == result.notes.end())
            result.notes.push_back(std::move(note));
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::machine, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::redundancy_plugin
