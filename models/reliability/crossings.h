// SPDX-License-Identifier: GPL-3.0-or-later
// How a top event with negations comes about, exactly. In a coherent tree an event brings the top
// about by coming, and Birnbaum times its frequency counts that. Where an event also hinders,
// Birnbaum is the difference of two chances that are both needed:
//   helps   P(the top is there with the event and not without it): counts when the event comes
//   hinders P(the top is there without it and not with it): counts when the event goes
// and a test, or a new mission, that takes several events away at once can bring the top about,
// too.
#pragma once

#include "models/logic/limits.h"
#include "models/logic/solution.h"

#include <cstdint>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace cutwater::reliability {

// A value; reading is safe from several threads.
class Crossings {
public:
    // Solves one formula, twice the size of the top's, for each event that is used both as it is
    // and negated. Nothing where the limits stopped it, or where these are more than 200.
    static std::optional<Crossings> of(const logic::Formula& formula, logic::Literal top,
                                       const logic::Limits& limits = {});

    // `birnbaum` is the variable's own, at the same q.
    double helps(std::uint32_t variable, std::span<const double> q, double birnbaum) const;

private:
    friend class JumpBook;
    enum class Part : std::uint8_t { none, helps, hinders, both };
    std::shared_ptr<const logic::Formula> m_formula;
    logic::Literal m_top;
    std::vector<Part> m_parts;
    std::map<std::uint32_t, logic::Solution> m_helps; // of those that do both
};

// The chance that the top is away just before a moment and there just after it, when events are
// taken away at that moment. Keeps what it has solved; not thread-safe.
class JumpBook {
public:
    JumpBook(const Crossings& crossings, const logic::Limits& limits)
        : m_crossings(crossings), m_limits(limits) {}

    // Probabilities just before and just after; an event whose probability falls is there after
    // only if it was there before. One whose probability rises is taken as it was before: being
    // taken out for a test is no failure. Nothing where the limits stopped it, or where more than
    // 100 sets of events have to be looked at.
    std::optional<double> atJump(std::span<const double> before, std::span<const double> after);

private:
    const Crossings& m_crossings;
    logic::Limits m_limits;
    std::map<std::vector<std::uint32_t>, std::optional<logic::Solution>> m_solved;
};

} // namespace cutwater::reliability
