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

namespace {

// Everything that stands on the line: the leaves, then the gates.
class Line {
public:
    Line(const Program& program, const Order& start)
        : m_program(program), m_places(gatePlaces(program)), m_leaves(program.leaves),
          m_at(m_leaves + m_places.size()), m_pull(m_at.size()), m_pulls(m_at.size()),
          m_order(m_at.size()) {
        for (std::size_t level = 0; level < m_leaves; ++level)
            m_at[start[level]] = static_cast<double>(level);
        // A gate starts in the middle of its inputs, which are numbered before it.
        for (std::size_t g = 0; g < m_places.size(); ++g) {
            const Span span = spanOf(g, false);
            m_at[m_leaves + g] = span.members > 0 ? span.sum / span.members : 0;
        }
    }

    // Moves everything towards its gates once; the answer is how much the gates spanned before.
    double pull() {
        double total = 0;
        std::fill(m_pull.begin(), m_pull.end(), 0.0);
        std::fill(m_pulls.begin(), m_pulls.end(), 0.0);
        for (std::size_t g = 0; g + 1 < m_places.size();
             ++g) { // the top joins everything and says nothing
            const Span span = spanOf(g, true);
            total += span.high - span.low;
            const double centre = span.sum / span.members;
            const GateView gate(m_program, m_places[g]);
            for (std::uint32_t i = 0; i < gate.count(); ++i)
                if (!GateView::isConstant(gate.input(i))) pullTo(vertexOf(gate.input(i)), centre);
            pullTo(m_leaves + g, centre);
        }
        for (std::size_t v = 0; v < m_at.size(); ++v)
            if (m_pulls[v] > 0) m_at[v] = m_pull[v] / m_pulls[v];
        std::iota(m_order.begin(), m_order.end(), 0);
        std::stable_sort(m_order.begin(), m_order.end(),
                         [&](std::uint32_t a, std::uint32_t b) { return m_at[a] < m_at[b]; });
        for (std::size_t place = 0; place < m_order.size(); ++place)
            m_at[m_order[place]] = static_cast<double>(place);
        return total;
    }

    Order leaves() const {
        Order order = asDescribed(m_program);
        std::stable_sort(order.begin(), order.end(),
                         [&](std::uint32_t a, std::uint32_t b) { return m_at[a] < m_at[b]; });
        return order;
    }

private:
    struct Span {
        double sum = 0, low = 1e300, high = -1e300;
        std::uint32_t members = 0;
    };

    std::size_t vertexOf(std::uint32_t input) const {
        return GateView::isGate(input) ? m_leaves + GateView::index(input) : GateView::index(input);
    }
    void pullTo(std::size_t vertex, double centre) {
        m_pull[vertex] += centre;
        m_pulls[vertex] += 1;
    }
    Span spanOf(std::size_t g, bool withItself) const {
        Span span;
        const auto add = [&](double at) {
            span.sum += at;
            span.low = std::min(span.low, at);
            span.high = std::max(span.high, at);
            ++span.members;
        };
        const GateView gate(m_program, m_places[g]);
        for (std::uint32_t i = 0; i < gate.count(); ++i)
            if (!GateView::isConstant(gate.input(i))) add(m_at[vertexOf(gate.input(i))]);
        if (withItself) add(m_at[m_leaves + g]);
        return span;
    }

    const Program& m_program;
    std::vector<std::size_t> m_places;
    std::size_t m_leaves;
    std::vector<double> m_at, m_pull, m_pulls;
    std::vector<std::uint32_t> m_order;
};

} // namespace

Order pulledTogether(const Program& program, const Order& start) {
    constexpr int kRounds = 60, kPatience = 6;
    Line line(program, start);
    Order best = start, current = start;
    double bestSpan = line.pull();
    int waited = 0;
    for (int round = 0; round < kRounds && waited < kPatience; ++round) {
        current = line.leaves();
        const double span = line.pull(); // of `current`
        ++waited;
        if (round > 0 && span >= bestSpan) continue;
        if (span < bestSpan * 0.999) waited = 0;
        bestSpan = span;
        best = current;
    }
    return best;
}

} // namespace cutwater::logic
