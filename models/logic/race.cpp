// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/race.h"

#include "models/logic/order.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace cutwater::logic {

namespace {

constexpr std::uint64_t kGlance = 8000; // nodes: what nearly every module needs less than
constexpr std::uint64_t kFactor = 3;    // from round to round
constexpr std::size_t kLongProgram =
    20000; // words; pulling together would take longer than building

// One order on its way, in a table of its own or in the one that was lent.
struct Runner {
    Order order;
    bool pulled = false; // the order was pulled together, not walked
    std::unique_ptr<Bdd> own;
    std::unique_ptr<Builder> builder;
};

class Race {
public:
    Race(const Program& program, Bdd& lent, Budget& budget, std::uint64_t mostNodes)
        : m_program(program), m_lent(lent), m_budget(budget), m_mostNodes(mostNodes),
          // Six orders, and where the gates stand.
          m_charge(budget, program.leaves * 6 * sizeof(std::uint32_t) + program.code.size() * 2) {}

    std::optional<Built> run() {
        enter(gatesFirst(m_program), m_lent);
        if (advance(m_runners.front(), kGlance)) return m_winner;
        enterTheOthers();
        std::uint64_t allowance = kGlance;
        for (std::size_t round = 0;; ++round, allowance *= kFactor) {
            if (allowance > m_mostNodes) return {};
            for (std::size_t i = 0; i < m_runners.size(); ++i)
                if (advance(m_runners[i], allowance)) return m_winner;
            rank();
            if (m_outOfMemory && m_runners.size() == 1) return {};
            if (round > 0) keepOneOfEachKind();
            if (m_outOfMemory) m_runners.resize(1); // the others' tables are what is missing
            m_outOfMemory = false;
        }
    }

    // After run() found nothing for want of memory: the order that came furthest.
    const Order& best() const { return m_runners.front().order; }
    bool ranOutOfMemory() const { return m_outOfMemory; }
    void letGo() { m_runners.clear(); }

private:
    void enter(Order order, Bdd& bdd) {
        Runner& runner = m_runners.emplace_back();
        runner.builder = std::make_unique<Builder>(m_program, order, bdd, m_budget);
        runner.order = std::move(order);
    }
    void enterAlone(Order order, bool pulled) {
        auto own = std::make_unique<Bdd>(m_budget);
        enter(std::move(order), *own);
        m_runners.back().own = std::move(own);
        m_runners.back().pulled = pulled;
    }
    void enterTheOthers() {
        if (m_program.code.size() <= kLongProgram) {
            enterAlone(pulledTogether(m_program, mostWaysFirst(m_program)), true);
            enterAlone(pulledTogether(m_program, ownLeavesFirst(m_program)), true);
        }
        enterAlone(ownLeavesFirst(m_program), false);
        enterAlone(byLevel(m_program), false);
    }

    // Whether it is finished; then m_winner has the diagram.
    bool advance(Runner& runner, std::uint64_t allowance) {
        try {
            if (!runner.builder->advance(std::min(allowance, m_mostNodes))) return false;
            m_winner = runner.builder->take();
            return true;
        } catch (const Stopped& stopped) {
            if (stopped.why != Stop::memory) throw;
            m_outOfMemory = true;
            return false;
        }
    }

    // Who came furthest first. Those nearly as far are compared by the nodes that they had made
    // when the last of them was where it is now: diagrams grow most in the last steps, and who
    // comes there with the smaller ones is ahead.
    void rank() {
        const auto steps = [](const Runner& runner) { return runner.builder->stepsDone(); };
        std::size_t furthest = 0;
        for (const Runner& runner : m_runners)
            furthest = std::max(furthest, steps(runner));
        const std::size_t near = furthest - furthest / 32;
        std::size_t common = furthest;
        for (const Runner& runner : m_runners)
            if (steps(runner) >= near) common = std::min(common, steps(runner));
        std::stable_sort(m_runners.begin(), m_runners.end(), [&](const Runner& a, const Runner& b) {
            const bool aNear = steps(a) >= near, bNear = steps(b) >= near;
            if (!aNear || !bNear) return steps(a) > steps(b);
            return a.builder->madeAt(common) < b.builder->madeAt(common);
        });
    }

    // Which kind of order ends with the smaller diagram shows only at the end.
    void keepOneOfEachKind() {
        bool has[2] = {false, false};
        std::erase_if(m_runners, [&](const Runner& runner) {
            return std::exchange(has[runner.pulled ? 1 : 0], true);
        });
    }

    const Program& m_program;
    Bdd& m_lent;
    Budget& m_budget;
    const std::uint64_t m_mostNodes;
    const Charge m_charge;
    std::vector<Runner> m_runners;
    std::optional<Built> m_winner;
    bool m_outOfMemory = false;
};

} // namespace

std::optional<Built> buildByRace(const Program& program, Bdd& bdd, Budget& budget,
                                 std::uint64_t mostNodes) {
    const bool oneGate = GateView(program, 0).count() + 3 == program.code.size();
    if (oneGate) return build(program, ownLeavesFirst(program), bdd, budget);
    Race race(program, bdd, budget, mostNodes);
    if (auto built = race.run()) return built;
    if (!race.ranOutOfMemory()) return {};
    const Order order = race.best();
    race.letGo();
    bdd.release();
    return build(program, order, bdd, budget, {.siftAbove = 1u << 16});
}

} // namespace cutwater::logic
