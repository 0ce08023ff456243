// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/uses.h"

namespace cutwater::logic {

std::vector<Use> findUses(const Formula& formula, Literal top, Budget& budget) {
    std::vector<Use> uses(formula.nodeCount());
    const auto use = [&](Literal literal, bool positive, bool negative) {
        Use& u = uses[literal.node()];
        ++u.parents;
        u.positive |= literal.negated() ? negative : positive;
        u.negative |= literal.negated() ? positive : negative;
    };
    use(top, true, false);
    for (std::uint32_t node = formula.nodeCount(); node-- > 1;) {
        budget.step();
        if (uses[node].parents == 0) continue;
        // Whether one input of an exactly-one gate helps or hinders depends on the others.
        const bool both = formula.op(node) == Op::exactlyOne;
        for (const Literal input : formula.inputs(node))
            use(input, uses[node].positive || both, uses[node].negative || both);
    }
    return uses;
}

} // namespace cutwater::logic
