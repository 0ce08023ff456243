// SPDX-License-Identifier: GPL-3.0-or-later
// Common causes over time: here the factors share out what the models are made of, rates and
// probabilities, so that a pair tested together is as bad together as it is.
#pragma once

#include "models/reliability/common_cause.h"
#include "models/reliability/profile.h"

namespace cutwater::reliability {

struct CauseCourses {
    std::vector<EventProfile> profiles; // by variable of the expanded formula
    // Groups (by CommonCauseFormula::groups) whose members have models of different kinds: there a
    // common cause is a share of its first member's model.
    std::vector<std::size_t> mixed;
};

// ofEvent: indexed by position in project.events; those of CauseProbabilities::events() must be
// there. shares as in CauseProbabilities::fill(). A common cause is tested, mended and renewed like
// its best member; being out of service for a test is nobody's common cause.
CauseCourses causeCourses(const CommonCauseFormula& expanded,
                          std::span<const std::vector<double>> shares,
                          std::span<const EventProfile> ofEvent, UnequalRule rule);

} // namespace cutwater::reliability
