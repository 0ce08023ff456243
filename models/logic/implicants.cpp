// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/implicants.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace cutwater::logic {

namespace {

class Implicants {
public:
    Implicants(Bdd& bdd, Zdd& zdd, Budget& budget) : m_bdd(bdd), m_zdd(zdd), m_charge(budget, 0) {}

    Family of(Edge function) {
        std::vector<Edge> stack{function};
        while (!stack.empty()) {
            const Edge f = stack.back();
            if (known(f)) {
                stack.pop_back();
                continue;
            }
            const Edge high = m_bdd.high(f), low = m_bdd.low(f);
            const Edge both = m_bdd.conjunction(high, low);
            const std::size_t waiting = stack.size();
            for (const Edge needed : {both, high, low})
                if (!known(needed)) stack.push_back(needed);
            if (stack.size() != waiting) continue;
            stack.pop_back();
            if ((m_known.size() & 0xfff) == 0xfff)
                m_charge.set((m_known.size() + 0x1000) * kBytesPerEntry);
            m_known.emplace(f, combine(m_bdd.level(f), *known(high), *known(low), *known(both)));
        }
        return *known(function);
    }

private:
    std::optional<Family> known(Edge f) const {
        if (Bdd::isConstant(f)) return f == kAlways ? kEmptySet : kNoSets;
        const auto found = m_known.find(f);
        if (found == m_known.end()) return {};
        return found->second;
    }

    Family combine(std::uint32_t level, Family high, Family low, Family both) {
        const Family onlyLow = m_zdd.difference(low, both);
        const Family withNegation = m_zdd.make(elementOf(level, true), onlyLow, both);
        return m_zdd.make(elementOf(level, false), m_zdd.difference(high, both), withNegation);
    }

    static constexpr std::size_t kBytesPerEntry = 40; // of a hash map
    Bdd& m_bdd;
    Zdd& m_zdd;
    Charge m_charge;
    std::unordered_map<Edge, Family> m_known;
};

} // namespace

Family primeImplicants(Edge function, Bdd& bdd, Zdd& zdd, Budget& budget) {
    return Implicants(bdd, zdd, budget).of(function);
}

Family minimalSets(const Diagram& diagram, Zdd& zdd, Budget& budget) {
    const Charge charge(budget, diagram.nodes.size() * sizeof(Family));
    std::vector<Family> sets(diagram.nodes.size(), kNoSets);
    // A monotone function that is true when nothing happens is always true: no edge but that one is
    // complemented.
    const auto of = [&](Edge edge) { return edge == kAlways ? kEmptySet : sets[edge >> 1]; };
    for (std::size_t i = 1; i < diagram.nodes.size(); ++i) {
        const BddNode& node = diagram.nodes[i];
        const Family low = of(node.low);
        sets[i] = zdd.make(elementOf(node.level, false), zdd.difference(of(node.high), low), low);
    }
    return of(diagram.root);
}

} // namespace cutwater::logic
