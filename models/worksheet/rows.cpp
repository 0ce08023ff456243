// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/rows.h"

#include "models/project/dates.h"
#include "models/worksheet/reach.h"

#include <algorithm>
#include <charconv>
#include <chrono>
#include <cmath>
#include <fmt/format.h>
#include <limits>
#include <map>
#include <string_view>
#include <utility>

namespace cutwater::worksheet {

namespace {

using project::ActionState;
using project::FailureMode;

constexpr std::size_t kDeepest = 100; // of a plant breakdown; deeper ones are cut at the top

std::optional<int> rpnAfter(const FailureMode& mode) {
    if (!mode.severityAfter && !mode.occurrenceAfter && !mode.detectionAfter) return {};
    const auto after = [](const std::optional<int>& now, const std::optional<int>& then) {
        return then ? then : now;
    };
    return riskPriorityNumber(after(mode.severityRating, mode.severityAfter),
                              after(mode.occurrenceRating, mode.occurrenceAfter),
                              after(mode.detectionRating, mode.detectionAfter));
}

bool isOpen(const project::Action& action) {
    return action.state != ActionState::proved && action.state != ActionState::dropped;
}

std::string nextTest(const FailureMode& mode, const project::Index& index) {
    const project::Quantity* every = mode.model.find(project::Role::interval);
    if (every) every = index.resolved(*every);
    return every ? dayAfter(mode.model.lastTest, project::inBaseUnits(*every)) : std::string();
}

// By component and severity, as itemCriticalities() sums them.
void addItems(Sheet& sheet, const project::Project& project, const project::Index& index,
              const std::vector<Criticality>& modes) {
    std::map<std::pair<std::size_t, std::string_view>, double> sums;
    const auto items = itemCriticalities(project, index, modes);
    for (const ItemCriticality& item : items)
        if (item.without < item.modes) sums[{item.component, item.severity}] = item.number;
    for (Row& row : sheet.rows) {
        if (!row.component) continue;
        const auto at = static_cast<std::size_t>(row.component - project.components.data());
        if (const auto found = sums.find({at, row.facts->severity}); found != sums.end())
            row.itemCriticality = found->second;
    }
}

template <typename T>
double orLowest(const std::optional<T>& value) {
    return value ? static_cast<double>(*value) : -std::numeric_limits<double>::infinity();
}

} // namespace

std::string placeOf(const project::Index& index, const project::Component& component) {
    std::vector<std::string> names;
    const project::Component* part = &component;
    for (; part && names.size() < kDeepest; part = index.component(part->parent))
        names.push_back(!part->name.empty()  ? part->name
                        : !part->tag.empty() ? part->tag
                                             : part->id);
    if (part) names.emplace_back("...");
    std::reverse(names.begin(), names.end());
    return fmt::format("{}", fmt::join(names, " > "));
}

Sheet sheetOf(const project::Project& project, const project::Index& index) {
    Sheet sheet;
    sheet.scales = scalesOf(project);
    sheet.matrix = matrixOf(project);
    sheet.time = operatingTimeOf(project, index);
    const FrequencyBook book(project, index);
    const auto criticalities = criticalitiesOf(project, index, book);
    auto tops = topsOfModes(project, index);
    sheet.rows.reserve(project.modes.size());
    for (std::size_t i = 0; i < project.modes.size(); ++i) {
        const FailureMode& mode = project.modes[i];
        Row& row = sheet.rows.emplace_back();
        row.mode = i;
        row.facts = &mode;
        row.component = index.component(mode.component);
        if (row.component) row.place = placeOf(index, *row.component);
        row.rpn =
            riskPriorityNumber(mode.severityRating, mode.occurrenceRating, mode.detectionRating);
        row.rpnAfter = rpnAfter(mode);
        row.frequency = book.of(mode);
        row.criticality = criticalities[i];
        row.severityIndex = severityIndex(sheet.matrix, mode.severity);
        if (row.frequency.perYear) {
            row.computedOccurrence =
                occurrenceRating(sheet.scales.occurrence, *row.frequency.perYear);
            row.frequencyIndex = indexOf(sheet.matrix.frequencies, *row.frequency.perYear);
        }
        if (row.severityIndex && row.frequencyIndex)
            row.riskIndex = *row.severityIndex + row.frequencyIndex->index;
        row.tops = std::move(tops[i]);
        row.nextTest = nextTest(mode, index);
        row.dormant = mode.dormant || mode.model.kind == project::ModelKind::tested;
        row.openActions = static_cast<std::size_t>(
            std::count_if(mode.actions.begin(), mode.actions.end(), isOpen));
    }
    addItems(sheet, project, index, criticalities);
    return sheet;
}

void sortRows(Sheet& sheet, Order order) {
    const auto by = [&](auto key) {
        std::stable_sort(sheet.rows.begin(), sheet.rows.end(),
                         [&](const Row& a, const Row& b) { return key(a) > key(b); });
    };
    switch (order) {
    case Order::file: by([](const Row& row) { return -static_cast<double>(row.mode); }); return;
    case Order::severity:
        by([](const Row& row) { return orLowest(row.criticality.number); });
        by([](const Row& row) { return orLowest(row.facts->severityRating); });
        by([](const Row& row) { return orLowest(row.severityIndex); });
        return;
    case Order::rpn:
        by([](const Row& row) { return orLowest(row.facts->severityRating); });
        by([](const Row& row) { return orLowest(row.rpn); });
        return;
    case Order::criticality:
        by([](const Row& row) { return orLowest(row.criticality.number); });
        return;
    case Order::risk:
        by([](const Row& row) { return orLowest(row.severityIndex); });
        by([](const Row& row) { return orLowest(row.riskIndex); });
        return;
    }
}

std::vector<std::string> gapsOf(const Row& row) {
    const FailureMode& mode = *row.facts;
    std::vector<std::string> gaps;
    const auto gap = [&](bool missing, const char* words) {
        if (missing) gaps.emplace_back(words);
    };
    gap(mode.causes.empty(), "no cause");
    gap(mode.localEffect.empty(), "no local effect");
    gap(mode.endEffect.empty(), "no end effect");
    gap(mode.detection.empty(), "nothing says how it is noticed");
    gap(mode.severity.empty() && !mode.severityRating, "no severity");
    const bool compensated = !mode.compensation.empty() && mode.compensation != "none";
    gap(compensated && mode.provedBy.empty(), "no test proves the compensating provision");
    gap(compensated && !mode.provedBy.empty() && mode.provedOn.empty(),
        "the test of the compensating provision has no date");
    if (row.dormant) {
        gap(!mode.model.find(project::Role::interval), "dormant without a test interval");
        gap(mode.model.lastTest.empty(), "dormant without the date of the last test");
    }
    gap(!row.frequency.perYear, "no frequency");
    return gaps;
}

std::string dayAfter(const std::string& last, double hours) {
    using namespace std::chrono;
    if (!project::isIsoDate(last) || !(hours >= 0) || hours > 8e7) return {};
    const auto number = [&](std::size_t at, std::size_t length) {
        int value = 0;
        std::from_chars(last.data() + at, last.data() + at + length, value);
        return value;
    };
    const sys_days from = year_month_day{year{number(0, 4)}, month(unsigned(number(5, 2))),
                                         day(unsigned(number(8, 2)))};
    const year_month_day to{from + days{static_cast<int>(std::floor(hours / 24))}};
    if (int(to.year()) > 9999) return {};
    return fmt::format("{:04}-{:02}-{:02}", int(to.year()), unsigned(to.month()),
                       unsigned(to.day()));
}

bool isOverdue(const project::Action& action, std::string_view today) {
    const bool waits = action.state == ActionState::open || action.state == ActionState::underWay;
    return waits && !action.due.empty() && !today.empty() && std::string_view(action.due) < today;
}

} // namespace cutwater::worksheet
