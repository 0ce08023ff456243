// SPDX-License-Identifier: GPL-3.0-or-later
// Follows the network up from one load and writes down what has to hold.
#include "models/reliability/supply.h"
#include "models/reliability/supply_circuit.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <tuple>

namespace cutwater::reliability {

using logic::Literal;
using project::Connection;

class SupplyTracer {
public:
    SupplyTracer(const SupplyNetwork& network, const SupplyLoad& load)
        : m_network(network), m_project(network.m_project), m_medium(network.medium(load.medium)) {
        m_trace.load = load;
        for (std::size_t mode = 0; mode < m_project.modes.size(); ++mode)
            m_modesOf[m_project.modes[mode].component].push_back(mode);
    }

    project::Outcome<SupplyTrace> run() {
        const std::size_t load = m_trace.load.component;
        const std::string name = labelOf(load);
        if (!m_network.arrives(m_medium, load))
            return nothing(fmt::format("no feed of {} arrives at {}", m_medium.name, name),
                           "name a component that is fed, or draw its feed");
        const std::uint32_t alive = supplied(load, m_medium);
        finishAll();
        std::vector<std::uint32_t> gates{alive};
        for (const auto& [way, leg] : possibleLegs(load)) {
            gates.push_back(leg);
            m_trace.legs.push_back({way, {}, {}});
        }
        const auto literals = m_circuit.solve(m_trace.formula, gates);
        if (!literals)
            return nothing(fmt::format("the network above {} has loops that are too large to be "
                                       "followed",
                                       name),
                           "ask about a load nearer to the sources");
        m_literals = *literals;
        if (m_literals[alive] == logic::kFalse)
            return nothing(
                fmt::format("no source of {} can be reached from {}", m_medium.name, name),
                "draw the feed and the return up to a source, or name it with --sources");
        m_trace.dead = ~m_literals[alive];
        std::vector<SupplyLeg> legs; // those that lead somewhere
        for (std::size_t leg = 0; leg < m_trace.legs.size(); ++leg) {
            if (m_literals[gates[leg + 1]] == logic::kFalse) continue;
            legs.push_back({m_trace.legs[leg].name, ~m_literals[gates[leg + 1]],
                            connectionsBelow(gates[leg + 1])});
        }
        m_trace.legs = std::move(legs);
        m_trace.returnTraced = m_medium.hasReturns && m_network.returnLeaves(m_medium, load);
        addWarnings(load, name);
        m_trace.connections = connectionsBelow(alive);
        for (auto& [key, traced] : m_traced)
            m_trace.modes.push_back(std::move(traced));
        return std::move(m_trace);
    }

private:
    using Medium = SupplyNetwork::Medium;

    project::Problem nothing(std::string what, std::string remedy) const {
        const auto& component = m_project.components[m_trace.load.component];
        return {project::Severity::error, std::move(what), std::move(remedy),
                "component " + component.id, component.line.number};
    }

    std::string labelOf(std::size_t component) const {
        const auto& of = m_project.components[component];
        return of.tag.empty() ? of.id : of.tag;
    }

    // A gate that is made once and given its inputs later.
    std::uint32_t gate(char kind, const Medium* medium, std::size_t a, std::size_t b,
                       bool conjunction) {
        const auto [found, isNew] = m_gates.try_emplace({kind, medium, a, b}, 0);
        if (isNew) {
            found->second = m_circuit.addGate(conjunction);
            m_open.push_back({kind, medium, a, b});
        }
        return found->second;
    }
    // What the gates say, all of things that work:
    std::uint32_t supplied(std::size_t component, const Medium& medium) { // has supply
        return gate('p', &medium, component, 0, false);
    }
    std::uint32_t pair(std::size_t source, std::size_t component, const Medium& medium) {
        return gate('s', &medium, source, component, true); // feed and return by one source
    }
    std::uint32_t fed(std::size_t source, std::size_t component, const Medium& medium) {
        return gate('f', &medium, source, component, source == component);
    }
    std::uint32_t returned(std::size_t source, std::size_t component, const Medium& medium) {
        return gate('r', &medium, source, component, source == component);
    }
    std::uint32_t feedOver(std::size_t source, std::size_t connection, const Medium& medium) {
        return gate('F', &medium, source, connection, true);
    }
    std::uint32_t returnOver(std::size_t source, std::size_t connection, const Medium& medium) {
        return gate('R', &medium, source, connection, true);
    }
    std::uint32_t conducts(std::size_t connection, const Medium& medium) {
        return gate('c', &medium, connection, 0, true);
    }
    std::uint32_t nodeSound(std::size_t component, const Medium& medium) {
        return gate('n', &medium, component, 0, true);
    }
    std::uint32_t deviceSound(std::size_t component, const Medium& medium) {
        return gate('d', &medium, component, 0, true);
    }

