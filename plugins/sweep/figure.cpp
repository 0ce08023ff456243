// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sweep/figure.h"

#include <algorithm>
#include <cmath>

namespace cutwater::sweep_plugin {

const std::vector<std::string>& measureWords() {
    static const std::vector<std::string> words = {"probability", "mean", "worst", "frequency"};
    return words;
}

std::string titleOf(Measure measure) {
    switch (measure) {
    case Measure::probability: return "Probability";
    case Measure::mean: return "Mean unavailability";
    case Measure::worst: return "Worst unavailability";
    case Measure::frequency: return "Mean frequency";
    }
    return {};
}

std::string unitOf(Measure measure) {
    return measure == Measure::frequency ? "/h" : "";
}

Figure::Figure(const sdk::tree::Solved& solved, const Varied& varied, reliability::WhatIf& whatIf,
               Measure measure, double period, const sdk::Job& job)
    : m_solved(solved), m_varied(varied), m_whatIf(whatIf), m_measure(measure), m_period(period),
      m_job(job), m_relevant(solved.solution.relevantVariables()) {}

bool Figure::usesTheNumber() const {
    const auto events = m_solved.variables.eventsOf(m_relevant);
    return std::any_of(events.begin(), events.end(), [this](std::size_t event) {
        return std::any_of(m_varied.knobs.begin(), m_varied.knobs.end(), [event](const auto& knob) {
            return std::binary_search(knob.events.begin(), knob.events.end(), event);
        });
    });
}

std::optional<double> Figure::at(double value) {
    if (m_job.stop.stop_requested() || !m_problems.empty()) return {};
    m_varied.turn(m_whatIf, value);
    if (m_measure == Measure::probability) return probability();
    if (!m_varied.isInterval()) return overPeriod(0, m_period);
    // Whole cycles of what is varied, each with its test: otherwise the mean would hang on where
    // the period ends. The first cycle begins without a test and is left out.
    return overPeriod(value, value + std::ceil(m_period / value - 1e-9) * value);
}

std::optional<double> Figure::probability() {
    const auto q = m_whatIf.probabilities(m_solved.variables, m_relevant);
    if (q) return m_solved.solution.probability(*q).occurs;
    m_problems = q.problems();
    return {};
}

std::optional<double> Figure::overPeriod(double begin, double end) {
    auto profiles = m_whatIf.profiles(m_solved.variables, m_relevant);
    if (!profiles) {
        m_problems = profiles.problems();
        return {};
    }
    const reliability::TopCourse course =
        sdk::tree::courseOfTop(m_solved, std::move(*profiles), m_job);
    if (const auto many = sdk::tree::tooManyBreakpoints(m_solved.target, course, end)) {
        m_problems.push_back(*many);
        return {};
    }
    reliability::PeriodWish wish;
    wish.end = end;
    wish.stop = m_job.stop;
    const auto whole = reliability::overPeriod(course, wish);
    if (!whole) return {};
    m_exact = m_exact && whole->exactNumber;
    if (m_measure == Measure::worst) return whole->worst.unavailability;
    const bool often = m_measure == Measure::frequency;
    double total = often ? whole->expectedNumber : whole->meanUnavailability * end;
    if (begin > 0) {
        wish.end = begin;
        const auto head = reliability::overPeriod(course, wish);
        if (!head) return {};
        total -= often ? head->expectedNumber : head->meanUnavailability * begin;
    }
    return total / (end - begin);
}

} // namespace cutwater::sweep_plugin
