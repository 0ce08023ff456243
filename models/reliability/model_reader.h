// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the numbers of one event's failure model, checked and in hours.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <optional>
#include <string>

namespace cutwater::reliability {

// Collects what is wrong with the numbers, so that the formulas read as in a book: a number that
// could not be had is 0, and whoever uses it stops at `problems`. Holds references only.
class ModelReader {
public:
    ModelReader(const project::Index& index, const project::Event& event,
                const project::FailureModel& model);

    bool has(project::Role role) const { return m_model.find(role) != nullptr; }
    double probability(); // 0..1
    double coverage();    // 0..1; 1 where it is not given
    double shape();       // > 0
    double rate();        // per hour; a mean time to failure is turned over
    double frequency();   // per hour; one per start is a problem: nobody knows how many there are
    bool isPerStart(project::Role role) const;
    // Per hour, where the starts per hour are known; a problem where they are not.
    double frequencyPerStart(std::optional<double> startsPerHour);
    double time(project::Role role, bool positive); // hours; `positive`: zero makes no sense

    // `line` 0: the failure model's, or the event's.
    void problem(std::string what, std::string remedy, int line);

    project::Problems problems;

private:
    double number(project::Role role, double low, double high);
    // The quantity, its shared parameter followed; null, and a problem, where it is missing or
    // measures something else.
    const project::Quantity* resolve(project::Role role);
    void complain(project::Role role, const std::string& what, const std::string& remedy);

    const project::Index& m_index;
    const project::Event& m_event;
    const project::FailureModel& m_model;
};

} // namespace cutwater::reliability