    void finishAll() {
        while (!m_open.empty()) {
            const Key key = m_open.back();
            m_open.pop_back();
            finish(key);
        }
    }

    using Key = std::tuple<char, const Medium*, std::size_t, std::size_t>;

    void finish(const Key& key) {
        const auto& [kind, pointer, a, b] = key;
        const Medium& medium = *pointer;
        const std::uint32_t self = m_gates.at(key);
        switch (kind) {
        case 'p':
            for (const std::size_t source : medium.sources)
                if (source != a) m_circuit.addInput(self, pair(source, a, medium));
            break;
        case 's':
            m_circuit.addInput(self, fed(a, b, medium));
            // Only a load whose return is drawn can be asked about it.
            if (medium.hasReturns && m_network.returnLeaves(medium, b))
                m_circuit.addInput(self, returned(a, b, medium));
            break;
        case 'f':
            if (a == b)
                addSource(self, a, medium);
            else
                for (const std::size_t feed : medium.feeds)
                    if (to(feed) == b) m_circuit.addInput(self, feedOver(a, feed, medium));
            break;
        case 'r': // at the source itself: nothing to ask, the gate is true
            if (a == b) break;
            for (const std::size_t back : medium.returns)
                if (from(back) == b) m_circuit.addInput(self, returnOver(a, back, medium));
            break;
        case 'F':
            m_connectionOf[self] = b;
            m_circuit.addInput(self, fed(a, from(b), medium));
            m_circuit.addInput(self, conducts(b, medium));
            // The load's own failures are not a lost supply, unless it hands the supply on.
            if (to(b) != m_trace.load.component || m_network.leaves(medium, to(b)))
                m_circuit.addInput(self, nodeSound(to(b), medium));
            break;
        case 'R':
            m_connectionOf[self] = b;
            m_circuit.addInput(self, returned(a, to(b), medium));
            m_circuit.addInput(self, conducts(b, medium));
            if (to(b) != a) m_circuit.addInput(self, nodeSound(to(b), medium));
            break;
        case 'c':
            for (const project::Reference& device : m_project.connections[a].through)
                m_circuit.addInput(self, deviceSound(m_network.position(device.id), medium));
            break;
        case 'n':
            addModes(self, a, PartRole::node, medium);
            addOwnSupplies(self, a, &medium);
            break;
        case 'd':
            addModes(self, a, PartRole::device, medium);
            addOwnSupplies(self, a, nullptr);
            break;
        default: break;
        }
    }

    std::size_t from(std::size_t connection) const {
        return m_network.position(m_project.connections[connection].from);
    }
    std::size_t to(std::size_t connection) const {
        return m_network.position(m_project.connections[connection].to);
    }

    void addSource(std::uint32_t self, std::size_t source, const Medium& medium) {
        m_circuit.addInput(self, nodeSound(source, medium));
        if (std::find(m_trace.sources.begin(), m_trace.sources.end(), source) ==
                m_trace.sources.end() &&
            &medium == &m_medium)
            m_trace.sources.push_back(source);
        if (!m_network.m_wish.batteriesRunFlat || !m_network.arrives(medium, source)) return;
        // Charged from its own medium: one of the chargers must reach it.
        const std::uint32_t charged = m_circuit.addGate(false);
        for (const std::size_t feed : medium.feeds) {
            const std::size_t charger = from(feed);
            if (to(feed) != source || m_network.arrives(medium, charger)) continue;
            const std::uint32_t over = m_circuit.addGate(true);
            m_connectionOf[over] = feed;
            m_circuit.addInput(over, nodeSound(charger, medium));
            m_circuit.addInput(over, conducts(feed, medium));
            m_circuit.addInput(charged, over);
        }
        if (!m_circuit.inputs(charged).empty()) m_circuit.addInput(self, charged);
    }

    void addModes(std::uint32_t self, std::size_t component, PartRole role, const Medium& medium) {
        const auto found = m_modesOf.find(m_project.components[component].id);
        if (found == m_modesOf.end()) return;
        for (const std::size_t mode : found->second) {
            const ModeVerdict verdict =
                verdictOf(m_project.modes[mode], role, medium.electrical, m_network.m_wish.modes);
            // A part may be met in several roles; where one of them breaks, that is the one to
            // show.
            const auto [traced, isNew] =
                m_traced.try_emplace(mode, TracedMode{mode, role, verdict});
            if (!isNew && verdict.breaks && !traced->second.verdict.breaks)
                traced->second = {mode, role, verdict};
            if (verdict.breaks) m_circuit.addInput(self, ~variableOf(mode));
        }
    }

