// SPDX-License-Identifier: GPL-3.0-or-later
// From the plant's supply network to the tree "load without supply". Rule: a load has supply where
// one source works, a feed path leads from it to the load, and, where returns are drawn, a return
// path leads back to the same source; everything on the way must be sound, and what is itself fed
// by something (a relay's coil, a pump's motor, a mains unit's input) must have that supply, too.
// docs/methods/redundancy.md.
#pragma once

#include "models/logic/formula.h"
#include "models/project/index.h"
#include "models/project/project.h"
#include "models/reliability/supply_modes.h"

#include <set>
#include <string>
#include <vector>

namespace cutwater::reliability {

struct SupplyWish {
    PathRule modes;
    // Components that are sources whatever the drawing says; empty: found by the rule (where the
    // returns of a medium end; without returns, where its feeds begin).
    std::set<project::Id> sources;
    // A source that is charged from its own medium (a battery) is dead with its charger.
    bool batteriesRunFlat = false;
};

// A supply that comes to a load in one medium.
struct SupplyLoad {
    std::size_t component = 0; // position in project.components
    std::string medium;
    bool operator==(const SupplyLoad&) const = default;
};

// A way in which the load can be supplied.
struct SupplyLeg {
    std::string name;                     // "from PS-1", "by NZ-1.fuel-A"
    logic::Literal dead;                  // of SupplyTrace::formula
    std::vector<std::size_t> connections; // that it runs over: positions in project.connections
};

// A failure mode of a part on the way.
struct TracedMode {
    std::size_t mode = 0; // position in project.modes
    PartRole role = PartRole::device;
    ModeVerdict verdict;
};

struct SupplyTrace {
    SupplyLoad load;
    logic::Formula formula;
    logic::Literal dead;                     // the load has no supply
    std::vector<std::size_t> modeOfVariable; // position in project.modes
    std::vector<SupplyLeg> legs;          // one per source; one per feed where there is one source
    std::vector<TracedMode> modes;        // of all parts on the way, in the order of the project
    std::vector<std::size_t> connections; // that were traced
    std::vector<std::size_t> sources;     // components that can feed it
    bool returnTraced = false;
    std::vector<std::string> warnings; // sentences: what the drawing leaves open
};

class SupplyNetwork {
public:
    // Holds references. `project` must be valid.
    SupplyNetwork(const project::Project& project, const project::Index& index, SupplyWish wish);

    // Loads with at least two ways to be supplied, as far as the drawing goes: several feeds arrive
    // at them, or they are the bus behind such a meeting.
    std::vector<SupplyLoad> redundantLoads() const;
    // The supplies that arrive at a component.
    std::vector<SupplyLoad> loadsAt(const project::Id& component) const;

    // Problems: nothing feeds it; loops in the network that are too large.
    project::Outcome<SupplyTrace> trace(const SupplyLoad& load) const;

private:
    friend class SupplyTracer;
    friend class SupplyPaths;
    // All connections of one medium.
    struct Medium {
        std::string name;
        bool electrical = false, hasReturns = false;
        std::vector<std::size_t> feeds, returns; // positions in project.connections
        std::set<std::size_t> sources;           // components
    };
    std::size_t position(const project::Id& component) const;
    const Medium& medium(const std::string& name) const;
    bool arrives(const Medium& medium, std::size_t component) const;
    bool leaves(const Medium& medium, std::size_t component) const;
    bool returnLeaves(const Medium& medium, std::size_t component) const;
    void findSources(Medium& medium) const;

    const project::Project& m_project;
    const project::Index& m_index;
    SupplyWish m_wish;
    std::vector<Medium> m_media; // in the order of the project
};

} // namespace cutwater::reliability
