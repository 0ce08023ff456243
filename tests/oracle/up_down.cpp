// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/oracle/up_down.h"

#include <algorithm>
#include <cmath>

namespace cutwater::oracle {

namespace {

// Something happens to a part: one more reason to be down, or one less.
struct Step {
    double time = 0;
    std::size_t part = 0;
    int change = 0;
    bool failure = false; // the part fails, rather than being taken out or brought back
    bool instant = false; // comes and is over
};

class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_engine(seed) {}
    double uniform() { // 0 < u < 1
        return (static_cast<double>(m_engine() >> 11) + 0.5) * 0x1p-53;
    }
    double exponential(double mean) { return -mean * std::log(uniform()); }
    double weibull(double shape, double scale) {
        return scale * std::pow(-std::log(uniform()), 1 / shape);
    }

private:
    std::mt19937_64 m_engine;
};

class Life {
public:
    Life(std::vector<Step>& steps, Dice& dice, double end)
        : m_steps(steps), m_dice(dice), m_end(end) {}

    void live(const Part& part, std::size_t number) {
        m_number = number;
        switch (part.kind) {
        case Part::Kind::initiating:
            for (double t = m_dice.exponential(1 / part.rate); t < m_end;
                 t += m_dice.exponential(1 / part.rate))
                m_steps.push_back({t, number, 0, true, true});
            return;
        case Part::Kind::repairable:
            for (double begin = 0; begin < m_end;) {
                const double over =
                    part.renewal > 0 ? std::min(m_end, begin + part.renewal) : m_end;
                for (double t = begin; t < over;) {
                    const double fails = t + m_dice.exponential(1 / part.rate);
                    const double back = fails + m_dice.exponential(part.repair);
                    down(fails, std::min(back, over), true, over);
                    t = back;
                }
                begin = over;
            }
            return;
        case Part::Kind::failing:
        case Part::Kind::weibull:
            for (double begin = 0; begin < m_end;) {
                const double over =
                    part.renewal > 0 ? std::min(m_end, begin + part.renewal) : m_end;
                const double fails = begin + (part.kind == Part::Kind::failing
                                                  ? m_dice.exponential(1 / part.rate)
                                                  : m_dice.weibull(part.shape, part.scale));
                down(fails, over, true, over);
                begin = over;
            }
            return;
        case Part::Kind::tested: livesWithTests(part); return;
        }
    }

private:
    void down(double from, double to, bool failure, double before) {
        if (from >= before || from >= m_end) return;
        m_steps.push_back({from, m_number, 1, failure, false});
        if (to < m_end) m_steps.push_back({to, m_number, -1, false, false});
    }

    // Two parts in a row: one whose failures the tests find, one that waits for the overhaul.
    // Nothing that the tests can find fails during a test.
    void livesWithTests(const Part& part) {
        if (part.coverage < 1) {
            for (double begin = 0; begin < m_end;) {
                const double over =
                    part.renewal > 0 ? std::min(m_end, begin + part.renewal) : m_end;
                down(begin + m_dice.exponential(1 / (part.rate * (1 - part.coverage))), over, true,
                     over);
                begin = over;
            }
        }
        enum { works, failed, inRepair } state = works;
        double since = 0; // of being down
        double t = 0, test = part.firstTest;
        double next = m_dice.exponential(1 / (part.rate * part.coverage));
        while (t < m_end) {
            if (state == inRepair) {
                const double back = t + m_dice.exponential(part.repair);
                if (back < test) {
                    down(since, back, true, m_end);
                    state = works;
                    t = back;
                    next = t + m_dice.exponential(1 / (part.rate * part.coverage));
                    continue;
                }
            } else if (state == works && next < test) {
                state = failed;
                since = next;
            }
            // The test.
            const double after = test + part.testDuration;
            if (state == works) {
                if (part.testDuration > 0) down(test, after, false, m_end);
                next = after + (next - test);
            } else if (part.repair > 0) {
                state = inRepair;
            } else {
                down(since, after, true, m_end);
                state = works;
                next = after + m_dice.exponential(1 / (part.rate * part.coverage));
            }
            t = after;
            test += part.interval;
        }
        if (state != works) down(since, m_end, true, m_end);
    }

    std::vector<Step>& m_steps;
    Dice& m_dice;
    double m_end;
    std::size_t m_number = 0;
};

class Tally {
public:
    void add(double value) {
        m_sum += value;
        m_squares += value * value;
        ++m_count;
    }
    Counted counted() const {
        const double n = static_cast<double>(m_count);
        const double mean = m_sum / n;
        return {mean, std::sqrt(std::max(0.0, m_squares / n - mean * mean) / n)};
    }

private:
    double m_sum = 0, m_squares = 0;
    std::size_t m_count = 0;
};

} // namespace

Lives liveThrough(const std::vector<Part>& parts,
                  const std::function<bool(const std::vector<char>&)>& top, double end,
                  std::size_t histories, std::uint64_t seed) {
    Dice dice(seed);
    std::vector<Step> steps;
    std::vector<int> reasons(parts.size());
    std::vector<char> states(parts.size());
    Tally number, share, once, atEnd;
    for (std::size_t history = 0; history < histories; ++history) {
        steps.clear();
        Life life(steps, dice, end);
        for (std::size_t i = 0; i < parts.size(); ++i)
            life.live(parts[i], i);
        std::sort(steps.begin(), steps.end(),
                  [](const Step& a, const Step& b) { return a.time < b.time; });
        std::fill(reasons.begin(), reasons.end(), 0);
        std::fill(states.begin(), states.end(), 0);
        bool there = top(states), ever = there;
        double since = 0, time = 0, came = 0;
        const auto happens = [&](double at, bool counts) {
            const bool now = top(states);
            if (now && !there) {
                since = at;
                ever = true;
                if (counts) came += 1;
            }
            if (!now && there) time += at - since;
            there = now;
        };
        for (std::size_t first = 0; first < steps.size();) {
            // What comes back at one moment comes back together (one test round, one new mission);
            // it can bring the top about where that is not coherent.
            std::size_t last = first;
            bool back = false;
            for (; last < steps.size() && steps[last].time <= steps[first].time + 1e-9; ++last) {
                const Step& step = steps[last];
                if (step.change >= 0) continue;
                reasons[step.part] += step.change;
                states[step.part] = reasons[step.part] > 0;
                back = true;
            }
            if (back) happens(steps[first].time, true);
            for (; first < last; ++first) {
                const Step& step = steps[first];
                if (step.instant) {
                    states[step.part] = 1;
                    if (!there && top(states)) {
                        came += 1;
                        ever = true;
                    }
                    states[step.part] = 0;
                }
                if (step.change <= 0) continue;
                reasons[step.part] += step.change;
                states[step.part] = 1;
                happens(step.time, step.failure); // being taken out for a test is no failure
            }
        }
        if (there) time += end - since;
        number.add(came);
        share.add(time / end);
        once.add(ever ? 1 : 0);
        atEnd.add(there ? 1 : 0);
    }
    return {number.counted(), share.counted(), once.counted(), atEnd.counted()};
}

} // namespace cutwater::oracle
