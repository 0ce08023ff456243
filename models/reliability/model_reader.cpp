// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/model_reader.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <limits>
#include <utility>

namespace cutwater::reliability {

using project::Dimension;
using project::Problem;
using project::Quantity;
using project::Role;
using project::Severity;

ModelReader::ModelReader(const project::Index& index, const project::Event& event,
                         const project::FailureModel& model)
    : m_index(index), m_event(event), m_model(model) {}

double ModelReader::probability() {
    return number(Role::probability, 0, 1);
}

double ModelReader::coverage() {
    return has(Role::coverage) ? number(Role::coverage, 0, 1) : 1.0;
}

double ModelReader::shape() {
    const double value = number(Role::shape, 0, std::numeric_limits<double>::infinity());
    if (problems.empty() && value == 0) complain(Role::shape, "is zero", "give a shape above zero");
    return value;
}

double ModelReader::rate() {
    const Quantity* quantity = resolve(Role::rate);
    if (!quantity) return 0;
    const Dimension dimension = project::facts(quantity->unit).dimension;
    const double value = project::inBaseUnits(*quantity);
    if (!(value >= 0) || std::isinf(value) || (dimension == Dimension::time && value == 0)) {
        complain(Role::rate, fmt::format("is {}", value),
                 dimension == Dimension::time ? "give a time above zero"
                                              : "give a rate of zero or more");
        return 0;
    }
    return dimension == Dimension::time ? 1 / value : value;
}

double ModelReader::frequency() {
    const Quantity* quantity = resolve(Role::frequency);
    if (!quantity) return 0;
    const double value = project::inBaseUnits(*quantity);
    if (project::facts(quantity->unit).dimension != Dimension::rate) {
        complain(Role::frequency, "is given per start, but here hours are counted",
                 "give it per hour or per year");
        return 0;
    }
    if (!(value >= 0) || std::isinf(value)) {
        complain(Role::frequency, fmt::format("is {}", value), "give a frequency of zero or more");
        return 0;
    }
    return value;
}

bool ModelReader::isPerStart(Role role) const {
    const Quantity* const own = m_model.find(role);
    const Quantity* const quantity = own ? m_index.resolved(*own) : nullptr;
    return quantity && project::facts(quantity->unit).dimension == Dimension::perStart;
}

double ModelReader::frequencyPerStart(std::optional<double> startsPerHour) {
    const double perStart = number(Role::frequency, 0, std::numeric_limits<double>::infinity());
    if (!startsPerHour)
        complain(Role::frequency, "is given per start, but here hours are counted",
                 "give it per hour or per year, or ask by the calendar (--clock calendar) and give "
                 "the component an exposure with starts and calendar hours");
    return perStart * startsPerHour.value_or(0);
}

double ModelReader::time(Role role, bool positive) {
    const Quantity* quantity = resolve(role);
    if (!quantity) return 0;
    const double value = project::inBaseUnits(*quantity);
    if (!(value >= 0) || std::isinf(value) || (positive && value == 0)) {
        complain(role, fmt::format("is {} h", value),
                 positive ? "give a time above zero" : "give a time of zero or more");
        return 0;
    }
    return value;
}

void ModelReader::complain(Role role, const std::string& what, const std::string& remedy) {
    const Quantity* quantity = m_model.find(role);
    problem(fmt::format("the {} {}", project::facts(role).word, what), remedy,
            quantity && quantity->line.number ? quantity->line.number : m_model.line.number);
}

void ModelReader::problem(std::string what, std::string remedy, int line) {
    problems.push_back(Problem{Severity::error, fmt::format("event {}: {}", m_event.id, what),
                               std::move(remedy), fmt::format("event {}", m_event.id),
                               line                  ? line
                               : m_model.line.number ? m_model.line.number
                                                     : m_event.line.number});
}

double ModelReader::number(Role role, double low, double high) {
    const Quantity* quantity = resolve(role);
    if (!quantity) return 0;
    const double value = project::inBaseUnits(*quantity);
    if (!(value >= low && value <= high) || std::isinf(value)) {
        complain(role, fmt::format("is {}", value),
                 std::isinf(high) ? fmt::format("give a number of {} or more", low)
                                  : fmt::format("give a number from {} to {}", low, high));
        return 0;
    }
    return value;
}

const Quantity* ModelReader::resolve(Role role) {
    const Quantity* own = m_model.find(role);
    if (!own) {
        complain(role, "is missing", "give it");
        return nullptr;
    }
    const Quantity* quantity = m_index.resolved(*own);
    if (!quantity) {
        complain(role, fmt::format("names the parameter {}, which does not exist", own->parameter),
                 "name a parameter of the project or give a value");
        return nullptr;
    }
    const auto& unit = project::facts(quantity->unit);
    const auto& allowed = project::facts(role).dimensions;
    if (std::find(allowed.begin(), allowed.end(), unit.dimension) != allowed.end()) return quantity;
    complain(role,
             quantity->unit == project::Unit::unstated
                 ? std::string("has no unit")
                 : fmt::format("is given {}, which does not fit", unit.words),
             role == Role::rate ? "give it per hour or per year, or as a mean time to failure"
             : allowed.front() == Dimension::time ? "give it in hours, days or years"
                                                  : "give a plain number");
    return nullptr;
}

} // namespace cutwater::reliability
