// SPDX-License-Identifier: GPL-3.0-or-later
// The figure of a top event that is looked at while a number is varied.
#pragma once

#include "plugins/sdk/tree/courses.h"
#include "plugins/sweep/varied.h"

#include <functional>

namespace cutwater::sweep_plugin {

enum class Measure { probability, mean, worst, frequency };

const std::vector<std::string>& measureWords(); // in the order of Measure
std::string titleOf(Measure measure);           // "Mean unavailability"
std::string unitOf(Measure measure);

// Evaluates one top. What went wrong is kept until it is asked for.
class Figure {
public:
    Figure(const sdk::tree::Solved& solved, const Varied& varied, reliability::WhatIf& whatIf,
           Measure measure, double period, const sdk::Job& job);

    // The figure with the number at `value`, in Varied's unit; nothing where it was stopped or
    // there are problems.
    std::optional<double> at(double value);
    bool usesTheNumber() const; // otherwise it is the same everywhere
    const project::Problems& problems() const { return m_problems; }
    bool exactFrequency() const { return m_exact; } // of all that were asked for

private:
    std::optional<double> probability();
    std::optional<double> overPeriod(double begin, double end);

    const sdk::tree::Solved& m_solved;
    const Varied& m_varied;
    reliability::WhatIf& m_whatIf;
    Measure m_measure;
    double m_period;
    const sdk::Job& m_job;
    std::vector<std::uint32_t> m_relevant;
    project::Problems m_problems;
    bool m_exact = true;
};

} // namespace cutwater::sweep_plugin
