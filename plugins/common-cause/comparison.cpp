// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/common-cause/comparison.h"

#include <algorithm>
#include <set>

namespace cutwater::common_cause_plugin {
namespace {

using reliability::Cause;
using reliability::CauseKind;
using reliability::CommonCauseFormula;
using sdk::Ending;
using sdk::tree::Solved;

std::uint64_t singles(const logic::Solution& solution) {
    const auto counts = solution.countsByOrder(1);
    return counts.size() > 1 ? static_cast<std::uint64_t>(counts[1].value) : 0;
}

// Events that bring the top about alone in the tree as it is drawn.
std::set<std::size_t> singleEvents(const Solved& solved) {
    std::set<std::size_t> events;
    const std::vector<double> q(solved.tree.eventOfVariable.size(), 1.0);
    auto listing = solved.solution.list(q, {.maxOrder = 1});
    while (const auto found = listing.next())
        if (found->literals.size() == 1 && !found->literals.front().negated)
            events.insert(solved.tree.eventOfVariable[found->literals.front().variable]);
    return events;
}

std::vector<Comparison::Single> addedSingles(const Solved& solved,
                                             const CommonCauseFormula& expanded,
                                             const logic::Solution& solution,
                                             const std::vector<double>& q) {
    const std::set<std::size_t> before = singleEvents(solved);
    std::vector<Comparison::Single> added;
    auto listing = solution.list(q, {.maxOrder = 1});
    while (const auto found = listing.next()) {
        if (found->literals.size() != 1 || found->literals.front().negated) continue;
        const Cause& cause = expanded.causes[found->literals.front().variable];
        if (cause.kind != CauseKind::common) continue;
        // A member that was a single failure anyway makes its common cause one as well: no news.
        const bool news = std::none_of(cause.events.begin(), cause.events.end(),
                                       [&](std::size_t event) { return before.count(event); });
        if (news)
            added.push_back(
                {cause.events, expanded.groups[cause.group], cause.id, found->probability});
    }
    return added;
}

} // namespace

sdk::Answer<Comparison> compare(const project::Project& project, const project::Index& index,
                                const Solved& solved, const sdk::tree::Figures& figures,
                                const Numbers& numbers, const sdk::Job& job) {
    using Answer = sdk::Answer<Comparison>;
    Comparison result;
    result.plain = solved.solution.probability(figures.q).occurs;
    result.plainSets = solved.solution.setCount();
    result.plainSingles = singles(solved.solution);
    result.common = result.plain;
    result.commonSets = result.plainSets;
    result.commonSingles = result.plainSingles;

    const auto expanded = reliability::withCommonCauses(project, index, solved.tree);
    if (!expanded) return Answer::failed(expanded.problems());
    if (expanded->groups.empty()) return Answer::of(std::move(result));

    logic::Limits limits;
    limits.stop = job.stop;
    limits.memoryBytes = job.memoryBytes;
    const auto outcome = logic::solve(expanded->formula, expanded->top, limits);
    if (outcome.stop == logic::Stop::cancelled)
        return Answer::stopped(Ending::cancelled, sdk::tree::cancelledAt(solved.target));
    if (!outcome.solution)
        return Answer::stopped(Ending::overLimit,
                               sdk::tree::overMemoryAt(solved.target, job.memoryBytes));
    const logic::Solution& solution = *outcome.solution;

    // Numbers are needed for what can make a difference only.
    std::set<std::size_t> needed;
    std::set<std::size_t> counting; // groups
    for (const std::uint32_t variable : solution.relevantVariables()) {
        const Cause& cause = expanded->causes[variable];
        needed.insert(cause.events.begin(), cause.events.end());
        if (cause.kind == CauseKind::common) counting.insert(cause.group);
    }
    std::vector<double> ofEvent(project.events.size(), 0.0);
    project::Problems problems;
    for (const std::size_t event : needed) {
        const auto probability =
            reliability::probabilityOf(project, index, project.events[event], numbers.mission);
        if (probability)
            ofEvent[event] = probability->value;
        else
            problems.insert(problems.end(), probability.problems().begin(),
                            probability.problems().end());
    }
    if (!problems.empty()) return Answer::failed(std::move(problems));

    const auto shares = reliability::sharesOf(project, index, expanded->groups);
    const reliability::CauseProbabilities weigh(project, *expanded, numbers.rule);
    std::vector<double> q(expanded->causes.size());
    result.overdrawn = weigh.fill(shares, ofEvent, q);
    result.grouped = !counting.empty();
    result.common = solution.probability(q).occurs;
    result.commonSets = solution.setCount();
    result.commonSingles = singles(solution);
    result.added = addedSingles(solved, *expanded, solution, q);

    for (const std::size_t g : counting) {
        auto without = shares;
        std::fill(without[g].begin(), without[g].end(), 0.0);
        without[g].front() = 1;
        weigh.fill(without, ofEvent, q);
        result.groups.push_back({expanded->groups[g], solution.probability(q).occurs});
    }
    return Answer::of(std::move(result));
}

} // namespace cutwater::common_cause_plugin
