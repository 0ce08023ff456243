// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/cases.h"

#include "models/logic/flat_index.h"
#include "models/logic/judge.h"

#include <algorithm>
#include <array>
#include <vector>

namespace cutwater::logic {

namespace {

using Clock = std::chrono::steady_clock;

class Search {
public:
    Search(const Functions& functions, Bdd& bdd, std::span<const double> q, const CasesWish& wish,
           Budget& budget)
        : m_functions(functions), m_bdd(bdd), m_q(q), m_wish(wish), m_budget(budget),
          m_charge(budget, 0), m_judge(functions, bdd, q, budget), m_width(functions.edges.size()) {
    }

    CasesFound run() {
        try {
            makeRoom();
            arrive(functionsCase(m_functions.edges), 1);
            goOn();
        } catch (const Stopped& stopped) {
            if (stopped.why != Stop::memory) throw;
        }
        settle();
        return {m_best, m_cases.size()};
    }

private:
    struct Case {
        double mass = 0; // of coming here and not yet being split
        Interval judged;
        std::uint32_t level = 0; // the first one that is not decided
        bool looked = false;     // at the pairs too
        double open() const { return mass * (judged.upper - judged.lower); }
    };
    struct Waiting {
        double open;
        std::uint32_t number;
        bool operator<(const Waiting& other) const {
            return open != other.open ? open < other.open : number > other.number;
        }
    };

    void goOn() {
        while (!m_heap.empty()) {
            m_budget.step();
            std::pop_heap(m_heap.begin(), m_heap.end());
            const Waiting next = m_heap.back();
            m_heap.pop_back();
            if (m_cases[next.number].open() != next.open) continue; // it has changed since
            if (m_cases.size() >= m_nextCheck) {
                settle();
                m_nextCheck *= 2;
            }
            if (m_sum.upper - m_sum.lower <= m_wish.width * m_sum.lower && narrow()) return;
            if (m_cases.size() >= m_wish.cases || Clock::now() > m_wish.end) return;
            if (!lookAt(next.number)) split(next.number);
        }
    }

    // Pairs are dear while the functions have much in common. False where nothing more can be seen.
    bool lookAt(std::uint32_t number) {
        Case& c = m_cases[number];
        if (c.looked || c.level < m_functions.shared) return false;
        const Interval seen = m_judge.look(edgesOf(number), c.level);
        count(c, -1);
        c.judged = {std::max(c.judged.lower, seen.lower), std::min(c.judged.upper, seen.upper)};
        c.judged.upper = std::max(c.judged.lower, c.judged.upper);
        c.looked = true;
        count(c, 1);
        wait(number);
        return true;
    }

    void split(std::uint32_t number) {
        makeRoom();
        const std::uint32_t level = m_cases[number].level;
        std::array<std::uint32_t, 2> next{};
        for (const bool occurs : {false, true}) {
            m_edges.clear();
            for (const Edge edge : edgesOf(number))
                m_edges.push_back(m_bdd.level(edge) != level ? edge
                                  : occurs                   ? m_bdd.high(edge)
                                                             : m_bdd.low(edge));
            next[occurs] = functionsCase(m_edges);
        }
        Case& c = m_cases[number];
        const double mass = c.mass;
        count(c, -1);
        c.mass = 0;
        arrive(next[0], mass * (1 - m_q[level]));
        arrive(next[1], mass * m_q[level]);
    }

    std::span<const Edge> edgesOf(std::uint32_t number) const {
        return {m_stored.data() + number * m_width, m_width};
    }

    // The number of the case with these edges.
    std::uint32_t functionsCase(const std::vector<Edge>& edges) {
        const std::uint64_t hash = hashOf(edges);
        std::uint32_t level = kTerminalLevel;
        for (const Edge edge : edges)
            level = std::min(level, m_bdd.level(edge));
        const auto known = m_index.find(hash, [&](std::uint32_t number) {
            return std::equal(edges.begin(), edges.end(), edgesOf(number).begin());
        });
        if (known) return *known;
        const auto number = static_cast<std::uint32_t>(m_cases.size());
        Case c{0, m_judge.glance(edges), level, false};
        m_stored.insert(m_stored.end(), edges.begin(), edges.end());
        m_cases.push_back(c);
        m_index.add(hash, number);
        return number;
    }

    void arrive(std::uint32_t number, double mass) {
        Case& c = m_cases[number];
        count(c, -1);
        c.mass += mass;
        count(c, 1);
        wait(number);
    }
    void count(const Case& c, int sign) {
        m_sum.lower += sign * c.mass * c.judged.lower;
        m_sum.upper += sign * c.mass * c.judged.upper;
    }
    void wait(std::uint32_t number) {
        const double open = m_cases[number].open();
        if (!(open > 0)) return;
        m_heap.push_back({open, number});
        std::push_heap(m_heap.begin(), m_heap.end());
    }

    // Taking away and adding has left its rounding in the sums: adds all up again.
    void settle() {
        m_sum = {0, 0};
        for (const Case& c : m_cases) {
            m_budget.step();
            count(c, 1);
        }
        if (m_cases.empty()) return; // no room even for the first
        m_best.lower = std::max(m_best.lower, std::min(1.0, m_sum.lower));
        m_best.upper = std::max(m_best.lower, std::min(m_best.upper, m_sum.upper));
    }
    bool narrow() {
        settle();
        return m_best.upper - m_best.lower <= m_wish.width * m_best.lower;
    }

    // For two more cases, which is what a split makes at most.
    void makeRoom() {
        const std::size_t needed = std::max(m_cases.size() + 2, m_heap.size() / 4 + 1);
        if (needed <= m_room) return;
        const std::size_t room = std::max<std::size_t>(256, 2 * needed);
        constexpr std::size_t kIndex = 4 * 12, kHeap = 4 * sizeof(Waiting);
        m_charge.set(room * (m_width * sizeof(Edge) + sizeof(Case) + kIndex + kHeap));
        m_cases.reserve(room);
        m_stored.reserve(room * m_width);
        m_heap.reserve(4 * room);
        m_room = room;
    }

    const Functions& m_functions;
    Bdd& m_bdd;
    std::span<const double> m_q;
    const CasesWish& m_wish;
    Budget& m_budget;
    Charge m_charge;
    Judge m_judge;
    std::size_t m_width, m_room = 0;
    std::vector<Case> m_cases;
    std::vector<Edge> m_stored, m_edges; // m_width for each case
    FlatIndex m_index;
    std::vector<Waiting> m_heap;
    Interval m_sum{0, 0}, m_best;
    std::size_t m_nextCheck = 2;
};

} // namespace

CasesFound boundByCases(const Functions& functions, Bdd& bdd, std::span<const double> q,
                        const CasesWish& wish, Budget& budget) {
    bdd.setCeiling(wish.nodes);
    const CasesFound found = Search(functions, bdd, q, wish, budget).run();
    bdd.setCeiling(~std::size_t{0});
    return found;
}

} // namespace cutwater::logic
