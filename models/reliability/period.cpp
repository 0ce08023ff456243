// SPDX-License-Identifier: GPL-3.0-or-later
// A top event over a whole period: one walk that integrates, draws the curve and looks for the
// worst moment.
#include "models/reliability/integrate.h"
#include "models/reliability/top_event.h"

#include <algorithm>
#include <cmath>

namespace cutwater::reliability {

namespace {

// Of moments that are alike up to rounding the first is the worst.
constexpr double kHigher = 1 + 1e-9;

constexpr std::size_t kFewestPieces = 32; // so that a smooth course has a smooth curve, too

bool earlier(const CurvePoint& a, const CurvePoint& b) {
    return a.time != b.time ? a.time < b.time : a.side == Side::before && b.side == Side::after;
}

// The lowest and the highest value of each of many short stretches: what a plot can show, and no
// peak is lost however many tests there are.
class Envelope {
public:
    Envelope(double end, std::size_t buckets)
        : m_end(end), m_buckets(std::max<std::size_t>(buckets, 1)) {}

    void add(const CurvePoint& point) {
        const double share = point.time / m_end * static_cast<double>(m_buckets.size());
        const auto index = std::min(static_cast<std::size_t>(share), m_buckets.size() - 1);
        Bucket& bucket = m_buckets[index];
        if (!bucket.used || point.unavailability < bucket.lowest.unavailability)
            bucket.lowest = point;
        if (!bucket.used || point.unavailability > bucket.highest.unavailability)
            bucket.highest = point;
        bucket.used = true;
    }

    std::vector<CurvePoint> points() const {
        std::vector<CurvePoint> all;
        for (const Bucket& bucket : m_buckets) {
            if (!bucket.used) continue;
            all.push_back(bucket.lowest);
            if (earlier(bucket.lowest, bucket.highest) || earlier(bucket.highest, bucket.lowest))
                all.push_back(bucket.highest);
        }
        std::sort(all.begin(), all.end(), earlier);
        return all;
    }

private:
    struct Bucket {
        bool used = false;
        CurvePoint lowest, highest;
    };
    double m_end;
    std::vector<Bucket> m_buckets;
};

// W by time, thinned by halves whenever there are too many.
class Counted {
public:
    void add(double time, double expected) {
        if (++m_seen % m_every != 0) return;
        m_points.push_back({time, expected});
        if (m_points.size() < 2 * kMost) return;
        for (std::size_t i = 0; i < kMost; ++i)
            m_points[i] = m_points[2 * i + 1];
        m_points.resize(kMost);
        m_every *= 2;
    }
    std::vector<std::pair<double, double>> finished(double end, double expected) {
        if (m_points.empty() || m_points.back().first != end) m_points.push_back({end, expected});
        m_points.insert(m_points.begin(), {0.0, 0.0});
        return std::move(m_points);
    }

private:
    static constexpr std::size_t kMost = 300;
    std::size_t m_seen = 0, m_every = 1;
    std::vector<std::pair<double, double>> m_points;
};

} // namespace

class PeriodWalk {
public:
    PeriodWalk(const TopCourse& course, const PeriodWish& wish)
        : m_course(course), m_wish(wish), m_envelope(wish.end, wish.buckets) {
        m_figures.end = wish.end;
        m_figures.exactNumber = course.exactFrequency();
        logic::Limits limits;
        limits.stop = wish.stop;
        if (course.m_crossings) m_jumps.emplace(*course.m_crossings, limits);
    }

    std::optional<PeriodFigures> run() {
        makeCuts();
        m_figures.atStart = look(0, Side::after).unavailability;
        const std::size_t events = m_course.relevant().size();
        IntegralWish wish;
        wish.controlled = kShared;
        wish.stop = m_wish.stop;
        wish.progress = m_wish.progress;
        wish.piece = [this](double end, std::span<const double> soFar) {
            const TopMoment before = look(end, Side::before);
            if (end < m_wish.end) {
                look(end, Side::after);
                if (m_jumps) jump(end, before.available);
            } else {
                m_figures.atEnd = before.unavailability;
            }
            m_counted.add(end, soFar[kFrequency] + m_figures.expectedAtJumps);
        };
        const Integral integral = integrate(
            m_cuts, kShared + 2 * events,
            [this](double time, std::span<double> values) { evaluate(time, values); }, wish);
        if (integral.stopped) return {};
        finish(integral);
        return std::move(m_figures);
    }

private:
    // What is integrated: these three, then by event its completions, then its unavailability.
    enum { kUnavailability, kFrequency, kConditional, kShared };

    void makeCuts() {
        m_cuts = m_course.breakpoints(m_wish.end);
        for (std::size_t i = 0; i <= kFewestPieces; ++i)
            m_cuts.push_back(m_wish.end * static_cast<double>(i) / kFewestPieces);
        std::sort(m_cuts.begin(), m_cuts.end());
        m_cuts.erase(std::unique(m_cuts.begin(), m_cuts.end()), m_cuts.end());
    }

