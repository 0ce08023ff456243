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
    Line(const Wiring& wiring, const Order& start)
        : m_wiring(wiring), m_leaves(wiring.leaves()), m_gates(wiring.gates() - 1),
          m_at(m_leaves + m_gates), m_pull(m_at.size()), m_keys(m_at.size()) {
        for (std::size_t level = 0; level < m_leaves; ++level)
            m_at[start[level]] = static_cast<float>(level);
        // A gate starts in the middle of its inputs, which are numbered before it.
        for (std::size_t g = 0; g < m_gates; ++g) {
            float sum = 0;
            for (const std::uint32_t input : wiring.inputs(g))
                sum += m_at[input];
            m_at[m_leaves + g] = sum / static_cast<float>(wiring.inputs(g).size());
        }
    }

    // Moves everything towards its gates once; the answer is how much the gates spanned before.
    double pull() {
        std::fill(m_pull.begin(), m_pull.end(), Pull{});
        double total = 0;
        for (std::size_t g = 0; g < m_gates; ++g) {
            const auto inputs = m_wiring.inputs(g);
            const float own = m_at[m_leaves + g];
            float sum = own, low = own, high = own;
            for (const std::uint32_t input : inputs) {
                const float at = m_at[input];
                sum += at;
                low = std::min(low, at);
                high = std::max(high, at);
            }
            total += high - low;
            const float centre = sum / static_cast<float>(inputs.size() + 1);
            for (const std::uint32_t input : inputs)
                m_pull[input].add(centre);
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

    const Wiring& m_wiring;
    const std::uint32_t m_leaves;
    const std::size_t m_gates; // without the top
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
    Line line(width.wiring(), start);
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
