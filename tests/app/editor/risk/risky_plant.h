// SPDX-License-Identifier: GPL-3.0-or-later
// A plant with one failure mode of 1 a year that is Severe, in the tree of a top event that is
// Minor, and one that cannot be placed.
#pragma once

#include "tests/models/project/edits/small_plant.h"

namespace cutwater::test {

inline Project riskyPlant() {
    Project project = smallPlant();
    FailureMode& mode = project.modes[0];
    mode.severity = "Severe";
    mode.model = {};
    mode.model.kind = ModelKind::repairable;
    mode.model.clock = Clock::calendarHour;
    Quantity rate;
    rate.value = 1;
    rate.unit = Unit::perYear;
    Quantity repair;
    repair.value = 1;
    repair.unit = Unit::hours;
    mode.model.set(Role::rate, rate);
    mode.model.set(Role::repair, repair);
    FailureMode other;
    other.id = "SEAL.leaks";
    other.component = "SEAL";
    other.name = "leaks";
    project.modes.push_back(other);
    project.gates = {smallGate("top", "no fuel", GateKind::orGate, {"pump"})};
    TopEvent top;
    top.id = "T1";
    top.name = "no fuel";
    top.severity = "Minor";
    top.node.id = "top";
    project.tops = {top};
    return project;
}

} // namespace cutwater::test
