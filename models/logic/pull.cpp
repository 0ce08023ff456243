// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/pull.h"

#include <algorithm>
#include <bit>
#include <limits>
#include <numeric>
#include <utility>

namespace cutwater::logic {

namespace {

// Everything that stands on the line: the leaves, then the gates. The top joins everything and says
// nothing, so it is left out.
class Line {
public:
    Line(const Program& program, const Order& start) : m_leaves(program.leaves) {
        for (GateView gate(program, 0); !gate.atEnd(); gate.advance()) {
            m_begin.push_back(static_cast<std::uint32_t>(m_inputs.size()));
            for (std::uint32_t i = 0; i < gate.count(); ++i) {
                const std::uint32_t input = gate.input(i);
                if (GateView::isConstant(input)) continue;
                m_inputs.push_back(GateView::index(input) +
                                   (GateView::isGate(input) ? m_leaves : 0));
            }
        }
        const std::size_t gates = m_begin.size() - 1;
        m_at.resize(m_leaves + gates);
        m_pull.resize(m_at.size());
        m_keys.resize(m_at.size());
        for (std::size_t level = 0; level < m_leaves; ++level)
            m_at[start[level]] = static_cast<float>(level);
        // A gate starts in the middle of its inputs, which are numbered before it.
        for (std::size_t g = 0; g < gates; ++g) {
            float sum = 0;
            for (std::uint32_t i = m_begin[g]; i < m_begin[g + 1]; ++i)
                sum += m_at[m_inputs[i]];
            m_at[m_leaves + g] = sum / static_cast<float>(m_begin[g + 1] - m_begin[g]);
        }
    }

    // Moves everything towards its gates once; the answer is how much the gates spanned before.
    double pull() {
        std::fill(m_pull.begin(), m_pull.end(), Pull{});
        double total = 0;
        for (std::size_t g = 0; g + 1 < m_begin.size(); ++g) {
            const float own = m_at[m_leaves + g];
            float sum = own, low = own, high = own;
            for (std::uint32_t i = m_begin[g]; i < m_begin[g + 1]; ++i) {
                const float at = m_at[m_inputs[i]];
                sum += at;
                low = std::min(low, at);
                high = std::max(high, at);
            }
            total += high - low;
            const float centre = sum / static_cast<float>(m_begin[g + 1] - m_begin[g] + 1);
            for (std::uint32_t i = m_begin[g]; i < m_begin[g + 1]; ++i)
                m_pull[m_inputs[i]].add(centre);
            m_pull[m_leaves + g].add(centre);
        }
        // Places are not negative, so their bits are ordered as they are.
        for (std::uint32_t v = 0; v < m_at.size(); ++v) {
            const Pull& pull = m_pull[v];
            const float at = pull.count > 0 ? pull.sum / pull.count : m_at[v];
            m_keys[v] = std::uint64_t{std::bit_cast<std::uint32_t>(at)} << 32 | v;
        }
        std::sort(m_keys.begin(), m_keys.end());
        for (std::size_t place = 0; place < m_keys.size(); ++place)
            m_at[static_cast<std::uint32_t>(m_keys[place])] = static_cast<float>(place);
        return total;
    }

    // After pull().
    void leaves(Order& order) const {
        order.clear();
        for (const std::uint64_t key : m_keys)
            if (const auto vertex = static_cast<std::uint32_t>(key); vertex < m_leaves)
                order.push_back(vertex);
    }

private:
    struct Pull {
        float sum = 0, count = 0;
        void add(float centre) {
            sum += centre;
            count += 1;
        }
    };

    const std::uint32_t m_leaves;
    std::vector<std::uint32_t> m_begin, m_inputs; // of every gate; one more for the end
    std::vector<float> m_at;
    std::vector<Pull> m_pull;
    std::vector<std::uint64_t> m_keys; // place and vertex
};

// The same numbers on every machine.
class Shuffle {
public:
    void operator()(Order& order) {
        for (std::size_t i = order.size(); i-- > 1;)
            std::swap(order[i], order[below(i + 1)]);
    }

private:
    std::size_t below(std::size_t count) {
        m_state = m_state * 6364136223846793005u + 1442695040888963407u; // Knuth's; from memory
        return static_cast<std::size_t>(m_state >> 33) % count;
    }
    std::uint64_t m_state = 1;
};

} // namespace

GuessedOrder pulledTogether(const Program& program, const Order& start, WidthEstimate& width,
                            Budget& budget) {
    constexpr int kRounds = 60, kPatience = 6;
    const Charge charge(budget, program.code.size() * 6 * sizeof(std::uint32_t));
    Line line(program, start);
    GuessedOrder best{start, width(start)};
    Order order;
    const auto offer = [&] {
        const double guess = width(order);
        if (guess < best.guess) best = {order, guess};
    };
    double bestSpan = std::numeric_limits<double>::infinity();
    int waited = 0;
    line.pull();
    for (int round = 0; round < kRounds && waited < kPatience; ++round) {
        budget.look();
        line.leaves(order);
        offer();
        std::reverse(order.begin(), order.end());
        offer();
        const double span = line.pull();
        ++waited;
        if (span < bestSpan * 0.999) waited = 0;
        bestSpan = std::min(bestSpan, span);
    }
    return best;
}

GuessedOrder bestPulled(const Program& program, int starts, WidthEstimate& width, Budget& budget) {
    GuessedOrder best{{}, std::numeric_limits<double>::infinity()};
    Order start = ownLeavesFirst(program);
    Shuffle shuffle;
    for (int i = 0; i < starts; ++i) {
        if (i == 0)
            start = mostWaysFirst(program);
        else if (i == 1)
            start = byLevel(program);
        else
            shuffle(start);
        GuessedOrder pulled = pulledTogether(program, start, width, budget);
        if (best.order.empty() || pulled.guess < best.guess) best = std::move(pulled);
    }
    return best;
}

} // namespace cutwater::logic
