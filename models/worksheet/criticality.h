// SPDX-License-Identifier: GPL-3.0-or-later
// Criticality of failure modes and items: MIL-STD-1629A (1980), task 102. Cm = beta alpha lambda_p
// t; Cr of an item is the sum of its Cm within one severity class.
#pragma once

#include "models/worksheet/frequency.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::worksheet {

// beta: chance that the mode has the effect, 0..1; alpha: its share of the item's failure rate,
// 0..1; lambdaP: of the item, per hour; t: hours.
double criticalityNumber(double beta, double alpha, double lambdaP, double t);

struct Criticality {
    double beta = 1;
    bool betaGiven = false;         // else 1 is taken, the worst
    std::optional<double> alpha;    // as given, or the mode's part of the rates of its item's modes
    bool alphaGiven = false;        // else worked out
    std::optional<double> expected; // alpha lambda_p t: how often the mode comes in t
    std::optional<double> number;   // Cm
    std::string how;                // of `expected`, or why there is none
    char level = ' '; // A to E by alpha, the mode's share of its item; ' ' where it is not known
};

// t in hours of the calendar: worksheet.operatingTime, or one year.
struct OperatingTime {
    double hours = kHoursPerYear;
    bool given = false;
};
OperatingTime operatingTimeOf(const project::Project& project, const project::Index& index);

// Of all modes, in the order of the project.
std::vector<Criticality> criticalitiesOf(const project::Project& project,
                                         const project::Index& index, const FrequencyBook& book);

// Cr of one item in one severity class.
struct ItemCriticality {
    std::size_t component = 0;          // position in project.components
    std::string severity;               // as the modes have it; may be empty
    double number = 0;                  // of the modes that have one
    std::size_t modes = 0, without = 0; // in the class; of them without a number
    std::optional<double> share;        // of the item's sum over all classes
};
std::vector<ItemCriticality> itemCriticalities(const project::Project& project,
                                               const project::Index& index,
                                               const std::vector<Criticality>& modes);

// Level of probability of occurrence of a mode by its share of the item's failures: A frequent,
// above 0.20; B reasonably probable, above 0.10; C occasional, above 0.01; D remote, above 0.001; E
// extremely unlikely. MIL-STD-1629A (1980), task 102; the bands from memory.
char criticalityLevel(double share);

} // namespace cutwater::worksheet
