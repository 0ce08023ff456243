// SPDX-License-Identifier: GPL-3.0-or-later
// The rules for events, gates and top events.
#include "models/project/cycles.h"
#include "models/project/judge.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::project {

namespace {

Place placeOf(const Event& event) {
    return {"event", event.id, event.line.number};
}
Place placeOf(const Gate& gate) {
    return {"gate", gate.id, gate.line.number};
}

void judgeEvent(Judge& judge, const Event& event) {
    const Place place = placeOf(event);
    const Event* first = judge.index.event(event.id);
    judge.id(place, event.id, first == &event, first->line.number);
    const bool ownModel = event.model.kind != ModelKind::none || !event.model.numbers.empty();
    if (!event.mode.empty() && ownModel)
        judge.error(
            place,
            fmt::format("{} has a failure mode and a failure model of its own", place.words()),
            "keep one of them: the failure mode brings its own model");
    const bool modeExists = event.mode.empty() || judge.reference(Target::mode, event.mode,
                                                                  place.with("failure mode", 0));
    judge.model(event.model, place);
    if (event.kind == EventKind::house) {
        if (!event.mode.empty() || ownModel)
            judge.warn(place,
                       fmt::format("{} is a house event: its failure mode or model is not used",
                                   place.words()),
                       "make it a basic event, or delete the failure mode or model");
        return;
    }
    if (event.state)
        judge.warn(
            place,
            fmt::format("{} is set to true, which counts for house events only", place.words()),
            "make it a house event, or delete the state");
    const FailureModel* model = judge.index.modelOf(event);
    if (modeExists && (!model || model->kind == ModelKind::none))
        judge.warn(place, fmt::format("{} is not quantified", place.words()),
                   event.mode.empty()
                       ? "give it a failure mode or a failure model"
                       : fmt::format("give failure mode {} a failure model", event.mode));
}

void judgeK(Judge& judge, const Gate& gate, const Place& place) {
    const auto size = static_cast<long>(gate.inputs.size());
    if (gate.kind != GateKind::vote) {
        if (gate.k)
            judge.error(
                place,
                fmt::format("{} has k, but is of the kind {}", place.words(), word(gate.kind)),
                "delete k, or make it a vote gate");
    } else if (!gate.k) {
        judge.error(place,
                    fmt::format("{} does not say how many of its inputs it needs", place.words()),
                    fmt::format("enter k, from 1 to {}", std::max(size, 1L)));
    } else if (*gate.k < 1 || (size > 0 && *gate.k > size)) {
        judge.error(place,
                    fmt::format("{} needs {} of its {} inputs", place.words(), *gate.k, size),
                    fmt::format("enter k from 1 to {}", std::max(size, 1L)));
    }
}

// Nodes: the events, then the gates; arrows lead from a gate to its inputs and its condition.
class NodeGraph {
public:
    explicit NodeGraph(const Project& project) : m_project(project) {
        graph.begin.assign(project.events.size() + 1, 0);
        graph.begin.reserve(project.events.size() + project.gates.size() + 1);
    }
    std::uint32_t number(const Index::Node& node) const {
        return static_cast<std::uint32_t>(
            node.event ? node.event - m_project.events.data()
                       : static_cast<std::ptrdiff_t>(m_project.events.size()) +
                             (node.gate - m_project.gates.data()));
    }
    void arrow(const Index::Node& node) {
        if (node) graph.arrow(number(node));
    }

