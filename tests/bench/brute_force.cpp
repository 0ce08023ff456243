// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/brute_force.h"

#include <array>
#include <bit>

namespace bench {

namespace {

using Word = std::uint64_t;

// 64 states at a time: bit b of a word belongs to the state whose six lowest events are b.
constexpr std::array<Word, 6> kLowEvents{0xaaaaaaaaaaaaaaaau, 0xccccccccccccccccu,
                                         0xf0f0f0f0f0f0f0f0u, 0xff00ff00ff00ff00u,
                                         0xffff0000ffff0000u, 0xffffffff00000000u};

class States {
public:
    explicit States(const Instance& instance)
        : m_instance(instance), m_values(instance.top.node() + 1, 0) {}

    // For the states block * 64 ... block * 64 + 63: is the top true?
    Word block(Word number) {
        const Formula& formula = m_instance.formula;
        for (std::uint32_t node = 1; node <= m_instance.top.node(); ++node)
            m_values[node] = formula.op(node) == Op::variable
                                 ? event(formula.variable(node), number)
                                 : gate(node);
        return literal(m_instance.top);
    }
    // All of them, by state.
    std::vector<bool> all() {
        const std::uint32_t events = m_instance.formula.variableCount();
        std::vector<bool> truth(std::size_t{1} << events);
        for (std::size_t first = 0; first < truth.size(); first += 64) {
            const Word word = block(first / 64);
            for (std::size_t bit = 0; bit < 64 && first + bit < truth.size(); ++bit)
                truth[first + bit] = word >> bit & 1u;
        }
        return truth;
    }

private:
    static Word event(std::uint32_t variable, Word number) {
        if (variable < 6) return kLowEvents[variable];
        return number >> (variable - 6) & 1u ? ~Word{0} : 0;
    }
    Word literal(Literal input) const {
        return input.negated() ? ~m_values[input.node()] : m_values[input.node()];
    }
    Word gate(std::uint32_t node) const {
        const auto inputs = m_instance.formula.inputs(node);
        Word none = ~Word{0}, one = 0, every = ~Word{0}, some = 0;
        for (const Literal input : inputs) {
            const Word value = literal(input);
            every &= value;
            some |= value;
            one = (one & ~value) | (none & value);
            none &= ~value;
        }
        switch (m_instance.formula.op(node)) {
        case Op::conjunction: return every;
        case Op::disjunction: return some;
        case Op::exactlyOne: return one;
        default: break;
        }
        const std::uint32_t k = m_instance.formula.k(node);
        Word result = 0;
        for (int bit = 0; bit < 64; ++bit) {
            std::uint32_t count = 0;
            for (const Literal input : inputs)
                count += literal(input) >> bit & 1u;
            if (count >= k) result |= Word{1} << bit;
        }
        return result;
    }

    const Instance& m_instance;
    std::vector<Word> m_values;
};

double weight(const Instance& instance, std::size_t state) {
    double product = 1;
    for (std::size_t v = 0; v < instance.q.size(); ++v)
        product *= state >> v & 1u ? instance.q[v] : 1 - instance.q[v];
    return product;
}

} // namespace

double triedProbability(const Instance& instance) {
    const auto truth = States(instance).all();
    double sum = 0;
    for (std::size_t state = 0; state < truth.size(); ++state)
        if (truth[state]) sum += weight(instance, state);
    return sum;
}

std::uint64_t triedMinimalSets(const Instance& instance) {
    const auto truth = States(instance).all();
    std::uint64_t count = 0;
    for (std::size_t state = 0; state < truth.size(); ++state) {
        bool minimal = truth[state];
        for (std::size_t left = state; minimal && left != 0; left &= left - 1)
            minimal = !truth[state & ~(left & (~left + 1))];
        count += minimal;
    }
    return count;
}

std::uint64_t triedPrimeImplicants(const Instance& instance) {
    const auto truth = States(instance).all();
    const std::uint32_t n = instance.formula.variableCount();
    std::vector<std::size_t> power(n + 1, 1); // of 3
    for (std::uint32_t v = 0; v < n; ++v)
        power[v + 1] = power[v] * 3;
    // Products in base 3: 0 the event must not occur, 1 it must, 2 it does not matter. A product
    // with a 2 is an implicant where both with 0 and with 1 instead are.
    std::vector<bool> implicant(power[n]);
    const auto digit = [&](std::size_t product, std::uint32_t v) { return product / power[v] % 3; };
    for (std::size_t product = 0; product < power[n]; ++product) {
        std::size_t state = 0;
        bool decided = false;
        for (std::uint32_t v = 0; v < n && !decided; ++v) {
            const std::size_t d = digit(product, v);
            if (d == 2) {
                implicant[product] =
                    implicant[product - power[v]] && implicant[product - 2 * power[v]];
                decided = true;
            }
            state |= d << v;
        }
        if (!decided) implicant[product] = truth[state];
    }
    std::uint64_t count = 0;
    for (std::size_t product = 0; product < power[n]; ++product) {
        bool prime = implicant[product];
        for (std::uint32_t v = 0; v < n && prime; ++v) {
            const std::size_t d = digit(product, v);
            if (d != 2) prime = !implicant[product + (2 - d) * power[v]];
        }
        count += prime;
    }
    return count;
}

} // namespace bench
