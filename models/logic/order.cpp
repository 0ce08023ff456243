// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/order.h"

#include <algorithm>
#include <numeric>

namespace cutwater::logic {

namespace {

std::vector<std::size_t> gatePlaces(const Program& program) {
    std::vector<std::size_t> places;
    std::size_t at = 0;
    for (GateView gate(program, 0); !gate.atEnd(); gate.advance()) {
        places.push_back(at);
        at += 3 + gate.count();
    }
    return places;
}

Order asDescribed(const Program& program) {
    Order order(program.leaves);
    std::iota(order.begin(), order.end(), 0);
    return order;
}

// Leaves that the last gate does not need still get a level.
void addTheRest(Order& order, const std::vector<bool>& seen) {
    for (std::uint32_t leaf = 0; leaf < seen.size(); ++leaf)
        if (!seen[leaf]) order.push_back(leaf);
}

} // namespace

// The describer numbers leaves in this order already.
Order ownLeavesFirst(const Program& program) {
    return asDescribed(program);
}

Order gatesFirst(const Program& program) {
    const std::vector<std::size_t> places = gatePlaces(program);
    std::vector<bool> gateSeen(places.size(), false), leafSeen(program.leaves, false);
    Order order;
    struct Step {
        GateView gate;
        std::uint32_t next;
    };
    std::vector<Step> stack;
    const auto enter = [&](std::size_t gate) {
        gateSeen[gate] = true;
        stack.push_back({GateView(program, places[gate]), 0});
    };
    enter(places.size() - 1);
    while (!stack.empty()) {
        Step& step = stack.back();
        const std::uint32_t count = step.gate.count();
        if (step.next ==
            2 * count) { // twice through the inputs: for the gates, then for the leaves
            stack.pop_back();
            continue;
        }
        const bool leaves = step.next >= count;
        const std::uint32_t input = step.gate.input(step.next++ % count);
        if (GateView::isConstant(input) || GateView::isGate(input) == leaves) continue;
        const std::uint32_t index = GateView::index(input);
        if (!leaves) {
            if (!gateSeen[index]) enter(index);
        } else if (!leafSeen[index]) {
            leafSeen[index] = true;
            order.push_back(index);
        }
    }
    for (std::uint32_t leaf = 0; leaf < program.leaves;
         ++leaf) // those that the last gate does not need
        if (!leafSeen[leaf]) order.push_back(leaf);
    return order;
}

Order byLevel(const Program& program) {
    const std::vector<std::size_t> places = gatePlaces(program);
    std::vector<bool> gateSeen(places.size(), false), leafSeen(program.leaves, false);
    Order order;
    std::vector<std::size_t> queue{places.size() - 1};
    for (std::size_t next = 0; next < queue.size(); ++next) {
        const GateView gate(program, places[queue[next]]);
        for (std::uint32_t i = 0; i < gate.count(); ++i) {
            const std::uint32_t input = gate.input(i);
            if (GateView::isConstant(input)) continue;
            const std::uint32_t index = GateView::index(input);
            if (GateView::isGate(input)) {
                if (!gateSeen[index]) queue.push_back(index);
                gateSeen[index] = true;
            } else if (!leafSeen[index]) {
                leafSeen[index] = true;
                order.push_back(index);
            }
        }
    }
    addTheRest(order, leafSeen);
    return order;
}

Order mostWaysFirst(const Program& program) {
    const std::vector<std::size_t> places = gatePlaces(program);
    std::vector<double> waysToGate(places.size(), 0.0), waysToLeaf(program.leaves, 0.0);
    waysToGate.back() = 1;
    for (std::size_t g = places.size(); g-- > 0;) {
        const GateView gate(program, places[g]);
        for (std::uint32_t i = 0; i < gate.count(); ++i) {
            const std::uint32_t input = gate.input(i);
            if (GateView::isConstant(input)) continue;
            (GateView::isGate(input) ? waysToGate : waysToLeaf)[GateView::index(input)] +=
                waysToGate[g];
        }
    }
    Order order = asDescribed(program);
    std::stable_sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
        return waysToLeaf[a] > waysToLeaf[b];
    });
    return order;
}

} // namespace cutwater::logic
