// SPDX-License-Identifier: GPL-3.0-or-later
// A circuit of and/or gates that may feed back into itself, as a supply network does: a bus is
// alive where a live neighbour feeds it. Its least solution (nothing is alive by itself) as a
// formula.
#pragma once

#include "models/logic/formula.h"

#include <cstdint>
#include <optional>
#include <vector>

namespace cutwater::reliability {

// A gate, or a literal of the formula.
struct CircuitInput {
    bool isGate = false;
    std::uint32_t gate = 0;
    logic::Literal literal;
};

class Circuit {
public:
    // Gates are made first and get their inputs later, so that they may form loops. A gate without
    // inputs: and is true, or is false.
    std::uint32_t addGate(bool conjunction);
    void addInput(std::uint32_t gate, std::uint32_t input);
    void addInput(std::uint32_t gate, logic::Literal input);

    std::uint32_t size() const { return static_cast<std::uint32_t>(m_gates.size()); }
    const std::vector<CircuitInput>& inputs(std::uint32_t gate) const {
        return m_gates[gate].inputs;
    }

    // The gates that `gate` stands on, itself among them, ascending.
    std::vector<std::uint32_t> below(std::uint32_t gate) const;

    // Adds the least solution for `gates` to the formula and answers the literals of all gates, by
    // number; those that were not needed are false. Gates of one loop are unrolled as often as the
    // loop has gates, which is enough for any state of the events. Empty where that would take more
    // than `mostGates`.
    std::optional<std::vector<logic::Literal>> solve(logic::Formula& formula,
                                                     const std::vector<std::uint32_t>& gates,
                                                     std::size_t mostGates = 1'000'000) const;

private:
    struct Gate {
        bool conjunction = false;
        std::vector<CircuitInput> inputs;
    };
    std::vector<Gate> m_gates;
};

} // namespace cutwater::reliability
