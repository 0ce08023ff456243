// SPDX-License-Identifier: GPL-3.0-or-later
// Probability of one event from its failure model. Formulas: textbook (NUREG/CR-2300, 1983; IEC
// 61025:2006), from memory. Rates per hour, times in hours. All use expm1/log1p, so that small
// values keep their digits.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::reliability {

// 1 - exp(-rate t). rate >= 0, t >= 0.
double missionUnreliability(double rate, double time);
// rate / (rate + 1/repair) (1 - exp(-(rate + 1/repair) t)); t infinite: the steady state. repair >
// 0.
double repairableUnavailability(double rate, double repair, double time);
// Mean over one test interval, 1 - (1 - exp(-rate interval)) / (rate interval); tests and repairs
// take no time.
double testedMeanUnavailability(double rate, double interval);
// Mean over one whole cycle of a tested part: waiting undetected, out of service for the test,
// under repair where it was found failed; coverage < 1 leaves a part of the rate unfound for
// `lifetime`, see docs/methods/event-models.md.
struct TestedPart {
    double rate = 0, interval = 0, testDuration = 0, repair = 0, coverage = 1, lifetime = 0;
};
double testedCycleUnavailability(const TestedPart& part);
// 1 - exp(-((t - location)/scale)^shape), 0 before `location`.
double weibullUnreliability(double shape, double scale, double location, double time);

struct EventProbability {
    double value = 0;
    std::string how; // "mean over the test interval" ...
    std::vector<std::string>
        warnings; // sentences: where an assumption of the formula does not hold
};

// The probability that counts for a top event that is asked about at a random moment of the
// mission. `mission` in hours replaces the model's own mission time where the model has none.
// Problems: no model, a frequency where a probability is needed, no mission time.
project::Outcome<EventProbability> probabilityOf(const project::Project& project,
                                                 const project::Index& index,
                                                 const project::Event& event,
                                                 std::optional<double> mission);

} // namespace cutwater::reliability
