// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/program.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

// Constants first, then the deepest: what is on top of the order comes last.
void deepestFirst(std::vector<Edge>& edges, const Bdd& bdd) {
    std::stable_sort(edges.begin(), edges.end(),
                     [&](Edge a, Edge b) { return bdd.level(a) > bdd.level(b); });
}

Edge fold(const std::vector<Edge>& inputs, bool conjunction, Bdd& bdd) {
    Edge result = conjunction ? kAlways : kNever;
    for (const Edge input : inputs)
        result = conjunction ? bdd.conjunction(input, result) : bdd.disjunction(input, result);
    return result;
}

// reached[j]: at least j of the inputs so far.
Edge atLeast(const std::vector<Edge>& inputs, std::uint32_t k, Bdd& bdd) {
    std::vector<Edge> reached(k + 1, kNever);
    reached[0] = kAlways;
    std::uint32_t done = 0;
    for (const Edge input : inputs) {
        ++done;
        // Fewer than k - (inputs to come) reached so far is too few to matter.
        const auto toCome = static_cast<std::uint32_t>(inputs.size()) - done;
        const std::uint32_t least = k > toCome ? k - toCome : 1;
        for (std::uint32_t j = std::min(k, done); j >= least; --j)
            reached[j] = bdd.ifThenElse(input, reached[j - 1], reached[j]);
    }
    return reached[k];
}

Edge exactlyOne(const std::vector<Edge>& inputs, Bdd& bdd) {
    Edge none = kAlways, one = kNever;
    for (const Edge input : inputs) {
        one = bdd.ifThenElse(input, none, one);
        none = bdd.conjunction(input ^ 1u, none);
    }
    return one;
}

} // namespace

Edge compute(const Program& program, Bdd& bdd) {
    std::vector<Edge> gates, inputs;
    for (std::size_t at = 0; at < program.code.size();) {
        const auto op = static_cast<Op>(program.code[at]);
        const std::uint32_t k = program.code[at + 1], count = program.code[at + 2];
        at += 3;
        inputs.clear();
        for (std::uint32_t i = 0; i < count; ++i, ++at) {
            const std::uint32_t input = program.code[at];
            if (input == Program::kFalseInput || input == Program::kTrueInput) {
                inputs.push_back(input == Program::kTrueInput ? kAlways : kNever);
                continue;
            }
            const Edge edge = input & 2u ? gates[input >> 2] : bdd.variable(input >> 2);
            inputs.push_back(edge ^ (input & 1u));
        }
        deepestFirst(inputs, bdd);
        switch (op) {
        case Op::conjunction: gates.push_back(fold(inputs, true, bdd)); break;
        case Op::disjunction: gates.push_back(fold(inputs, false, bdd)); break;
        case Op::atLeast: gates.push_back(atLeast(inputs, k, bdd)); break;
        default: gates.push_back(exactlyOne(inputs, bdd)); break;
        }
    }
    return gates.back();
}

} // namespace cutwater::logic
