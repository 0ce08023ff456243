// SPDX-License-Identifier: GPL-3.0-or-later
// Knob: one number of a project that can be turned, and a copy of the project to turn it in.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"
#include "models/reliability/profile_reader.h"
#include "models/reliability/top_variables.h"

#include <map>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace cutwater::reliability {

// A shared parameter, a number of one failure model, or a factor of a common-cause group. The model
// is a failure mode's, or that of an event without one.
struct Knob {
    project::Id parameter; // of a shared one; else empty
    project::Id owner;     // failure mode, event or group; empty where `parameter` is not
    project::Role role = project::Role::probability;
    std::size_t factor = 0;          // of a group: 1 for its first factor; the role says nothing
    std::vector<std::size_t> events; // positions in project.events that use it, ascending

    // As people name it: the id of the parameter, or "OWNER@ROLE": "SC-11.dead@rate", or
    // "GROUP@factor-1".
    std::string id() const;
};

// All numbers that the failure models of these events and these common-cause groups use (positions
// in project.commonCauses), each once, in the order of first use. A factor of 0 is not among them
// but for a beta: the causes that it would make possible are not in the formula.
std::vector<Knob> knobsOf(const project::Project& project, const project::Index& index,
                          std::span<const std::size_t> events,
                          std::span<const std::size_t> groups = {});

// The number itself; null where the project has no such thing.
const project::Quantity* find(const project::Project& project, const Knob& knob);

// A private copy of a project in which knobs are turned and figures asked for again. Only what
// hangs on a turned knob is computed again. Not thread-safe.
class WhatIf {
public:
    WhatIf(const project::Project& project, std::optional<double> mission);
    WhatIf(const WhatIf&) = delete;
    WhatIf& operator=(const WhatIf&) = delete;

    // Sets the number, in the unit that it is given in.
    void turn(const Knob& knob, double value);
    void reset(const Knob& knob); // as in the project

    // As probabilityOf() and courseOf() of the turned project.
    const project::Outcome<double>& probability(std::size_t event);
    project::Outcome<EventCourse> course(std::size_t event) const;
    // By variable of a solved top event, those that are not relevant with any number. Problems: of
    // every event that counts and has no number.
    project::Outcome<std::vector<double>> probabilities(const TopVariables& variables,
                                                        std::span<const std::uint32_t> relevant);
    project::Outcome<std::vector<EventProfile>>
    profiles(const TopVariables& variables, std::span<const std::uint32_t> relevant) const;

private:
    const project::Project& m_original;
    project::Project m_project;
    project::Index m_index;
    std::optional<double> m_mission;
    std::map<std::size_t, project::Outcome<double>> m_probabilities;
};

} // namespace cutwater::reliability
