// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/top_figures.h"

#include "models/logic/solution.h"
#include "models/reliability/event_model.h"
#include "models/reliability/profile_reader.h"
#include "models/reliability/top_event.h"
#include "models/reliability/top_variables.h"
#include "models/reliability/tree_formula.h"
#include "models/worksheet/frequency.h"

#include <fmt/format.h>

namespace cutwater::worksheet {

namespace {

constexpr std::uint64_t kNodesPerModule = 30'000'000; // as the analyses of trees take it
constexpr double kMostBreakpoints = 200'000;          // of a year: more would take minutes

struct Solved {
    reliability::TopVariables variables;
    logic::Solution solution;

    // The groups' shares, by groups().
    std::vector<std::vector<double>> shares(const project::Project& project,
                                            const project::Index& index) const {
        return reliability::sharesOf(project, index, variables.groups());
    }
    std::vector<std::size_t> events() const {
        return variables.eventsOf(solution.relevantVariables());
    }
};

// Fills `how` where it fails.
std::optional<double> probabilityOf(const project::Project& project, const project::Index& index,
                                    const Solved& solved, std::string& how) {
    std::vector<double> ofEvent(project.events.size(), 0);
    for (const std::size_t position : solved.events()) {
        const auto probability =
            reliability::probabilityOf(project, index, project.events[position], {});
        if (!probability) {
            how = probability.problems().front().what;
            return {};
        }
        ofEvent[position] = probability->value;
    }
    return solved.solution
        .probability(
            solved.variables.probabilities(project, solved.shares(project, index), ofEvent))
        .occurs;
}

void addFrequency(TopFigures& figures, const project::Project& project, const project::Index& index,
                  Solved solved, const TopLimits& limits) {
    std::vector<reliability::EventProfile> ofEvent(project.events.size());
    reliability::ProfileWish wish;
    wish.steady = true;
    for (const std::size_t position : solved.events()) {
        const auto course = reliability::courseOf(index, project.events[position], wish);
        if (!course) {
            figures.how = course.problems().front().what;
            return;
        }
        ofEvent[position] = course->profile;
    }
    std::vector<reliability::EventProfile> profiles =
        solved.variables.profiles(solved.shares(project, index), ofEvent);
    const bool coherent = solved.solution.coherent();
    const reliability::TopCourse course(std::move(solved.solution), std::move(profiles));
    if (course.breakpointCount(kHoursPerYear) > kMostBreakpoints) {
        figures.how = "it has too many tests and missions in a year to be followed; say how often "
                      "it is asked about";
        return;
    }
    reliability::PeriodWish period;
    period.end = kHoursPerYear;
    period.buckets = 1;
    period.stop = limits.stop;
    const auto found = reliability::overPeriod(course, period);
    if (!found) {
        figures.cancelled = true;
        return;
    }
    if (!(found->expectedNumber > 0)) {
        figures.how = "nothing in its tree comes at a rate; say how often it is asked about";
        return;
    }
    figures.perYear = found->expectedNumber;
    figures.lowerBound = !coherent;
    figures.how = "expected number in a year";
}

} // namespace

TopFigures topFiguresOf(const project::Project& project, const project::Index& index,
                        const project::TopEvent& top, const TopLimits& limits) {
    TopFigures figures;
    reliability::TreeFormula tree = reliability::toFormula(project, index, top.node.id);
    std::optional<reliability::TopVariables> variables;
    if (limits.commonCauses && !project.commonCauses.empty()) {
        auto expanded = reliability::withCommonCauses(project, index, tree);
        if (!expanded) {
            figures.how = expanded.problems().front().what;
            return figures;
        }
        if (!expanded->groups.empty()) variables.emplace(std::move(*expanded));
    }
    if (!variables) variables.emplace(tree);
    figures.groups = variables->groups();
    const bool counted = !figures.groups.empty();
    logic::Limits engine;
    engine.memoryBytes = limits.memoryBytes;
    engine.stop = limits.stop;
    engine.nodesPerModule = kNodesPerModule;
    const logic::SolveOutcome outcome =
        logic::solve(counted ? variables->causes().formula : tree.formula,
                     counted ? variables->causes().top : tree.top, engine);
    if (outcome.stop == logic::Stop::cancelled) {
        figures.cancelled = true;
        return figures;
    }
    if (!outcome.solution) {
        figures.how = "its tree does not fit into the memory that is allowed";
        return figures;
    }
    Solved solved{std::move(*variables), *outcome.solution};
    figures.probability = probabilityOf(project, index, solved, figures.how);
    const project::Quantity* asked = top.asked ? index.resolved(*top.asked) : nullptr;
    if (!asked) {
        addFrequency(figures, project, index, std::move(solved), limits);
        return figures;
    }
    if (!figures.probability) return figures;
    const double times = inBaseUnits(*asked) * kHoursPerYear;
    figures.perYear = *figures.probability * times;
    figures.how =
        fmt::format("probability {:.3g} x asked {:.4g} times a year", *figures.probability, times);
    return figures;
}

} // namespace cutwater::worksheet