    Graph graph;

private:
    const Project& m_project;
};

void judgeGate(Judge& judge, const Gate& gate, NodeGraph& nodes,
               std::vector<std::string_view>& scratch) {
    const Place place = placeOf(gate);
    const Gate* first = judge.index.gate(gate.id);
    const Event* namesake = judge.index.event(gate.id);
    judge.id(place, gate.id, first == &gate && !namesake,
             namesake ? namesake->line.number : first->line.number);
    if (gate.inputs.empty())
        judge.error(place, fmt::format("{} has no inputs", place.words()),
                    "add an input, or delete the gate");
    else if (gate.kind == GateKind::notGate && gate.inputs.size() != 1)
        judge.error(
            place,
            fmt::format("{} is a not gate and has {} inputs", place.words(), gate.inputs.size()),
            "give it one input only");
    judgeK(judge, gate, place);
    for (const Reference& input : gate.inputs) {
        const Index::Node node = judge.index.node(input.id);
        nodes.arrow(node);
        if (!node) judge.reference(Target::node, input.id, place.with("input", input.line.number));
    }
    if (!gate.condition.id.empty()) nodes.arrow(judge.index.node(gate.condition.id));
    nodes.graph.finishNode();
    if (gate.kind == GateKind::inhibit) {
        if (gate.condition.id.empty())
            judge.error(place,
                        fmt::format("{} is an inhibit gate without a condition", place.words()),
                        "name the conditioning event, or make it an and gate");
        else
            judge.reference(Target::event, gate.condition.id,
                            place.with("condition", gate.condition.line.number));
    } else if (!gate.condition.id.empty()) {
        judge.error(place,
                    fmt::format("{} has a condition, but is of the kind {}", place.words(),
                                word(gate.kind)),
                    "delete the condition, or make it an inhibit gate");
    }
    scratch.clear();
    for (const Reference& input : gate.inputs)
        scratch.push_back(input.id);
    std::sort(scratch.begin(), scratch.end());
    for (std::size_t i = 1; i < scratch.size(); ++i) {
        if (scratch[i] != scratch[i - 1] || (i > 1 && scratch[i] == scratch[i - 2])) continue;
        judge.warn(place, fmt::format("{} stands twice below {}", scratch[i], place.words()),
                   "keep one of them: the second changes nothing below and and or, and counts "
                   "twice in a vote");
    }
}

void judgeReach(Judge& judge, const NodeGraph& nodes) {
    const Graph& graph = nodes.graph;
    const Project& project = judge.project;
    if (project.tops.empty()) {
        if (!project.gates.empty())
            judge.warn({"project", {}, 0}, "the project has gates but no top event",
                       "name the gates that somebody asks about");
        return;
    }
    const auto eventCount = static_cast<std::uint32_t>(project.events.size());
    std::vector<bool> reached(graph.size(), false), hasParent(graph.size(), false);
    for (std::uint32_t target : graph.targets)
        hasParent[target] = true;
    std::vector<std::uint32_t> left;
    const auto reach = [&](std::uint32_t node) {
        if (!reached[node]) left.push_back(node);
        reached[node] = true;
    };
    for (const TopEvent& top : project.tops) {
        if (const Index::Node node = judge.index.node(top.node.id)) reach(nodes.number(node));
    }
    while (!left.empty()) {
        const std::uint32_t node = left.back();
        left.pop_back();
        for (std::uint32_t i = graph.begin[node]; i < graph.begin[node + 1]; ++i)
            reach(graph.targets[i]);
    }
    for (std::uint32_t node = 0; node < graph.size(); ++node) {
        // What stands below another unreached gate is reached as soon as that one is.
        if (reached[node] || hasParent[node]) continue;
        const bool isEvent = node < eventCount;
        const Place place =
            isEvent ? placeOf(project.events[node]) : placeOf(project.gates[node - eventCount]);
        // The second of two with one id cannot be reached; that is reported already.
        const Event* namesake = judge.index.event(place.id);
        if (isEvent ? namesake != &project.events[node]
                    : namesake || judge.index.gate(place.id) != &project.gates[node - eventCount])
            continue;
        judge.warn(place, fmt::format("{} stands below no top event", place.words()),
                   isEvent ? "use it in a tree, or delete it"
                           : "use it in a tree, or make it a top event");
    }
}

} // namespace

void judgeTrees(Judge& judge) {
    const Project& project = judge.project;
    for (const Event& event : project.events)
        judgeEvent(judge, event);
    NodeGraph nodes(project);
    std::vector<std::string_view> scratch;
    for (const Gate& gate : project.gates)
        judgeGate(judge, gate, nodes, scratch);
    for (const TopEvent& top : project.tops) {
        const Place place{"top event", top.id, top.line.number};
        const TopEvent* first = judge.index.top(top.id);
        judge.id(place, top.id, first == &top, first->line.number);
        judge.reference(Target::node, top.node.id, place.with("node", top.node.line.number));
        if (top.asked)
            judge.quantity(*top.asked, place.with("how often it is asked", top.asked->line.number),
                           {Dimension::rate}, Range::positive);
    }
    const auto eventCount = static_cast<std::uint32_t>(project.events.size());
    const auto name = [&](std::uint32_t node) { return project.gates[node - eventCount].id; };
    for (const auto& cycle : findCycles(nodes.graph))
        judge.error(
            placeOf(project.gates[cycle.front() - eventCount]),
            fmt::format("gates stand below themselves in a circle: {}", cycleInWords(cycle, name)),
            "take one of these inputs away");
    judgeReach(judge, nodes);
}

} // namespace cutwater::project
