// SPDX-License-Identifier: GPL-3.0-or-later
// What has to hold for supply to arrive, as gates of a circuit: followed up the network from one
// load. Private to supply_trace.cpp and this folder.
#pragma once

#include "models/reliability/supply.h"
#include "models/reliability/supply_circuit.h"

#include <map>
#include <tuple>

namespace cutwater::reliability {

class SupplyPaths {
public:
    using Medium = SupplyNetwork::Medium;

    // Adds variables, modes and sources to the trace, which must outlive it.
    SupplyPaths(const SupplyNetwork& network, const Medium& medium, SupplyTrace& trace);

    // What the gates say, all of things that work. A gate has its inputs after finishAll().
    std::uint32_t supplied(std::size_t component, const Medium& medium) { // has supply
        return gate('p', &medium, component, 0, false);
    }
    std::uint32_t pair(std::size_t source, std::size_t component, const Medium& medium) {
        return gate('s', &medium, source, component, true); // feed and return by one source
    }
    std::uint32_t feedOver(std::size_t source, std::size_t connection, const Medium& medium) {
        return gate('F', &medium, source, connection, true);
    }
    void finishAll();
    // Can the drawing be followed from the source to the load at all?
    bool reaches(std::size_t source, std::size_t load);

    Circuit& circuit() { return m_circuit; }
    // The connections that what is below `top` runs over, dead ends (literals that are false) left
    // out.
    std::vector<std::size_t> connectionsBelow(std::uint32_t top,
                                              const std::vector<logic::Literal>& literals) const;
    std::map<std::size_t, TracedMode>& traced() { return m_traced; }
    std::size_t to(std::size_t connection) const;
    std::size_t from(std::size_t connection) const;

private:
    using Key = std::tuple<char, const Medium*, std::size_t, std::size_t>;

    std::uint32_t gate(char kind, const Medium* medium, std::size_t a, std::size_t b,
                       bool conjunction);
    std::uint32_t fed(std::size_t source, std::size_t component, const Medium& medium) {
        return gate('f', &medium, source, component, source == component);
    }
    std::uint32_t returned(std::size_t source, std::size_t component, const Medium& medium) {
        return gate('r', &medium, source, component, source == component);
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
    void finish(const Key& key);
    void addSource(std::uint32_t self, std::size_t source, const Medium& medium);
    void addModes(std::uint32_t self, std::size_t component, PartRole role, const Medium& medium);
    void addOwnSupplies(std::uint32_t self, std::size_t component, const Medium* followed);
    logic::Literal variableOf(std::size_t mode);

    const SupplyNetwork& m_network;
    const project::Project& m_project;
    const Medium& m_medium; // of the load
    SupplyTrace& m_trace;
    std::map<project::Id, std::vector<std::size_t>> m_modesOf;
    Circuit m_circuit;
    std::map<Key, std::uint32_t> m_gates;
    std::vector<Key> m_open; // made, without inputs yet
    std::map<std::uint32_t, std::size_t> m_connectionOf;
    std::map<std::size_t, TracedMode> m_traced;
    std::map<std::size_t, logic::Literal> m_variables;
};

} // namespace cutwater::reliability
