// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/implicants.h"

#include <optional>
#include <unordered_map>
#include <vector>

namespace cutwater::logic {

namespace {

class Implicants {
public:
    Implicants(bool monotone, Bdd& bdd, Zdd& zdd) : m_monotone(monotone), m_bdd(bdd), m_zdd(zdd) {}

    Family of(Edge function) {
        std::vector<Edge> stack{function};
        while (!stack.empty()) {
            const Edge f = stack.back();
            if (known(f)) {
                stack.pop_back();
                continue;
            }
            const Edge high = m_bdd.high(f), low = m_bdd.low(f);
            const Edge both = m_monotone ? low : m_bdd.conjunction(high, low);
            const std::size_t waiting = stack.size();
            for (const Edge needed : {both, high, low})
                if (!known(needed)) stack.push_back(needed);
            if (stack.size() != waiting) continue;
            stack.pop_back();
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

    bool m_monotone;
    Bdd& m_bdd;
    Zdd& m_zdd;
    std::unordered_map<Edge, Family> m_known;
};

} // namespace

Family primeImplicants(Edge function, bool monotone, Bdd& bdd, Zdd& zdd) {
    return Implicants(monotone, bdd, zdd).of(function);
}

} // namespace cutwater::logic
