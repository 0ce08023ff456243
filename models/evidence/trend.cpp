// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/evidence/trend.h"

#include "models/evidence/distributions.h"

#include <cmath>
#include <fmt/format.h>

namespace cutwater::evidence {

namespace {

constexpr std::size_t kFewest = 3;

project::Problem problem(std::string what, std::string remedy) {
    return {project::Severity::error, std::move(what), std::move(remedy), {}, 0};
}

PowerLaw powerLaw(double shape, double failures, double end) {
    const double intensity = failures * shape / end;
    return {shape, failures / std::pow(end, shape), intensity, 1 / intensity};
}

} // namespace

project::Outcome<Trend> trendOf(const std::vector<double>& times, double end, Stopping stopping) {
    if (times.size() < kFewest)
        return problem(fmt::format("there are {} failures, too few to see a trend", times.size()),
                       fmt::format("wait for at least {}", kFewest));
    if (!(end > 0) || std::isinf(end))
        return problem(fmt::format("the watching ends at {}", end), "give an end after its begin");
    for (std::size_t i = 0; i < times.size(); ++i) {
        if (!(times[i] > 0 && times[i] <= end))
            return problem(
                fmt::format("failure {} at {} is not between 0 and the end of the watching, {}",
                            i + 1, times[i], end),
                "give times since the watching began");
        if (i > 0 && times[i] < times[i - 1])
            return problem(fmt::format("failure {} at {} comes before the one at {}", i + 1,
                                       times[i], times[i - 1]),
                           "give the times in their order");
    }
    if (stopping == Stopping::atFailure && times.back() != end)
        return problem(fmt::format("the watching is said to end with the last failure, at {}, but "
                                   "ends at {}",
                                   times.back(), end),
                       "give that failure's time as the end, or say that it ended at a time");

    Trend trend;
    trend.failures = times.size();
    trend.end = end;
    trend.stopping = stopping;
    // A failure that ended the watching says nothing about where in it failures fall.
    const std::size_t freeTimes = times.size() - (stopping == Stopping::atFailure ? 1 : 0);
    double total = 0;
    double logs = 0;
    for (std::size_t i = 0; i < freeTimes; ++i) {
        total += times[i];
        logs += std::log(end / times[i]);
    }
    if (logs == 0)
        return problem("all failures fall on the end of the watching",
                       "give the time at which the watching ended");
    const auto count = static_cast<double>(freeTimes);
    trend.laplace = (total / count - end / 2) / (end * std::sqrt(1 / (12 * count)));
    trend.laplaceChanceWorse = normalTail(trend.laplace);
    trend.laplaceChanceBetter = normalTail(-trend.laplace);

    trend.statistic = 2 * logs;
    trend.degreesOfFreedom = 2 * freeTimes;
    const auto freedom = static_cast<double>(trend.degreesOfFreedom);
    trend.powerLawChanceBetter = chiSquareTail(trend.statistic, freedom);
    trend.powerLawChanceWorse = chiSquareBelow(trend.statistic, freedom);

    const auto failures = static_cast<double>(trend.failures);
    const double lost = stopping == Stopping::atFailure ? 2 : 1;
    trend.plain = powerLaw(failures / logs, failures, end);
    trend.unbiased = powerLaw((failures - lost) / logs, failures, end);
    trend.shapeLow = chiSquareQuantile(0.05, freedom) / trend.statistic;
    trend.shapeHigh = chiSquareQuantile(0.95, freedom) / trend.statistic;
    return trend;
}

std::size_t reversals(const std::vector<double>& gaps) {
    std::size_t count = 0;
    for (std::size_t later = 1; later < gaps.size(); ++later)
        for (std::size_t earlier = 0; earlier < later; ++earlier)
            count += gaps[later] > gaps[earlier];
    return count;
}

} // namespace cutwater::evidence
