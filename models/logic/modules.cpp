// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/modules.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

struct Dates {
    std::uint32_t first = 0; // the walk comes to the node for the first time
    std::uint32_t leave = 0; // it leaves the node for the first time
    std::uint32_t last = 0;  // it meets the node for the last time
};

} // namespace

std::vector<bool> findModules(const Formula& formula, Literal top, Budget& budget) {
    const std::uint32_t count = formula.nodeCount();
    const Charge charge(budget, count * (sizeof(Dates) + 2 * sizeof(std::uint32_t)));
    std::vector<bool> isModule(count, false);
    if (formula.inputs(top.node()).empty()) return isModule;

    std::vector<Dates> dates(count);
    struct Step {
        std::uint32_t node, next;
    };
    std::vector<Step> stack{{top.node(), 0}};
    std::uint32_t date = 1;
    dates[top.node()].first = date;
    while (!stack.empty()) {
        budget.step();
        Step& step = stack.back();
        const auto inputs = formula.inputs(step.node);
        if (step.next == inputs.size()) {
            dates[step.node].leave = dates[step.node].last = ++date;
            stack.pop_back();
            continue;
        }
        const std::uint32_t child = inputs[step.next++].node();
        ++date;
        dates[child].last = date;
        if (dates[child].first != 0) continue;
        dates[child].first = date;
        stack.push_back({child, 0});
    }

    // Smallest first and largest last date of everything strictly below; inputs have smaller
    // numbers than their gate.
    std::vector<std::uint32_t> earliest(count, 0xffffffff), latest(count, 0);
    for (std::uint32_t node = 1; node < count; ++node) {
        budget.step();
        if (dates[node].first == 0) continue;
        for (const Literal input : formula.inputs(node)) {
            const std::uint32_t child = input.node();
            earliest[node] = std::min({earliest[node], dates[child].first, earliest[child]});
            latest[node] = std::max({latest[node], dates[child].last, latest[child]});
        }
        isModule[node] = !formula.inputs(node).empty() && earliest[node] > dates[node].first &&
                         latest[node] < dates[node].leave;
    }
    return isModule;
}

} // namespace cutwater::logic
