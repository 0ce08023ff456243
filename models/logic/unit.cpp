// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/unit.h"

#include <algorithm>
#include <memory>

namespace cutwater::logic {

Unit prepareUnit(const Formula& formula, Literal top, Budget& budget) {
    Unit unit;
    unit.prepared = prepare(formula, top, budget);
    unit.gates = unit.prepared.gates;
    Simplified& simple = unit.prepared.simple;
    if (simple.top.node() == 0) {
        unit.constant = simple.top.negated();
        return unit;
    }
    if (simple.top.negated()) { // parts are positive: "one of one that does not occur"
        simple.top = simple.formula.addGate(Op::disjunction, std::span(&simple.top, 1));
        unit.prepared.isModule.push_back(true);
        unit.prepared.modules.push_back(simple.top.node());
    }
    const Charge charge(budget, simple.formula.nodeCount() * (sizeof(std::uint32_t) + 1));
    Describer describer(simple.formula, unit.prepared.isModule);
    for (const std::uint32_t module : unit.prepared.modules)
        describer.describe(module, unit.modules, budget);
    return unit;
}

void makeParts(Unit& unit, const std::vector<SolvedShape>& shapes, const ShapeFor& shapeFor,
               Budget& budget) {
    const Prepared& prepared = unit.prepared;
    std::vector<std::uint32_t> partOf(prepared.simple.formula.nodeCount(), 0);
    std::unique_ptr<Describer> describer; // where a module turned out to be a constant
    Descriptions again;
    for (std::size_t i = 0; i < prepared.modules.size(); ++i) {
        budget.step();
        const std::uint32_t module = prepared.modules[i];
        std::span<const Leaf> leaves = unit.modules.leavesOf(unit.modules.items[i]);
        const auto isKnown = [&](const Leaf& leaf) {
            return leaf.isPart && describer->isConstant(leaf.index);
        };
        if (describer && std::any_of(leaves.begin(), leaves.end(), isKnown)) {
            describer->describe(module, again, budget);
            unit.shapeOf[i] = shapeFor(again, again.items.back());
            leaves = again.leavesOf(again.items.back());
        }
        const Shape& shape = *shapes[unit.shapeOf[i]].shape;
        if (Bdd::isConstant(shape.diagram.root)) {
            if (i + 1 == prepared.modules.size()) {
                unit.constant = shape.diagram.root == kAlways;
                unit.parts.clear();
                unit.leaves.clear();
                return;
            }
            if (!describer)
                describer = std::make_unique<Describer>(prepared.simple.formula, prepared.isModule);
            describer->setConstant(module, shape.diagram.root == kAlways);
            continue;
        }
        partOf[module] = static_cast<std::uint32_t>(unit.parts.size());
        Part part;
        part.shape = unit.shapeOf[i];
        part.firstLeaf = unit.leaves.size();
        part.leafCount = static_cast<std::uint32_t>(leaves.size());
        for (const std::uint32_t at : shape.leafAt) {
            const Leaf& leaf = leaves[at];
            unit.leaves.push_back(leaf.isPart
                                      ? Leaf{partOf[leaf.index], true}
                                      : Leaf{prepared.simple.variableOf[leaf.index], false});
        }
        unit.parts.push_back(part);
    }
}

} // namespace cutwater::logic
