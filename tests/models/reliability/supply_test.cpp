// SPDX-License-Identifier: GPL-3.0-or-later
// Small supply networks whose answers are seen at a glance, and random ones against a walk through
// the drawing for every combination of failures.
#include "models/reliability/supply.h"

#include "models/logic/solution.h"
#include "models/reliability/supply_circuit.h"
#include "tests/oracle/random_tree.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater::reliability {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::UnorderedElementsAre;

using Names = std::set<std::string>;

struct Plant {
    project::Project project;

    // A component with one mode that opens it, "NAME.open".
    void part(const std::string& id, const std::string& modeName = "open") {
        project.components.push_back({});
        project.components.back().id = id;
        project.modes.push_back({});
        project.modes.back().id = id + ".open";
        project.modes.back().component = id;
        project.modes.back().name = modeName;
    }
    void wire(const std::string& from, const std::string& to, std::vector<std::string> through,
              project::SupplyPath path = project::SupplyPath::feed,
              const std::string& medium = "24 V DC") {
        project.connections.push_back({});
        auto& connection = project.connections.back();
        connection.id = "c" + std::to_string(project.connections.size());
        connection.medium = medium;
        connection.path = path;
        connection.from = from;
        connection.to = to;
        for (const std::string& device : through)
            connection.through.push_back({device, {}});
    }
};

struct Answer {
    std::set<Names> sets;
    std::vector<std::string> legs;
    std::vector<std::string> warnings;
};

std::set<Names> setsOf(const SupplyTrace& trace, const project::Project& project,
                       logic::Literal dead) {
    const auto solution = logic::solve(trace.formula, dead).solution;
    std::set<Names> sets;
    if (solution->constant()) return sets;
    EXPECT_TRUE(solution->coherent());
    auto listing = solution->list(std::vector<double>(trace.modeOfVariable.size(), 1.0), {});
    while (const auto found = listing.next()) {
        Names names;
        for (const auto& literal : found->literals)
            names.insert(project.modes[trace.modeOfVariable[literal.variable]].component);
        sets.insert(names);
    }
    return sets;
}

Answer answerFor(const Plant& plant, const std::string& load, SupplyWish wish = {}) {
    const project::Index index(plant.project);
    const SupplyNetwork network(plant.project, index, std::move(wish));
    const auto loads = network.loadsAt(load);
    EXPECT_EQ(loads.size(), 1u);
    const auto trace = network.trace(loads.at(0));
    EXPECT_TRUE(trace) << (trace ? "" : trace.problems().front().what);
    if (!trace) return {};
    Answer answer{setsOf(*trace, plant.project, trace->dead), {}, trace->warnings};
    for (const SupplyLeg& leg : trace->legs)
        answer.legs.push_back(leg.name);
    return answer;
}

// Two units, a coupling, one fuse, one return terminal for both.
Plant twoLegs() {
    Plant plant;
    for (const char* id : {"A", "B", "RM", "BUS", "F7", "X4", "DA", "DB", "L", "FL"})
        plant.part(id);
    plant.wire("A", "RM", {"DA"});
    plant.wire("B", "RM", {"DB"});
    plant.wire("RM", "BUS", {"F7"});
    plant.wire("BUS", "L", {"FL"});
    plant.wire("L", "BUS", {}, project::SupplyPath::back);
    plant.wire("BUS", "A", {"X4"}, project::SupplyPath::back);
    plant.wire("BUS", "B", {"X4"}, project::SupplyPath::back);
    return plant;
}

TEST(Supply, TwoLegsThatMeetInAFuseAndATerminal) {
    const Answer bus = answerFor(twoLegs(), "BUS");
    EXPECT_THAT(bus.sets, UnorderedElementsAre(Names{"F7"}, Names{"X4"}, Names{"RM"}, Names{"BUS"},
                                               Names{"A", "B"}, Names{"A", "DB"}, Names{"DA", "B"},
                                               Names{"DA", "DB"}));
    EXPECT_THAT(bus.legs, ElementsAre("from A", "from B"));
}

TEST(Supply, ALoadAddsItsBranchAndNotItself) {
    const Answer load = answerFor(twoLegs(), "L");
    EXPECT_TRUE(load.sets.contains(Names{"FL"}));
    EXPECT_FALSE(load.sets.contains(Names{"L"}));
    EXPECT_EQ(load.sets.size(), 9u);
}

TEST(Supply, OwnReturnsMakeLegsOfTheirOwn) {
    Plant plant = twoLegs();
    plant.part("X5");
    plant.project.connections.back().through = {{"X5", {}}};
    const Answer bus = answerFor(plant, "BUS");
    EXPECT_FALSE(bus.sets.contains(Names{"X4"}));
    // The return must lead to the source that feeds: A's feed with B's return is no circuit.
    for (const Names& pair :
         {Names{"X4", "X5"}, Names{"X4", "B"}, Names{"A", "X5"}, Names{"DA", "X5"}})
        EXPECT_TRUE(bus.sets.contains(pair));
}

