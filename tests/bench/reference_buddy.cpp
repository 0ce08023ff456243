// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/reference_buddy.h"

#include "tests/bench/buddy_sets.h"
#include "tests/bench/child.h"

#include <bdd.h>
// The C interface is used: no handle objects to pay for.
#undef bdd_init
#undef bdd_ithvar
#undef bdd_nithvar

#include <algorithm>
#include <cmath>

namespace bench {

namespace {

constexpr double kNodeBytes = 20, kCacheEntryBytes = 24; // of BuDDy 2.4 on 64 bits
constexpr int kCaches = 6;

// Formula nodes to diagrams, one gate after another in the formula's own (topological) order.
class Builder {
public:
    Builder(const Instance& instance, const std::vector<std::uint32_t>& levelOf)
        : m_formula(instance.formula), m_top(instance.top), m_levelOf(levelOf) {}

    BDD run() {
        countUses();
        m_value.assign(m_top.node() + 1, 0);
        for (std::uint32_t node = 1; node <= m_top.node(); ++node) {
            if (m_uses[node] == 0) continue;
            const Op op = m_formula.op(node);
            if (op == Op::variable) {
                m_value[node] = bdd_ithvar(static_cast<int>(m_levelOf[m_formula.variable(node)]));
                continue;
            }
            m_value[node] = gate(node, op);
            for (const Literal input : m_formula.inputs(node))
                release(input.node());
        }
        return bdd_addref(literal(m_top));
    }

private:
    void countUses() {
        m_uses.assign(m_top.node() + 1, 0);
        m_uses[m_top.node()] = 1;
        for (std::uint32_t node = m_top.node() + 1; node-- > 1;) {
            if (m_uses[node] == 0 || m_formula.op(node) == Op::variable) continue;
            for (const Literal input : m_formula.inputs(node))
                ++m_uses[input.node()];
        }
    }

    // The diagram of a gate is given back after its last use, so that collections can use it.
    void release(std::uint32_t node) {
        if (--m_uses[node] == 0 && m_formula.op(node) != Op::variable) bdd_delref(m_value[node]);
    }

    BDD literal(Literal input) {
        const BDD value = m_value[input.node()];
        return input.negated() ? bdd_not(value) : value;
    }

    // Operands, those whose top variable comes last in the order first. Referenced.
    std::vector<BDD> operands(std::uint32_t node) {
        std::vector<BDD> values;
        for (const Literal input : m_formula.inputs(node))
            values.push_back(bdd_addref(literal(input)));
        const auto level = [](BDD value) {
            return value < 2 ? std::numeric_limits<int>::max() : bdd_var2level(bdd_var(value));
        };
        std::stable_sort(values.begin(), values.end(),
                         [&](BDD a, BDD b) { return level(a) > level(b); });
        return values;
    }

    BDD gate(std::uint32_t node, Op op) {
        const std::vector<BDD> inputs = operands(node);
        BDD result = 0;
        switch (op) {
        case Op::conjunction: result = fold(inputs, bddop_and, 1); break;
        case Op::disjunction: result = fold(inputs, bddop_or, 0); break;
        case Op::atLeast: result = atLeast(inputs, m_formula.k(node)); break;
        case Op::exactlyOne: result = exactlyOne(inputs); break;
        case Op::constant:
        case Op::variable: break;
        }
        for (const BDD input : inputs)
            bdd_delref(input);
        return result;
    }

    static void replace(BDD& place, BDD value) { // `place` holds a reference
        bdd_addref(value);
        bdd_delref(place);
        place = value;
    }

    static BDD fold(const std::vector<BDD>& inputs, int op, BDD neutral) {
        BDD result = bdd_addref(neutral);
        for (const BDD input : inputs)
            replace(result, bdd_apply(input, result, op));
        return result;
    }

    // counts[j]: at least j of the inputs so far.
    static BDD atLeast(const std::vector<BDD>& inputs, std::uint32_t k) {
        if (k > inputs.size()) return bdd_addref(0);
        std::vector<BDD> counts(k + 1, 0);
        counts[0] = 1;
        for (std::size_t i = 0; i < inputs.size(); ++i) {
            const auto left =
                inputs.size() - i - 1; // a count that cannot reach k any more is skipped
            const std::size_t lowest = k > left ? k - left : 1;
            for (std::size_t j = std::min<std::size_t>(k, i + 1);
                 j >= std::max<std::size_t>(lowest, 1); --j)
                replace(counts[j], bdd_ite(inputs[i], counts[j - 1], counts[j]));
        }
        for (std::size_t j = 0; j < k; ++j)
            bdd_delref(counts[j]);
        return counts[k];
    }

