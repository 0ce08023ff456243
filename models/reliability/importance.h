// SPDX-License-Identifier: GPL-3.0-or-later
// Importance of single events for a top event. Definitions: Vesely, Davis, Denning and Saltos,
// NUREG/CR-3385 (1983), from memory. Q is the probability of the top event, Q1 and Q0 the same with
// the event certain and impossible, q the event's own probability; events independent.
#pragma once

#include "models/logic/solution.h"

#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace cutwater::reliability {

struct EventImportance {
    std::uint32_t variable = 0;
    double birnbaum = 0;    // Q1 - Q0; negative where the event keeps the top from happening
    double criticality = 0; // (Q1 - Q0) q / Q
    // Two definitions are in use. This is P(at least one minimal cut set with the event occurs) /
    // Q, the union of the sets; not their sum. Empty for formulas that are not coherent, and where
    // there are more sets than were wished for.
    std::optional<double> fussellVesely;
    double riskAchievement = 0; // Q1 / Q, risk achievement worth; 0 or more
    double riskReduction = 0;   // Q / Q0, risk reduction worth; infinite where Q0 is 0
};

struct ImportanceWish {
    std::size_t maxSets = 100'000; // for Fussell-Vesely, which lists them; 0: leave it out
    logic::Limits limits;          // for the unions that Fussell-Vesely needs
};

// One entry for each event that is in at least one set, ascending by variable. Where Q is 0 the
// measures that are divided by it are not a number. Time: two passes over the diagrams per event;
// Fussell-Vesely also solves the union of the sets with each event. Empty where the limits stopped
// it.
std::optional<std::vector<EventImportance>> importance(const logic::Solution& solution,
                                                       std::span<const double> q,
                                                       const ImportanceWish& wish = {});

} // namespace cutwater::reliability
