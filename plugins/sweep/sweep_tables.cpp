// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sweep/sweep_tables.h"

#include <fmt/format.h>

namespace cutwater::sweep_plugin {
namespace {

using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;

ColumnType typeOf(Measure measure) {
    return measure == Measure::frequency ? ColumnType::number : ColumnType::probability;
}

std::string withUnit(double value, const std::string& unit) {
    return unit.empty() ? fmt::format("{:.4g}", value) : fmt::format("{:.4g} {}", value, unit);
}

} // namespace

sdk::Table bestTable(const Varied& varied, Measure measure) {
    const std::string unit = unitOf(measure);
    return {"best",
            fmt::format("The best value of {}; figure: {}", varied.words(), titleOf(measure)),
            {{"top", "Top", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"now", "Now", ColumnType::number, varied.unit},
             {"figure-now", "Figure now", typeOf(measure), unit},
             {"best", "Lowest at", ColumnType::number, varied.unit},
             {"figure-best", "Figure there", typeOf(measure), unit},
             {"within", "Within limit", ColumnType::number, varied.unit},
             {"figure-within", "Figure at that", typeOf(measure), unit}}};
}

sdk::Table pointTable(const Varied& varied, Measure measure) {
    return {"points",
            fmt::format("{} against {}", titleOf(measure), varied.words()),
            {{"top", "Top", ColumnType::reference, ""},
             {"value", "Value", ColumnType::number, varied.unit},
             {"figure", titleOf(measure), typeOf(measure), unitOf(measure)}}};
}

void addSwept(sdk::Result& result, const Swept& swept) {
    const reliability::SweepFigures& figures = swept.figures;
    const std::string& id = swept.target.id;
    const std::string& unit = swept.varied.unit;
    result.tables[0].rows.push_back({id, swept.target.name, swept.varied.point, swept.now,
                                     figures.lowest.x, figures.lowest.y,
                                     figures.within ? Cell(figures.within->x) : Cell(),
                                     figures.within ? Cell(figures.within->y) : Cell()});
    sdk::Series curve;
    curve.id = "sweep-" + id;
    curve.title = fmt::format("{} {}", id, swept.target.name);
    curve.xTitle = swept.varied.words();
    curve.xUnit = unit;
    curve.yTitle = titleOf(swept.measure);
    curve.yUnit = unitOf(swept.measure);
    curve.logY = true;
    for (const reliability::SweepPoint& point : figures.points) {
        result.tables[1].rows.push_back({id, point.x, point.y});
        curve.x.push_back(point.x);
        curve.y.push_back(point.y);
    }
    result.series.push_back(std::move(curve));
    if (figures.lowestAtEnd)
        result.notes.push_back(
            {NoteKind::warning,
             fmt::format(
                 "{}: the lowest figure is at the end of the range, {}: beyond it there may "
                 "be a lower one.",
                 id, withUnit(figures.lowest.x, unit))});
    if (!swept.limit) return;
    if (!figures.within)
        result.notes.push_back(
            {NoteKind::warning, fmt::format("{}: no value between {} and {} keeps the figure at or "
                                            "below {:.4g}.",
                                            id, withUnit(swept.varied.from, unit),
                                            withUnit(swept.varied.to, unit), *swept.limit)});
    else
        result.notes.push_back(
            {NoteKind::method,
             fmt::format("{}: the {} value that keeps the figure at or below {:.4g} is {}{}.", id,
                         swept.largest ? "largest" : "smallest", *swept.limit,
                         withUnit(figures.within->x, unit),
                         figures.withinAtEnd ? ", the end of the range" : "")});
}

} // namespace cutwater::sweep_plugin
