// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/quantity.h"

namespace cutwater::project {

const std::vector<UnitFacts>& allUnits() {
    // In the order of Unit, so that facts() is a look-up.
    static const std::vector<UnitFacts> units = {
        {Unit::unstated, "", "no unit stated", Dimension::number, 1},
        {Unit::number, "1", "a plain number", Dimension::number, 1},
        {Unit::perHour, "/h", "per hour", Dimension::rate, 1},
        {Unit::perMillionHours, "/1e6h", "per million hours", Dimension::rate, 1e-6},
        {Unit::perBillionHours, "/1e9h", "per billion hours", Dimension::rate, 1e-9},
        {Unit::perYear, "/y", "per year of 8760 hours", Dimension::rate, 1.0 / 8760},
        {Unit::perStart, "/start", "per start", Dimension::perStart, 1},
        {Unit::perDemand, "/demand", "per demand", Dimension::perDemand, 1},
        {Unit::seconds, "s", "seconds", Dimension::time, 1.0 / 3600},
        {Unit::minutes, "min", "minutes", Dimension::time, 1.0 / 60},
        {Unit::hours, "h", "hours", Dimension::time, 1},
        {Unit::days, "d", "days", Dimension::time, 24},
        {Unit::weeks, "wk", "weeks", Dimension::time, 168},
        {Unit::years, "y", "years of 8760 hours", Dimension::time, 8760},
        {Unit::amperes, "A", "amperes", Dimension::current, 1},
        {Unit::kilowatts, "kW", "kilowatts", Dimension::power, 1},
        {Unit::kilogramsPerHour, "kg/h", "kilograms per hour", Dimension::flow, 1},
    };
    return units;
}

const UnitFacts& facts(Unit unit) {
    return allUnits()[static_cast<std::size_t>(unit)];
}

std::optional<Unit> unitFromSymbol(std::string_view symbol) {
    for (const UnitFacts& unit : allUnits())
        if (unit.symbol == symbol) return unit.unit;
    return std::nullopt;
}

const std::vector<std::string_view>& allSourceTags() {
    static const std::vector<std::string_view> tags = {
        "seen", "from memory", "common practice, no source", "derived", "invented", "from the log"};
    return tags;
}

double inBaseUnits(const Quantity& quantity) {
    // Dividing by a whole number rounds once; multiplying by its rounded inverse rounds twice.
    switch (quantity.unit) {
    case Unit::perMillionHours: return quantity.value / 1e6;
    case Unit::perBillionHours: return quantity.value / 1e9;
    case Unit::perYear: return quantity.value / 8760;
    case Unit::seconds: return quantity.value / 3600;
    case Unit::minutes: return quantity.value / 60;
    default: return quantity.value * facts(quantity.unit).factor;
    }
}

} // namespace cutwater::project
