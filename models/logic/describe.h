// SPDX-License-Identifier: GPL-3.0-or-later
// Writes modules down as programs.
#pragma once

#include "models/logic/budget.h"
#include "models/logic/program.h"

#include <span>
#include <vector>

namespace cutwater::logic {

// Modules written down one after another in the same arrays: there may be hundreds of thousands.
class Descriptions {
public:
    struct Item {
        std::size_t code = 0, leaf = 0; // where it begins
        std::uint32_t words = 0, leaves = 0;
        bool monotone = true;
        std::uint64_t hash = 0; // of the code
    };
    std::vector<Item> items;

    std::span<const std::uint32_t> codeOf(const Item& item) const {
        return {m_code.data() + item.code, item.words};
    }
    // What the program's leaves are; `index` is a variable of the formula or the node of a module.
    std::span<const Leaf> leavesOf(const Item& item) const {
        return {m_leaves.data() + item.leaf, item.leaves};
    }
    Program programOf(const Item& item) const {
        const auto code = codeOf(item);
        return {{code.begin(), code.end()}, item.leaves, item.monotone};
    }
    std::size_t bytes() const {
        return m_code.capacity() * sizeof(m_code[0]) + m_leaves.capacity() * sizeof(Leaf) +
               items.capacity() * sizeof(Item);
    }

private:
    friend class Describer;
    struct Step {
        std::uint32_t node, next;
    };
    std::vector<std::uint32_t> m_code;
    std::vector<Leaf> m_leaves;
    std::vector<std::uint32_t> m_touched; // nodes that have a number; empty between two modules
    std::vector<Step> m_stack;
};

// Knows a formula and its modules; several threads may describe different modules at once, each
// into Descriptions of its own.
class Describer {
public:
    // `turned`, where it is not empty: modules that are described as their complements, and that
    // all others mean complemented.
    Describer(const Formula& formula, const std::vector<bool>& isModule,
              const std::vector<bool>& turned = {});

    // Adds one item. Leaves are numbered in the order in which a depth-first walk meets them, a
    // gate's own before those of the gates below it: in a chain each gate then only adds a node on
    // top of the diagram. Modules that are known constants count as such.
    void describe(std::uint32_t module, Descriptions& to, Budget& budget);

    // From now on the module counts as this constant.
    void setConstant(std::uint32_t module, bool value) {
        m_constant[module] = value ? Constant::isTrue : Constant::isFalse;
    }
    bool isConstant(std::uint32_t module) const { return m_constant[module] != Constant::no; }

private:
    enum class Constant : std::uint8_t { no, isFalse, isTrue };

    void enter(std::uint32_t node, std::size_t firstLeaf, Descriptions& to);
    bool isTurned(std::uint32_t node) const { return !m_turned.empty() && m_turned[node]; }

    const Formula& m_formula;
    const std::vector<bool>& m_isModule;
    const std::vector<bool> m_turned;
    std::vector<std::uint32_t> m_code; // of a node within the module that it belongs to
    std::vector<Constant> m_constant;
};

} // namespace cutwater::logic
