// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/redundancy/traced.h"

#include "models/reliability/event_model.h"

#include <fmt/format.h>

namespace cutwater::redundancy_plugin {
namespace {

using reliability::SupplyTrace;
using Answer = sdk::Answer<Traced>;

logic::Limits limitsOf(const sdk::Job& job) {
    logic::Limits limits;
    limits.stop = job.stop;
    limits.memoryBytes = job.memoryBytes;
    return limits;
}

ModeSet modesOf(const logic::CutSet& set, const SupplyTrace& trace) {
    ModeSet modes;
    for (const logic::SetLiteral& literal : set.literals)
        modes.insert(trace.modeOfVariable[literal.variable]);
    return modes;
}

std::vector<ModeSet> list(const logic::Solution& solution, const SupplyTrace& trace,
                          const logic::ListingWish& wish, std::size_t limit, bool& complete) {
    std::vector<ModeSet> sets;
    complete = true;
    if (solution.constant()) return sets;
    const std::vector<double> q(trace.modeOfVariable.size(), 1.0);
    auto listing = solution.list(q, wish);
    while (const auto found = listing.next()) {
        if (sets.size() == limit) {
            complete = false;
            break;
        }
        sets.push_back(modesOf(*found, trace));
    }
    complete = complete && !listing.outOfMemory();
    return sets;
}

ModeSet singlesOf(const logic::Solution& solution, const SupplyTrace& trace) {
    ModeSet singles;
    bool complete = false;
    for (const ModeSet& set : list(solution, trace, {.maxOrder = 1}, kMostSets, complete))
        singles.insert(set.begin(), set.end());
    return singles;
}

// The probability of a mode by its own failure model, whether a tree uses it or not.
std::optional<double> chanceOf(const project::Project& project, const project::Index& index,
                               std::size_t mode) {
    project::Event event;
    event.id = event.mode = project.modes[mode].id;
    const auto found = reliability::probabilityOf(project, index, event, {});
    if (!found) return {};
    return found->value;
}

} // namespace

Halt haltOf(logic::Stop stop, const std::string& what, const sdk::Job& job) {
    using project::Severity;
    if (stop == logic::Stop::cancelled)
        return {sdk::Ending::cancelled,
                {Severity::error, fmt::format("cancelled while {} was computed", what),
                 "start it again when there is time", "", 0}};
    return {sdk::Ending::overLimit,
            {Severity::error,
             fmt::format("{} needs more memory than the {} MB that are allowed", what,
                         job.memoryBytes >> 20),
             "allow more, or ask about a load nearer to the sources", "", 0}};
}

Answer solveTrace(const project::Project& project, const project::Index& index, SupplyTrace trace,
                  std::size_t limit, const sdk::Job& job) {
    Traced result;
    const std::string what = "the supply of " + project.components[trace.load.component].id;
    const auto solve = [&](const logic::Formula& formula, logic::Literal top) {
        return logic::solve(formula, top, limitsOf(job));
    };
    const auto stopped = [&](logic::Stop stop) {
        const Halt halt = haltOf(stop, what, job);
        return Answer::stopped(halt.ending, halt.problem);
    };
    auto dead = solve(trace.formula, trace.dead);
    if (!dead.solution) return stopped(dead.stop);
    for (const reliability::SupplyLeg& leg : trace.legs) {
        const auto one = solve(trace.formula, leg.dead);
        if (!one.solution) return stopped(one.stop);
        result.legSingles.push_back(singlesOf(*one.solution, trace));
    }
    result.singles = singlesOf(*dead.solution, trace);
    result.sets = list(*dead.solution, trace, {}, kMostSets, result.allSets);

    std::vector<double> q(trace.modeOfVariable.size(), 1.0);
    std::vector<bool> known(q.size(), false);
    bool allKnown = true;
    for (const std::uint32_t variable : dead.solution->relevantVariables()) {
        const auto chance = chanceOf(project, index, trace.modeOfVariable[variable]);
        known[variable] = chance.has_value();
        allKnown = allKnown && chance.has_value();
        q[variable] = chance.value_or(1.0);
    }
    if (allKnown) result.probability = dead.solution->probability(q).occurs;

    const logic::DualFormula dual = logic::dual(trace.formula, trace.dead);
    const auto paths = solve(dual.formula, dual.top);
    if (!paths.solution) return stopped(paths.stop);
    result.allPaths = true;
    if (!paths.solution->constant()) {
        std::vector<double> holds(q.size());
        for (std::size_t variable = 0; variable < q.size(); ++variable)
            holds[variable] = 1 - q[variable];
        auto listing = paths.solution->list(holds, {});
        while (const auto found = listing.next()) {
            if (result.paths.size() == limit) {
                result.allPaths = false;
                break;
            }
            bool complete = true;
            for (const logic::SetLiteral& literal : found->literals)
                complete = complete && known[literal.variable];
            result.paths.emplace_back(modesOf(*found, trace),
                                      complete ? std::optional(found->probability) : std::nullopt);
        }
        result.allPaths = result.allPaths && !listing.outOfMemory();
    }
    result.dead = std::move(*dead.solution);
    result.trace = std::move(trace);
    return Answer::of(std::move(result));
}

} // namespace cutwater::redundancy_plugin
