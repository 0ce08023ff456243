// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/sensitivity.h"

#include "models/reliability/distribution.h"

#include <algorithm>
#include <limits>
#include <set>

namespace cutwater::reliability {

namespace {

// The largest value that a number may have, whatever its distribution says.
double ceilingOf(const Knob& knob, const project::Quantity& quantity) {
    const bool chance =
        knob.role == project::Role::probability || knob.role == project::Role::coverage;
    return chance ? 1 / project::facts(quantity.unit).factor
                  : std::numeric_limits<double>::infinity();
}

class Swinger {
public:
    Swinger(const project::Project& project, const project::Index& index,
            const std::vector<SolvedTop>& tops, std::optional<double> mission,
            const SwingWish& wish)
        : m_project(project), m_tops(tops), m_wish(wish), m_whatIf(project, mission) {
        std::set<std::size_t> events, groups;
        for (const SolvedTop& top : tops) {
            m_relevant.push_back(top.solution.relevantVariables());
            m_eventsOfTop.push_back(top.variables.eventsOf(m_relevant.back()));
            events.insert(m_eventsOfTop.back().begin(), m_eventsOfTop.back().end());
            groups.insert(top.variables.groups().begin(), top.variables.groups().end());
        }
        m_events.assign(events.begin(), events.end());
        m_result.knobs = knobsOf(project, index, m_events,
                                 std::vector<std::size_t>(groups.begin(), groups.end()));
    }

    project::Outcome<Swings> run() {
        project::Problems problems;
        for (const std::size_t event : m_events) {
            const auto& outcome = m_whatIf.probability(event);
            if (!outcome)
                problems.insert(problems.end(), outcome.problems().begin(),
                                outcome.problems().end());
        }
        if (!problems.empty()) return problems;
        m_result.point = ofTops({});
        for (std::size_t i = 0; i < m_result.knobs.size(); ++i) {
            if (m_wish.stop.stop_requested()) {
                m_result.stopped = true;
                break;
            }
            swing(i);
            if (m_wish.progress)
                m_wish.progress(static_cast<double>(i + 1) /
                                static_cast<double>(m_result.knobs.size()));
        }
        return std::move(m_result);
    }

private:
    // Probability of every top; of those that none of the `changed` events is in, the point value.
    std::vector<double> ofTops(const std::vector<std::size_t>& changed) {
        std::vector<double> values;
        for (std::size_t t = 0; t < m_tops.size(); ++t) {
            const auto touches = [&](std::size_t event) {
                return std::binary_search(changed.begin(), changed.end(), event);
            };
            const auto& events = m_eventsOfTop[t];
            if (!changed.empty() && std::none_of(events.begin(), events.end(), touches)) {
                values.push_back(m_result.point[t]);
                continue;
            }
            const auto q = m_whatIf.probabilities(m_tops[t].variables, m_relevant[t]);
            values.push_back(q ? m_tops[t].solution.probability(*q).occurs
                               : std::numeric_limits<double>::quiet_NaN());
        }
        return values;
    }

    void swing(std::size_t number) {
        const Knob& knob = m_result.knobs[number];
        const project::Quantity* const quantity = find(m_project, knob);
        if (!quantity) return; // a parameter that does not exist: validate() reports it
        Swing swing;
        swing.knob = number;
        swing.pointValue = quantity->value;
        swing.hasDistribution = quantity->uncertainty.index() != 0;
        if (swing.hasDistribution) {
            swing.lowValue = quantile(quantity->uncertainty, m_wish.low);
            swing.highValue = quantile(quantity->uncertainty, m_wish.high);
        } else if (m_wish.factor > 1) {
            swing.lowValue = quantity->value / m_wish.factor;
            swing.highValue = quantity->value * m_wish.factor;
        } else {
            m_result.leftAlone.push_back(number);
            return;
        }
        const double ceiling = ceilingOf(knob, *quantity);
        for (double* value : {&swing.lowValue, &swing.highValue})
            if (*value > ceiling) {
                *value = ceiling;
                swing.cut = true;
            }
        m_whatIf.turn(knob, swing.lowValue);
        swing.low = ofTops(knob.events);
        m_whatIf.turn(knob, swing.highValue);
        swing.high = ofTops(knob.events);
        m_whatIf.reset(knob);
        m_result.swings.push_back(std::move(swing));
    }

    const project::Project& m_project;
    const std::vector<SolvedTop>& m_tops;
    const SwingWish& m_wish;
    WhatIf m_whatIf;
    std::vector<std::vector<std::uint32_t>> m_relevant;
    std::vector<std::vector<std::size_t>> m_eventsOfTop;
    std::vector<std::size_t> m_events;
    Swings m_result;
};

} // namespace

project::Outcome<Swings> swings(const project::Project& project, const project::Index& index,
                                const std::vector<SolvedTop>& tops, std::optional<double> mission,
                                const SwingWish& wish) {
    return Swinger(project, index, tops, mission, wish).run();
}

} // namespace cutwater::reliability
