// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/supply_paths.h"

#include <algorithm>

namespace cutwater::reliability {

using logic::Literal;

SupplyPaths::SupplyPaths(const SupplyNetwork& network, const Medium& medium, SupplyTrace& trace)
    : m_network(network), m_project(network.m_project), m_medium(medium), m_trace(trace) {
    for (std::size_t mode = 0; mode < m_project.modes.size(); ++mode)
        m_modesOf[m_project.modes[mode].component].push_back(mode);
}

// A gate that is made once and given its inputs later.
std::uint32_t SupplyPaths::gate(char kind, const Medium* medium, std::size_t a, std::size_t b,
                                bool conjunction) {
    const auto [found, isNew] = m_gates.try_emplace({kind, medium, a, b}, 0);
    if (isNew) {
        found->second = m_circuit.addGate(conjunction);
        m_open.push_back({kind, medium, a, b});
    }
    return found->second;
}

void SupplyPaths::finishAll() {
    while (!m_open.empty()) {
        const Key key = m_open.back();
        m_open.pop_back();
        finish(key);
    }
}

void SupplyPaths::finish(const Key& key) {
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

std::size_t SupplyPaths::from(std::size_t connection) const {
    return m_network.position(m_project.connections[connection].from);
}

std::size_t SupplyPaths::to(std::size_t connection) const {
    return m_network.position(m_project.connections[connection].to);
}

void SupplyPaths::addSource(std::uint32_t self, std::size_t source, const Medium& medium) {
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

void SupplyPaths::addModes(std::uint32_t self, std::size_t component, PartRole role,
                           const Medium& medium) {
    const auto found = m_modesOf.find(m_project.components[component].id);
    if (found == m_modesOf.end()) return;
    for (const std::size_t mode : found->second) {
        const ModeVerdict verdict =
            verdictOf(m_project.modes[mode], role, medium.electrical, m_network.m_wish.modes);
        // A part may be met in several roles; where one of them breaks, that is the one to
        // show.
        const auto [traced, isNew] = m_traced.try_emplace(mode, TracedMode{mode, role, verdict});
        if (!isNew && verdict.breaks && !traced->second.verdict.breaks)
            traced->second = {mode, role, verdict};
        if (verdict.breaks) m_circuit.addInput(self, ~variableOf(mode));
    }
}

Literal SupplyPaths::variableOf(std::size_t mode) {
    const auto [found, isNew] = m_variables.try_emplace(mode);
    if (isNew) {
        found->second = m_trace.formula.addVariable();
        m_trace.modeOfVariable.push_back(mode);
    }
    return found->second;
}

// What the part is fed by itself, in every medium but the one whose path is being followed.
void SupplyPaths::addOwnSupplies(std::uint32_t self, std::size_t component,
                                 const Medium* followed) {
    for (const Medium& medium : m_network.m_media)
        if (&medium != followed && m_network.arrives(medium, component) &&
            !medium.sources.contains(component))
            m_circuit.addInput(self, supplied(component, medium));
}

bool SupplyPaths::reaches(std::size_t source, std::size_t load) {
    finishAll();
    const auto gates = m_circuit.below(pair(source, load, m_medium));
    const auto own = m_gates.find({'f', &m_medium, source, source});
    return own != m_gates.end() && std::binary_search(gates.begin(), gates.end(), own->second);
}

std::vector<std::size_t> SupplyPaths::connectionsBelow(std::uint32_t top,
                                                       const std::vector<Literal>& literals) const {
    std::set<std::size_t> found;
    std::set<std::uint32_t> seen{top};
    std::vector<std::uint32_t> stack{top};
    while (!stack.empty()) {
        const std::uint32_t one = stack.back();
        stack.pop_back();
        if (literals[one] == logic::kFalse) continue;
        if (const auto connection = m_connectionOf.find(one); connection != m_connectionOf.end())
            found.insert(connection->second);
        for (const CircuitInput& input : m_circuit.inputs(one))
            if (input.isGate && seen.insert(input.gate).second) stack.push_back(input.gate);
    }
    return {found.begin(), found.end()};
}

} // namespace cutwater::reliability
