// SPDX-License-Identifier: GPL-3.0-or-later
// The rules for the project's own facts, the shared parameters and the plant.
#include "models/project/cycles.h"
#include "models/project/judge.h"

#include <fmt/format.h>

namespace cutwater::project {

namespace {

Graph parentGraph(const Judge& judge) {
    Graph graph;
    for (const Component& component : judge.project.components) {
        if (const Component* parent = judge.index.component(component.parent))
            graph.arrow(static_cast<std::uint32_t>(parent - judge.project.components.data()));
        graph.finishNode();
    }
    return graph;
}

Graph supplyGraph(const Judge& judge) {
    Graph graph;
    for (const Component& component : judge.project.components) {
        for (const Reference& source : component.suppliedBy)
            if (const Component* supplier = judge.index.component(source.id))
                graph.arrow(static_cast<std::uint32_t>(supplier - judge.project.components.data()));
        graph.finishNode();
    }
    return graph;
}

void judgeCircles(Judge& judge) {
    const auto& components = judge.project.components;
    const auto name = [&](std::uint32_t node) { return components[node].id; };
    const auto placeOf = [&](const std::vector<std::uint32_t>& cycle) {
        const Component& first = components[cycle.front()];
        return Place{"component", first.id, first.line.number};
    };
    for (const auto& cycle : findCycles(parentGraph(judge)))
        judge.error(placeOf(cycle),
                    fmt::format("components are parts of each other in a circle: {}",
                                cycleInWords(cycle, name)),
                    "take the parent away from one of them");
    for (const auto& cycle : findCycles(supplyGraph(judge)))
        judge.warn(
            placeOf(cycle),
            fmt::format("components supply each other in a circle: {}", cycleInWords(cycle, name)),
            "check that it is so on the plant, as where a controller switches its own feed");
}

void judgeComponents(Judge& judge) {
    std::unordered_map<std::string_view, const Component*> tags;
    for (const Component& component : judge.project.components) {
        const Place place{"component", component.id, component.line.number};
        const Component* first = judge.index.component(component.id);
        judge.id(place, component.id, first == &component, first->line.number);
        if (!component.parent.empty())
            judge.reference(Target::component, component.parent, place.with("parent", 0));
        judge.references(Target::component, component.suppliedBy, place, "supplier");
        if (component.tag.empty()) continue;
        const auto [other, isFirst] = tags.try_emplace(component.tag, &component);
        if (!isFirst)
            judge.warn(place,
                       fmt::format("components {} and {} have the same tag {}", other->second->id,
                                   component.id, component.tag),
                       "give each its own tag");
    }
    judgeCircles(judge);
}

void judgeModes(Judge& judge) {
    for (const FailureMode& mode : judge.project.modes) {
        const Place place{"failure mode", mode.id, mode.line.number};
        const FailureMode* first = judge.index.mode(mode.id);
        judge.id(place, mode.id, first == &mode, first->line.number);
        judge.reference(Target::component, mode.component, place.with("component", 0));
        judge.rating(mode.severityRating, place.with("severity rating", 0));
        judge.rating(mode.occurrenceRating, place.with("occurrence rating", 0));
        judge.rating(mode.detectionRating, place.with("detection rating", 0));
        judge.model(mode.model, place);
        if (mode.dormant && mode.model.kind == ModelKind::repairable)
            judge.warn(place,
                       fmt::format("{} is dormant, but its failure model takes it to be seen at "
                                   "once",
                                   place.words()),
                       "use the failure model tested, or take the mark away");
        for (const Check& check : mode.checks)
            judge.number(check.minutes, place.with("minutes for a check", check.line.number),
                         Range::notNegative);
    }
}

void judgeConnections(Judge& judge) {
    Judge::Seen seen;
    for (const Connection& connection : judge.project.connections) {
        const Place place{"connection", connection.id, connection.line.number};
        judge.id(place, connection.id, seen);
        const bool from =
            judge.reference(Target::component, connection.from, place.with("start", 0));
        const bool to = judge.reference(Target::component, connection.to, place.with("end", 0));
        if (from && to && connection.from == connection.to)
            judge.error(place,
                        fmt::format("{} leads from {} to itself", place.words(), connection.from),
                        "name another component at one end");
        judge.references(Target::component, connection.through, place, "way");
        if (connection.capacity)
            judge.quantity(
                *connection.capacity, place.with("capacity", connection.capacity->line.number),
                {Dimension::current, Dimension::power, Dimension::flow}, Range::notNegative);
    }
}

} // namespace

void judgeProject(Judge& judge) {
    judge.date(judge.project.date, {"project", {}, 0, "date"});
    for (const Parameter& parameter : judge.project.parameters) {
        const Place place{"parameter", parameter.id, parameter.line.number};
        const Parameter* first = judge.index.parameter(parameter.id);
        judge.id(place, parameter.id, first == &parameter, first->line.number);
        if (!parameter.quantity.parameter.empty())
            judge.error(
                place, fmt::format("{} names a parameter itself instead of a value", place.words()),
                "enter a value");
        else
            judge.quantity(parameter.quantity, place, {}, Range::any);
    }
}

void judgePlant(Judge& judge) {
    judgeComponents(judge);
    judgeModes(judge);
    judgeConnections(judge);
}

} // namespace cutwater::project
