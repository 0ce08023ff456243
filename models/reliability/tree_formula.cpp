// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/tree_formula.h"

#include <cassert>
#include <span>

namespace cutwater::reliability {

namespace {

using logic::Literal;
using logic::Op;

// Turns gates into formula nodes, each once, children before parents, with a stack of its own: a
// chain of a million gates needs memory, not call depth.
class Builder {
public:
    Builder(const project::Project& project, const project::Index& index,
            const std::map<project::Id, bool>& forced)
        : m_project(project), m_index(index), m_forced(forced), m_gates(project.gates.size()),
          m_events(project.events.size()) {}

    TreeFormula build(const project::Id& top) {
        visit(top);
        while (!m_stack.empty())
            step();
        m_result.top = m_literals.back();
        return std::move(m_result);
    }

private:
    struct GateState {
        Literal literal;
        bool seen = false;
    };
    struct EventState {
        Literal literal;
        bool seen = false;
    };
    struct Frame {
        std::size_t gate;
        std::size_t next = 0;         // the input to be looked at next
        std::size_t firstLiteral = 0; // where this gate's literals begin in m_literals
    };

    std::size_t positionOf(const project::Gate& gate) const {
        return static_cast<std::size_t>(&gate - m_project.gates.data());
    }
    std::size_t positionOf(const project::Event& event) const {
        return static_cast<std::size_t>(&event - m_project.events.data());
    }

    // Number of things a gate stands on: its inputs, then an inhibit gate's condition.
    static std::size_t childCount(const project::Gate& gate) {
        return gate.inputs.size() + (gate.kind == project::GateKind::inhibit ? 1 : 0);
    }
    static const project::Id& child(const project::Gate& gate, std::size_t number) {
        return number < gate.inputs.size() ? gate.inputs[number].id : gate.condition.id;
    }

    // Adds the literal of an event or of a finished gate; a gate met for the first time is put on
    // the stack instead, and its literal is added when it is taken off.
    void visit(const project::Id& id) {
        const auto [event, gate] = m_index.node(id);
        assert((event || gate) && "validate() reports missing references");
        if (event) return m_literals.push_back(literalOf(*event));
        if (!gate) return m_literals.push_back(logic::kFalse);
        const std::size_t position = positionOf(*gate);
        if (m_gates[position].seen) return m_literals.push_back(m_gates[position].literal);
        m_gates[position].seen = true;
        m_stack.push_back({position, 0, m_literals.size()});
    }

    Literal literalOf(const project::Event& event) {
        EventState& state = m_events[positionOf(event)];
        if (state.seen) return state.literal;
        state.seen = true;
        const auto forced = m_forced.find(event.id);
        if (forced != m_forced.end())
            state.literal = forced->second ? logic::kTrue : logic::kFalse;
        else if (event.kind == project::EventKind::house)
            state.literal = event.state ? logic::kTrue : logic::kFalse;
        else {
            state.literal = m_result.formula.addVariable();
            m_result.eventOfVariable.push_back(positionOf(event));
        }
        return state.literal;
    }

    void step() {
        Frame& frame = m_stack.back();
        const project::Gate& gate = m_project.gates[frame.gate];
        if (frame.next < childCount(gate)) return visit(child(gate, frame.next++));
        const std::size_t first = frame.firstLiteral;
        const Literal literal =
            add(gate, std::span(m_literals).subspan(first, m_literals.size() - first));
        m_gates[frame.gate].literal = literal;
        m_stack.pop_back();
        m_literals.resize(first);
        m_literals.push_back(literal);
    }

    Literal add(const project::Gate& gate, std::span<const Literal> inputs) {
        auto& formula = m_result.formula;
        switch (gate.kind) {
        case project::GateKind::orGate: return formula.addGate(Op::disjunction, inputs);
        case project::GateKind::vote:
            return formula.addGate(Op::atLeast, inputs, gate.k.value_or(1));
        case project::GateKind::exactlyOne: return formula.addGate(Op::exactlyOne, inputs);
        case project::GateKind::notGate:
            assert(inputs.size() == 1 && "validate() reports a not gate without its one input");
            return inputs.empty() ? logic::kFalse : ~inputs.front();
        case project::GateKind::priorityAnd:
            m_result.hasPriorityAnd = true;
            return formula.addGate(Op::conjunction, inputs);
        case project::GateKind::andGate:
        case project::GateKind::inhibit: break;
        }
        return formula.addGate(Op::conjunction, inputs);
    }

    const project::Project& m_project;
    const project::Index& m_index;
    const std::map<project::Id, bool>& m_forced;
    std::vector<GateState> m_gates;
    std::vector<EventState> m_events;
    std::vector<Frame> m_stack;
    std::vector<Literal> m_literals; // inputs of the gates on the stack, one stretch per gate
    TreeFormula m_result;
};

} // namespace

TreeFormula toFormula(const project::Project& project, const project::Index& index,
                      const project::Id& node, const std::map<project::Id, bool>& forced) {
    return Builder(project, index, forced).build(node);
}

} // namespace cutwater::reliability