TEST(Supply, WhatIsFedItselfMustBeFed) {
    Plant plant = twoLegs();
    for (const char* id : {"BOARD", "PB"})
        plant.part(id);
    plant.wire("BOARD", "A", {"PB"}, project::SupplyPath::feed, "230 V AC");
    Answer bus = answerFor(plant, "BUS");
    EXPECT_TRUE(bus.sets.contains(Names{"BOARD", "B"}));
    EXPECT_TRUE(bus.sets.contains(Names{"PB", "DB"}));
    // The board feeds both: the redundancy is gone.
    plant.wire("BOARD", "B", {}, project::SupplyPath::feed, "230 V AC");
    bus = answerFor(plant, "BUS");
    EXPECT_TRUE(bus.sets.contains(Names{"BOARD"}));
}

TEST(Supply, ABatteryCarriesOnOrRunsFlat) {
    Plant plant = twoLegs();
    plant.part("CHARGER", "no output");
    plant.wire("CHARGER", "B", {});
    const Answer carries = answerFor(plant, "BUS");
    EXPECT_FALSE(carries.sets.contains(Names{"A", "CHARGER"}));
    EXPECT_THAT(carries.warnings, ElementsAre(HasSubstr("B is charged from its own medium")));
    SupplyWish flat;
    flat.batteriesRunFlat = true;
    EXPECT_TRUE(answerFor(plant, "BUS", flat).sets.contains(Names{"A", "CHARGER"}));
}

TEST(Supply, WithoutReturnsTheSourceIsWhereTheFeedsBegin) {
    Plant plant;
    for (const char* id : {"TANK", "NOZZLE"})
        plant.part(id, "empty");
    for (const char* id : {"PA", "PB"})
        plant.part(id, "motor stops");
    plant.part("V", "stuck closed");
    plant.part("W", "stuck open"); // lets the oil through
    plant.wire("TANK", "NOZZLE", {"PA", "V", "W"}, project::SupplyPath::feed, "fuel");
    plant.wire("TANK", "NOZZLE", {"PB", "V", "W"}, project::SupplyPath::feed, "fuel");
    const Answer nozzle = answerFor(plant, "NOZZLE");
    EXPECT_THAT(nozzle.sets, UnorderedElementsAre(Names{"TANK"}, Names{"V"}, Names{"PA", "PB"}));
    EXPECT_THAT(nozzle.legs, ElementsAre("by c1", "by c2"));
}

TEST(Supply, TheUserKnowsBetterThanTheRule) {
    SupplyWish wish;
    wish.modes.passes = {"F7.open"};
    EXPECT_FALSE(answerFor(twoLegs(), "BUS", wish).sets.contains(Names{"F7"}));
    Plant plant = twoLegs();
    plant.project.modes[4].name = "label missing"; // F7
    EXPECT_FALSE(answerFor(plant, "BUS").sets.contains(Names{"F7"}));
    SupplyWish breaks;
    breaks.modes.breaks = {"F7.open"};
    EXPECT_TRUE(answerFor(plant, "BUS", breaks).sets.contains(Names{"F7"}));
}

TEST(Supply, WithoutASourceASentence) {
    Plant plant;
    for (const char* id : {"A", "B", "C"})
        plant.part(id);
    plant.wire("A", "B", {});
    plant.wire("B", "A", {}); // a ring without a source
    plant.wire("B", "C", {});
    const project::Index index(plant.project);
    const SupplyNetwork network(plant.project, index, {});
    const auto trace = network.trace(network.loadsAt("C").at(0));
    ASSERT_FALSE(trace);
    EXPECT_THAT(trace.problems().front().what, HasSubstr("no source"));
}

TEST(Supply, RedundantLoadsAreWhereFeedsMeetOrTheBusBehind) {
    const Plant plant = twoLegs();
    const project::Index index(plant.project);
    const auto loads = SupplyNetwork(plant.project, index, {}).redundantLoads();
    ASSERT_EQ(loads.size(), 1u);
    EXPECT_EQ(plant.project.components[loads[0].component].id, "BUS");
}

TEST(SupplyModes, WordsDecide) {
    const auto breaks = [](const char* name, PartRole role, bool electrical) {
        project::FailureMode mode;
        mode.id = "m";
        mode.name = name;
        return verdictOf(mode, role, electrical, {}).breaks;
    };
    using enum PartRole;
    EXPECT_TRUE(breaks("opens without cause", device, true));
    EXPECT_TRUE(breaks("Loose", device, true));
    EXPECT_FALSE(breaks("shorts", device, true));
    EXPECT_TRUE(breaks("short to the return", node, true));
    EXPECT_FALSE(breaks("does not open", device, true));
    EXPECT_TRUE(breaks("does not open", device, false));
    EXPECT_TRUE(breaks("does not close", device, true));
    EXPECT_FALSE(breaks("does not close", device, false));
    EXPECT_FALSE(breaks("does not shut tight", device, false));
    EXPECT_TRUE(breaks("shut without cause", device, false));
    EXPECT_TRUE(breaks("coil open", device, false));
    EXPECT_FALSE(breaks("both inputs bridged at the module", node, true));
    EXPECT_FALSE(breaks("reopened", device, true)); // whole words only
    EXPECT_TRUE(isElectrical("24 V DC"));
    EXPECT_TRUE(isElectrical("400V"));
    EXPECT_FALSE(isElectrical("control air"));
    EXPECT_FALSE(isElectrical("Vapour"));
}

