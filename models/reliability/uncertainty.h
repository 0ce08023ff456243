// SPDX-License-Identifier: GPL-3.0-or-later
// How well a top event's probability is known: its exact probability for many draws of all
// uncertain numbers. The draws depend on seed, input and sample only, so the answer is the same to
// the bit on any number of threads and whatever else is asked.
#pragma once

#include "models/logic/solution.h"
#include "models/reliability/top_variables.h"
#include "models/reliability/uncertainty_inputs.h"

#include <functional>
#include <stop_token>

namespace cutwater::reliability {

enum class Drawing {
    plain, // every sample by itself (Monte Carlo)
    // Latin hypercube (McKay, Beckman and Conover 1979): ten batches that are independent of each
    // other; in each, every input has one draw in each of as many equal strata as it has samples.
    stratified,
};
constexpr std::size_t kBatches = 10; // of the stratified kind

struct UncertaintyWish {
    std::size_t samples = 100'000; // stratified: a multiple of kBatches
    std::uint64_t seed = 1;
    Drawing drawing = Drawing::plain;
    unsigned threads = 1;
    UnequalRule rule = UnequalRule::geometricMean; // for groups with unequal members
    std::stop_token stop{};
    std::function<void(double)> progress{}; // 0..1, from any of the threads, one at a time
};

struct Samples {
    std::vector<std::vector<double>> ofTop; // [top][sample], in the order of the samples
    // By input: how many draws were above 1 where no more than 1 makes sense, and were taken as 1.
    std::vector<std::uint64_t> cut;
};

class UncertainTops {
public:
    UncertainTops(const project::Project& project, const project::Index& index,
                  std::optional<double> mission);

    // Problems: events that count and have no number.
    project::Problems add(const logic::Solution& solution, TopVariables variables);
    project::Problems add(const logic::Solution& solution, const TreeFormula& tree) {
        return add(solution, TopVariables(tree));
    }

    const UncertainInputs& inputs() const { return m_inputs; }
    // Empty where stopped.
    std::optional<Samples> draw(const UncertaintyWish& wish) const;

private:
    friend class SampleWorker;
    struct Top {
        logic::Solution solution;
        TopVariables variables;
        std::vector<std::size_t> eventOf; // by variable: number in m_inputs, kNone where irrelevant
        // Where common causes are counted, instead:
        std::vector<std::size_t> firstFactor;                    // by group
        std::vector<std::pair<std::size_t, std::size_t>> events; // position, number in m_inputs
    };
    project::Problems take(std::size_t event, std::size_t& number);

    const project::Project& m_project;
    UncertainInputs m_inputs;
    std::vector<Top> m_tops;
};

} // namespace cutwater::reliability