    Literal variableOf(std::size_t mode) {
        const auto [found, isNew] = m_variables.try_emplace(mode);
        if (isNew) {
            found->second = m_trace.formula.addVariable();
            m_trace.modeOfVariable.push_back(mode);
        }
        return found->second;
    }

    // What the part is fed by itself, in every medium but the one whose path is being followed.
    void addOwnSupplies(std::uint32_t self, std::size_t component, const Medium* followed) {
        for (const Medium& medium : m_network.m_media)
            if (&medium != followed && m_network.arrives(medium, component) &&
                !medium.sources.contains(component))
                m_circuit.addInput(self, supplied(component, medium));
    }

    std::vector<std::pair<std::string, std::uint32_t>> possibleLegs(std::size_t load) {
        std::vector<std::pair<std::string, std::uint32_t>> legs;
        std::vector<std::size_t> reaching;
        for (const std::size_t source : m_medium.sources)
            if (source != load && reaches(source, load)) reaching.push_back(source);
        if (reaching.size() >= 2)
            for (const std::size_t source : reaching)
                legs.emplace_back("from " + labelOf(source), pair(source, load, m_medium));
        else if (reaching.size() == 1)
            for (const std::size_t feed : m_medium.feeds)
                if (to(feed) == load) {
                    const Connection& connection = m_project.connections[feed];
                    legs.emplace_back(
                        "by " + (connection.name.empty() ? connection.id : connection.name),
                        feedOver(reaching.front(), feed, m_medium));
                }
        finishAll();
        return legs;
    }

    // Can the drawing be followed from the source to the load at all?
    bool reaches(std::size_t source, std::size_t load) {
        finishAll();
        const auto gates = m_circuit.below(pair(source, load, m_medium));
        const auto own = m_gates.find({'f', &m_medium, source, source});
        return own != m_gates.end() && std::binary_search(gates.begin(), gates.end(), own->second);
    }

    // The connections that what is below `top` runs over, dead ends left out.
    std::vector<std::size_t> connectionsBelow(std::uint32_t top) const {
        std::set<std::size_t> found;
        std::set<std::uint32_t> seen{top};
        std::vector<std::uint32_t> stack{top};
        while (!stack.empty()) {
            const std::uint32_t one = stack.back();
            stack.pop_back();
            if (m_literals[one] == logic::kFalse) continue;
            if (const auto connection = m_connectionOf.find(one);
                connection != m_connectionOf.end())
                found.insert(connection->second);
            for (const CircuitInput& input : m_circuit.inputs(one))
                if (input.isGate && seen.insert(input.gate).second) stack.push_back(input.gate);
        }
        return {found.begin(), found.end()};
    }

    void addWarnings(std::size_t load, const std::string& name) {
        if (m_medium.hasReturns && !m_trace.returnTraced)
            m_trace.warnings.push_back(
                fmt::format("No return of {} is drawn from {}: only its feed was followed.",
                            m_medium.name, name));
        if (!m_medium.hasReturns && m_medium.electrical)
            m_trace.warnings.push_back(fmt::format("No returns of {} are drawn at all: a common "
                                                   "return would not be found.",
                                                   m_medium.name));
        if (m_trace.legs.size() < 2)
            m_trace.warnings.push_back(fmt::format(
                "{} has one way of supply only: there is no redundancy to test.", name));
        for (const std::size_t source : m_trace.sources)
            if (source != load && m_network.arrives(m_medium, source) &&
                !m_network.m_wish.batteriesRunFlat)
                m_trace.warnings.push_back(fmt::format(
                    "{} is charged from its own medium and taken to carry on without: see "
                    "--batteries.",
                    labelOf(source)));
    }

    const SupplyNetwork& m_network;
    const project::Project& m_project;
    const Medium& m_medium; // of the load
    std::map<project::Id, std::vector<std::size_t>> m_modesOf;
    Circuit m_circuit;
    std::vector<Literal> m_literals; // of its gates, once solved
    std::map<Key, std::uint32_t> m_gates;
    std::vector<Key> m_open; // made, without inputs yet
    std::map<std::uint32_t, std::size_t> m_connectionOf;
    std::map<std::size_t, TracedMode> m_traced;
    std::map<std::size_t, Literal> m_variables;
    SupplyTrace m_trace;
};

project::Outcome<SupplyTrace> SupplyNetwork::trace(const SupplyLoad& load) const {
    return SupplyTracer(*this, load).run();
}

} // namespace cutwater::reliability
