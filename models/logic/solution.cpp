// SPDX-License-Identifier: GPL-3.0-or-later
// What can be read off the diagrams without listing: one sweep each over every part.
#include "models/logic/solution.h"

#include "models/logic/solution_data.h"

#include <algorithm>
#include <cmath>

namespace cutwater::logic {

namespace {

double weight(std::span<const double> q, const Leaf& leaf, bool negated) {
    return negated ? 1.0 - q[leaf.index] : q[leaf.index];
}

// Sum over all sets of the product of their literals' weights, each raised to `power`.
double powerSum(const SolutionData& data, std::span<const double> q, int power) {
    std::vector<std::array<double, 2>> sums(data.parts.size(), {0.0, 0.0});
    std::vector<double> value, weights;
    forEachNeeded(data, [&](std::size_t part, bool negated, const Families& families) {
        const auto leaves = data.leavesOf(data.parts[part]);
        weights.resize(2 * leaves.size());
        for (std::size_t element = 0; element < weights.size(); ++element) {
            const Leaf& leaf = leaves[element >> 1];
            weights[element] = leaf.isPart ? sums[leaf.index][element & 1u]
                                           : std::pow(weight(q, leaf, element & 1u), power);
        }
        value.assign(families.nodes.size(), 0.0);
        value[kEmptySet] = 1.0;
        for (std::size_t i = 2; i < families.nodes.size(); ++i) {
            const ZddNode& node = families.nodes[i];
            value[i] = weights[node.element] * value[node.with] + value[node.without];
        }
        sums[part][negated] = value[families.root];
    });
    return sums.back()[false];
}

// How many sets there are of each order from `lowest` on. Empty: none.
struct Polynomial {
    std::size_t lowest = 0;
    std::vector<Count> counts;
};

// sum += a * b, up to order `highest`.
void addProduct(Polynomial& sum, const Polynomial& a, const Polynomial& b, std::size_t highest) {
    const std::size_t lowest = a.lowest + b.lowest;
    if (a.counts.empty() || b.counts.empty() || lowest > highest) return;
    if (sum.counts.empty()) sum.lowest = lowest;
    if (lowest < sum.lowest) {
        sum.counts.insert(sum.counts.begin(), sum.lowest - lowest, Count{});
        sum.lowest = lowest;
    }
    const std::size_t shift = lowest - sum.lowest;
    const std::size_t terms = std::min(a.counts.size() + b.counts.size() - 1, highest - lowest + 1);
    if (sum.counts.size() < shift + terms) sum.counts.resize(shift + terms);
    for (std::size_t i = 0; i < a.counts.size(); ++i) {
        if (a.counts[i] == Count{}) continue;
        for (std::size_t j = 0; j < b.counts.size() && i + j < terms; ++j)
            sum.counts[shift + i + j] = sum.counts[shift + i + j] + a.counts[i] * b.counts[j];
    }
}

} // namespace

bool Solution::coherent() const {
    return m_data->coherent;
}

std::optional<bool> Solution::constant() const {
    return m_data->constant;
}

const Effort& Solution::effort() const {
    return m_data->effort;
}

double Solution::rareEventSum(std::span<const double> q) const {
    if (m_data->constant) return *m_data->constant ? 1 : 0;
    return powerSum(*m_data, q, 1);
}

// -ln of the product is the sum over sets of P + P^2/2 + P^3/3 ..., and each power sum is one
// sweep. The few sets with a large P are taken one by one instead, so that the rest converges
// quickly.
double Solution::minCutUpperBound(std::span<const double> q) const {
    if (m_data->constant) return *m_data->constant ? 1 : 0;
    constexpr double kLarge = 0.05;
    constexpr int kPowers = 14;      // 0.05^14 / 14 < 1e-19 of the first term
    constexpr double kCertain = 750; // exp(-750) is nothing
    double exponent = 0;
    std::vector<double> large;
    Listing listing = list(q, {.sorting = Sorting::byProbability, .minProbability = kLarge});
    while (const auto set = listing.next()) {
        if (set->probability >= 1) return 1;
        exponent -= std::log1p(-set->probability);
        if (exponent > kCertain) return 1;
        large.push_back(set->probability);
    }
    if (listing.outOfMemory()) return 1; // more than a million large sets
    for (int power = 1; power <= kPowers; ++power) {
        double rest = powerSum(*m_data, q, power);
        for (const double p : large)
            rest -= std::pow(p, power);
        const double term = std::max(rest, 0.0) / power;
        exponent += term;
        if (term <= exponent * 1e-17) break;
    }
    return -std::expm1(-exponent);
}

Count Solution::setCount() const {
    const SolutionData& data = *m_data;
    if (data.constant) return {*data.constant ? 1u : 0u, false};
    std::vector<std::array<Count, 2>> counts(data.parts.size());
    std::vector<Count> value;
    forEachNeeded(data, [&](std::size_t part, bool negated, const Families& families) {
        const auto leaves = data.leavesOf(data.parts[part]);
        value.assign(families.nodes.size(), Count{});
        value[kEmptySet] = {1, false};
        for (std::size_t i = 2; i < families.nodes.size(); ++i) {
            const ZddNode& node = families.nodes[i];
            const Leaf& leaf = leaves[node.element >> 1];
            const Count with = leaf.isPart
                                   ? counts[leaf.index][node.element & 1u] * value[node.with]
                                   : value[node.with];
            value[i] = with + value[node.without];
        }
        counts[part][negated] = value[families.root];
    });
    return counts.back()[false];
}

std::vector<Count> Solution::countsByOrder(std::optional<std::uint32_t> maxOrder) const {
    const SolutionData& data = *m_data;
    const std::size_t highest = maxOrder.value_or(0xffffffff);
    if (data.constant)
        return *data.constant ? std::vector<Count>{{1, false}} : std::vector<Count>{};
    std::vector<std::array<Polynomial, 2>> ofPart(data.parts.size());
    const Polynomial one{0, {{1, false}}}, single{1, {{1, false}}};
    std::vector<Polynomial> value;
    std::vector<std::uint32_t> users;
    forEachNeeded(data, [&](std::size_t part, bool negated, const Families& families) {
        const auto leaves = data.leavesOf(data.parts[part]);
        // A polynomial is dropped as soon as nobody needs it any more: they are what takes the
        // room.
        users.assign(families.nodes.size(), 0);
        for (std::size_t i = 2; i < families.nodes.size(); ++i) {
            ++users[families.nodes[i].with];
            ++users[families.nodes[i].without];
        }
        ++users[families.root];
        value.assign(families.nodes.size(), {});
        value[kEmptySet] = one;
        for (std::size_t i = 2; i < families.nodes.size(); ++i) {
            const ZddNode& node = families.nodes[i];
            const Leaf& leaf = leaves[node.element >> 1];
            const bool lastUse = --users[node.without] == 0 && node.without > kEmptySet;
            Polynomial sum = lastUse ? std::move(value[node.without]) : value[node.without];
            addProduct(sum, value[node.with],
                       leaf.isPart ? ofPart[leaf.index][node.element & 1u] : single, highest);
            if (--users[node.with] == 0 && node.with > kEmptySet) value[node.with] = {};
            value[i] = std::move(sum);
        }
        ofPart[part][negated] = std::move(value[families.root]);
    });
    const Polynomial& top = ofPart.back()[false];
    std::vector<Count> counts(top.counts.empty() ? 0 : top.lowest);
    counts.insert(counts.end(), top.counts.begin(), top.counts.end());
    return counts;
}

std::vector<std::uint32_t> Solution::relevantVariables() const {
    std::vector<bool> relevant(m_data->variableCount, false);
    forEachNeeded(*m_data, [&](std::size_t part, bool, const Families& families) {
        const auto leaves = m_data->leavesOf(m_data->parts[part]);
        for (const std::uint32_t element : families.elements)
            if (!leaves[element >> 1].isPart) relevant[leaves[element >> 1].index] = true;
    });
    std::vector<std::uint32_t> variables;
    for (std::uint32_t v = 0; v < m_data->variableCount; ++v)
        if (relevant[v]) variables.push_back(v);
    return variables;
}

Listing Solution::list(std::span<const double> q, const ListingWish& wish) const {
    return makeListing(m_data, q, wish);
}

} // namespace cutwater::logic
