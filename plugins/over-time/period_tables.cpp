// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/over-time/period_tables.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::over_time {
namespace {

using reliability::CurvePoint;
using reliability::EventProfile;
using reliability::EventShare;
using reliability::PeriodFigures;
using reliability::Side;
using sdk::Cell;
using sdk::ColumnType;

// What the event is in the middle of, in words.
std::string stateText(const EventProfile& profile, double time, Side side) {
    switch (profile.kind) {
    case EventProfile::Kind::constant: return "always the same";
    case EventProfile::Kind::initiating: return "comes and is over";
    case EventProfile::Kind::repairable: return "repaired at once";
    case EventProfile::Kind::tested: {
        const double since = profile.sinceTest(time, side);
        return since < 0 ? std::string("out of service for its test")
                         : fmt::format("{:.6g} h since its test", since);
    }
    case EventProfile::Kind::failing:
    case EventProfile::Kind::weibull:
        return fmt::format("{:.6g} h of its mission", profile.sinceTest(time, side));
    }
    return {};
}

std::string happensText(const PeriodFigures& figures) {
    if (figures.unreliabilityExact) return "exact";
    return "estimate between the bounds";
}

} // namespace

std::string momentText(double time, Side side, double end) {
    if (time <= 0) return "at the start";
    if (time >= end) return fmt::format("at the end, {:.6g} h", end);
    return fmt::format("{} {:.6g} h", side == Side::before ? "just before" : "at", time);
}

sdk::Table figuresTable() {
    return {"figures",
            "Top events over the period",
            {{"top", "Top", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"mean-unavailability", "Mean unavailability", ColumnType::probability, ""},
             {"worst-unavailability", "Worst", ColumnType::probability, ""},
             {"worst-time", "Worst moment", ColumnType::text, ""},
             {"expected-number", "Expected number", ColumnType::number, ""},
             {"frequency", "Mean frequency", ColumnType::number, "/h"},
             {"frequency-per-year", "The same", ColumnType::number, "/y"},
             {"happens-low", "At least once: at least", ColumnType::probability, ""},
             {"happens", "At least once", ColumnType::probability, ""},
             {"happens-high", "At least once: at most", ColumnType::probability, ""},
             {"happens-kind", "What it is", ColumnType::text, ""}},
            {},
            "\"At least once\": it was there at the start or came within the period."};
}

void addFigures(sdk::Table& table, const Walked& walked) {
    const PeriodFigures& f = walked.figures;
    const double happens = f.unreliabilityExact.value_or(f.unreliabilityEstimate);
    const bool exact = f.unreliabilityExact.has_value();
    table.rows.push_back({walked.solved.target.id, walked.solved.target.name, f.meanUnavailability,
                          f.worst.unavailability, momentText(f.worst.time, f.worst.side, f.end),
                          f.expectedNumber, f.meanFrequency, f.meanFrequency * 8760,
                          exact ? happens : f.unreliabilityLow, happens,
                          exact ? happens : f.unreliabilityHigh, happensText(f)});
}

sdk::Table worstTable() {
    return {"worst-moment",
            "What carries the top at its worst moment",
            {{"top", "Top", ColumnType::reference, ""},
             {"event", "Event", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"unavailability", "Its unavailability then", ColumnType::probability, ""},
             {"state", "State then", ColumnType::text, ""},
             {"share", "Criticality", ColumnType::number, "%"}},
            {},
            "Criticality: how much of the top's unavailability at that moment would go if the "
            "event could not be there. The shares may add up to more than 100 %."};
}

