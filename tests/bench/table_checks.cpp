// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/brute_force.h"
#include "tests/bench/table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace bench {

namespace {

double relativeDifference(double a, double b) {
    const double larger = std::max(std::abs(a), std::abs(b));
    return larger > 0 ? std::abs(a - b) / larger : 0;
}

double slope(const std::vector<std::pair<double, double>>& points) {
    double meanX = 0, meanY = 0;
    for (const auto& [x, y] : points) {
        meanX += std::log(x) / static_cast<double>(points.size());
        meanY += std::log(y) / static_cast<double>(points.size());
    }
    double above = 0, below = 0;
    for (const auto& [x, y] : points) {
        above += (std::log(x) - meanX) * (std::log(y) - meanY);
        below += (std::log(x) - meanX) * (std::log(x) - meanX);
    }
    return above / below;
}

} // namespace

std::optional<double> Row::ratio(bool withInit) const {
    if (measured.ours.ending != Ending::answered || measured.buddy.empty()) return {};
    double least = std::numeric_limits<double>::infinity();
    for (const BuddyRun& run : measured.buddy)
        if (run.ending == Ending::answered && !run.hasSets)
            least = std::min(least,
                             run.result.processorSeconds + (withInit ? run.result.initSeconds : 0));
    return least / measured.ours.processorSeconds;
}

double Row::leastBuddyMB() const {
    double least = std::numeric_limits<double>::infinity();
    for (const BuddyRun& run : measured.buddy)
        if (run.ending == Ending::answered && !run.hasSets) least = std::min(least, run.peakMB);
    return std::isinf(least) ? 0 : least;
}

void check(Row& row, const Instance& instance) {
    const Ours& ours = row.measured.ours;
    const Ours& withSets = row.measured.withSets;
    const std::uint32_t variables = instance.formula.variableCount();
    const auto compare = [&](double other, const std::string& by) {
        if (ours.ending != Ending::answered) return;
        const double difference = relativeDifference(ours.probability, other);
        row.difference = std::max(row.difference.value_or(0), difference);
        if (!(difference <= kAllowedDifference))
            row.wrong.push_back(fmt::format("{}: the probability is {:.15g}, by {} {:.15g}",
                                            row.recipe->name, ours.probability, by, other));
        if (by != "ours with sets") row.checkedBy.push_back("P " + by);
    };
    const auto compareSets = [&](const std::string& other, const std::string& by) {
        if (withSets.ending != Ending::answered) return;
        if (const std::string mine = toDecimal(withSets.sets); mine != other)
            row.wrong.push_back(fmt::format("{}: the number of sets is {}, by {} {}",
                                            row.recipe->name, mine, by, other));
        row.checkedBy.push_back("N " + by);
    };
    if (withSets.ending == Ending::answered) compare(withSets.probability, "ours with sets");
    if (const BuddyRun* best = row.best()) compare(best->result.probability, "BuDDy");
    for (const BuddyRun& run : row.measured.buddy) {
        if (run.hasSets) compareSets(toDecimal(*run.result.sets), "BuDDy");
        // BuDDy's own variants must agree with each other, whatever we say.
        if (const BuddyRun* best = row.best();
            best && run.ending == Ending::answered &&
            relativeDifference(run.result.probability, best->result.probability) >
                kAllowedDifference)
            row.wrong.push_back(row.recipe->name + ": BuDDy disagrees with itself");
    }
    if (!row.recipe->known.exactSets.empty())
        compareSets(row.recipe->known.exactSets, "closed form");
    if (variables <= kMostTriedEvents) {
        row.tried = triedProbability(instance);
        compare(*row.tried, "all states");
        if (row.recipe->known.coherent)
            compareSets(std::to_string(triedMinimalSets(instance)), "all states");
        else if (variables <= kMostTriedForImplicants)
            compareSets(std::to_string(triedPrimeImplicants(instance)), "all products");
    }
    if (const Known& known = row.recipe->known;
        known.maxSets > 0 && withSets.ending == Ending::answered) {
        const double sets = toDouble(withSets.sets);
        if (sets < known.minSets || sets > known.maxSets)
            row.wrong.push_back(fmt::format("{}: {:.3g} sets are not between {:g} and {:g}",
                                            row.recipe->name, sets, known.minSets, known.maxSets));
    }
}

std::vector<Growth> growth(const std::vector<Row>& rows) {
    std::vector<Growth> all;
    std::vector<std::string> done;
    for (const Row& first : rows) {
        const std::string& series = first.recipe->series;
        if (series.empty() || std::ranges::find(done, series) != done.end()) continue;
        done.push_back(series);
        std::vector<std::pair<double, double>> ours, buddy;
        for (const Row& row : rows) {
            if (row.recipe->series != series) continue;
            if (row.measured.ours.ending == Ending::answered)
                ours.emplace_back(row.recipe->size, row.measured.ours.processorSeconds);
            if (row.best())
                buddy.emplace_back(row.recipe->size, row.best()->result.processorSeconds);
        }
        if (ours.size() < 2) continue;
        Growth growth{series, ours.size(), slope(ours), slope({ours.end() - 2, ours.end()}), {}};
        if (buddy.size() >= 2) growth.buddy = slope(buddy);
        all.push_back(growth);
    }
    return all;
}

} // namespace bench
