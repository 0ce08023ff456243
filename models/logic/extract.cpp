// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/extract.h"

#include <algorithm>
#include <unordered_map>

namespace cutwater::logic {

namespace {

// Where each reached node of a table goes. A small part of a large table is kept in a hash map, so
// that taking out costs what is taken out and not what is there.
class Places {
public:
    explicit Places(std::size_t tableSize) : m_tableSize(tableSize) {}

    bool add(std::uint32_t index) { // false where it is known
        if (m_dense.empty() && m_reached.size() * 16 > m_tableSize) {
            m_dense.assign(m_tableSize, kUnknown);
            for (const std::uint32_t known : m_reached)
                m_dense[known] = 0;
            m_sparse.clear();
        }
        if (m_dense.empty()) {
            if (!m_sparse.emplace(index, 0).second) return false;
        } else {
            if (m_dense[index] != kUnknown) return false;
            m_dense[index] = 0;
        }
        m_reached.push_back(index);
        return true;
    }
    // Numbers what was reached from `first` on, children before parents.
    void number(std::uint32_t first) {
        if (m_dense.empty()) {
            std::sort(m_reached.begin(), m_reached.end());
            for (const std::uint32_t index : m_reached)
                m_sparse[index] = first++;
            return;
        }
        m_reached.clear(); // walking through all is quicker than sorting
        for (std::uint32_t index = 0; index < m_dense.size(); ++index) {
            if (m_dense[index] == kUnknown) continue;
            m_dense[index] = first++;
            m_reached.push_back(index);
        }
    }
    std::size_t bytes() const {
        constexpr std::size_t kPerEntry = 40; // of a hash map
        return m_reached.capacity() * 4 + m_dense.capacity() * 4 + m_sparse.size() * kPerEntry;
    }
    const std::vector<std::uint32_t>& reached() const { return m_reached; }
    std::uint32_t of(std::uint32_t index) const {
        return m_dense.empty() ? m_sparse.at(index) : m_dense[index];
    }

private:
    static constexpr std::uint32_t kUnknown = 0xffffffff;
    std::size_t m_tableSize;
    std::vector<std::uint32_t> m_reached, m_dense;
    std::unordered_map<std::uint32_t, std::uint32_t> m_sparse;
};

} // namespace

Forest extract(const Bdd& bdd, const std::vector<Edge>& roots, std::uint32_t levels,
               Budget& budget) {
    Places places(bdd.size());
    const auto see = [&](Edge edge) {
        if (!Bdd::isConstant(edge)) places.add(edge >> 1);
    };
    for (const Edge root : roots)
        see(root);
    for (std::size_t i = 0; i < places.reached().size(); ++i) {
        budget.step();
        const BddNode& node = bdd.node(places.reached()[i]);
        see(node.high);
        see(node.low);
    }
    const Charge charge(budget, places.bytes() + places.reached().size() * sizeof(BddNode));
    places.number(1);
    Forest forest;
    forest.levels = levels;
    forest.nodes.reserve(places.reached().size() + 1);
    forest.nodes.push_back({kTerminalLevel, 0, 0});
    const auto moved = [&](Edge edge) {
        return Bdd::isConstant(edge) ? edge : places.of(edge >> 1) << 1 | (edge & 1u);
    };
    for (const std::uint32_t index : places.reached()) {
        const BddNode& node = bdd.node(index);
        forest.nodes.push_back({node.level, moved(node.high), moved(node.low)});
    }
    for (const Edge root : roots)
        forest.roots.push_back(moved(root));
    return forest;
}

namespace {

std::vector<std::uint32_t> elementsOf(const Families& families) {
    std::vector<bool> occurs;
    for (std::size_t i = 2; i < families.nodes.size(); ++i) {
        const std::uint32_t element = families.nodes[i].element;
        if (element >= occurs.size()) occurs.resize(element + 1, false);
        occurs[element] = true;
    }
    std::vector<std::uint32_t> elements;
    for (std::uint32_t element = 0; element < occurs.size(); ++element)
        if (occurs[element]) elements.push_back(element);
    return elements;
}

} // namespace

Families extract(const Zdd& zdd, Family root, Budget& budget) {
    Places places(zdd.size());
    const auto see = [&](Family family) {
        if (family > kEmptySet) places.add(family);
    };
    see(root);
    for (std::size_t i = 0; i < places.reached().size(); ++i) {
        budget.step();
        const ZddNode& node = zdd.node(places.reached()[i]);
        see(node.with);
        see(node.without);
    }
    const Charge charge(budget, places.bytes() + places.reached().size() * sizeof(ZddNode));
    places.number(2);
    Families families;
    families.nodes.reserve(places.reached().size() + 2);
    families.nodes.assign(2, {kNoElement, kNoSets, kNoSets});
    const auto moved = [&](Family family) {
        return family <= kEmptySet ? family : places.of(family);
    };
    for (const std::uint32_t index : places.reached()) {
        const ZddNode& node = zdd.node(index);
        families.nodes.push_back({node.element, moved(node.with), moved(node.without)});
    }
    families.root = moved(root);
    families.elements = elementsOf(families);
    return families;
}

namespace {

template <typename Nodes>
std::vector<Edge> putNodesBack(const Nodes& nodes, Bdd& bdd) {
    std::vector<Edge> edges(nodes.size(), kNever);
    for (std::size_t i = 1; i < nodes.size(); ++i) {
        const BddNode& node = nodes[i];
        edges[i] =
            bdd.make(node.level, edges[node.high >> 1] ^ (node.high & 1u), edges[node.low >> 1]);
    }
    return edges;
}

} // namespace

std::vector<Edge> putBack(const Forest& forest, Bdd& bdd) {
    const std::vector<Edge> edges = putNodesBack(forest.nodes, bdd);
    std::vector<Edge> roots;
    for (const Edge root : forest.roots)
        roots.push_back(edges[root >> 1] ^ (root & 1u));
    return roots;
}

Edge putBack(const Diagram& diagram, Bdd& bdd) {
    return putNodesBack(diagram.nodes, bdd)[diagram.root >> 1] ^ (diagram.root & 1u);
}

} // namespace cutwater::logic
