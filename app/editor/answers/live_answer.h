// SPDX-License-Identifier: GPL-3.0-or-later
// LiveAnswer: what the editor always shows about one top event, and how it is found.
#pragma once

#include "models/logic/recall.h"
#include "models/project/project.h"
#include "plugins/sdk/result.h"

#include <cstdint>
#include <functional>
#include <memory>
#include <optional>
#include <stop_token>
#include <string>
#include <vector>

namespace cutwater::editor {

// The chance that the top event is there at a moment picked at random, or by the end of the
// mission where the models have one: what the analysis `probability` answers with --common-cause.
struct LiveFigure {
    double lower = 0, upper = 0; // equal where it is exact
    bool exact = true;
    std::string words; // what it is: "exact", "upper bound: ..."; English, of the engine
};

struct SingleFailure {
    std::vector<std::string> nodes; // one event, or those that a common cause takes together
    bool negated = false;           // it is its absence that brings the top about
    std::string failure;   // what fails: "fouled"; the event's name where it has no failure mode
    std::string component; // "ignition electrodes ET-1", or empty
    std::string place;     // "burner front of Boiler 1, ignition of Boiler 1", or empty
    std::optional<double> probability;
};

struct OrderCount {
    std::uint32_t order = 0;
    std::string sets;               // how many, in decimal
    std::vector<std::string> nodes; // events of those that were looked at
    bool everyOne = true;           // false: only the first ones were looked at
};

struct LikelySet {
    std::vector<std::string> nodes;
    std::string words; // the events' names, "; " between
    std::optional<double> probability;
    std::uint32_t order = 0;
};

// A sentence that may be shown in the tree.
struct Said {
    std::string sentence;
    std::vector<std::string> nodes = {};
};

struct LiveAnswer {
    enum class Ending {
        answered,
        noTop,     // the project has no top event, or not the one asked about
        errors,    // the tree has errors: see `errors`
        cancelled, // nothing else is set
        tooLarge,  // neither solved nor bounded within the limits: see `warnings`
    };
    Ending ending = Ending::noTop;
    std::string top; // the id asked about, or that of the first top event
    std::string topName;

    // Common-cause groups that are counted, by id: those with two members in the tree.
    std::vector<std::string> commonCauses;
    // The project has assessments: the answer is about the plant in its normal state all the same.
    bool hasAssessments = false;

    std::optional<LiveFigure> figure; // none where events have no number: see `warnings`
    bool setsKnown = false;           // false where the tree is too large for them
    std::string setCount;
    std::vector<OrderCount> orders;     // ascending
    bool everyOrder = true;             // false: there are more orders than are counted one by one
    std::vector<SingleFailure> singles; // the most probable first
    std::size_t singleCount = 0;        // may be more than are in `singles`
    std::vector<LikelySet> likely;      // of order 2 and more, the most probable first

    std::vector<Said> errors;    // of this tree
    std::vector<Said> elsewhere; // errors in other parts of the project
    std::vector<Said> warnings;
    std::vector<sdk::Note> notes; // methods, assumptions, cautions
    double seconds = 0;           // that it took
};

struct LiveMeans {
    std::stop_token stop{};
    std::shared_ptr<logic::Recall> recall{}; // kept between runs: unchanged modules cost nothing
    std::function<void(double)> progress{};  // 0..1, from the calling thread
    std::size_t memoryBytes = std::size_t{1} << 30;
    std::uint64_t nodesPerModule = 3'000'000; // an exact answer that needs more takes too long
    double boundSeconds = 10;                 // for the interval where it does not fit
};

// How many lines a panel can hold; the analyses list them all.
inline constexpr std::size_t kMostSingles = 200;
inline constexpr std::size_t kMostLikely = 10;

// `top`: a top event, or any gate or event; empty for the project's first top event. Any project,
// also one with errors. From any thread.
LiveAnswer computeLive(const project::Project& project, const std::string& top,
                       const LiveMeans& means);

} // namespace cutwater::editor