// Random meshes with loops: for every combination of dead parts, is the load reached?
TEST(Supply, MeshesAgreeWithAWalkThroughTheDrawing) {
    for (std::uint64_t seed = 1; seed <= 120; ++seed) {
        oracle::Random random(seed);
        Plant plant;
        const std::uint32_t nodes = 5 + random.below(4);
        for (std::uint32_t i = 0; i < nodes; ++i)
            plant.part("n" + std::to_string(i));
        const auto node = [&](std::uint32_t bound) {
            return "n" + std::to_string(random.below(bound));
        };
        for (std::uint32_t i = 0; i < nodes + 4; ++i) {
            const std::string from = node(nodes),
                              to = "n" + std::to_string(1 + random.below(nodes - 1));
            if (from != to) plant.wire(from, to, {});
        }
        // n0 is the one source; nothing arrives there. The last node is the load.
        plant.wire("n0", "n1", {});
        const std::string load = "n" + std::to_string(nodes - 1);
        plant.wire(node(nodes - 1), load, {});
        SupplyWish wish;
        wish.sources = {"n0"};
        const project::Index index(plant.project);
        const SupplyNetwork network(plant.project, index, wish);
        const auto trace = network.trace(network.loadsAt(load).at(0));
        const bool hands =
            std::any_of(plant.project.connections.begin(), plant.project.connections.end(),
                        [&](const auto& wire) { return wire.from == load; });
        std::optional<logic::Solution> solution;
        if (trace) solution = logic::solve(trace->formula, trace->dead).solution;
        // Nodes that nothing feeds are sources by the rule, too.
        std::set<std::string> sources{"n0"};
        for (const auto& wire : plant.project.connections)
            if (std::none_of(plant.project.connections.begin(), plant.project.connections.end(),
                             [&](const auto& other) { return other.to == wire.from; }))
                sources.insert(wire.from);
        for (std::uint32_t dead = 0; dead < (1u << nodes); ++dead) {
            const auto isDead = [&](const std::string& id) {
                return (dead >> std::stoul(id.substr(1)) & 1u) != 0 && (id != load || hands);
            };
            std::set<std::string> reached;
            for (const std::string& source : sources)
                if (!isDead(source)) reached.insert(source);
            for (bool grown = true; grown;) {
                grown = false;
                for (const auto& wire : plant.project.connections)
                    if (reached.contains(wire.from) && !isDead(wire.to))
                        grown |= reached.insert(wire.to).second;
            }
            const bool lives = reached.contains(load);
            if (!trace) {
                EXPECT_FALSE(lives) << seed;
                continue;
            }
            std::vector<double> q;
            for (const std::size_t mode : trace->modeOfVariable)
                q.push_back(isDead(plant.project.modes[mode].component) ? 1.0 : 0.0);
            ASSERT_EQ(solution->probability(q).occurs, lives ? 0.0 : 1.0) << seed << " " << dead;
        }
    }
}

TEST(SupplyCircuit, AChainOfAHundredThousandGatesNeedsNoStack) {
    Circuit circuit;
    logic::Formula formula;
    const logic::Literal event = formula.addVariable(), other = formula.addVariable();
    std::uint32_t last = circuit.addGate(true);
    circuit.addInput(last, event);
    for (int i = 0; i < 100'000; ++i) {
        const std::uint32_t next = circuit.addGate(i % 2 == 0);
        circuit.addInput(next, last);
        circuit.addInput(next, other);
        last = next;
    }
    const auto literals = circuit.solve(formula, {last});
    ASSERT_TRUE(literals);
    const auto solution = logic::solve(formula, (*literals)[last]).solution;
    EXPECT_EQ(solution->probability(std::vector{0.3, 0.5}).occurs, 0.5); // all is absorbed
}

TEST(SupplyCircuit, TooLargeALoopIsRefused) {
    Circuit circuit;
    logic::Formula formula;
    std::vector<std::uint32_t> ring;
    for (int i = 0; i < 3000; ++i)
        ring.push_back(circuit.addGate(false));
    for (std::size_t i = 0; i < ring.size(); ++i) {
        circuit.addInput(ring[i], ring[(i + 1) % ring.size()]);
        circuit.addInput(ring[i], formula.addVariable());
    }
    EXPECT_FALSE(circuit.solve(formula, {ring.front()}, 100'000));
}

} // namespace
} // namespace cutwater::reliability
