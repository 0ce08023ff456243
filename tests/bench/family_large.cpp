// SPDX-License-Identifier: GPL-3.0-or-later
// Family 2: large trees whose gates and events are used again, nearby or anywhere.
#include "tests/bench/maker.h"

#include <algorithm>

namespace bench {

namespace {

constexpr std::uint32_t kAnywhere = ~std::uint32_t{0};

// A reference of a gate: to a gate further down (isGate) or to an event.
struct Child {
    bool isGate;
    std::uint32_t index;
    bool operator==(const Child&) const = default;
};

// Two inputs for every gate and the rest where chance has it; `events` + `again` places are left
// when every gate but the top has its own.
std::vector<std::vector<Child>> skeleton(Random& random, std::uint32_t gates, std::uint32_t places,
                                         std::vector<std::uint32_t>& open) {
    std::vector<std::vector<Child>> children(gates);
    open.assign(gates, 2);
    for (std::uint32_t spare = places + gates - 1 - 2 * gates; spare > 0; --spare)
        ++open[random.below(gates)];
    // Gates are numbered downwards from the top, 0. Each hangs below one of the three quarters just
    // before it, which keeps the tree as deep as trees drawn by people are.
    for (std::uint32_t g = 1; g < gates; ++g) {
        std::uint32_t parent = random.between(g / 4, g - 1);
        while (open[parent] == 0) // there is one: the gates before have at least g + 1 places open
            parent = parent == 0 ? g - 1 : parent - 1;
        children[parent].push_back({true, g});
        --open[parent];
    }
    return children;
}

// Up from g by `levels`, and down again by a few: something that belongs to the same subtree.
Child relative(Random& random, const std::vector<std::vector<Child>>& children,
               const std::vector<std::uint32_t>& parents, std::uint32_t g, std::uint32_t levels) {
    for (std::uint32_t i = random.between(1, levels); i > 0; --i)
        g = parents[g];
    Child child{true, g};
    for (std::uint32_t i = random.between(1, levels + 1); i > 0 && child.isGate; --i) {
        const auto& below = children[child.index];
        if (below.empty()) break;
        child = below[random.below(static_cast<std::uint32_t>(below.size()))];
    }
    return child;
}

// Precondition: events > gates.
Instance weave(std::uint64_t seed, std::uint32_t events, std::uint32_t gates, double sharing,
               std::uint32_t reach) {
    Maker make(seed);
    Random& random = make.random;
    const auto again = static_cast<std::uint32_t>(sharing * (events + gates) / (1 - sharing));
    std::vector<std::uint32_t> open;
    auto children = skeleton(random, gates, events + again, open);
    std::vector<std::uint32_t> homes; // the gate of every open place
    for (std::uint32_t g = 0; g < gates; ++g)
        homes.insert(homes.end(), open[g], g);
    std::vector<std::uint32_t> parents(gates, 0);
    for (std::uint32_t g = 0; g < gates; ++g)
        for (const Child& child : children[g])
            parents[child.index] = g;
    for (std::size_t i = homes.size(); i-- > 1;)
        std::swap(homes[i], homes[random.below(static_cast<std::uint32_t>(i + 1))]);
    for (std::uint32_t e = 0; e < events; ++e)
        children[homes[e]].push_back({false, e});
    for (std::size_t place = events; place < homes.size(); ++place) {
        const std::uint32_t g = homes[place];
        // A few tries; the last gates of all have no gate below them and little around.
        for (int attempt = 0; attempt < 200; ++attempt) {
            Child child{g + 1 < gates && random.chance(0.5), 0};
            if (reach != kAnywhere)
                child = relative(random, children, parents, g, reach);
            else
                child.index =
                    child.isGate ? random.between(g + 1, gates - 1) : random.below(events);
            // Only downwards: no circle.
            if (child.isGate ? child.index <= g : homes[child.index] < g) continue;
            if (std::find(children[g].begin(), children[g].end(), child) != children[g].end())
                continue;
            children[g].push_back(child);
            break;
        }
    }

    std::vector<Literal> eventLiterals, gateLiterals(gates);
    for (std::uint32_t e = 0; e < events; ++e)
        eventLiterals.push_back(make.event(1e-3, 1e-1));
    for (std::uint32_t g = gates; g-- > 0;) {
        std::vector<Literal> inputs;
        for (const Child& child : children[g])
            inputs.push_back(child.isGate ? gateLiterals[child.index] : eventLiterals[child.index]);
        const double dice = random.unit();
        if (inputs.size() == 3 && dice < 0.2)
            gateLiterals[g] = make.atLeast(2, inputs);
        else
            gateLiterals[g] = dice < 0.6 ? make.any(inputs) : make.all(inputs);
    }
    return make.finish(gateLiterals[0]);
}

} // namespace

Instance tangle(std::uint64_t seed, std::uint32_t events, std::uint32_t gates, double sharing) {
    return weave(seed, events, gates, sharing, kAnywhere);
}

Instance neighbours(std::uint64_t seed, std::uint32_t events, std::uint32_t gates, double sharing,
                    std::uint32_t reach) {
    return weave(seed, events, gates, sharing, reach);
}

} // namespace bench
