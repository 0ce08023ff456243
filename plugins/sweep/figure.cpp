// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sweep/figure.h"

#include <algorithm>
#include <cmath>

namespace cutwater::sweep_plugin {

using reliability::EventProfile;

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
    return std::any_of(m_relevant.begin(), m_relevant.end(), [this](std::uint32_t variable) {
        const std::size_t event = m_solved.tree.eventOfVariable[variable];
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
    std::vector<double> q(m_solved.tree.eventOfVariable.size(), 0.0);
    for (const std::uint32_t variable : m_relevant) {
        const auto& outcome = m_whatIf.probability(m_solved.tree.eventOfVariable[variable]);
        if (outcome)
            q[variable] = *outcome;
        else
            m_problems.insert(m_problems.end(), outcome.problems().begin(),
                              outcome.problems().end());
    }
    if (!m_problems.empty()) return {};
    return m_solved.solution.probability(q).occurs;
}

std::optional<double> Figure::overPeriod(double begin, double end) {
    std::vector<EventProfile> profiles(m_solved.tree.eventOfVariable.size());
    for (const std::uint32_t variable : m_relevant) {
        const auto course = m_whatIf.course(m_solved.tree.eventOfVariable[variable]);
        if (course)
            profiles[variable] = course->profile;
        else
            m_problems.insert(m_problems.end(), course.problems().begin(), course.problems().end());
    }
    if (!m_problems.empty()) return {};
    const reliability::TopCourse course(m_solved.solution, std::move(profiles));
    if (const auto many = sdk::tree::tooManyBreakpoints(m_solved.target, course, end)) {
        m_problems.push_back(*many);
        return {};
    }
    reliability::PeriodWish wish;
    wish.end = end;
    wish.stop = m_job.stop;
    const auto whole = reliability::overPeriod(course, wish);
    if (!whole) return {};
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