void addWorst(sdk::Result& result, sdk::Table& table, const project::Project& project,
              const project::Index& index, const Walked& walked, std::size_t most) {
    const CurvePoint& worst = walked.figures.worst;
    if (worst.unavailability <= 0) return;
    std::vector<EventShare> shares = walked.course.shares(worst.time, worst.side);
    const auto weight = [](const EventShare& s) { return s.birnbaum * s.moment.unavailability; };
    std::stable_sort(shares.begin(), shares.end(), [&](const EventShare& a, const EventShare& b) {
        return weight(a) > weight(b);
    });
    if (shares.size() > most) shares.resize(most);
    for (const EventShare& share : shares) {
        if (weight(share) <= 0) continue;
        table.rows.push_back(
            {walked.solved.target.id, sdk::tree::idOf(project, walked.solved, share.variable),
             sdk::tree::nameOf(project, index, walked.solved, share.variable),
             share.moment.unavailability,
             stateText(walked.course.profile(share.variable), worst.time, worst.side),
             100 * weight(share) / worst.unavailability});
        result.marks.push_back({table.id, table.rows.size() - 1,
                                sdk::tree::nodesOf(project, walked.solved, share.variable)});
    }
}

sdk::Table completedTable() {
    return {"completed-by",
            "Which event completes the failures of the top",
            {{"top", "Top", ColumnType::reference, ""},
             {"event", "Event", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"expected-number", "Times in the period", ColumnType::number, ""},
             {"share", "Share", ColumnType::number, "%"},
             {"mean-unavailability", "Its mean unavailability", ColumnType::probability, ""}},
            {},
            "Share of the top's failures that happen at the moment this event comes, the rest of "
            "the set being there already (Barlow and Proschan 1975). The shares add up to 100 %."};
}

void addCompleted(sdk::Result& result, sdk::Table& table, const project::Project& project,
                  const project::Index& index, const Walked& walked, std::size_t most) {
    const PeriodFigures& figures = walked.figures;
    if (figures.expectedNumber <= 0) return;
    std::vector<std::size_t> order(figures.completedBy.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return figures.completedBy[a] > figures.completedBy[b];
    });
    if (order.size() > most) order.resize(most);
    for (const std::size_t i : order) {
        if (figures.completedBy[i] <= 0) continue;
        const std::uint32_t variable = walked.course.relevant()[i];
        table.rows.push_back(
            {walked.solved.target.id, sdk::tree::idOf(project, walked.solved, variable),
             sdk::tree::nameOf(project, index, walked.solved, variable), figures.completedBy[i],
             100 * figures.completedBy[i] / figures.expectedNumber, figures.meanOfEvent[i]});
        result.marks.push_back({table.id, table.rows.size() - 1,
                                sdk::tree::nodesOf(project, walked.solved, variable)});
    }
}

void addCurves(std::vector<sdk::Series>& series, const Walked& walked) {
    const std::string& id = walked.solved.target.id;
    const std::string& name = walked.solved.target.name;
    sdk::Series unavailability, frequency, expected;
    unavailability.id = "unavailability-" + id;
    unavailability.title = fmt::format("{} {}: unavailability", id, name);
    unavailability.yTitle = "Unavailability";
    frequency.id = "frequency-" + id;
    frequency.title = fmt::format("{} {}: frequency", id, name);
    frequency.yTitle = "Frequency";
    frequency.yUnit = "/h";
    expected.id = "expected-number-" + id;
    expected.title = fmt::format("{} {}: expected number since the start", id, name);
    expected.yTitle = "Expected number";
    for (sdk::Series* one : {&unavailability, &frequency, &expected}) {
        one->xTitle = "Time";
        one->xUnit = "h";
    }
    for (const CurvePoint& point : walked.figures.curve) {
        unavailability.x.push_back(point.time);
        unavailability.y.push_back(point.unavailability);
        frequency.x.push_back(point.time);
        frequency.y.push_back(point.frequency);
    }
    for (const auto& [time, number] : walked.figures.expectedByTime) {
        expected.x.push_back(time);
        expected.y.push_back(number);
    }
    series.push_back(std::move(unavailability));
    series.push_back(std::move(frequency));
    series.push_back(std::move(expected));
}

} // namespace cutwater::over_time
