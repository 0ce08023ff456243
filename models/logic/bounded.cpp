// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/bounded.h"

#include "models/logic/cases.h"
#include "models/logic/describe.h"
#include "models/logic/family_algebra.h"
#include "models/logic/prepare.h"
#include "models/logic/race.h"
#include "models/logic/truncated.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <new>
#include <unordered_map>
#include <utility>

namespace cutwater::logic {

namespace {

constexpr double kLastCutOff = 1e-30, kCutOffStep = 0.01;
// So many times wider than wished for, and the other way is tried too.
constexpr double kFarOff = 10;

class Bounder {
public:
    Bounder(const Formula& formula, Literal top, std::span<const double> q, Account& account,
            const BoundsWish& wish)
        : m_q(q), m_wish(wish), m_budget(account), m_prepared(prepare(formula, top, m_budget)),
          m_end(std::chrono::steady_clock::now() +
                std::chrono::duration_cast<std::chrono::steady_clock::duration>(
                    std::chrono::duration<double>(wish.seconds))) {}

    std::optional<Bounds> run() {
        const Literal top = m_prepared.simple.top;
        if (top.node() == 0) return Bounds{top.negated() ? 1.0 : 0.0, top.negated() ? 1.0 : 0.0};
        Describer describer(m_prepared.simple.formula, m_prepared.isModule);
        Bounds bounds;
        for (const std::uint32_t module : m_prepared.modules) {
            Descriptions described;
            describer.describe(module, described, m_budget);
            std::vector<Interval> leaves;
            for (const Leaf& leaf : described.leavesOf(described.items[0])) {
                const double q = leaf.isPart ? 0 : m_q[m_prepared.simple.variableOf[leaf.index]];
                leaves.push_back(leaf.isPart ? m_of[leaf.index] : Interval{q, q});
            }
            const std::optional<Bounds> found =
                boundModule(described.programOf(described.items[0]), leaves);
            if (!found) return {};
            bounds = *found;
            m_of[module] = {bounds.lower, bounds.upper};
        }
        if (top.negated()) bounds.lower = 1 - std::exchange(bounds.upper, 1 - bounds.lower);
        return bounds;
    }

private:
    std::optional<Bounds> boundModule(const Program& program, const std::vector<Interval>& leaves) {
        const bool sure =
            std::all_of(leaves.begin(), leaves.end(), [](const Interval& i) { return i.exact(); });
        if (!sure && !program.monotone) return {};
        if (const auto exact = m_wish.exactNodes > 0 ? solved(program, leaves) : std::nullopt)
            return Bounds{exact->lower, exact->upper};
        if (!program.monotone) return {};
        std::optional<Bounds> best;
        if (m_wish.cases > 0) best = byCases(program, leaves, sure);
        if (best && best->upper - best->lower <= kFarOff * m_wish.width * best->lower) return best;
        const std::optional<Bounds> other = byCutOffs(program, leaves);
        const auto width = [](const Bounds& bounds) { return bounds.upper - bounds.lower; };
        return !best || (other && width(*other) < width(*best)) ? other : best;
    }

    bool isNarrow(const Bounds& bounds) const {
        return bounds.upper - bounds.lower <= m_wish.width * bounds.lower;
    }

    // A monotone function's probability grows with those of its leaves: all at their lower ends
    // give the lower bound, all at their upper ends the upper one.
    std::optional<Bounds> byCases(const Program& program, const std::vector<Interval>& leaves,
                                  bool sure) {
        try {
            Bounds bounds;
            bounds.method = BoundsMethod::cases;
            for (const bool upper : {false, true}) {
                Bdd bdd(m_budget);
                const auto functions = functionsOf(program, bdd, m_budget, m_wish.functionNodes);
                if (!functions) return {};
                std::vector<double> q;
                for (const std::uint32_t leaf : functions->leafAt)
                    q.push_back(upper ? leaves[leaf].upper : leaves[leaf].lower);
                const CasesFound found =
                    boundByCases(*functions, bdd, q,
                                 {m_wish.width, m_wish.cases, m_wish.pairNodes, m_end}, m_budget);
                if (!upper || sure) bounds.lower = found.interval.lower;
                bounds.upper = found.interval.upper;
                bounds.cases += found.cases;
                if (sure) break;
            }
            return bounds;
        } catch (const Stopped& stopped) {
            if (stopped.why != Stop::memory) throw;
            return {};
        }
    }

    std::optional<Bounds> byCutOffs(const Program& program, const std::vector<Interval>& leaves) {
        if (program.leaves > kMostElements) return {};
        std::optional<Bounds> best;
        for (double cutOff = m_wish.firstCutOff; cutOff >= kLastCutOff; cutOff *= kCutOffStep) {
            try {
                const TruncatedBounds found =
                    boundByCutOff(program, leaves, cutOff, m_wish.unionNodes, m_budget);
                const Interval& interval = found.interval;
                if (!best || interval.upper - interval.lower < best->upper - best->lower)
                    best = Bounds{interval.lower, interval.upper, BoundsMethod::cutOff,
                                  cutOff,         found.dropped,  found.keptSets};
            } catch (const Stopped& stopped) {
                if (stopped.why != Stop::memory) throw;
                break;
            }
            if (isNarrow(*best)) break;
            if (std::chrono::steady_clock::now() > m_end) break;
        }
        return best;
    }

    std::optional<Interval> solved(const Program& program, const std::vector<Interval>& leaves) {
        Bdd bdd(m_budget);
        const std::optional<Built> built = buildByRace(program, bdd, m_budget, m_wish.exactNodes);
        if (!built) return {};
        std::array<std::vector<std::array<double, 2>>, 2>
            value; // [lower, upper][node] {false, true}
        Interval result;
        for (const bool upper : {false, true}) {
            auto& v = value[upper];
            v.assign(built->diagram.nodes.size(), {1, 0});
            const auto at = [&](Edge edge, bool occurs) {
                return v[edge >> 1][occurs != ((edge & 1u) != 0)];
            };
            for (std::size_t i = 1; i < v.size(); ++i) {
                const BddNode& node = built->diagram.nodes[i];
                const Interval& leaf = leaves[built->leafAt[node.level]];
                const double q = upper ? leaf.upper : leaf.lower;
                for (const bool occurs : {false, true})
                    v[i][occurs] = q * at(node.high, occurs) + (1 - q) * at(node.low, occurs);
            }
            (upper ? result.upper : result.lower) = at(built->diagram.root, true);
        }
        return result;
    }

    std::span<const double> m_q;
    const BoundsWish& m_wish;
    Budget m_budget;
    Prepared m_prepared;
    std::chrono::steady_clock::time_point m_end;
    std::unordered_map<std::uint32_t, Interval> m_of; // modules
};

} // namespace

BoundsOutcome boundTop(const Formula& formula, Literal top, std::span<const double> q,
                       const Limits& limits, const BoundsWish& wish) {
    try {
        if (limits.stop.stop_requested()) return {{}, Stop::cancelled};
        Account account(limits);
        return {Bounder(formula, top, q, account, wish).run(), Stop::none};
    } catch (const Stopped& stopped) {
        return {{}, stopped.why};
    } catch (const std::bad_alloc&) {
        return {{}, Stop::memory};
    }
}

} // namespace cutwater::logic
