// SPDX-License-Identifier: GPL-3.0-or-later
// The same questions answered by BuDDy, somebody else's decision diagrams, for formulas too large
// for trying all states. Written to be plain: it recurses, to the depth of the number of variables.
#pragma once

#include "models/logic/count.h"
#include "models/logic/formula.h"

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace cutwater::oracle {

// Families of sets as a zero-suppressed diagram of our own; elements are literal codes, 2v for v
// and 2v+1 for not v.
class Families {
public:
    using Node = std::uint32_t;
    static constexpr Node kNone = 0; // no sets
    static constexpr Node kUnit = 1; // the empty set alone

    Families();
    // The sets of `without`, and those of `with` with `element` added; its element comes before all
    // of theirs.
    Node make(std::uint32_t element, Node without, Node with);
    // The sets of `a` that are not in `b`.
    Node difference(Node a, Node b);

    std::size_t size() const { return m_nodes.size(); }
    // counts[k]: sets of order k.
    std::vector<logic::UInt128> countsByOrder(Node node) const;
    // Sum of the products; `chance` by element.
    long double sum(Node node, std::span<const long double> chance) const;
    // 1 - product of (1 - product), set by set: for small families.
    long double bound(Node node, std::span<const long double> chance) const;

private:
    struct Content {
        std::uint32_t element;
        Node without, with;
        auto operator<=>(const Content&) const = default;
    };
    std::vector<Content> m_nodes;
    std::map<Content, Node> m_unique;
    std::map<std::pair<Node, Node>, Node> m_differences;
};

struct Reference {
    long double occurs = 0, occursNot = 0;
    bool monotone = false;
    std::optional<bool> constant;
    std::vector<logic::UInt128> countsByOrder;
    long double sum = 0;
    std::optional<long double> bound; // only where there are at most 100,000 sets
};

// Nothing where the diagrams get too large for a test.
std::optional<Reference> refer(const logic::Formula& formula, logic::Literal top,
                               std::span<const double> q);

} // namespace cutwater::oracle
