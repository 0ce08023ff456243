// SPDX-License-Identifier: GPL-3.0-or-later
// Answers what a load's supply hangs on: the tree "load without supply", its legs, and what the
// drawing leaves open.
#include "models/reliability/supply.h"
#include "models/reliability/supply_paths.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::reliability {

using logic::Literal;
using project::Connection;

class SupplyTracer {
public:
    SupplyTracer(const SupplyNetwork& network, const SupplyLoad& load)
        : m_network(network), m_project(network.m_project), m_medium(network.medium(load.medium)),
          m_paths(network, m_medium, m_trace) {
        m_trace.load = load;
    }

    project::Outcome<SupplyTrace> run() {
        const std::size_t load = m_trace.load.component;
        const std::string name = labelOf(load);
        if (!m_network.arrives(m_medium, load))
            return nothing(fmt::format("no feed of {} arrives at {}", m_medium.name, name),
                           "name a component that is fed, or draw its feed");
        const std::uint32_t alive = m_paths.supplied(load, m_medium);
        m_paths.finishAll();
        std::vector<std::uint32_t> gates{alive};
        for (const auto& [way, leg] : possibleLegs(load)) {
            gates.push_back(leg);
            m_trace.legs.push_back({way, {}, {}});
        }
        const auto literals = m_paths.circuit().solve(m_trace.formula, gates);
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
                            m_paths.connectionsBelow(gates[leg + 1], m_literals)});
        }
        m_trace.legs = std::move(legs);
        m_trace.returnTraced = m_medium.hasReturns && m_network.returnLeaves(m_medium, load);
        addWarnings(load, name);
        m_trace.connections = m_paths.connectionsBelow(alive, m_literals);
        for (auto& [key, traced] : m_paths.traced())
            m_trace.modes.push_back(std::move(traced));
        return std::move(m_trace);
    }

private:
    project::Problem nothing(std::string what, std::string remedy) const {
        const auto& component = m_project.components[m_trace.load.component];
        return {project::Severity::error, std::move(what), std::move(remedy),
                "component " + component.id, component.line.number};
    }

    std::string labelOf(std::size_t component) const {
        const auto& of = m_project.components[component];
        return of.tag.empty() ? of.id : of.tag;
    }

    std::vector<std::pair<std::string, std::uint32_t>> possibleLegs(std::size_t load) {
        std::vector<std::pair<std::string, std::uint32_t>> legs;
        std::vector<std::size_t> reaching;
        for (const std::size_t source : m_medium.sources)
            if (source != load && m_paths.reaches(source, load)) reaching.push_back(source);
        if (reaching.size() >= 2)
            for (const std::size_t source : reaching)
                legs.emplace_back("from " + labelOf(source), m_paths.pair(source, load, m_medium));
        else if (reaching.size() == 1)
            for (const std::size_t feed : m_medium.feeds)
                if (m_paths.to(feed) == load) {
                    const Connection& connection = m_project.connections[feed];
                    legs.emplace_back(
                        "by " + (connection.name.empty() ? connection.id : connection.name),
                        m_paths.feedOver(reaching.front(), feed, m_medium));
                }
        m_paths.finishAll();
        return legs;
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
    const SupplyNetwork::Medium& m_medium; // of the load
    SupplyTrace m_trace;
    SupplyPaths m_paths;             // writes into m_trace
    std::vector<Literal> m_literals; // of its gates, once solved
};

project::Outcome<SupplyTrace> SupplyNetwork::trace(const SupplyLoad& load) const {
    return SupplyTracer(*this, load).run();
}

} // namespace cutwater::reliability
