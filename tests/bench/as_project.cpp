// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/as_project.h"

namespace bench {

namespace project = cutwater::project;

project::Project asProject(const Instance& instance) {
    const Formula& formula = instance.formula;
    project::Project result;
    result.name = "invented for a benchmark";
    const auto idOf = [&](std::uint32_t node) {
        return (formula.op(node) == Op::variable ? "E" : "G") + std::to_string(node);
    };
    for (std::uint32_t node = 1; node <= instance.top.node(); ++node) {
        const Op op = formula.op(node);
        if (op == Op::variable) {
            project::Event event;
            event.id = idOf(node);
            event.name = "event " + std::to_string(node);
            event.model.kind = project::ModelKind::probability;
            project::Quantity quantity;
            quantity.value = instance.q[formula.variable(node)];
            quantity.unit = project::Unit::number;
            quantity.source.tag = "invented";
            event.model.set(project::Role::probability, quantity);
            result.events.push_back(event);
            continue;
        }
        project::Gate gate;
        gate.id = idOf(node);
        gate.name = "gate " + std::to_string(node);
        gate.kind = op == Op::conjunction   ? project::GateKind::andGate
                    : op == Op::disjunction ? project::GateKind::orGate
                                            : project::GateKind::vote;
        if (op == Op::atLeast) gate.k = static_cast<int>(formula.k(node));
        for (const Literal input : formula.inputs(node))
            gate.inputs.push_back({idOf(input.node()), {}});
        result.gates.push_back(gate);
    }
    project::TopEvent top;
    top.id = "T1";
    top.name = "top";
    top.node.id = idOf(instance.top.node());
    result.tops.push_back(top);
    return result;
}

} // namespace bench
