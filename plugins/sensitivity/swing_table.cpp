// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sensitivity/swing_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace cutwater::sensitivity_plugin {
namespace {

using reliability::Knob;
using reliability::Swing;
using sdk::Cell;
using sdk::ColumnType;

constexpr std::size_t kMostBars = 15;

std::string nameOf(const project::Project& project, const Knob& knob) {
    for (const project::Parameter& parameter : project.parameters)
        if (parameter.id == knob.parameter) return parameter.name;
    if (knob.factor > 0) return "factor of the common-cause group " + knob.owner;
    return std::string(project::facts(knob.role).sentence);
}

double width(const Swing& swing, std::size_t top) {
    return std::abs(swing.high[top] - swing.low[top]);
}

} // namespace

sdk::Table swingTable() {
    return {"swings",
            "How far each number swings the top event, all others at their point values",
            {{"top", "Top", ColumnType::reference, ""},
             {"number", "Number", ColumnType::text, ""},
             {"name", "What it is", ColumnType::text, ""},
             {"low-value", "Low", ColumnType::number, ""},
             {"high-value", "High", ColumnType::number, ""},
             {"unit", "Unit", ColumnType::text, ""},
             {"top-at-low", "Top at low", ColumnType::probability, ""},
             {"top-at-high", "Top at high", ColumnType::probability, ""}}};
}

std::size_t addSwings(sdk::Result& result, const project::Project& project,
                      const sdk::tree::Target& target, std::size_t top,
                      const reliability::Swings& swings, std::size_t most) {
    std::vector<const Swing*> order;
    for (const Swing& swing : swings.swings)
        if (width(swing, top) > 0) order.push_back(&swing);
    std::stable_sort(order.begin(), order.end(), [top](const Swing* a, const Swing* b) {
        return width(*a, top) > width(*b, top);
    });
    const std::size_t left = order.size() > most ? order.size() - most : 0;
    order.resize(order.size() - left);

    sdk::Series low, high;
    low.id = "low-" + target.id;
    low.title = fmt::format("{}: each number at its low end (all at their point values: {:.3e})",
                            target.id, swings.point[top]);
    high.id = "high-" + target.id;
    high.title = fmt::format("{}: each number at its high end (all at their point values: {:.3e})",
                             target.id, swings.point[top]);
    for (sdk::Series* one : {&low, &high}) {
        one->kind = sdk::PlotKind::bar;
        one->xTitle = "Number";
        one->yTitle = "Probability of the top";
        one->logY = true;
    }
    sdk::Table& table = result.tables.back();
    for (const Swing* const swing : order) {
        const Knob& knob = swings.knobs[swing->knob];
        const project::Quantity* const quantity = reliability::find(project, knob);
        const auto unit = quantity ? project::facts(quantity->unit).symbol : std::string_view();
        table.rows.push_back({target.id, knob.id(), nameOf(project, knob), swing->lowValue,
                              swing->highValue, std::string(unit), swing->low[top],
                              swing->high[top]});
        sdk::Mark mark{table.id, table.rows.size() - 1, {}};
        for (const std::size_t event : knob.events)
            mark.nodes.push_back(project.events[event].id);
        result.marks.push_back(std::move(mark));
        if (low.x.size() == kMostBars) continue;
        for (auto [one, value] : {std::pair{&low, swing->low[top]}, {&high, swing->high[top]}}) {
            one->x.push_back(static_cast<double>(one->x.size()));
            one->y.push_back(value);
            one->labels.push_back(knob.id());
        }
    }
    if (!low.x.empty()) {
        result.series.push_back(std::move(low));
        result.series.push_back(std::move(high));
    }
    return left;
}

} // namespace cutwater::sensitivity_plugin
