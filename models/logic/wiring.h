// SPDX-License-Identifier: GPL-3.0-or-later
// Wiring: which leaves and gates a program's gates stand on, for those who walk over it many times.
#pragma once

#include "models/logic/program.h"

#include <cstdint>
#include <span>
#include <vector>

namespace cutwater::logic {

// Leaves are numbered first, then gates; constants are left out.
class Wiring {
public:
    explicit Wiring(const Program& program) : m_leaves(program.leaves), m_begin{0} {
        for (GateView gate(program, 0); !gate.atEnd(); gate.advance()) {
            for (std::uint32_t i = 0; i < gate.count(); ++i) {
                const std::uint32_t input = gate.input(i);
                if (GateView::isConstant(input)) continue;
                m_inputs.push_back(GateView::index(input) +
                                   (GateView::isGate(input) ? m_leaves : 0));
            }
            m_begin.push_back(static_cast<std::uint32_t>(m_inputs.size()));
        }
    }

    std::uint32_t leaves() const { return m_leaves; }
    std::size_t gates() const { return m_begin.size() - 1; }
    std::span<const std::uint32_t> inputs(std::size_t gate) const {
        return {m_inputs.data() + m_begin[gate], m_inputs.data() + m_begin[gate + 1]};
    }

private:
    std::uint32_t m_leaves;
    std::vector<std::uint32_t> m_begin, m_inputs; // of every gate; one more for the end
};

} // namespace cutwater::logic
