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

Instance weave(std::uint64_t seed, std::uint32_t events, std::uint32_t gates, double sharing,
               std::uint32_t reach) {
    Maker make(seed);
    Random& random = make.random;
    // Gates are numbered downwards from the top, 0. Each hangs below one of the quarter before it,
    // which keeps the tree as deep as trees drawn by people are.
    std::vector<std::vector<Child>> children(gates);
    for (std::uint32_t g = 1; g < gates; ++g)
        children[random.between(g / 4, g - 1)].push_back({true, g});
    // Events go to gates that lack inputs first, the others where chance has it.
    std::uint32_t event = 0;
    for (std::uint32_t g = gates; g-- > 0;)
        while (children[g].size() < 2 && event < events)
            children[g].push_back({false, event++});
    while (event < events)
        children[random.below(gates)].push_back({false, event++});
    std::vector<std::uint32_t> homeOf(events);
    std::size_t references = 0;
    for (std::uint32_t g = 0; g < gates; ++g) {
        references += children[g].size();
        for (const Child& child : children[g])
            if (!child.isGate) homeOf[child.index] = g;
    }
    const auto again =
        static_cast<std::size_t>(sharing * static_cast<double>(references) / (1 - sharing));
    for (std::size_t done = 0; done < again;) {
        const std::uint32_t g = random.below(gates - 1);
        Child child{random.chance(0.5), 0};
        const std::uint32_t last = reach == kAnywhere ? gates - 1 : std::min(gates - 1, g + reach);
        if (child.isGate) {
            child.index = random.between(g + 1, last);
        } else {
            child.index = random.below(events);
            if (homeOf[child.index] < g || homeOf[child.index] > last) continue;
        }
        if (std::find(children[g].begin(), children[g].end(), child) != children[g].end()) continue;
        children[g].push_back(child);
        ++done;
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
