// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/truncated.h"

#include "models/logic/bdd.h"
#include "models/logic/extract.h"
#include "models/logic/family_algebra.h"
#include "models/logic/order.h"

#include <algorithm>
#include <cmath>
#include <optional>

namespace cutwater::logic {

namespace {

class Truncated {
public:
    Truncated(const Program& program, const std::vector<Interval>& leaves, std::uint64_t unionNodes,
              Budget& budget)
        : m_program(program), m_unionNodes(unionNodes), m_budget(budget), m_bdd(m_budget),
          m_zdd(m_budget), m_algebra(m_zdd, m_budget), m_order(gatesFirst(program)),
          m_levelOf(program.leaves) {
        for (std::uint32_t level = 0; level < program.leaves; ++level) {
            m_levelOf[m_order[level]] = level;
            m_lower.push_back(leaves[m_order[level]].lower);
            m_upper.push_back(leaves[m_order[level]].upper);
        }
    }

    // Bounds with this cut-off. Throws Stopped where it does not fit.
    TruncatedBounds at(double cutOff) {
        m_cutOff = cutOff;
        m_dropped = 0;
        const Family kept = computeAll();
        const double sum = sumOfProducts(m_zdd, kept, m_upper, m_budget);
        TruncatedBounds bounds;
        bounds.dropped = m_dropped;
        bounds.interval.upper = std::min(1.0, independentBound(kept, sum) + m_dropped);
        // The largest part of the kept sets whose diagram fits.
        for (double coarser = cutOff; coarser < 1; coarser *= 10) {
            const Family part = coarser == cutOff
                                    ? kept
                                    : withoutSmallSets(m_zdd, kept, m_upper, coarser, m_budget);
            const std::optional<Interval> both = exactUnion(part);
            if (!both) continue;
            const double left = std::max(0.0, sum - sumOfProducts(m_zdd, part, m_upper, m_budget));
            bounds.interval.lower = both->lower;
            bounds.interval.upper = std::min(bounds.interval.upper, both->upper + left + m_dropped);
            bounds.keptSets =
                sumOfProducts(m_zdd, part, std::vector<double>(m_upper.size(), 1.0), m_budget);
            break;
        }
        return bounds;
    }

private:
    Family computeAll() {
        std::vector<Family> gates, inputs;
        for (GateView gate(m_program, 0); !gate.atEnd(); gate.advance()) {
            inputs.clear();
            for (std::uint32_t i = 0; i < gate.count(); ++i) {
                const std::uint32_t input = gate.input(i);
                if (GateView::isConstant(input))
                    inputs.push_back(input == Program::kTrueInput ? kEmptySet : kNoSets);
                else if (GateView::isGate(input))
                    inputs.push_back(gates[GateView::index(input)]);
                else
                    inputs.push_back(
                        m_zdd.make(m_levelOf[GateView::index(input)], kEmptySet, kNoSets));
            }
            gates.push_back(computeGate(gate, inputs));
        }
        return gates.back();
    }

    Family computeGate(const GateView& gate, std::vector<Family>& inputs) {
        if (gate.op() == Op::atLeast) return atLeast(inputs, gate.k());
        // Small ones first: what is cut early need not be multiplied later.
        std::stable_sort(inputs.begin(), inputs.end());
        const bool conjunction = gate.op() == Op::conjunction;
        Family result = conjunction ? kEmptySet : kNoSets;
        for (const Family input : inputs)
            result =
                cut(conjunction ? m_algebra.product(result, input) : m_algebra.sum(result, input));
        return result;
    }

    Family atLeast(const std::vector<Family>& inputs, std::uint32_t k) {
        std::vector<Family> reached(k + 1, kNoSets);
        reached[0] = kEmptySet;
        for (const Family input : inputs)
            for (std::uint32_t j = k; j >= 1; --j)
                reached[j] =
                    cut(m_algebra.sum(reached[j], m_algebra.product(reached[j - 1], input)));
        return reached[k];
    }

