// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/live_sets.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace cutwater::editor {
namespace {

using sdk::tree::Figures;
using sdk::tree::Solved;

constexpr std::uint32_t kCountedOrders = 100; // as the analysis `cut-sets` counts them
constexpr std::size_t kLookedAt = 2000;       // sets whose events are remembered by order
constexpr std::size_t kDeepest = 100;         // of a plant breakdown
constexpr std::size_t kStepsBetweenLooks = 64;

const std::string& shortName(const project::Component& component) {
    return component.name.empty() ? component.tag : component.name;
}

// Where somebody has to go: the location, and what the part belongs to; the way down from the whole
// plant only where no location is given.
std::string placeOf(const project::Index& index, const project::Component& component) {
    const project::Component* parent = index.component(component.parent);
    if (!component.location.empty())
        return parent ? component.location + ", " + shortName(*parent) : component.location;
    std::vector<std::string> above;
    for (; parent && above.size() < kDeepest; parent = index.component(parent->parent))
        above.push_back(shortName(*parent));
    std::reverse(above.begin(), above.end());
    return fmt::format("{}", fmt::join(above, " > "));
}

SingleFailure single(const project::Project& project, const project::Index& index,
                     const Solved& solved, const logic::SetLiteral& literal,
                     std::optional<double> probability) {
    SingleFailure failure;
    failure.nodes = sdk::tree::nodesOf(project, solved, literal.variable);
    failure.negated = literal.negated;
    failure.probability = probability;
    if (!solved.isEvent(literal.variable)) {
        failure.failure = sdk::tree::nameOf(project, index, solved, literal.variable);
        failure.place = sdk::tree::idOf(project, solved, literal.variable);
        return failure;
    }
    const project::Event& event = project.events[solved.variables.events(literal.variable).front()];
    const project::FailureMode* const mode = index.mode(event.mode);
    const project::Component* const component = mode ? index.component(mode->component) : nullptr;
    failure.failure =
        mode && !mode->name.empty() ? mode->name : sdk::tree::readableName(index, event);
    if (!component) return failure;
    failure.component = component->name;
    if (!component->tag.empty() && component->tag != component->name)
        failure.component += (failure.component.empty() ? "" : " ") + component->tag;
    failure.place = placeOf(index, *component);
    return failure;
}

bool known(const logic::CutSet& set, const Figures& figures) {
    return std::all_of(set.literals.begin(), set.literals.end(),
                       [&](const logic::SetLiteral& l) { return figures.known[l.variable]; });
}

} // namespace

bool addSets(LiveAnswer& answer, const project::Project& project, const project::Index& index,
             const Solved& solved, const Figures& figures, const sdk::tree::FigureBook& book,
             const std::stop_token& stop) {
    const logic::Solution& solution = solved.solution;
    answer.setsKnown = true;
    answer.setCount = logic::toDecimal(solution.setCount());
    logic::Count shown;
    const auto counts = solution.countsByOrder(kCountedOrders);
    for (std::uint32_t order = 0; order < counts.size(); ++order) {
        if (counts[order] == logic::Count{}) continue;
        shown = shown + counts[order];
        answer.orders.push_back({order, logic::toDecimal(counts[order]), {}, true});
        if (order == 1) answer.singleCount = static_cast<std::size_t>(logic::toDouble(counts[1]));
    }
    answer.everyOrder = shown == solution.setCount();

    const auto nodesOf = [&](const logic::SetLiteral& literal) {
        return sdk::tree::nodesOf(project, solved, literal.variable);
    };
    // By order: the single failures come first, and every order gets its events.
    logic::ListingWish wish;
    wish.memoryBytes = std::size_t{64} << 20;
    logic::Listing listing = solution.list(figures.q, wish);
    std::vector<std::set<std::string>> events(answer.orders.size());
    std::size_t looked = 0, at = 0;
    bool whole = false;
    while (looked < kLookedAt) {
        if (looked % kStepsBetweenLooks == 0 && stop.stop_requested()) return false;
        const auto set = listing.next();
        if (!set) {
            whole = !listing.outOfMemory();
            break;
        }
        ++looked;
        while (at + 1 < answer.orders.size() && answer.orders[at].order < set->literals.size())
            ++at;
        for (const logic::SetLiteral& literal : set->literals)
            if (at < events.size())
                for (std::string& node : nodesOf(literal))
                    events[at].insert(std::move(node));
        if (set->literals.size() != 1 || answer.singles.size() >= kMostSingles) continue;
        const logic::SetLiteral& only = set->literals.front();
        std::optional<double> chance;
        if (known(*set, figures)) chance = set->probability;
        // A member of a group: the failure counts as a whole here, not what is left of it alone.
        if (solved.variables.kind(only.variable) == reliability::CauseKind::alone)
            if (const auto* own = book.find(solved.variables.events(only.variable).front()))
                chance = own->value;
        answer.singles.push_back(single(project, index, solved, only, chance));
    }
    for (std::size_t i = 0; i < answer.orders.size(); ++i) {
        answer.orders[i].nodes.assign(events[i].begin(), events[i].end());
        answer.orders[i].everyOne = whole || i < at;
    }
    // Those without a number would come first of the singles; they go behind.
    std::stable_sort(answer.singles.begin(), answer.singles.end(),
                     [](const SingleFailure& a, const SingleFailure& b) {
                         return a.probability.value_or(-1) > b.probability.value_or(-1);
                     });
    if (!figures.complete()) return true; // "most probable" would put the unknown ones first

    wish.sorting = logic::Sorting::byProbability;
    logic::Listing likely = solution.list(figures.q, wish);
    for (std::size_t i = 0; i < kLookedAt && answer.likely.size() < kMostLikely; ++i) {
        if (i % kStepsBetweenLooks == 0 && stop.stop_requested()) return false;
        const auto set = likely.next();
        if (!set) break;
        if (set->literals.size() < 2) continue;
        LikelySet line;
        line.order = static_cast<std::uint32_t>(set->literals.size());
        line.probability = set->probability;
        for (const logic::SetLiteral& literal : set->literals) {
            for (std::string& node : nodesOf(literal))
                line.nodes.push_back(std::move(node));
            line.words += (line.words.empty() ? "" : "; ") +
                          std::string(literal.negated ? "not " : "") +
                          sdk::tree::nameOf(project, index, solved, literal.variable);
        }
        answer.likely.push_back(std::move(line));
    }
    return true;
}

} // namespace cutwater::editor
