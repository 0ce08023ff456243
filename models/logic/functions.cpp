// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/functions.h"

#include "models/logic/builder.h"
#include "models/logic/extract.h"
#include "models/logic/pull.h"

#include <algorithm>
#include <bit>

namespace cutwater::logic {

namespace {

constexpr std::uint32_t kMostShared = 24;

// What some inputs of the last gate compute together: a program of only what they reach, whose
// leaves keep their numbers.
Program joined(const Program& program, const std::vector<GateView>& gates,
               std::span<const std::uint32_t> inputs) {
    std::vector<bool> reached(gates.size(), false);
    for (const std::uint32_t input : inputs)
        if (GateView::isGate(input)) reached[GateView::index(input)] = true;
    for (std::size_t g = gates.size(); g-- > 0;) {
        if (!reached[g]) continue;
        for (std::uint32_t i = 0; i < gates[g].count(); ++i) {
            const std::uint32_t input = gates[g].input(i);
            if (!GateView::isConstant(input) && GateView::isGate(input))
                reached[GateView::index(input)] = true;
        }
    }
    Program result;
    result.leaves = program.leaves;
    std::vector<std::uint32_t> number(gates.size(), 0);
    std::uint32_t count = 0;
    const auto renumbered = [&](std::uint32_t input) {
        if (GateView::isConstant(input) || !GateView::isGate(input)) return input;
        return number[GateView::index(input)] << 2 | (input & 3u);
    };
    for (std::size_t g = 0; g < gates.size(); ++g) {
        if (!reached[g]) continue;
        const GateView& gate = gates[g];
        result.code.insert(result.code.end(),
                           {static_cast<std::uint32_t>(gate.op()), gate.k(), gate.count()});
        for (std::uint32_t i = 0; i < gate.count(); ++i)
            result.code.push_back(renumbered(gate.input(i)));
        number[g] = count++;
    }
    result.code.insert(result.code.end(), {static_cast<std::uint32_t>(Op::disjunction), 0,
                                           static_cast<std::uint32_t>(inputs.size())});
    for (const std::uint32_t input : inputs)
        result.code.push_back(renumbered(input));
    return result;
}

std::vector<Program> partsOf(const Program& program, Budget& budget) {
    std::vector<GateView> gates;
    for (GateView gate(program, 0); !gate.atEnd(); gate.advance())
        gates.push_back(gate);
    const GateView last = gates.back();
    gates.pop_back();
    if (last.op() != Op::disjunction || last.count() < 2 || !program.monotone) return {};
    std::vector<std::uint32_t> inputs;
    for (std::uint32_t i = 0; i < last.count(); ++i)
        if (last.input(i) != Program::kFalseInput) inputs.push_back(last.input(i));
    const std::size_t stride = (inputs.size() + kMostFunctions - 1) / kMostFunctions;
    std::vector<Program> parts;
    for (std::size_t first = 0; first < inputs.size(); first += stride) {
        budget.look();
        const std::size_t size = std::min(stride, inputs.size() - first);
        parts.push_back(joined(program, gates, std::span(inputs).subspan(first, size)));
    }
    return parts;
}

// Leaf -> which parts have it.
std::vector<std::uint64_t> owners(const std::vector<Program>& parts, std::uint32_t leaves) {
    std::vector<std::uint64_t> of(leaves, 0);
    for (std::size_t p = 0; p < parts.size(); ++p)
        for (GateView gate(parts[p], 0); !gate.atEnd(); gate.advance())
            for (std::uint32_t i = 0; i < gate.count(); ++i) {
                const std::uint32_t input = gate.input(i);
                if (!GateView::isConstant(input) && !GateView::isGate(input))
                    of[GateView::index(input)] |= std::uint64_t{1} << p;
            }
    return of;
}

// Moves those that most parts have to the front; the answer is how many they are.
std::uint32_t sharedFirst(Order& order, const std::vector<std::uint64_t>& owned,
                          std::size_t parts) {
    const auto uses = [&](std::uint32_t leaf) {
        const auto count = static_cast<std::size_t>(std::popcount(owned[leaf]));
        return 2 * count > parts ? count : 0;
    };
    std::stable_sort(order.begin(), order.end(),
                     [&](std::uint32_t a, std::uint32_t b) { return uses(a) > uses(b); });
    std::uint32_t shared = 0;
    while (shared < std::min<std::size_t>(kMostShared, order.size()) && uses(order[shared]) > 0)
        ++shared;
    return shared;
}

// Each in a table of its own, since the builder clears it; then together in the one that is lent.
std::optional<std::vector<Edge>> built(const std::vector<Program>& parts, const Order& order,
                                       Bdd& bdd, Budget& budget, std::uint64_t mostNodes) {
    Bdd scratch(budget);
    std::vector<Edge> edges;
    for (const Program& part : parts) {
        const std::optional<Built> one =
            build(part, order, scratch, budget, {},
                  mostNodes - std::min<std::uint64_t>(mostNodes, bdd.size()));
        if (!one) return {};
        edges.push_back(putBack(one->diagram, bdd));
        scratch.clear();
    }
    return edges;
}

} // namespace

std::optional<Functions> functionsOf(const Program& program, Bdd& bdd, Budget& budget,
                                     std::uint64_t mostNodes) {
    const std::vector<Program> parts = partsOf(program, budget);
    if (parts.size() < 2) return {};
    const std::vector<std::uint64_t> owned = owners(parts, program.leaves);
    std::vector<Order> orders{gatesFirst(program)};
    if (program.code.size() <= kTooLongToPull) {
        WidthEstimate width(program);
        orders.insert(orders.begin(),
                      pulledTogether(program, mostWaysFirst(program), width, budget).order);
    }
    for (Order& order : orders) {
        Functions functions;
        functions.shared = sharedFirst(order, owned, parts.size());
        bdd.clear();
        auto edges = built(parts, order, bdd, budget, mostNodes);
        if (!edges) continue;
        functions.edges = std::move(*edges);
        for (const std::uint32_t leaf : order)
            functions.near.push_back(owned[leaf]);
        functions.leafAt = std::move(order);
        return functions;
    }
    return {};
}

} // namespace cutwater::logic
