// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/uncertainty_inputs.h"

#include "models/reliability/event_model.h"

#include <algorithm>
#include <fmt/format.h>
#include <limits>

namespace cutwater::reliability {

namespace {

using project::ModelKind;
using project::Role;

constexpr double kInfinity = std::numeric_limits<double>::infinity();

} // namespace

UncertainInputs::UncertainInputs(const project::Project& project, const project::Index& index,
                                 std::optional<double> mission)
    : m_project(project), m_index(index), m_mission(mission) {
    std::uint32_t number = 0;
    const auto take = [&](const project::Quantity& quantity) { m_numbers[&quantity] = number++; };
    for (const auto& parameter : project.parameters)
        take(parameter.quantity);
    for (const auto& mode : project.modes)
        for (const auto& assignment : mode.model.numbers)
            take(assignment.quantity);
    for (const auto& event : project.events)
        for (const auto& assignment : event.model.numbers)
            take(assignment.quantity);
    for (const auto& group : project.commonCauses)
        for (const auto& factor : group.factors)
            take(factor);
}

UncertainInputs::Operand UncertainInputs::operand(const project::Quantity& quantity,
                                                  const std::string& name, bool atMostOne,
                                                  std::optional<std::size_t> event) {
    Operand result;
    result.given = true;
    const project::Quantity* const resolved = m_index.resolved(quantity);
    if (!resolved) return result; // validate() reports it
    result.constant = project::inBaseUnits(*resolved);
    if (resolved->uncertainty.index() == 0) return result;
    const auto [found, isNew] = m_inputOf.try_emplace(resolved, m_inputs.size());
    if (isNew)
        m_inputs.push_back(
            {m_numbers.at(resolved),
             quantity.parameter.empty() ? name : fmt::format("parameter {}", quantity.parameter),
             resolved,
             project::facts(resolved->unit).factor,
             false,
             {},
             Sampler(resolved->uncertainty)});
    UncertainInput& input = m_inputs[found->second];
    input.atMostOne = input.atMostOne || atMostOne;
    if (event && (input.events.empty() || input.events.back() != *event))
        input.events.push_back(*event);
    result.input = found->second;
    return result;
}

UncertainInputs::Model UncertainInputs::modelOf(const project::Event& event, std::size_t position,
                                                double fixed) {
    Model model;
    const project::FailureModel* const failure = m_index.modelOf(event);
    if (!failure || event.kind == project::EventKind::house) {
        model.fixed = fixed;
        return model;
    }
    model.kind = failure->kind;
    const auto read = [&](Role role, Operand& into, bool atMostOne = false) {
        if (const project::Quantity* const quantity = failure->find(role))
            into = operand(*quantity,
                           fmt::format("{} of {}", project::facts(role).word,
                                       event.mode.empty() ? event.id : event.mode),
                           atMostOne, position);
    };
    const std::size_t before = m_inputs.size();
    std::vector<const Operand*> all{
        &model.probability,  &model.rate,     &model.mission, &model.repair, &model.interval,
        &model.testDuration, &model.coverage, &model.shape,   &model.scale,  &model.location};
    read(Role::probability, model.probability, true);
    read(Role::rate, model.rate);
    read(Role::mission, model.mission);
    read(Role::repair, model.repair);
    read(Role::interval, model.interval);
    read(Role::testDuration, model.testDuration);
    read(Role::coverage, model.coverage, true);
    read(Role::shape, model.shape);
    read(Role::scale, model.scale);
    read(Role::location, model.location);
    if (model.rate.given) {
        const auto* const rate = m_index.resolved(*failure->find(Role::rate));
        model.rate.turnOver =
            rate && project::facts(rate->unit).dimension == project::Dimension::time;
    }
    if (!model.mission.given && m_mission) {
        model.mission.given = true;
        model.mission.constant = *m_mission;
    }
    const bool uncertain = std::any_of(all.begin(), all.end(),
                                       [](const Operand* one) { return one->input.has_value(); });
    if (!uncertain && before == m_inputs.size()) model.fixed = fixed;
    return model;
}

project::Outcome<std::size_t> UncertainInputs::addEvent(std::size_t position) {
    const auto [found, isNew] = m_eventOf.try_emplace(position, m_events.size());
    if (!isNew) return found->second;
    const project::Event& event = m_project.events[position];
    const auto point = probabilityOf(m_project, m_index, event, m_mission);
    if (!point) {
        m_eventOf.erase(found);
        return point.problems();
    }
    m_events.push_back(modelOf(event, position, point->value));
    return m_events.size() - 1;
}

std::size_t UncertainInputs::addFactors(const project::CommonCauseGroup& group) {
    const std::size_t first = m_factors.size();
    for (std::size_t i = 0; i < group.factors.size(); ++i)
        m_factors.push_back(
            operand(group.factors[i], fmt::format("factor {} of {}", i + 1, group.id), true, {}));
    return first;
}

// The same formulas as probabilityOf(), in the same cases.
double UncertainInputs::evaluate(const Model& model, std::span<const double> draws,
                                 std::size_t sample) {
    if (model.fixed) return *model.fixed;
    const auto at = [&](const Operand& operand) { return operand.at(draws, sample); };
    switch (model.kind) {
    case ModelKind::probability:
    case ModelKind::perDemand: return at(model.probability);
    case ModelKind::mission: return missionUnreliability(at(model.rate), at(model.mission));
    case ModelKind::repairable:
        return repairableUnavailability(at(model.rate), at(model.repair),
                                        model.mission.given ? at(model.mission) : kInfinity);
    case ModelKind::weibull:
        return weibullUnreliability(at(model.shape), at(model.scale), at(model.location),
                                    at(model.mission));
    case ModelKind::tested: {
        if (!model.testDuration.given && !model.repair.given && !model.coverage.given)
            return testedMeanUnavailability(at(model.rate), at(model.interval));
        TestedPart part;
        part.rate = at(model.rate);
        part.interval = at(model.interval);
        part.testDuration = at(model.testDuration);
        part.repair = at(model.repair);
        part.coverage = model.coverage.given ? at(model.coverage) : 1.0;
        if (part.testDuration == 0 && part.repair == 0 && part.coverage == 1)
            return testedMeanUnavailability(part.rate, part.interval);
        if (part.coverage < 1) part.lifetime = at(model.mission);
        return testedCycleUnavailability(part);
    }
    case ModelKind::none:
    case ModelKind::frequency: break; // probabilityOf() has refused them
    }
    return 0;
}

void UncertainInputs::events(std::span<const double> draws, std::span<double> q) const {
    for (std::size_t event = 0; event < m_events.size(); ++event)
        for (std::size_t sample = 0; sample < kSideBySide; ++sample)
            q[event * kSideBySide + sample] =
                std::clamp(evaluate(m_events[event], draws, sample), 0.0, 1.0);
}

void UncertainInputs::factors(std::span<const double> draws, std::span<double> values) const {
    for (std::size_t factor = 0; factor < m_factors.size(); ++factor)
        for (std::size_t sample = 0; sample < kSideBySide; ++sample)
            values[factor * kSideBySide + sample] = m_factors[factor].at(draws, sample);
}

} // namespace cutwater::reliability
