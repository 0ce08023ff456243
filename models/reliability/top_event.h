// SPDX-License-Identifier: GPL-3.0-or-later
// A top event over time: unavailability, frequency (W. E. Vesely, "A time-dependent methodology for
// fault tree evaluation", 1970, from memory) and what follows for a whole period.
#pragma once

#include "models/logic/solution.h"
#include "models/reliability/crossings.h"
#include "models/reliability/profile.h"

#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <stop_token>
#include <vector>

namespace cutwater::reliability {

struct TopMoment {
    double unavailability = 0; // Q(t)
    double available = 1;      // 1 - Q(t), with its own digits
    double frequency = 0;      // w(t) per hour: see EventShare::completes
    double conditional = 0;    // w / (1 - Q): per hour that it is not there; infinite where Q is 1
};

struct EventShare {
    std::uint32_t variable = 0;
    EventMoment moment;
    double birnbaum = 0;
    // How often this event brings the top about, per hour: birnbaum x w by coming; where it hinders
    // the top by going away, as Crossings has it. Without crossings only the sign of Birnbaum is
    // known, and the sum is a lower bound.
    double completes = 0;
};

// Values of t in hours, as in profile.h. Reading is safe from several threads.
class TopCourse {
public:
    // One profile for each variable of the formula; those of variables in no set are not looked at.
    // `crossings` are for formulas that are not coherent.
    TopCourse(logic::Solution solution, std::vector<EventProfile> profiles,
              std::optional<Crossings> crossings = {});

    TopMoment at(double time, Side side = Side::after) const;
    // The events that can bring the top about or keep it away, ascending by variable.
    std::vector<EventShare> shares(double time, Side side = Side::after) const;
    std::vector<double> breakpoints(double end) const; // of all relevant events, each once
    double breakpointCount(double end) const;          // an upper bound
    // Nothing is ever mended or tested, so that the first time is the only one.
    bool neverRecovers() const;
    // Where the top is one event: its profile.
    const EventProfile* onlyEvent() const;
    const std::vector<std::uint32_t>& relevant() const { return m_relevant; }
    const EventProfile& profile(std::uint32_t variable) const { return m_profiles[variable]; }
    bool coherent() const { return m_solution.coherent(); }
    // Frequencies are exact, and not only lower bounds.
    bool exactFrequency() const { return coherent() || m_crossings.has_value(); }

private:
    friend class PeriodWalk;
    // Fills `q`; `moments` in the order of relevant().
    void fill(double time, Side side, std::vector<double>& q,
              std::vector<EventMoment>& moments) const;
    TopMoment momentOf(const std::vector<double>& q, const std::vector<EventMoment>& moments,
                       const std::vector<double>& birnbaum) const;
    double completes(std::size_t relevant, const std::vector<double>& q, const EventMoment& moment,
                     double birnbaum) const;

    logic::Solution m_solution;
    std::vector<EventProfile> m_profiles;
    std::optional<Crossings> m_crossings;
    std::vector<std::uint32_t> m_relevant;
};

struct CurvePoint {
    double time = 0;
    Side side = Side::after;
    double unavailability = 0, frequency = 0;
};

struct PeriodWish {
    double end = 8760;         // hours, > 0
    std::size_t buckets = 300; // of the curve: the lowest and the highest value of each is kept
    std::stop_token stop{};
    std::function<void(double)> progress{};
};

// Bounds of F: the chance that the top event happens at least once in the period.
struct PeriodFigures {
    double end = 0;
    double meanUnavailability = 0;
    double expectedNumber = 0; // W(0, end), integral of the frequency, and what comes at jumps
    // Of these the ones that a test or a new mission brings about by taking events away (formulas
    // that are not coherent).
    double expectedAtJumps = 0;
    bool exactNumber = true;       // otherwise a lower bound
    double meanFrequency = 0;      // W / end
    double atStart = 0, atEnd = 0; // Q(0), Q(end) just before
    double integrationError = 0;   // estimate, relative, the worse of the two integrals
    // F >= the highest Q; F <= Q(0) + W; 1 - (1 - Q(0)) exp(-integral of the conditional rate) is
    // in between and warranted by nothing. Exact where nothing recovers (F = Q(end)) and where the
    // top is one event that works at the start and is not taken out for tests.
    double unreliabilityLow = 0, unreliabilityHigh = 0, unreliabilityEstimate = 0;
    std::optional<double> unreliabilityExact;
    CurvePoint worst;                                      // highest Q
    CurvePoint mostFrequent;                               // highest w
    std::vector<CurvePoint> curve;                         // ascending in time
    std::vector<std::pair<double, double>> expectedByTime; // (t, W(0, t)), ascending
    // By relevant variable, in the order of TopCourse::relevant(): how many of the expected number
    // it completes (Barlow and Proschan 1975), and its own mean unavailability.
    std::vector<double> completedBy, meanOfEvent;
};

// Empty where stopped. Every jump between 0 and `end` is respected, so the cost grows with
// breakpointCount(end).
std::optional<PeriodFigures> overPeriod(const TopCourse& course, const PeriodWish& wish);

} // namespace cutwater::reliability
