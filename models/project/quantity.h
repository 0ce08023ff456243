// SPDX-License-Identifier: GPL-3.0-or-later
// A number as the user wrote it: its unit, how well it is known, and where it comes from.
#pragma once

#include "models/project/value.h"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace cutwater::project {

// What a unit measures. `number` is a probability, a fraction or a shape: no unit.
enum class Dimension { number, rate, time, perStart, perDemand, current, power, flow };

enum class Unit {
    unstated, // the user has not said: validation asks for one where the dimension is not `number`
    number,
    perHour,
    perMillionHours,
    perBillionHours,
    perYear,
    perStart,
    perDemand,
    seconds,
    minutes,
    hours,
    days,
    weeks,
    years,
    amperes,
    kilowatts,
    kilogramsPerHour,
};

struct UnitFacts {
    Unit unit;
    std::string_view symbol; // as it stands in the file and on screen: "/h", "/1e6h", "y" ...
    std::string_view words;  // "per hour"
    Dimension dimension;
    double factor; // to hours, per hour, or the unit itself; a year is 8760 h
};

const std::vector<UnitFacts>& allUnits();
const UnitFacts& facts(Unit unit);
std::optional<Unit> unitFromSymbol(std::string_view symbol);

// Where a number comes from. `tag` says how far to trust it; see `allSourceTags`.
struct SourceNote {
    std::string document; // "NUREG-0492", "from the log", "invented for the demo"
    std::string edition;  // "January 1981"
    std::string place;    // table, section, page or figure
    std::string tag; // "seen", "from memory", "common practice, no source", "derived", "invented",
                     // "from the log"
    std::string remark;
    Kept kept;
    bool empty() const {
        return document.empty() && edition.empty() && place.empty() && tag.empty() &&
               remark.empty() && kept.empty();
    }
    bool operator==(const SourceNote&) const = default;
};

const std::vector<std::string_view>& allSourceTags();

// How well a number is known; the parameters are in the quantity's own unit.
struct Lognormal { // by median and error factor EF = 95 % / median, EF > 1
    double median = 0, errorFactor = 1;
    bool operator==(const Lognormal&) const = default;
};
struct Gamma { // density ~ x^(shape-1) exp(-rate x); both > 0
    double shape = 0, rate = 0;
    bool operator==(const Gamma&) const = default;
};
struct Beta { // both > 0
    double alpha = 0, beta = 0;
    bool operator==(const Beta&) const = default;
};
struct Uniform { // low < high
    double low = 0, high = 0;
    bool operator==(const Uniform&) const = default;
};
struct Triangular { // low <= mode <= high, low < high
    double low = 0, mode = 0, high = 0;
    bool operator==(const Triangular&) const = default;
};
using Distribution = std::variant<std::monostate, Lognormal, Gamma, Beta, Uniform, Triangular>;

struct Quantity {
    double value = 0; // the point value, in `unit`; unused where `parameter` names a shared one
    Unit unit = Unit::unstated;
    Distribution uncertainty;
    SourceNote source;
    // Id of a project-wide Parameter whose value is used instead: two events that name the same one
    // share one estimate (the state-of-knowledge correlation).
    Id parameter;
    SourceLine line;
    Kept kept;
    bool operator==(const Quantity&) const = default;
};

// value x factor: hours, per hour, or the plain number.
double inBaseUnits(const Quantity& quantity);

// A number that several failure models share by its id.
struct Parameter {
    Id id;
    std::string name;
    Quantity quantity;
    SourceLine line;
    Kept kept;
    bool operator==(const Parameter&) const = default;
};

} // namespace cutwater::project
