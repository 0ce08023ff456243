// SPDX-License-Identifier: GPL-3.0-or-later
// Writes modules down as programs.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/program.h"

#include <optional>
#include <vector>

namespace cutwater::logic {

struct Described {
    Program program;
    std::vector<Leaf>
        leaves; // of the program; `index` is a variable of the formula or the node of a module
};

// Knows a formula and its modules; several threads may describe different modules at once.
class Describer {
public:
    Describer(const Formula& formula, const std::vector<bool>& isModule);

    // Leaves are numbered in the order in which a depth-first walk meets them, a gate's own before
    // those of the gates below it: in a chain each gate then only adds a node on top of the
    // diagram. Modules that `constants` knows are constants.
    Described describe(std::uint32_t module, Budget& budget);

    // From now on the module counts as this constant.
    void setConstant(std::uint32_t module, bool value) { m_constant[module] = value; }
    bool isConstant(std::uint32_t module) const { return m_constant[module].has_value(); }

private:
    const Formula& m_formula;
    const std::vector<bool>& m_isModule;
    std::vector<std::uint32_t> m_code; // of a node within the module that it belongs to
    std::vector<std::optional<bool>> m_constant;
};

} // namespace cutwater::logic
