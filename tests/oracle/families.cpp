// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/reference_diagram.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace cutwater::oracle {

namespace {

constexpr std::uint32_t kEnd = std::numeric_limits<std::uint32_t>::max();

} // namespace

Families::Families() : m_nodes{{kEnd, kNone, kNone}, {kEnd, kUnit, kUnit}} {}

Families::Node Families::make(std::uint32_t element, Node without, Node with) {
    if (with == kNone) return without;
    const auto [place, isNew] =
        m_unique.try_emplace({element, without, with}, static_cast<Node>(m_nodes.size()));
    if (isNew) m_nodes.push_back({element, without, with});
    return place->second;
}

Families::Node Families::difference(Node a, Node b) {
    if (a == kNone || b == kNone) return a;
    if (a == b) return kNone;
    const auto known = m_differences.find({a, b});
    if (known != m_differences.end()) return known->second;
    const Content left = m_nodes[a];
    const Content right = m_nodes[b];
    Node result;
    if (left.element < right.element)
        result = make(left.element, difference(left.without, b), left.with);
    else if (left.element > right.element)
        result = difference(a, right.without);
    else // the two constants differ here and share no set: see kNone above
        result = left.element == kEnd ? a
                                      : make(left.element, difference(left.without, right.without),
                                             difference(left.with, right.with));
    return m_differences[{a, b}] = result;
}

// A node's number is larger than those of the nodes it stands on, so one pass upwards will do.

std::vector<logic::UInt128> Families::countsByOrder(Node node) const {
    std::vector<std::vector<logic::UInt128>> counts(node + 1);
    counts[kNone] = {};
    if (node >= kUnit) counts[kUnit] = {1};
    for (Node i = 2; i <= node; ++i) {
        const auto& without = counts[m_nodes[i].without];
        const auto& with = counts[m_nodes[i].with];
        counts[i].assign(std::max(without.size(), with.size() + 1), 0);
        for (std::size_t k = 0; k < without.size(); ++k)
            counts[i][k] += without[k];
        for (std::size_t k = 0; k < with.size(); ++k)
            counts[i][k + 1] += with[k];
    }
    return counts[node];
}

long double Families::sum(Node node, std::span<const long double> chance) const {
    std::vector<long double> sums(std::max<std::size_t>(node + 1, 2));
    sums[kUnit] = 1;
    for (Node i = 2; i <= node; ++i)
        sums[i] = sums[m_nodes[i].without] + chance[m_nodes[i].element] * sums[m_nodes[i].with];
    return sums[node];
}

long double Families::bound(Node node, std::span<const long double> chance) const {
    struct Item {
        Node node;
        long double product;
    };
    long double logNone = 0;
    std::vector<Item> items{{node, 1}};
    while (!items.empty()) {
        const Item item = items.back();
        items.pop_back();
        if (item.node == kUnit) logNone += std::log1p(-item.product);
        if (item.node <= kUnit) continue;
        const Content& content = m_nodes[item.node];
        items.push_back({content.without, item.product});
        items.push_back({content.with, item.product * chance[content.element]});
    }
    return -std::expm1(logNone);
}

} // namespace cutwater::oracle
