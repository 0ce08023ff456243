// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/safety_function.h"

#include <fmt/format.h>

namespace cutwater::reliability {

namespace {

struct VotingFacts {
    Voting voting;
    std::string_view word;
    int channels, tolerance;
};

constexpr VotingFacts kFacts[] = {{Voting::oneOfOne, "1oo1", 1, 0},
                                  {Voting::oneOfTwo, "1oo2", 2, 1},
                                  {Voting::twoOfTwo, "2oo2", 2, 0},
                                  {Voting::twoOfThree, "2oo3", 3, 1},
                                  {Voting::oneOfTwoDiagnosed, "1oo2D", 2, 1}};

const VotingFacts& factsOf(Voting voting) {
    for (const VotingFacts& facts : kFacts)
        if (facts.voting == voting) return facts;
    return kFacts[0];
}

// The upper ends of the bands of level 1, 2, 3 and 4.
constexpr double kOnDemand[] = {1e-1, 1e-2, 1e-3, 1e-4};
constexpr double kPerHour[] = {1e-5, 1e-6, 1e-7, 1e-8};

int level(double value, const double (&ends)[4]) {
    int found = 0;
    while (found < 4 && value < ends[found])
        ++found;
    return found;
}

} // namespace

std::string_view word(Voting voting) {
    return factsOf(voting).word;
}

std::optional<Voting> votingFromWord(std::string_view word) {
    for (const VotingFacts& facts : kFacts)
        if (facts.word == word) return facts.voting;
    return {};
}

const std::vector<Voting>& allVotings() {
    static const std::vector<Voting> all = [] {
        std::vector<Voting> votings;
        for (const VotingFacts& facts : kFacts)
            votings.push_back(facts.voting);
        return votings;
    }();
    return all;
}

int channelsOf(Voting voting) {
    return factsOf(voting).channels;
}

int faultTolerance(Voting voting) {
    return factsOf(voting).tolerance;
}

// Annex B.2 (on demand) and B.3 (per hour). What the diagnostics see of a 1oo1 or 2oo2 is taken to
// bring the plant to its safe state, so that it does not count per hour.
SafetyFigures safetyFigures(Voting voting, const ChannelData& channel) {
    SafetyFigures figures;
    const double unseen = channel.undetected(), seen = channel.detected();
    const double dangerous = channel.dangerous();
    const double beta = channel.beta, betaSeen = channel.betaDetected.value_or(beta / 2);
    const double untilTest = channel.interval / 2 + channel.repair;
    const double untilTestGroup = channel.interval / 3 + channel.repair;
    if (dangerous <= 0) return figures;

    figures.channelDown = unseen / dangerous * untilTest + seen / dangerous * channel.restoration;
    figures.groupDown =
        unseen / dangerous * untilTestGroup + seen / dangerous * channel.restoration;
    const double alone = (1 - betaSeen) * seen + (1 - beta) * unseen;
    const double pair = alone * alone * figures.channelDown * figures.groupDown;
    const double common = betaSeen * seen * channel.restoration + beta * unseen * untilTest;
    const double commonPerHour = betaSeen * seen + beta * unseen;

    switch (voting) {
    case Voting::oneOfOne:
    case Voting::twoOfTwo: {
        const double channels = channelsOf(voting);
        figures.groupDown = figures.channelDown;
        figures.independent = channels * dangerous * figures.channelDown;
        figures.perHour = channels * unseen;
        break;
    }
    case Voting::oneOfTwo:
        figures.independent = 2 * pair;
        figures.commonCause = common;
        figures.perHour = 2 * alone * alone * figures.channelDown + commonPerHour;
        break;
    case Voting::twoOfThree:
        figures.independent = 6 * pair;
        figures.commonCause = common;
        figures.perHour = 6 * alone * alone * figures.channelDown + commonPerHour;
        break;
    case Voting::oneOfTwoDiagnosed: {
        const double safeSeen = channel.rate * (1 - channel.dangerousShare) *
                                channel.safeCoverage.value_or(channel.coverage);
        const double all = unseen + seen + safeSeen;
        figures.channelDown = (unseen * untilTest + (seen + safeSeen) * channel.restoration) / all;
        figures.groupDown = untilTestGroup;
        const double first = 2 * (1 - beta) * unseen * (alone + safeSeen) * figures.channelDown;
        figures.independent = first * figures.groupDown;
        figures.commonCause = common;
        figures.perHour = first + commonPerHour;
        break;
    }
    }
    figures.onDemand = figures.independent + figures.commonCause;
    return figures;
}

int levelOnDemand(double probability) {
    return level(probability, kOnDemand);
}

int levelPerHour(double frequency) {
    return level(frequency, kPerHour);
}

std::string bandText(int level) {
    return level == 0 ? "worse than the SIL 1 band" : fmt::format("SIL {} band", level);
}

} // namespace cutwater::reliability
