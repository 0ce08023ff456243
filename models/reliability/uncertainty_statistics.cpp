// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/uncertainty_statistics.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <numeric>

namespace cutwater::reliability {

namespace {

const double kTwoSided = normalQuantile(0.975);
constexpr std::size_t kFewest = 100;
constexpr std::size_t kPoints = 40; // of a convergence curve

// Neumaier's compensated sum: a million small numbers keep their digits.
class Sum {
public:
    void add(double value) {
        const double total = m_sum + value;
        m_rest +=
            std::abs(m_sum) >= std::abs(value) ? (m_sum - total) + value : (value - total) + m_sum;
        m_sum = total;
    }
    double value() const { return m_sum + m_rest; }

private:
    double m_sum = 0, m_rest = 0;
};

double meanOf(std::span<const double> samples) {
    Sum sum;
    for (const double sample : samples)
        sum.add(sample);
    return sum.value() / static_cast<double>(samples.size());
}

double deviationOf(std::span<const double> samples, double mean) {
    Sum squares;
    for (const double sample : samples)
        squares.add((sample - mean) * (sample - mean));
    return samples.size() < 2
               ? 0
               : std::sqrt(squares.value() / static_cast<double>(samples.size() - 1));
}

// The figure of all, with an interval from what each batch by itself would say.
Estimate betweenBatches(double value, const std::vector<double>& ofBatch) {
    const double deviation = deviationOf(ofBatch, meanOf(ofBatch));
    const auto count = static_cast<double>(ofBatch.size());
    const double half = studentQuantile(0.975, count - 1) * deviation / std::sqrt(count);
    return {value, value - half, value + half};
}

Estimate byRanks(std::span<const double> sorted, double p) {
    const auto n = static_cast<double>(sorted.size());
    const double half = kTwoSided * std::sqrt(n * p * (1 - p));
    const auto rank = [&](double place) { // counted from 1
        return sorted[static_cast<std::size_t>(std::clamp(place, 1.0, n)) - 1];
    };
    return {percentile(sorted, p), rank(std::floor(n * p - half)),
            rank(std::ceil(n * p + half) + 1)};
}

std::vector<std::vector<double>> sortedBatches(std::span<const double> samples) {
    const std::size_t size = samples.size() / kBatches;
    std::vector<std::vector<double>> batches;
    for (std::size_t batch = 0; batch < kBatches; ++batch) {
        const auto part = samples.subspan(batch * size, size);
        batches.emplace_back(part.begin(), part.end());
        std::sort(batches.back().begin(), batches.back().end());
    }
    return batches;
}

std::vector<double> ofEach(const std::vector<std::vector<double>>& batches,
                           const std::function<double(const std::vector<double>&)>& figure) {
    std::vector<double> figures;
    for (const auto& batch : batches)
        figures.push_back(figure(batch));
    return figures;
}

} // namespace

double percentile(std::span<const double> sorted, double p) {
    const double place = p * static_cast<double>(sorted.size() - 1);
    const auto below = static_cast<std::size_t>(place);
    if (below + 1 >= sorted.size()) return sorted.back();
    return sorted[below] +
           (place - static_cast<double>(below)) * (sorted[below + 1] - sorted[below]);
}

SampleSummary summarise(std::span<const double> samples, Drawing drawing) {
    SampleSummary summary;
    summary.samples = samples.size();
    const double mean = meanOf(samples);
    summary.standardDeviation = deviationOf(samples, mean);
    std::vector<double> sorted(samples.begin(), samples.end());
    std::sort(sorted.begin(), sorted.end());
    summary.least = sorted.front();
    summary.greatest = sorted.back();
    const std::span<const double> tail =
        std::span<const double>(sorted).last((sorted.size() + 999) / 1000);
    const double whole = mean * static_cast<double>(sorted.size());
    if (whole > 0) summary.tailShare = meanOf(tail) * static_cast<double>(tail.size()) / whole;
    if (drawing == Drawing::stratified) {
        const auto batches = sortedBatches(samples);
        const auto point = [&](double p) {
            return betweenBatches(percentile(sorted, p), ofEach(batches, [p](const auto& batch) {
                                      return percentile(batch, p);
                                  }));
        };
        summary.mean =
            betweenBatches(mean, ofEach(batches, [](const auto& batch) { return meanOf(batch); }));
        summary.p5 = point(0.05);
        summary.median = point(0.5);
        summary.p95 = point(0.95);
        return summary;
    }
    const double half =
        kTwoSided * summary.standardDeviation / std::sqrt(static_cast<double>(samples.size()));
    summary.mean = {mean, mean - half, mean + half};
    summary.p5 = byRanks(sorted, 0.05);
    summary.median = byRanks(sorted, 0.5);
    summary.p95 = byRanks(sorted, 0.95);
    return summary;
}

std::vector<ConvergencePoint> convergence(std::span<const double> samples, Drawing drawing) {
    std::vector<std::size_t> counts;
    if (drawing == Drawing::stratified) {
        for (std::size_t batch = 2; batch <= kBatches; ++batch)
            counts.push_back(samples.size() / kBatches * batch);
    } else {
        const double ratio = static_cast<double>(samples.size()) /
                             static_cast<double>(std::min(kFewest, samples.size()));
        for (std::size_t i = 0; i <= kPoints; ++i) {
            const auto count = static_cast<std::size_t>(
                std::llround(static_cast<double>(samples.size()) *
                             std::pow(ratio, static_cast<double>(i) / kPoints - 1)));
            if (counts.empty() || count > counts.back()) counts.push_back(count);
        }
    }
    std::vector<ConvergencePoint> points;
    std::vector<double> part;
    for (const std::size_t count : counts) {
        const auto first = samples.first(count);
        ConvergencePoint point;
        point.samples = count;
        const double mean = meanOf(first);
        if (drawing == Drawing::stratified) {
            const std::size_t size = samples.size() / kBatches;
            std::vector<double> means;
            for (std::size_t at = 0; at < count; at += size)
                means.push_back(meanOf(samples.subspan(at, size)));
            point.mean = betweenBatches(mean, means);
        } else {
            const double half =
                kTwoSided * deviationOf(first, mean) / std::sqrt(static_cast<double>(count));
            point.mean = {mean, mean - half, mean + half};
        }
        part.assign(first.begin(), first.end());
        const auto place = static_cast<std::ptrdiff_t>(0.95 * static_cast<double>(count - 1));
        std::nth_element(part.begin(), part.begin() + place, part.end());
        point.p95 = part[static_cast<std::size_t>(place)];
        points.push_back(point);
    }
    return points;
}

} // namespace cutwater::reliability
