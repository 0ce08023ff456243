// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/models/project/sound_project.h"

namespace cutwater::test {

using namespace project;

Quantity quantity(double value, Unit unit, int line) {
    Quantity quantity;
    quantity.value = value;
    quantity.unit = unit;
    quantity.line.number = line;
    return quantity;
}

namespace {

template <typename Value>
Value& add(std::vector<Value>& values, const char* id, int section) {
    Value value;
    value.id = id;
    value.line.number = section + static_cast<int>(values.size());
    values.push_back(std::move(value));
    return values.back();
}

void addGate(Project& project, const char* id, GateKind kind, std::vector<Id> inputs) {
    Gate& gate = add(project.gates, id, 500);
    gate.kind = kind;
    for (Id& input : inputs)
        gate.inputs.push_back({std::move(input), {550}});
}

} // namespace

Project soundProject() {
    Project project;
    project.date = "2026-03-01";
    add(project.parameters, "p-rate", 50).quantity = quantity(1e-6, Unit::perHour, 55);
    for (const char* id : {"boiler", "burner", "supply", "fuse"})
        add(project.components, id, 100);
    project.components[1].parent = "boiler";
    project.components[1].suppliedBy = {{"supply", {150}}};
    FailureMode& mode = add(project.modes, "burner.fouled", 200);
    mode.component = "burner";
    mode.dormant = true;
    mode.severityRating = 5;
    mode.model.kind = ModelKind::tested;
    mode.model.clock = Clock::firingHour;
    mode.model.line.number = 250;
    mode.model.set(Role::rate, quantity(1e-6, Unit::perHour, 251));
    mode.model.set(Role::interval, quantity(1, Unit::weeks, 252));
    mode.model.set(Role::testDuration, quantity(1, Unit::hours, 253));
    mode.model.lastTest = "2026-02-01";
    Connection& connection = add(project.connections, "feed", 300);
    connection.from = "supply";
    connection.to = "burner";
    connection.through = {{"fuse", {350}}};
    connection.capacity = quantity(10, Unit::amperes, 351);
    for (const char* id : {"e1", "e2", "e3", "cold"}) {
        Event& event = add(project.events, id, 400);
        event.model.kind = ModelKind::probability;
        event.model.line.number = 450;
        event.model.set(Role::probability, quantity(0.1, Unit::number, 451));
    }
    project.events[0].mode = "burner.fouled";
    project.events[0].model = {};
    add(project.events, "switch", 400).kind = EventKind::house;
    addGate(project, "top", GateKind::orGate, {"both", "some", "when", "not", "switch"});
    addGate(project, "both", GateKind::andGate, {"e1", "e2"});
    addGate(project, "some", GateKind::vote, {"e1", "e2", "e3"});
    project.gates[2].k = 2;
    addGate(project, "when", GateKind::inhibit, {"e3"});
    project.gates[3].condition = {"cold", {551}};
    addGate(project, "not", GateKind::notGate, {"e2"});
    add(project.tops, "T1", 600).node = {"top", {650}};
    CommonCauseGroup& group = add(project.commonCauses, "CC", 700);
    group.factors = {quantity(0.1, Unit::number, 750)};
    group.members = {{"e1", {751}}, {"e2", {752}}, {"e3", {753}}};
    Exposure exposure;
    exposure.component = "burner";
    exposure.from = "2025-01-01";
    exposure.to = "2025-12-31";
    exposure.calendarHours = 8760;
    exposure.line.number = 800;
    project.exposures.push_back(exposure);
    LogEntry& entry = add(project.log, "L1", 900);
    entry.date = "2025-05-05";
    entry.time = "03:10";
    entry.component = "burner";
    entry.mode = "burner.fouled";
    entry.topEvent = "T1";
    entry.downtimeHours = 0.5;
    Assessment& assessment = add(project.assessments, "A1", 1000);
    assessment.forced = {{{"switch", {1050}}, true, {}}};
    assessment.duration = quantity(9, Unit::hours, 1051);
    return project;
}

} // namespace cutwater::test
