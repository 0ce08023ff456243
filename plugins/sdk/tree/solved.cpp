// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/solved.h"

#include <fmt/format.h>

#include <limits>

namespace cutwater::sdk::tree {
namespace {

using project::Problem;
using project::Severity;

// What one order may make for one module: minutes of work; a tree that needs more will not fit with
// ten times as many.
constexpr std::uint64_t kNodesPerModule = 30'000'000;

logic::SolveOutcome solveOne(const logic::Formula& formula, logic::Literal top, Side side,
                             const logic::Limits& limits) {
    if (side == Side::fails) return logic::solve(formula, top, limits);
    const logic::DualFormula dual = logic::dual(formula, top);
    return logic::solve(dual.formula, dual.top, limits);
}

} // namespace

Problem cancelledAt(const Target& target) {
    return {Severity::error, fmt::format("cancelled while {} was computed", target.id),
            "start it again when there is time", "top event " + target.id, 0};
}

Problem overMemoryAt(const Target& target, std::size_t memoryBytes) {
    return {Severity::error,
            fmt::format("{} needs more memory than the {} MB that are allowed", target.id,
                        memoryBytes >> 20),
            "allow more, or ask about a gate further down", "top event " + target.id, 0};
}

project::Outcome<Unsolved> formulaOf(const project::Project& project, const project::Index& index,
                                     const Target& target, const Circumstances& circumstances) {
    reliability::TreeFormula tree =
        reliability::toFormula(project, index, target.node, circumstances.forced);
    reliability::TopVariables variables(tree);
    if (circumstances.commonCauses) {
        auto made = reliability::withCommonCauses(project, index, tree);
        if (!made) return made.problems();
        if (!made->groups.empty()) variables = reliability::TopVariables(std::move(*made));
    }
    return Unsolved{std::move(tree), std::move(variables)};
}

Answer<std::vector<Solved>> solveAll(const project::Project& project, const project::Index& index,
                                     const std::vector<Target>& targets, Side side, const Job& job,
                                     const Circumstances& circumstances) {
    std::vector<Solved> all;
    for (std::size_t i = 0; i < targets.size(); ++i) {
        const Target& target = targets[i];
        if (job.stop.stop_requested())
            return Answer<std::vector<Solved>>::stopped(Ending::cancelled, cancelledAt(target));
        auto formula = formulaOf(project, index, target, circumstances);
        if (!formula) return Answer<std::vector<Solved>>::failed(formula.problems());
        logic::Limits limits;
        limits.stop = job.stop;
        limits.memoryBytes = job.memoryBytes;
        limits.nodesPerModule = kNodesPerModule;
        if (job.progress)
            limits.progress = [&, i](double share) {
                const double done = static_cast<double>(i) + share;
                job.progress(done / static_cast<double>(targets.size()), "solving " + target.id);
            };
        logic::SolveOutcome outcome = solveOne(formula->formula(), formula->top(), side, limits);
        if (outcome.stop == logic::Stop::cancelled)
            return Answer<std::vector<Solved>>::stopped(Ending::cancelled, cancelledAt(target));
        if (!outcome.solution)
            return Answer<std::vector<Solved>>::stopped(Ending::overLimit,
                                                        overMemoryAt(target, job.memoryBytes));
        all.push_back({std::move(*formula), target, std::move(*outcome.solution)});
    }
    return Answer<std::vector<Solved>>::of(std::move(all));
}

std::string idOf(const project::Project& project, const Solved& solved, std::uint32_t variable) {
    return solved.variables.id(project, variable);
}

std::string nameOf(const project::Project& project, const project::Index& index,
                   const Solved& solved, std::uint32_t variable) {
    if (solved.isEvent(variable))
        return readableName(index, project.events[solved.variables.events(variable).front()]);
    const std::size_t position = solved.variables.groups()[solved.variables.groupOf(variable)];
    const project::CommonCauseGroup& group = project.commonCauses[position];
    return fmt::format("common cause: {}", group.name.empty() ? group.id : group.name);
}

std::vector<std::string> nodesOf(const project::Project& project, const Solved& solved,
                                 std::uint32_t variable) {
    std::vector<std::string> nodes;
    for (const std::size_t event : solved.variables.events(variable))
        nodes.push_back(project.events[event].id);
    return nodes;
}

Cell countCell(const logic::Count& count) {
    constexpr auto kLargest = static_cast<logic::UInt128>(std::numeric_limits<std::int64_t>::max());
    if (!count.saturated && count.value <= kLargest) return static_cast<std::int64_t>(count.value);
    return logic::toDecimal(count);
}

Cell numberCell(bool known, double value) {
    if (!known) return {};
    return value;
}

} // namespace cutwater::sdk::tree