    static BDD exactlyOne(const std::vector<BDD>& inputs) {
        BDD none = bdd_addref(1), one = bdd_addref(0);
        for (const BDD input : inputs) {
            replace(one, bdd_ite(input, none, one));
            replace(none, bdd_apply(none, input, bddop_diff));
        }
        bdd_delref(none);
        return one;
    }

    const Formula& m_formula;
    Literal m_top;
    const std::vector<std::uint32_t>& m_levelOf;
    std::vector<std::uint32_t> m_uses;
    std::vector<BDD> m_value;
};

// One pass, children before parents; the exported accessors, and an array over the node table
// instead of a map.
double probabilityOf(BDD top, std::span<const double> qOfVariable) {
    if (top < 2) return top;
    constexpr double kUnseen = -1;
    std::vector<double> value(static_cast<std::size_t>(bdd_getallocnum()), kUnseen);
    value[0] = 0;
    value[1] = 1;
    std::vector<BDD> stack{top};
    while (!stack.empty()) {
        const BDD node = stack.back();
        const auto place = static_cast<std::size_t>(node);
        if (value[place] != kUnseen) {
            stack.pop_back();
            continue;
        }
        const BDD high = bdd_high(node), low = bdd_low(node);
        const double p1 = value[static_cast<std::size_t>(high)];
        const double p0 = value[static_cast<std::size_t>(low)];
        if (p1 == kUnseen) stack.push_back(high);
        if (p0 == kUnseen) stack.push_back(low);
        if (p1 == kUnseen || p0 == kUnseen) continue;
        const double q = qOfVariable[static_cast<std::size_t>(bdd_var(node))];
        value[place] = q * p1 + (1 - q) * p0;
        stack.pop_back();
    }
    return value[static_cast<std::size_t>(top)];
}

bool g_failed = false; // BuDDy's own state is global, so this may be too
void onError(int) {
    g_failed = true;
}

} // namespace

std::optional<BuddyResult> solveWithBuddy(const Instance& instance, const BuddyWish& wish) {
    BuddyResult result;
    g_failed = false;
    const double start = processorSeconds();
    const auto order = variableOrder(instance, wish.order);
    std::vector<std::uint32_t> levelOf(instance.formula.variableCount(), 0);
    std::vector<double> q(order.size());
    for (std::size_t level = 0; level < order.size(); ++level) {
        levelOf[order[level]] = static_cast<std::uint32_t>(level);
        q[level] = instance.q[order[level]];
    }
    const double ordered = processorSeconds();
    bdd_init(wish.nodes, wish.cache);
    bdd_error_hook(onError);
    bdd_gbc_hook(nullptr);
    if (wish.cacheRatio > 0) bdd_setcacheratio(wish.cacheRatio);
    bdd_setmaxincrease(wish.maxIncrease);
    bdd_setvarnum(std::max(1, static_cast<int>(order.size())));
    if (wish.sift) {
        bdd_varblockall();
        bdd_autoreorder(BDD_REORDER_SIFT);
    }
    const double wallReady = bench::wallSeconds(), ready = processorSeconds();
    const BDD top = Builder(instance, levelOf).run();
    if (wish.sift) bdd_disable_reorder();
    if (!g_failed) result.probability = probabilityOf(top, q);
    result.wallSeconds = bench::wallSeconds() - wallReady;
    result.processorSeconds = processorSeconds() - ready + (ordered - start);
    result.initSeconds = ready - ordered;
    if (!g_failed) {
        result.finalNodes = bdd_nodecount(top);
        bddStat stat{};
        bdd_stats(&stat);
        result.tableNodes = stat.nodenum;
        result.producedNodes = stat.produced;
        result.collections = stat.gbcnum;
        result.tableMB =
            (kNodeBytes * stat.nodenum + kCacheEntryBytes * kCaches * stat.cachesize) / 1e6;
        if (wish.countSets && !wish.sift) result.sets = minimalSetsOf(top);
    }
    bdd_done();
    if (g_failed) return {};
    return result;
}

} // namespace bench
