// SPDX-License-Identifier: GPL-3.0-or-later
// Unit: a piece of the formula between modules, prepared and put together by itself. Equal pieces
// are one unit, so that ten thousand equal machines are prepared once.
#pragma once

#include "models/logic/describe.h"
#include "models/logic/prepare.h"
#include "models/logic/solution_data.h"

#include <functional>
#include <optional>
#include <vector>

namespace cutwater::logic {

struct Unit {
    // Before its shapes are solved.
    Prepared prepared;
    Descriptions modules;               // an item for each of prepared.modules
    std::vector<std::uint32_t> shapeOf; // likewise; numbered by whoever keeps the shapes

    // Afterwards: parts and leaves as in SolutionData, in numbers of the unit's own. A leaf that is
    // no part is a variable of the formula that the unit was made from.
    std::vector<Part> parts;
    std::vector<Leaf> leaves;
    std::optional<bool> constant; // then it has no parts
    std::uint32_t gates = 0;      // after reduction, before grouping
};

Unit prepareUnit(const Formula& formula, Literal top, Budget& budget);

// What prepareUnit() has found is put together once every shape is solved. A module may turn out to
// be a constant; those above it are then described anew, and `shapeFor` gives the solved shape of
// each.
using ShapeFor =
    std::function<std::uint32_t(const Descriptions& descriptions, const Descriptions::Item& item)>;
void makeParts(Unit& unit, const std::vector<SolvedShape>& shapes, const ShapeFor& shapeFor,
               Budget& budget);

} // namespace cutwater::logic
