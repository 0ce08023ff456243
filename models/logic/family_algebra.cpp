// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/family_algebra.h"

#include "models/logic/extract.h"
#include "models/logic/hashing.h"

#include <algorithm>

namespace cutwater::logic {

namespace {

constexpr std::size_t kCacheSize = std::size_t{1} << 20;

} // namespace

FamilyAlgebra::FamilyAlgebra(Zdd& zdd, Budget& budget) : m_zdd(zdd), m_budget(budget) {
    m_budget.take(kCacheSize * sizeof(Entry));
    m_cache.resize(kCacheSize);
}

FamilyAlgebra::~FamilyAlgebra() {
    m_budget.give(kCacheSize * sizeof(Entry));
}

FamilyAlgebra::Entry& FamilyAlgebra::slot(Operation operation, Family a, Family b) {
    return m_cache[mixed(a, b, static_cast<std::uint32_t>(operation)) & (kCacheSize - 1)];
}

template <typename Compute>
Family FamilyAlgebra::remembered(Operation operation, Family a, Family b, Compute compute) {
    if (const Entry& entry = slot(operation, a, b);
        entry.operation == operation && entry.a == a && entry.b == b)
        return entry.result;
    m_budget.step();
    const Family result = compute();
    slot(operation, a, b) = {operation, a, b, result};
    return result;
}

Family FamilyAlgebra::sum(Family a, Family b) {
    if (a == b || b == kNoSets) return a;
    if (a == kNoSets) return b;
    if (m_zdd.hasEmptySet(a) || m_zdd.hasEmptySet(b)) return kEmptySet;
    if (a > b) std::swap(a, b);
    return remembered(Operation::sum, a, b, [&] {
        const ZddNode x = m_zdd.node(a), y = m_zdd.node(b);
        if (x.element == y.element) {
            const Family without = sum(x.without, y.without);
            return m_zdd.make(x.element, withoutSupersets(sum(x.with, y.with), without), without);
        }
        const bool aFirst = x.element < y.element;
        const ZddNode& upper = aFirst ? x : y;
        const Family without = sum(upper.without, aFirst ? b : a);
        return m_zdd.make(upper.element, withoutSupersets(upper.with, without), without);
    });
}

Family FamilyAlgebra::product(Family a, Family b) {
    if (a == kNoSets || b == kNoSets) return kNoSets;
    if (a == kEmptySet || a == b) return b;
    if (b == kEmptySet) return a;
    if (a > b) std::swap(a, b);
    return remembered(Operation::product, a, b, [&] {
        const ZddNode x = m_zdd.node(a), y = m_zdd.node(b);
        if (x.element == y.element) {
            const Family without = product(x.without, y.without);
            const Family with =
                sum(product(x.with, sum(y.with, y.without)), product(x.without, y.with));
            return m_zdd.make(x.element, withoutSupersets(with, without), without);
        }
        const bool aFirst = x.element < y.element;
        const ZddNode& upper = aFirst ? x : y;
        const Family other = aFirst ? b : a;
        const Family without = product(upper.without, other);
        return m_zdd.make(upper.element, withoutSupersets(product(upper.with, other), without),
                          without);
    });
}

Family FamilyAlgebra::withoutSupersets(Family a, Family b) {
    if (a == kNoSets || b == kNoSets) return a;
    if (a == b || m_zdd.hasEmptySet(b)) return kNoSets;
    if (a == kEmptySet) return a;
    if (m_zdd.node(b).element < m_zdd.node(a).element)
        return withoutSupersets(a, m_zdd.node(b).without);
    return remembered(Operation::withoutSupersets, a, b, [&] {
        const ZddNode x = m_zdd.node(a), y = m_zdd.node(b);
        if (x.element < y.element) {
            const Family with = withoutSupersets(x.with, b);
            return m_zdd.make(x.element, with, withoutSupersets(x.without, b));
        }
        const Family with = withoutSupersets(withoutSupersets(x.with, y.with), y.without);
        return m_zdd.make(x.element, with, withoutSupersets(x.without, y.without));
    });
}

namespace {

template <typename Combine>
double sweep(const Zdd& zdd, Family family, std::span<const double> weights, Budget& budget,
             Combine combine) {
    const Families taken = extract(zdd, family, budget);
    std::vector<double> value(taken.nodes.size(), 0.0);
    value[kEmptySet] = 1;
    for (std::size_t i = 2; i < taken.nodes.size(); ++i) {
        const ZddNode& node = taken.nodes[i];
        value[i] = combine(weights[node.element] * value[node.with], value[node.without]);
    }
    return value[taken.root];
}

} // namespace

double sumOfProducts(const Zdd& zdd, Family family, std::span<const double> weights,
                     Budget& budget) {
    return sweep(zdd, family, weights, budget,
                 [](double with, double without) { return with + without; });
}

double largestProduct(const Zdd& zdd, Family family, std::span<const double> weights,
                      Budget& budget) {
    return sweep(zdd, family, weights, budget,
                 [](double with, double without) { return std::max(with, without); });
}

Family withoutSmallSets(Zdd& zdd, Family family, std::span<const double> weights, double cutOff,
                        Budget& budget) {
    const Families taken = extract(zdd, family, budget);
    // Best way from a node to the end, and from the root to a node.
    std::vector<double> below(taken.nodes.size(), 0.0), above(taken.nodes.size(), 0.0);
    below[kEmptySet] = 1;
    for (std::size_t i = 2; i < taken.nodes.size(); ++i) {
        const ZddNode& node = taken.nodes[i];
        below[i] = std::max(weights[node.element] * below[node.with], below[node.without]);
    }
    above[taken.root] = 1;
    for (std::size_t i = taken.nodes.size(); i-- > 2;) {
        const ZddNode& node = taken.nodes[i];
        above[node.with] = std::max(above[node.with], above[i] * weights[node.element]);
        above[node.without] = std::max(above[node.without], above[i]);
    }
    std::vector<Family> kept(taken.nodes.size(), kNoSets);
    kept[kEmptySet] = kEmptySet;
    for (std::size_t i = 2; i < taken.nodes.size(); ++i) {
        const ZddNode& node = taken.nodes[i];
        const bool with = above[i] * weights[node.element] * below[node.with] >= cutOff;
        const bool without = above[i] * below[node.without] >= cutOff;
        kept[i] = zdd.make(node.element, with ? kept[node.with] : kNoSets,
                           without ? kept[node.without] : kNoSets);
    }
    return kept[taken.root];
}

} // namespace cutwater::logic
