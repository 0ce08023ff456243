// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/reference_diagram.h"

#include <bdd.h>
#include <unordered_map>

namespace cutwater::oracle {

using logic::Formula;
using logic::Literal;
using logic::Op;

namespace {

constexpr int kMaxNodes = 1'000'000;
constexpr std::size_t kMaxFamilyNodes = 300'000;
constexpr int kMaxVariables = 64;

bool g_failed = false; // BuDDy is a global thing and reports through a plain function

void onError(int) {
    g_failed = true;
}

void start() {
    static const bool started = [] {
        bdd_init(100'000, 20'000);
        bdd_setvarnum(kMaxVariables);
        bdd_setmaxnodenum(kMaxNodes);
        bdd_error_hook(onError);
        bdd_gbc_hook(nullptr); // says nothing on the screen
        return true;
    }();
    (void)started;
    // After one tree over the limit BuDDy answers "false" without a word until it is told to go on.
    bdd_clear_error();
    g_failed = false;
}

class Referee {
public:
    explicit Referee(std::span<const double> q) : m_q(q) {}

    bdd build(const Formula& formula, Literal top) {
        std::vector<bdd> nodes;
        const auto value = [&](Literal literal) {
            return literal.negated() ? !nodes[literal.node()] : nodes[literal.node()];
        };
        for (std::uint32_t node = 0; node < formula.nodeCount() && !g_failed; ++node) {
            switch (formula.op(node)) {
            case Op::constant: nodes.push_back(bddfalse); break;
            case Op::variable:
                nodes.push_back(bdd_ithvarpp(static_cast<int>(formula.variable(node))));
                break;
            default: {
                // Counters "at least j of the inputs so far".
                const auto inputs = formula.inputs(node);
                std::size_t k = formula.op(node) == Op::atLeast       ? formula.k(node)
                                : formula.op(node) == Op::disjunction ? 1
                                : formula.op(node) == Op::conjunction ? inputs.size()
                                                                      : 2;
                std::vector<bdd> atLeast(k + 1, bddfalse);
                atLeast[0] = bddtrue;
                for (Literal literal : inputs)
                    for (std::size_t j = k; j >= 1; --j)
                        atLeast[j] |= atLeast[j - 1] & value(literal);
                nodes.push_back(formula.op(node) == Op::exactlyOne ? atLeast[1] & !atLeast[2]
                                                                   : atLeast[k]);
            }
            }
        }
        return g_failed ? bdd(bddfalse) : value(top);
    }

    struct Pair {
        long double occurs, occursNot;
    };
    Pair probability(const bdd& f) {
        if (f == bddtrue) return {1, 0};
        if (f == bddfalse) return {0, 1};
        const auto known = m_probabilities.find(f.id());
        if (known != m_probabilities.end()) return known->second;
        const Pair low = probability(bdd_low(f));
        const Pair high = probability(bdd_high(f));
        const long double q = m_q[static_cast<std::size_t>(bdd_var(f))];
        const Pair pair{q * high.occurs + (1 - q) * low.occurs,
                        q * high.occursNot + (1 - q) * low.occursNot};
        return m_probabilities[f.id()] = pair;
    }

    // At every node the low branch implies the high one.
    bool monotone(const bdd& f) {
        if (f == bddtrue || f == bddfalse) return true;
        const auto known = m_monotone.find(f.id());
        if (known != m_monotone.end()) return known->second;
        const bdd low = bdd_low(f);
        const bdd high = bdd_high(f);
        const bool good = (low & !high) == bddfalse && monotone(low) && monotone(high);
        return m_monotone[f.id()] = good;
    }

    // Coudert and Madre (1992): the prime implicants of f without its first variable x are those of
    // f0.f1; those with x are the ones of f1 that are not among them, those with ~x the ones of f0.
    Families::Node primes(const bdd& f) {
        if (g_failed || m_families.size() > kMaxFamilyNodes) {
            g_failed = true;
            return Families::kNone;
        }
        if (f == bddfalse) return Families::kNone;
        if (f == bddtrue) return Families::kUnit;
        const auto known = m_primes.find(f.id());
        if (known != m_primes.end()) return known->second.second;
        const bdd low = bdd_low(f);
        const bdd high = bdd_high(f);
        const Families::Node both = primes(low & high);
        const Families::Node without = m_families.difference(primes(low), both);
        const Families::Node with = m_families.difference(primes(high), both);
        const auto element = 2 * static_cast<std::uint32_t>(bdd_var(f));
        const Families::Node result =
            m_families.make(element, m_families.make(element + 1, both, without), with);
        m_primes.emplace(f.id(), std::pair(f, result)); // holding f keeps its number its own
        return result;
    }

    const Families& families() const { return m_families; }

private:
    std::span<const double> m_q;
    Families m_families;
    std::unordered_map<int, Pair> m_probabilities;
    std::unordered_map<int, bool> m_monotone;
    std::unordered_map<int, std::pair<bdd, Families::Node>> m_primes;
};

} // namespace

std::optional<Reference> refer(const Formula& formula, Literal top, std::span<const double> q) {
    start();
    Referee referee(q);
    const bdd f = referee.build(formula, top);
    if (g_failed) return {};
    Reference result;
    const auto pair = referee.probability(f);
    result.occurs = pair.occurs;
    result.occursNot = pair.occursNot;
    result.monotone = referee.monotone(f);
    if (f == bddtrue || f == bddfalse) result.constant = f == bddtrue;
    const Families::Node sets = referee.primes(f);
    if (g_failed) return {};
    std::vector<long double> chance;
    for (double one : q) {
        chance.push_back(one);
        chance.push_back(1.0L - one);
    }
    result.countsByOrder = referee.families().countsByOrder(sets);
    result.sum = referee.families().sum(sets, chance);
    logic::UInt128 total = 0;
    for (auto count : result.countsByOrder)
        total += count;
    if (total <= 100'000) result.bound = referee.families().bound(sets, chance);
    return result;
}

} // namespace cutwater::oracle
