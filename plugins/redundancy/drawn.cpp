// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/redundancy/drawn.h"

#include "models/reliability/tree_formula.h"
#include "plugins/sdk/tree/target.h"

#include <algorithm>

namespace cutwater::redundancy_plugin {
namespace {

using IdSet = std::set<project::Id>;

// The id by which an event is compared: its mode's, where it is one.
const project::Id& nameOf(const project::Event& event) {
    return event.mode.empty() ? event.id : event.mode;
}

// Modes or events below a gate; each gate is walked once, whatever the depth.
IdSet below(const project::Project& project, const project::Index& index,
            const project::Gate& gate) {
    IdSet found;
    std::vector<bool> seen(project.gates.size(), false);
    std::vector<const project::Gate*> stack{&gate};
    while (!stack.empty()) {
        const project::Gate* const one = stack.back();
        stack.pop_back();
        for (const project::Reference& input : one->inputs) {
            if (const project::Event* const event = index.event(input.id)) {
                if (event->kind != project::EventKind::house) found.insert(nameOf(*event));
            } else if (const project::Gate* const next = index.gate(input.id)) {
                const auto at = static_cast<std::size_t>(next - project.gates.data());
                if (!seen[at]) stack.push_back(next);
                seen[at] = true;
            }
        }
    }
    return found;
}

} // namespace

std::optional<project::Id> mostSimilarGate(const project::Project& project,
                                           const project::Index& index, const Traced& traced) {
    IdSet wanted;
    for (const ModeSet& set : traced.sets)
        for (const std::size_t mode : set)
            wanted.insert(project.modes[mode].id);
    std::optional<project::Id> best;
    double likeness = 0.5;
    for (const project::Gate& gate : project.gates) {
        const IdSet has = below(project, index, gate);
        const auto shared = static_cast<double>(std::count_if(
            has.begin(), has.end(), [&](const project::Id& id) { return wanted.contains(id); }));
        const double all = static_cast<double>(has.size() + wanted.size()) - shared;
        if (all > 0 && shared / all > likeness) {
            likeness = shared / all;
            best = gate.id;
        }
    }
    return best;
}

sdk::Answer<Difference> compareWithDrawn(const project::Project& project,
                                         const project::Index& index, const Traced& traced,
                                         const project::Id& gate, const sdk::Job& job) {
    using Answer = sdk::Answer<Difference>;
    const auto target = sdk::tree::targetsOf(project, index, gate);
    if (!target) return Answer::failed(target.problems());
    const auto tree = reliability::toFormula(project, index, target->front().node);
    logic::Limits limits;
    limits.stop = job.stop;
    limits.memoryBytes = job.memoryBytes;
    const auto outcome = logic::solve(tree.formula, tree.top, limits);
    if (!outcome.solution) {
        const Halt halt = haltOf(outcome.stop, "the drawn tree " + gate, job);
        return Answer::stopped(halt.ending, halt.problem);
    }

    Difference result;
    result.gate = gate;
    result.comparable = traced.allSets && outcome.solution->coherent();
    std::set<IdSet> drawn;
    if (result.comparable && !outcome.solution->constant()) {
        const std::vector<double> q(tree.eventOfVariable.size(), 1.0);
        auto listing = outcome.solution->list(q, {});
        while (const auto found = listing.next()) {
            if (drawn.size() == kMostSets) {
                result.comparable = false;
                break;
            }
            IdSet set;
            for (const logic::SetLiteral& literal : found->literals)
                set.insert(nameOf(project.events[tree.eventOfVariable[literal.variable]]));
            drawn.insert(std::move(set));
        }
        result.comparable = result.comparable && !listing.outOfMemory();
    }
    if (!result.comparable) return Answer::of(std::move(result));
    for (const ModeSet& set : traced.sets) {
        IdSet ids;
        for (const std::size_t mode : set)
            ids.insert(project.modes[mode].id);
        if (drawn.erase(ids) > 0)
            ++result.common;
        else
            result.onlyTraced.push_back(set);
    }
    result.onlyDrawn.assign(drawn.begin(), drawn.end());
    std::stable_sort(result.onlyDrawn.begin(), result.onlyDrawn.end(),
                     [](const IdSet& a, const IdSet& b) { return a.size() < b.size(); });
    result.agree = result.onlyTraced.empty() && result.onlyDrawn.empty();
    return Answer::of(std::move(result));
}

} // namespace cutwater::redundancy_plugin
