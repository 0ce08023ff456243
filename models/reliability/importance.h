// SPDX-License-Identifier: GPL-3.0-or-later
// Importance of events for a top event. Definitions: Vesely, Davis, Denning and Saltos,
// NUREG/CR-3385 (1983), from memory. Q is the probability of the top event, Q1 and Q0 the same with
// the event certain and impossible, q the event's own probability; events independent.
#pragma once

#include "models/logic/solution.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace cutwater::reliability {

struct EventImportance {
    std::uint32_t variable = 0;
    double birnbaum = 0;    // Q1 - Q0; negative where the event keeps the top from happening
    double criticality = 0; // (Q1 - Q0) q / Q
    // Two definitions of Fussell-Vesely are in use. This is P(at least one minimal cut set with the
    // event occurs) / Q, the union of the sets; not their sum. Empty for formulas that are not
    // coherent, and where it would cost more than was wished for.
    std::optional<double> fussellVesely;
    // The rare-event form of it: sum of the probabilities of the sets with the event / sum of all
    // sets. Near the other one where sets are rare, above or below it otherwise.
    double setShare = 0;
    double riskAchievement = 0; // Q1 / Q, risk achievement worth; 0 or more
    double riskReduction = 0;   // Q / Q0, risk reduction worth; infinite where Q0 is 0
    // Differential importance for equal relative changes of all events: birnbaum q / sum of
    // birnbaum q (E. Borgonovo and G. E. Apostolakis, 2001, from memory). May be added up.
    double differential = 0;
};

struct ImportanceWish {
    // For Fussell-Vesely: nodes that the unions of one module's sets may need. 0: leave it out.
    std::uint64_t unionNodes = 5'000'000;
    logic::Limits limits{};
};

// One entry for each event that is in at least one set, ascending by variable. Where Q is 0 the
// measures that are divided by it are not a number. Time: a few sweeps over the diagrams for all
// events together, and one more for each event that nearly all of Q depends on; Fussell-Vesely one
// over the event's module. Empty where the limits stopped it.
std::optional<std::vector<EventImportance>> importance(const logic::Solution& solution,
                                                       std::span<const double> q,
                                                       const ImportanceWish& wish = {});

// Several events as one: all the ways in which a component fails, or the members of a group.
struct GroupImportance {
    double birnbaum = 0;        // Q with all certain - Q with all impossible
    double reduction = 0;       // 1 - Q0 / Q: the share of Q that goes when all are impossible
    double setShare = 0;        // sum of the sets with at least one of them / sum of all sets
    double riskAchievement = 0; // Q1 / Q
    double riskReduction = 0;   // Q / Q0
    double differential = 0;    // sum of their differential importances
};

// The variables that are set to 1 together for Q1 and to 0 together for Q0. Usually the same; where
// common causes are counted a part that is taken out does not take its twin with it, but one that
// cannot fail cannot be taken by their common cause either.
struct EventGroup {
    std::vector<std::uint32_t> certain, impossible;
};

// One entry for each group; the sums are over its `impossible` events. Two sweeps for each. Empty:
// stopped.
std::optional<std::vector<GroupImportance>> groupImportance(const logic::Solution& solution,
                                                            std::span<const double> q,
                                                            const std::vector<EventGroup>& groups,
                                                            const std::stop_token& stop = {});

// Importance for the frequency of the top, w = sum of birnbaum x frequency of the event.
struct FrequencyImportance {
    std::uint32_t variable = 0;
    double completes = 0;       // birnbaum x its frequency / w: share of the failures it completes
    double reduction = 0;       // 1 - w0 / w, w0 with the event impossible
    double riskAchievement = 0; // w1 / w, w1 with the event there all the time
};

// `frequency` of each variable, per hour; initiating events have q = 0 and a frequency. Events that
// hinder the top (birnbaum < 0) count nothing, so w is a lower bound for formulas that are not
// coherent. Two sweeps for each event. Empty: stopped, or w is 0.
struct FrequencyFigures {
    double frequency = 0; // w per hour
    std::vector<FrequencyImportance> events;
};
std::optional<FrequencyFigures> frequencyImportance(const logic::Solution& solution,
                                                    std::span<const double> q,
                                                    std::span<const double> frequency,
                                                    const std::stop_token& stop = {});

} // namespace cutwater::reliability