    // What a test or a new mission brings about by taking events away.
    void jump(double time, double availableBefore) {
        std::vector<double> before, after;
        m_course.fill(time, Side::before, before, m_moments);
        m_course.fill(time, Side::after, after, m_moments);
        const auto chance = m_jumps->atJump(before, after);
        if (!chance) {
            m_figures.exactNumber = false;
            return;
        }
        m_figures.expectedAtJumps += *chance;
        if (availableBefore > 0) m_spared *= std::max(0.0, 1 - *chance / availableBefore);
    }

    void note(const CurvePoint& point) {
        m_envelope.add(point);
        if (m_none || point.unavailability > m_figures.worst.unavailability * kHigher)
            m_figures.worst = point;
        if (m_none || point.frequency > m_figures.mostFrequent.frequency * kHigher)
            m_figures.mostFrequent = point;
        m_none = false;
    }

    TopMoment look(double time, Side side) {
        const TopMoment top = m_course.at(time, side);
        note({time, side, top.unavailability, top.frequency});
        return top;
    }

    void evaluate(double time, std::span<double> values) {
        m_course.fill(time, Side::after, m_q, m_moments);
        const std::vector<double> birnbaum = m_course.m_solution.birnbaum(m_q);
        const TopMoment top = m_course.momentOf(m_q, m_moments, birnbaum);
        note({time, Side::after, top.unavailability, top.frequency});
        values[kUnavailability] = top.unavailability;
        values[kFrequency] = top.frequency;
        values[kConditional] = std::isfinite(top.conditional) ? top.conditional : 0;
        const auto& relevant = m_course.relevant();
        for (std::size_t i = 0; i < relevant.size(); ++i) {
            values[kShared + i] = m_course.completes(i, m_q, m_moments[i], birnbaum[relevant[i]]);
            values[kShared + relevant.size() + i] = m_moments[i].unavailability;
        }
    }

    // A worst moment inside a piece is a hump: close in on it (golden section).
    void sharpenWorst() {
        const double time = m_figures.worst.time;
        const auto after = std::upper_bound(m_cuts.begin(), m_cuts.end(), time);
        if (after == m_cuts.begin() || after == m_cuts.end()) return;
        double low = *std::prev(after), high = *after;
        if (time == low) return;
        const double ratio = (std::sqrt(5.0) - 1) / 2;
        double a = high - ratio * (high - low), b = low + ratio * (high - low);
        double atA = look(a, Side::after).unavailability, atB = look(b, Side::after).unavailability;
        for (int i = 0; i < 40; ++i) {
            if (atA > atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - ratio * (high - low);
                atA = look(a, Side::after).unavailability;
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + ratio * (high - low);
                atB = look(b, Side::after).unavailability;
            }
        }
    }

    void finish(const Integral& integral) {
        PeriodFigures& figures = m_figures;
        const std::size_t events = m_course.relevant().size();
        figures.meanUnavailability = integral.values[kUnavailability] / m_wish.end;
        figures.expectedNumber = integral.values[kFrequency] + figures.expectedAtJumps;
        figures.meanFrequency = figures.expectedNumber / m_wish.end;
        for (const int f : {kUnavailability, kFrequency})
            if (integral.values[f] > 0)
                figures.integrationError =
                    std::max(figures.integrationError, integral.errors[f] / integral.values[f]);
        const auto begin = integral.values.begin() + kShared;
        const auto middle = begin + static_cast<std::ptrdiff_t>(events);
        figures.completedBy.assign(begin, middle);
        for (auto value = middle; value != integral.values.end(); ++value)
            figures.meanOfEvent.push_back(*value / m_wish.end);
        sharpenWorst();
        figures.unreliabilityLow = figures.worst.unavailability;
        figures.unreliabilityHigh =
            std::clamp(figures.atStart + figures.expectedNumber, figures.unreliabilityLow, 1.0);
        const double survives = m_spared * std::exp(-integral.values[kConditional]);
        figures.unreliabilityEstimate =
            std::clamp(figures.atStart + (1 - figures.atStart) * (1 - survives),
                       figures.unreliabilityLow, figures.unreliabilityHigh);
        if (m_course.coherent() && m_course.neverRecovers())
            figures.unreliabilityExact = figures.atEnd;
        else if (const EventProfile* const only = m_course.onlyEvent();
                 only && figures.atStart == 0 && only->testDuration == 0)
            figures.unreliabilityExact = only->unreliability(m_wish.end);
        figures.curve = m_envelope.points();
        figures.expectedByTime = m_counted.finished(m_wish.end, figures.expectedNumber);
    }

    const TopCourse& m_course;
    const PeriodWish& m_wish;
    Envelope m_envelope;
    Counted m_counted;
    PeriodFigures m_figures;
    std::optional<JumpBook> m_jumps;
    double m_spared = 1; // estimate: of the chance that no jump brings it about
    bool m_none = true;  // no point has been seen yet
    std::vector<double> m_cuts, m_q;
    std::vector<EventMoment> m_moments;
};

std::optional<PeriodFigures> overPeriod(const TopCourse& course, const PeriodWish& wish) {
    return PeriodWalk(course, wish).run();
}

} // namespace cutwater::reliability
