// SPDX-License-Identifier: GPL-3.0-or-later
// A tree to edit:  stop = or(fuel, fan);  fuel = and(pump-a, pump-b);
// `fan` is failure mode FAN.stops of the plant; FAN.no-start is in no tree.
#pragma once

#include "models/project/edits/changed.h"

#include <algorithm>
#include <initializer_list>
#include <string>
#include <vector>

namespace cutwater::test {

using namespace project;

inline Event smallEvent(const char* id, const char* name) {
    Event event;
    event.id = id;
    event.name = name;
    return event;
}

inline Gate smallGate(const char* id, const char* name, GateKind kind,
                      std::initializer_list<const char*> inputs) {
    Gate gate;
    gate.id = id;
    gate.name = name;
    gate.kind = kind;
    for (const char* input : inputs)
        gate.inputs.push_back({input, {}});
    return gate;
}

inline Project smallTree() {
    Project project;
    Component plant, fan;
    plant.id = plant.tag = "PLANT";
    fan.id = fan.tag = "FAN";
    fan.name = "fan";
    fan.parent = "PLANT";
    project.components = {plant, fan};
    FailureMode mode;
    mode.id = "FAN.stops";
    mode.component = "FAN";
    mode.name = "stops";
    FailureMode other = mode;
    other.id = "FAN.no-start";
    other.name = "does not start";
    project.modes = {mode, other};
    project.events = {smallEvent("pump-a", "pump A stops"), smallEvent("pump-b", "pump B stops"),
                      smallEvent("fan", "fan stops")};
    project.events[2].mode = "FAN.stops";
    project.gates = {smallGate("stop", "boiler stops", GateKind::orGate, {"fuel", "fan"}),
                     smallGate("fuel", "no fuel", GateKind::andGate, {"pump-a", "pump-b"})};
    TopEvent top;
    top.id = "T1";
    top.name = "boiler stops";
    top.node.id = "stop";
    project.tops = {top};
    return project;
}

inline const Gate* gateOf(const Project& project, const Id& id) {
    const auto found = std::find_if(project.gates.begin(), project.gates.end(),
                                    [&](const Gate& each) { return each.id == id; });
    return found == project.gates.end() ? nullptr : &*found;
}

inline const Event* eventOf(const Project& project, const Id& id) {
    const auto found = std::find_if(project.events.begin(), project.events.end(),
                                    [&](const Event& each) { return each.id == id; });
    return found == project.events.end() ? nullptr : &*found;
}

// "fuel fan", the inputs in their order; "-" where there is no such gate.
inline std::string inputsOf(const Project& project, const Id& id) {
    const Gate* gate = gateOf(project, id);
    if (!gate) return "-";
    std::string text;
    for (const Reference& input : gate->inputs)
        text += (text.empty() ? "" : " ") + input.id;
    return text;
}

inline std::string sentenceOf(const edits::Result& result) {
    return result ? "" : toSentence(result.problems().front());
}

} // namespace cutwater::test
