// SPDX-License-Identifier: GPL-3.0-or-later
// A protection by the simplified formulas of IEC 61508-6 Annex B, first edition (2000), from
// memory: the average probability that it fails on demand, and its dangerous failures per hour. The
// 2010 edition heads its tables with the dangerous rate and has a factor K in 1oo2D: not mixed in
// here. Rates per hour, times in hours.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::reliability {

enum class Voting { oneOfOne, oneOfTwo, twoOfTwo, twoOfThree, oneOfTwoDiagnosed };

std::string_view word(Voting voting); // "1oo1", "1oo2", "2oo2", "2oo3", "1oo2D"
std::optional<Voting> votingFromWord(std::string_view word);
const std::vector<Voting>& allVotings();
int channelsOf(Voting voting);
// Dangerous failures that may be there before the function is lost.
int faultTolerance(Voting voting);

// One channel and how the channels of the part are tested.
struct ChannelData {
    double rate = 0;             // of all failures of one channel, >= 0
    double dangerousShare = 0.5; // of it, 0..1; the tables of the standard take one half
    double coverage = 0;         // share of the dangerous ones that diagnostics see, 0..1
    // Share of the safe failures that diagnostics see: counts in 1oo2D only. Empty: as `coverage`.
    std::optional<double> safeCoverage;
    double beta = 0;                    // common-cause share of the unseen dangerous ones
    std::optional<double> betaDetected; // of the seen ones; empty: beta / 2, as in the tables
    double interval = 8760;             // between proof tests, > 0
    double restoration = 8;             // mean time to restoration of what diagnostics see
    double repair = 8;                  // mean repair time of what the proof test finds

    double dangerous() const { return rate * dangerousShare; }
    double undetected() const { return dangerous() * (1 - coverage); }
    double detected() const { return dangerous() * coverage; }
};

struct SafetyFigures {
    double onDemand = 0;    // average probability of failure on demand
    double perHour = 0;     // dangerous failures per hour
    double channelDown = 0; // tCE: mean down time of a channel after a dangerous failure
    double groupDown = 0;   // tGE: of the voted group
    double independent = 0; // part of onDemand that independent failures make
    double commonCause = 0; // part that common causes make
};

// Not meant for rate x interval above about 0.1: the formulas are first terms of a series.
SafetyFigures safetyFigures(Voting voting, const ChannelData& channel);

// 4 .. 1; 0: worse than level 1. Probability on demand: level 1 is 1e-2 to 1e-1, each further level
// ten times less; per hour: level 1 is 1e-6 to 1e-5. Better than level 4 is level 4: the standard
// makes no higher claim.
int levelOnDemand(double probability);
int levelPerHour(double frequency);
// "SIL 2 band", "worse than the SIL 1 band".
std::string bandText(int level);

} // namespace cutwater::reliability
