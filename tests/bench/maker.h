// SPDX-License-Identifier: GPL-3.0-or-later
// Maker: a formula that is being written down, with its probabilities.
#pragma once

#include "tests/bench/families.h"
#include "tests/bench/random.h"

#include <initializer_list>
#include <utility>

namespace bench {

class Maker {
public:
    explicit Maker(std::uint64_t seed) : random(seed) {}

    Random random;

    // A new event with a probability between the two.
    Literal event(double low, double high) {
        m_instance.q.push_back(random.spread(low, high));
        return m_instance.formula.addVariable();
    }
    Literal gate(Op op, const std::vector<Literal>& inputs, std::int64_t k = 0) {
        return m_instance.formula.addGate(op, inputs, k);
    }
    Literal any(const std::vector<Literal>& inputs) { return gate(Op::disjunction, inputs); }
    Literal all(const std::vector<Literal>& inputs) { return gate(Op::conjunction, inputs); }
    Literal atLeast(std::int64_t k, const std::vector<Literal>& inputs) {
        return gate(Op::atLeast, inputs, k);
    }
    Instance finish(Literal top) {
        m_instance.top = top;
        return std::move(m_instance);
    }

private:
    Instance m_instance;
};

} // namespace bench
