// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/prepare.h"

#include "models/logic/modules.h"
#include "models/logic/regroup.h"

namespace cutwater::logic {

Prepared prepare(const Formula& formula, Literal top, Budget& budget) {
    Prepared result{reduce(formula, top, budget), 0, 0, {}, {}};
    Simplified& simple = result.simple;
    result.events = simple.formula.variableCount();
    result.gates = simple.formula.nodeCount() - 1 - result.events;
    if (simple.top.node() == 0) return result;
    if (simple.formula.op(simple.top.node()) ==
        Op::variable) { // a top event that is an event: "one of one"
        const Literal event{simple.top.node(), false};
        const Literal gate = simple.formula.addGate(Op::disjunction, std::span(&event, 1));
        simple.top = simple.top.negated() ? ~gate : gate;
    }
    result.isModule = findModules(simple.formula, simple.top, budget);
    if (auto grouped = groupModules(simple.formula, simple.top, result.isModule, budget)) {
        simple.formula = std::move(grouped->formula);
        simple.top = grouped->top;
        result.isModule = std::move(grouped->isModule);
    }
    for (std::uint32_t node = 1; node < simple.formula.nodeCount(); ++node)
        if (result.isModule[node]) result.modules.push_back(node);
    return result;
}

} // namespace cutwater::logic
