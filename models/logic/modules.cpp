// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/modules.h"

#include "models/logic/uses.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

// When a walk from the top met a node, counted in the steps of the walk; 0: never.
struct Visit {
    std::uint32_t first = 0;
    std::uint32_t last = 0;
    std::uint32_t leave = 0;  // gates: all below has been met at least once
    std::uint32_t parent = 0; // from which it was met first
};

struct Walk {
    std::vector<Visit> visits; // by node
    bool anyNegation = false;  // of an input, or an exactly-one gate
};

Walk walk(const Formula& formula, Literal top, Budget& budget) {
    Walk result;
    result.visits.resize(formula.nodeCount());
    result.anyNegation = top.negated();
    std::vector<Visit>& visits = result.visits;
    struct Step {
        std::uint32_t node, next;
    };
    std::vector<Step> stack;
    const auto enter = [&](std::uint32_t node) {
        result.anyNegation |= formula.op(node) == Op::exactlyOne;
        stack.push_back({node, 0});
    };
    std::uint32_t date = 1;
    std::uint32_t negations = 0;
    visits[top.node()] = {date, date, date, top.node()};
    enter(top.node());
    while (!stack.empty()) {
        budget.step();
        Step& step = stack.back();
        const std::uint32_t parent = step.node;
        const auto inputs = formula.inputs(parent);
        bool entered = false;
        while (step.next < inputs.size()) {
            const Literal input = inputs[step.next++];
            if (input.node() == 0) continue; // a constant belongs to nobody
            negations |= input.code();
            Visit& visit = visits[input.node()];
            visit.last = ++date;
            if (visit.first != 0) continue;
            visit.first = date;
            visit.parent = parent;
            if (formula.op(input.node()) <= Op::variable) continue;
            enter(input.node());
            entered = true;
            break;
        }
        if (entered) continue;
        visits[parent].leave = visits[parent].last = ++date;
        stack.pop_back();
    }
    result.anyNegation |= (negations & 1u) != 0;
    return result;
}

// Calls see(gate, isModule) for every gate that was met, inputs before the gates that use them.
// Afterwards first and last of a gate are the earliest and the latest of all at and below it.
template <typename See>
void judgeGates(const Formula& formula, std::vector<Visit>& visits, Budget& budget, See see) {
    for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
        budget.step();
        Visit& visit = visits[node];
        if (visit.first == 0 || formula.op(node) == Op::variable) continue;
        std::uint32_t earliest = 0xffffffff, latest = 0;
        for (const Literal input : formula.inputs(node)) {
            if (input.node() == 0) continue;
            earliest = std::min(earliest, visits[input.node()].first);
            latest = std::max(latest, visits[input.node()].last);
        }
        see(node, latest != 0 && earliest > visit.first && latest < visit.leave);
        visit.first = std::min(visit.first, earliest);
        visit.last = std::max(visit.last, latest);
    }
}

} // namespace

std::vector<bool> findModules(const Formula& formula, Literal top, Budget& budget) {
    const std::size_t count = formula.nodeCount();
    const Charge charge(budget, count * (sizeof(Visit) + 2 * sizeof(std::uint64_t)));
    std::vector<bool> isModule(count, false);
    if (formula.inputs(top.node()).empty()) return isModule;
    Walk walked = walk(formula, top, budget);
    judgeGates(formula, walked.visits, budget,
               [&](std::uint32_t gate, bool is) { isModule[gate] = is; });
    return isModule;
}

Division divide(const Formula& formula, Literal top, std::uint32_t leastSize, Budget& budget) {
    const std::size_t count = formula.nodeCount();
    const Charge charge(budget, count * (sizeof(Visit) + 3 * sizeof(std::uint64_t)));
    Division result;
    result.isCut.assign(count, false);
    Walk walked = walk(formula, top, budget);
    // Of a gate's own: what it was the first to meet, down to the cuts. Below a module that is all
    // there is.
    std::vector<std::uint32_t> size(count, 1);
    judgeGates(formula, walked.visits, budget, [&](std::uint32_t gate, bool isModule) {
        for (const Literal input : formula.inputs(gate))
            if (walked.visits[input.node()].parent == gate) size[gate] += size[input.node()];
        if (gate != top.node() && (!isModule || size[gate] < leastSize)) return;
        size[gate] = 1;
        result.isCut[gate] = true;
        result.gates.push_back(gate);
    });
    if (!walked.anyNegation) return result;
    const std::vector<Use> uses = findUses(formula, top, budget);
    result.turned.assign(count, false);
    for (const std::uint32_t gate : result.gates)
        result.turned[gate] = uses[gate].flipped();
    return result;
}

} // namespace cutwater::logic
