// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/drawing/samples.h"

#include "plugins/graphviz-layout/placement.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <array>

namespace cutwater::test {
namespace {

using project::EventKind;
using project::GateKind;
using project::Project;

class Layout final : public sdk::Layout {
public:
    sdk::Answer<sdk::LayoutGraph> place(const sdk::LayoutGraph& graph, const sdk::Values& values,
                                        const sdk::Job& job) const override {
        return graphviz::place(graph, values, job);
    }
};

Project titled(const std::string& name, const std::string& top) {
    Project project;
    project.name = name;
    project.plant = "invented ship";
    project.revision = "A";
    project.date = "2026-03-01";
    project.preparedBy = "second engineer";
    project.checkedBy = "chief engineer";
    project::TopEvent event;
    event.id = "T1";
    event.name = "Boiler stops";
    event.node.id = top;
    event.operatingMode = "at sea on fuel oil";
    project.tops.push_back(event);
    return project;
}

class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_state(seed * 2654435761u + 88172645463325252u) {}
    std::size_t below(std::size_t limit) {
        m_state ^= m_state << 13;
        m_state ^= m_state >> 7;
        m_state ^= m_state << 17;
        return static_cast<std::size_t>(m_state % limit);
    }

private:
    std::uint64_t m_state;
};

} // namespace

project::Event event(const std::string& id, const std::string& name, EventKind kind) {
    project::Event result;
    result.id = id;
    result.name = name;
    result.kind = kind;
    return result;
}

project::Gate gate(const std::string& id, GateKind kind, const std::string& name,
                   const std::vector<std::string>& inputs) {
    project::Gate result;
    result.id = id;
    result.kind = kind;
    result.name = name;
    for (const std::string& input : inputs)
        result.inputs.push_back({input, {}});
    return result;
}

Project everySymbol() {
    Project project = titled("Every symbol", "G-top");
    project.gates = {
        gate("G-top", GateKind::orGate, "Boiler stops & \"steam\" <lost>",
             {"G-and", "G-vote", "G-inhibit", "G-xor"}),
        gate("G-and", GateKind::andGate, "Both control supplies are lost", {"e-mains", "e-board"}),
        gate("G-vote", GateKind::vote, "Two of three scanners see no flame",
             {"e-s1", "e-s2", "G-not"}),
        gate("G-inhibit", GateKind::inhibit, "Fuel cools while the heater is out", {"e-heater"}),
        gate("G-xor", GateKind::exactlyOne, "One of the two valves only", {"e-v1", "G-pand"}),
        gate("G-not", GateKind::notGate, "Lockout does not reset", {"e-reset"}),
        gate("G-pand", GateKind::priorityAnd, "First the filter, then the pump",
             {"e-filter", "e:pump/1"}),
    };
    project.gates[2].k = 2;
    project.gates[3].condition.id = "e-cold";
    project.events = {
        event("e-mains", "Mains unit fails"),
        event("e-board", "24 V board is dead", EventKind::undeveloped),
        event("e-s1", "Scanner 1 dirty"),
        event("e-s2", "Scanner 2 dirty"),
        event("e-heater", "Fuel heater trips"),
        event("e-cold", "Sea water below 10 °C", EventKind::conditioning),
        event("e-v1", "Valve 1 stays shut"),
        event("e-reset", "Reset button pressed", EventKind::house),
        event("e-filter", "Filter plugged by a sludge that nobody had seen in the settling tank "
                          "before the ship rolled"),
        event("e:pump/1", "Pump 1 loses suction"),
    };
    project.events[7].state = true;
    return project;
}

Project randomProject(std::uint64_t seed, std::size_t events) {
    Dice dice(seed);
    Project project = titled("Random tree", "G-0");
    const std::array<const char*, 6> names = {
        "pump stops",           "valve stays shut when it should open",
        "fuse blown",           "transmitter frozen at a value that nobody doubts",
        "relay contact welded", "level controller lost after a black-out of the engine-room board"};
    const std::array<GateKind, 3> kinds = {GateKind::orGate, GateKind::andGate, GateKind::orGate};
    // Each round joins what is open in groups, until one is left.
    std::vector<std::string> open;
    for (std::size_t i = 0; i < events; ++i) {
        project.events.push_back(
            event(fmt::format("e-{}", i), fmt::format("{} {}", names[dice.below(6)], i)));
        open.push_back(project.events.back().id);
    }
    const std::vector<std::string> all = open;
    std::size_t number = events;
    while (open.size() > 1) {
        std::vector<std::string> next;
        for (std::size_t i = 0; i < open.size();) {
            std::vector<std::string> inputs;
            for (std::size_t n = 2 + dice.below(3); n > 0 && i < open.size(); --n)
                inputs.push_back(open[i++]);
            if (dice.below(5) == 0) inputs.push_back(all[dice.below(all.size())]);
            const std::string id =
                i >= open.size() && next.empty() ? "G-0" : fmt::format("G-{}", ++number);
            project.gates.push_back(
                gate(id, kinds[dice.below(3)], fmt::format("group {} does not work", id), inputs));
            next.push_back(id);
        }
        open = std::move(next);
    }
    return project;
}

Project wideGate(std::size_t inputs) {
    Project project = titled("Wide gate", "G-0");
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < inputs; ++i) {
        ids.push_back(fmt::format("e-{}", i));
        project.events.push_back(event(ids.back(), fmt::format("Cause number {}", i)));
    }
    project.gates.push_back(gate("G-0", GateKind::orGate, "Any cause", ids));
    return project;
}

Project chainOfGates(std::size_t gates) {
    Project project = titled("Chain", "G-0");
    for (std::size_t i = 0; i < gates; ++i) {
        const std::string here = std::to_string(i), below = std::to_string(i + 1);
        project.events.push_back(event("e-" + here, "Cause " + here));
        std::vector<std::string> inputs = {"e-" + here};
        if (i + 1 < gates) inputs.push_back("G-" + below);
        project.gates.push_back(gate("G-" + here, GateKind::orGate, "Step " + here, inputs));
    }
    return project;
}

sdk::Answer<drawing::Diagram> drawTop(const Project& project, const drawing::Wishes& wishes) {
    const project::Outcome<drawing::Lettering> lettering = drawing::findLettering();
    if (!lettering) {
        ADD_FAILURE() << lettering.problems()[0].what;
        return {};
    }
    return drawing::draw(project, project.tops.at(0), wishes, *lettering, Layout{}, {});
}

} // namespace cutwater::test
