// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/race.h"

#include "models/logic/order.h"
#include "models/logic/pull.h"

#include <algorithm>
#include <memory>
#include <utility>

namespace cutwater::logic {

namespace {

// All allowances are nodes made.
constexpr std::uint64_t kGlance = 8000;          // what nearly every module needs less than
constexpr std::uint64_t kFirstAllowance = 24000; // of the first round, and then
constexpr std::uint64_t kFactor = 4;             // from round to round
constexpr std::uint64_t kWalkedShare = 3;        // a walked order may make a third of it
// Pulling costs about as much as building what the round before allows.
constexpr int kFirstStarts = 2, kMoreStarts = 8;
constexpr double kClearlyBetter = 4; // guesses are wrong by as much

// One order on its way, in a table of its own or in the one that was lent.
struct Runner {
    GuessedOrder order;
    bool pulled = false;
    std::unique_ptr<Bdd> own;
    std::unique_ptr<Builder> builder;
};

class Race {
public:
    Race(const Program& program, Bdd& lent, Budget& budget, std::uint64_t mostNodes)
        : m_program(program), m_lent(lent), m_budget(budget), m_mostNodes(mostNodes),
          // Orders, where the gates stand, and what guessing takes.
          m_charge(budget, (program.leaves + program.code.size()) * 6 * sizeof(std::uint32_t)) {}

    std::optional<Built> run() {
        enter({gatesFirst(m_program), 0}, m_lent);
        if (advance(m_runners.front(), kGlance)) return m_winner;
        const bool isLong = m_program.code.size() > kTooLongToPull;
        if (isLong)
            walkAll();
        else
            walkAndPull();
        for (std::uint64_t allowance = kFirstAllowance;; allowance *= kFactor) {
            const bool alone = m_runners.size() == 1;
            for (Runner& runner : m_runners)
                if (advance(runner, runner.pulled || isLong ? allowance : allowance / kWalkedShare))
                    return m_winner;
            if (m_outOfMemory && alone) return {};
            if (m_outOfMemory || (isLong && allowance > kFirstAllowance)) keepTheFurthest();
            if (allowance >= m_mostNodes) return {};
            if (allowance == kFirstAllowance && !isLong) pullBetter(kMoreStarts);
        }
    }

    // After run() found nothing for want of memory.
    bool ranOutOfMemory() const { return m_outOfMemory; }
    Order takeBest() {
        Order order = std::move(m_runners.front().order.order);
        m_runners.clear();
        return order;
    }

private:
    void enter(GuessedOrder order, Bdd& bdd) {
        Runner& runner = m_runners.emplace_back();
        runner.builder = std::make_unique<Builder>(m_program, order.order, bdd, m_budget);
        runner.order = std::move(order);
    }
    void enterAlone(GuessedOrder order, bool pulled) {
        auto own = std::make_unique<Bdd>(m_budget);
        enter(std::move(order), *own);
        m_runners.back().own = std::move(own);
        m_runners.back().pulled = pulled;
    }

    // Guesses about programs with tens of thousands of words are as good as none: how far the
    // orders come decides.
    void walkAll() {
        enterAlone({ownLeavesFirst(m_program), 0}, false);
        enterAlone({byLevel(m_program), 0}, false);
    }
    void walkAndPull() {
        m_width.emplace(m_program);
        walkBetter();
        pullBetter(kFirstStarts);
    }

    // Another walk takes the place of the first where it promises clearly more.
    void walkBetter() {
        GuessedOrder& first = m_runners.front().order;
        first.guess = (*m_width)(first.order);
        GuessedOrder best{{}, first.guess / kClearlyBetter};
        for (Order order : {ownLeavesFirst(m_program), byLevel(m_program)}) {
            const double guess = (*m_width)(order);
            if (guess < best.guess) best = {std::move(order), guess};
        }
        if (best.order.empty()) return;
        m_runners.clear();
        enterAlone(std::move(best), false);
    }

    // One more, or nobody where it is not clearly better than those that were pulled before.
    void pullBetter(int starts) {
        GuessedOrder best = bestPulled(m_program, starts, *m_width, m_budget);
        for (const Runner& runner : m_runners)
            if (runner.pulled && best.guess * kClearlyBetter > runner.order.guess) return;
        enterAlone(std::move(best), true);
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

    // The others' tables are what is missing.
    void keepTheFurthest() {
        const auto furthest = std::max_element(
            m_runners.begin(), m_runners.end(), [](const Runner& a, const Runner& b) {
                return a.builder->stepsDone() < b.builder->stepsDone();
            });
        std::swap(m_runners.front(), *furthest);
        m_runners.resize(1);
        if (m_runners.front().own) m_lent.release();
        m_outOfMemory = false;
    }

    const Program& m_program;
    Bdd& m_lent;
    Budget& m_budget;
    const std::uint64_t m_mostNodes;
    const Charge m_charge;
    std::optional<WidthEstimate> m_width;
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
    const Order order = race.takeBest();
    bdd.release();
    return build(program, order, bdd, budget, {.siftAbove = 1u << 16});
}

} // namespace cutwater::logic
