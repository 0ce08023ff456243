// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/width.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <limits>

namespace cutwater::logic {

namespace {
constexpr std::size_t kMostBits = 1000; // 2^500 is as good as never
}

WidthEstimate::WidthEstimate(const Program& program) : m_wiring(program) {
    for (GateView gate(program, 0); !gate.atEnd(); gate.advance()) {
        // A vote counts up to k, or down from n - k.
        const std::uint32_t counted =
            gate.op() == Op::atLeast ? std::min(gate.k(), gate.count() - gate.k() + 1) : 1;
        m_bits.push_back(static_cast<std::int32_t>(std::bit_width(counted)));
    }
    m_known.resize(m_wiring.leaves() + m_wiring.gates());
    m_awaited.resize(m_known.size());
    m_open.resize(m_wiring.leaves() + 1);
    m_border.resize(m_wiring.leaves() + 1);
    for (std::size_t bits = 0; bits <= kMostBits; ++bits)
        m_power.push_back(std::exp2(0.5 * static_cast<double>(bits)));
}

double WidthEstimate::operator()(const Order& order) {
    std::fill(m_open.begin(), m_open.end(), 0);
    std::fill(m_border.begin(), m_border.end(), 0);
    std::fill(m_awaited.begin(), m_awaited.end(), -1);
    for (std::size_t level = 0; level < order.size(); ++level)
        m_known[order[level]] = static_cast<std::int32_t>(level);
    for (std::size_t g = 0; g < m_wiring.gates(); ++g) {
        std::int32_t first = std::numeric_limits<std::int32_t>::max(), last = -1;
        for (const std::uint32_t input : m_wiring.inputs(g)) {
            first = std::min(first, m_known[input]);
            last = std::max(last, m_known[input]);
        }
        m_known[m_wiring.leaves() + g] = last;
        for (const std::uint32_t input : m_wiring.inputs(g))
            m_awaited[input] = std::max(m_awaited[input], last);
        if (first >= last) continue;
        m_open[static_cast<std::size_t>(first)] += m_bits[g];
        m_open[static_cast<std::size_t>(last)] -= m_bits[g];
    }
    for (std::size_t node = 0; node < m_known.size(); ++node) {
        if (m_known[node] < 0 || m_awaited[node] <= m_known[node]) continue;
        ++m_border[static_cast<std::size_t>(m_known[node])];
        --m_border[static_cast<std::size_t>(m_awaited[node])];
    }
    double sum = 0;
    std::int32_t open = 0, border = 0;
    for (std::size_t level = 0; level < order.size(); ++level) {
        open += m_open[level];
        border += m_border[level];
        const auto bits = static_cast<std::size_t>(std::min(open, border));
        if (bits > kMostBits) return std::numeric_limits<double>::infinity();
        sum += m_power[bits];
    }
    return sum;
}

} // namespace cutwater::logic