    // Leaves out what is too small and remembers how much that can have been. Whatever is done with
    // the family later (and, or, at least) can only make what was left out rarer, so adding up is
    // enough.
    Family cut(Family family) {
        const Family kept = withoutSmallSets(m_zdd, family, m_upper, m_cutOff, m_budget);
        if (kept != family) {
            const Family lost = m_zdd.difference(family, kept);
            m_dropped += sumOfProducts(m_zdd, lost, m_upper, m_budget);
        }
        return kept;
    }

    // 1 - product over the sets of (1 - P). -ln of the product is the sum of P^j / j over sets and
    // powers; power sums shrink at least by the largest P from one to the next, which bounds what
    // is left out of the series.
    double independentBound(Family kept, double sum) {
        const double largest = largestProduct(m_zdd, kept, m_upper, m_budget);
        double exponent = 0;
        std::vector<double> powers(m_upper);
        for (int power = 1; power <= 1000 && largest < 1; ++power) {
            const double powerSum = power == 1 ? sum : sumOfProducts(m_zdd, kept, powers, m_budget);
            exponent += powerSum / power;
            const double rest = powerSum * largest / (1 - largest) / (power + 1);
            if (rest < 1e-9 * exponent || exponent == 0)
                return std::min(sum, -std::expm1(-exponent - rest));
            for (std::size_t i = 0; i < powers.size(); ++i)
                powers[i] *= m_upper[i];
        }
        return std::min(sum, 1.0);
    }

    // Probability that one of the sets happens, with the leaves' lower and with their upper values.
    std::optional<Interval> exactUnion(Family family) {
        const Families sets = extract(m_zdd, family, m_budget);
        m_bdd.clear();
        m_bdd.setCeiling(m_unionNodes);
        Edge root = kNever;
        try {
            std::vector<Edge> edges(sets.nodes.size(), kNever);
            edges[kEmptySet] = kAlways;
            for (std::size_t i = 2; i < sets.nodes.size(); ++i) {
                const ZddNode& node = sets.nodes[i];
                edges[i] = m_bdd.make(node.element,
                                      m_bdd.disjunction(edges[node.with], edges[node.without]),
                                      edges[node.without]);
            }
            root = edges[sets.root];
        } catch (const CeilingReached&) {
            m_bdd.forgetTasks();
            m_bdd.setCeiling(~std::size_t{0});
            return {};
        }
        m_bdd.setCeiling(~std::size_t{0});
        const Forest forest = extract(m_bdd, {root}, m_program.leaves, m_budget);
        return Interval{probability(forest, m_lower), probability(forest, m_upper)};
    }

    static double probability(const Forest& forest, const std::vector<double>& q) {
        // Sets without negations: no edge is complemented but the constant.
        std::vector<double> value(forest.nodes.size(), 0.0);
        const auto at = [&](Edge edge) { return edge == kAlways ? 1.0 : value[edge >> 1]; };
        for (std::size_t i = 1; i < forest.nodes.size(); ++i) {
            const BddNode& node = forest.nodes[i];
            value[i] = q[node.level] * at(node.high) + (1 - q[node.level]) * at(node.low);
        }
        return at(forest.roots.front());
    }

    const Program& m_program;
    std::uint64_t m_unionNodes;
    Budget& m_budget;
    Bdd m_bdd;
    Zdd m_zdd;
    FamilyAlgebra m_algebra;
    Order m_order;
    std::vector<std::uint32_t> m_levelOf;
    std::vector<double> m_lower, m_upper; // by level
    double m_cutOff = 0, m_dropped = 0;
};

} // namespace

TruncatedBounds boundByCutOff(const Program& program, const std::vector<Interval>& leaves,
                              double cutOff, std::uint64_t unionNodes, Budget& budget) {
    return Truncated(program, leaves, unionNodes, budget).at(cutOff);
}

} // namespace cutwater::logic
