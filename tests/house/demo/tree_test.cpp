// SPDX-License-Identifier: GPL-3.0-or-later
// The demo's trees: the hidden single failure is found, the protections are two, and the figures
// are those of a boiler.
#include "tests/house/demo/demo.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

using namespace cutwater::project;
using testing::Contains;
using testing::IsEmpty;
using testing::Not;

namespace {

demo::Names below(const std::string& top) {
    return demo::eventsBelow(demo::nodeOf(top));
}

int entriesOf(const std::string& top) {
    return static_cast<int>(
        std::count_if(demo::project().log.begin(), demo::project().log.end(),
                      [&](const LogEntry& entry) { return entry.topEvent == top; }));
}

TEST(DemoTrees, Boiler1HidesASingleFailureInItsSupply) {
    for (const char* top : {"T1-1", "T3-1"}) {
        const auto singles = demo::solved(top).singles();
        EXPECT_THAT(singles, Contains("F7.open")) << top;
        EXPECT_THAT(singles, Contains("X4:3.loose")) << top;
        for (const char* leg : {"PS-1.no-output", "BB-1.opens", "DI-1A.opens", "DI-1B.opens",
                                "PB-1.opens", "BAT.no-output"})
            EXPECT_THAT(singles, Not(Contains(leg))) << top;
    }
}

TEST(DemoTrees, Boiler2HasAFuseAndAReturnForEachLeg) {
    for (const char* top : {"T1-2", "T3-2"}) {
        const auto solved = demo::solved(top);
        for (const char* part : {"F27A.open", "F27B.open", "X5:3.loose", "X5:4.loose"}) {
            EXPECT_THAT(solved.singles(), Not(Contains(part))) << top;
            EXPECT_THAT(solved.relevant(), Contains(part)) << top;
        }
        EXPECT_TRUE(solved.setsOfOrder(2).contains({"F27A.open", "F27B.open"})) << top;
        EXPECT_TRUE(solved.setsOfOrder(2).contains({"F27A.open", "X5:4.loose"})) << top;
    }
}

// An event alone makes a top event happen exactly where the engine lists it as a set of order 1.
TEST(DemoTrees, SingleFailuresAgreeWithTheGatesThemselves) {
    for (const auto& top : demo::project().tops) {
        const auto solved = demo::solved(top.id);
        if (!solved.solution.coherent()) continue;
        ASSERT_FALSE(demo::holds(top.node.id, {})) << top.id;
        demo::Names alone;
        for (const auto& event : below(top.id))
            if (demo::holds(top.node.id, {event})) alone.insert(event);
        EXPECT_EQ(solved.singles(), alone) << top.id;
    }
}

// Sets of order 2 likewise, for the trees of Boiler 1 that have at most some hundred events.
TEST(DemoTrees, PairsAgreeWithTheGatesThemselves) {
    for (const char* top : {"T1-1", "T2-1", "T3-1", "T4-1"}) {
        const auto& node = demo::nodeOf(top);
        const auto solved = demo::solved(top);
        const auto singles = solved.singles();
        demo::Names others;
        for (const auto& event : below(top))
            if (!singles.contains(event) && demo::index().event(event)->kind != EventKind::house)
                others.insert(event);
        std::set<demo::Names> pairs;
        for (auto a = others.begin(); a != others.end(); ++a)
            for (auto b = std::next(a); b != others.end(); ++b)
                if (demo::holds(node, {*a, *b})) pairs.insert({*a, *b});
        EXPECT_EQ(solved.setsOfOrder(2), pairs) << top;
    }
}

TEST(DemoTrees, LowWaterNeedsTwoProtectionsToFail) {
    for (const std::string n : {"1", "2"}) {
        const auto solved = demo::solved("T4-" + n);
        EXPECT_THAT(solved.singles(), IsEmpty());
        // A transmitter that reads high calls for too little water and blinds its own cut-out.
        const std::string high = "LT-" + n + ".reads-high";
        EXPECT_EQ(solved.setsOfOrder(2),
                  (std::set<demo::Names>{{high, "LL-" + n + ".fouled"},
                                         {high, "LL-" + n + ".bridged"},
                                         {high, "LR-" + n + ".stuck-made"}}));
    }
}

TEST(DemoTrees, LowWaterProtectionsAreTestedEveryWeek) {
    for (const char* id : {"LL-1.fouled", "LL-2.fouled", "LR-1.stuck-made", "LR-2.stuck-made"}) {
        const auto& model = demo::index().mode(id)->model;
        EXPECT_EQ(model.kind, ModelKind::tested) << id;
        const auto* interval = demo::index().resolved(*model.find(Role::interval));
        EXPECT_EQ(inBaseUnits(*interval), 168) << id;
    }
}

// De-energise to trip: a lost supply stops the boiler and takes no part in T4.
TEST(DemoTrees, ALostSupplyTripsAndIsHarmless) {
    for (const std::string n : {"1", "2"}) {
        const auto trip = demo::solved("T3-" + n).singles();
        const auto blind = below("T4-" + n);
        const std::string relayFuse = n == "1" ? "F12.open" : "F24.open";
        for (const auto& id : {relayFuse, "LR-" + n + ".coil-open", "LT-" + n + ".loses-supply",
                               "VB-" + n + ".opens"}) {
            EXPECT_THAT(trip, Contains(id));
            EXPECT_THAT(blind, Not(Contains(id)));
        }
    }
}

TEST(DemoTrees, SubtreesAreShared) {
    std::map<std::string, int> parents;
    for (const auto& gate : demo::project().gates)
        for (const auto& input : gate.inputs)
            ++parents[input.id];
    for (const std::string n : {"1", "2"})
        for (const char* gate : {"G-control-", "G-fuel-", "G-false-pressure-", "G-water-",
                                 "G-main-unseen-", "G-low-water-", "G-valves-leak-"})
            EXPECT_GE(parents[gate + n], 2) << gate << n;
    EXPECT_EQ(parents["G-battery-board"], 2);
}

TEST(DemoTrees, EveryKindOfEventAndTheUsualGatesAreThere) {
    std::set<EventKind> events;
    for (const auto& event : demo::project().events)
        events.insert(event.kind);
    EXPECT_EQ(events.size(), 4u);
    std::set<GateKind> gates;
    for (const auto& gate : demo::project().gates)
        gates.insert(gate.kind);
    for (const auto kind : {GateKind::andGate, GateKind::orGate, GateKind::vote, GateKind::inhibit,
                            GateKind::notGate})
        EXPECT_TRUE(gates.contains(kind));
}

TEST(DemoTrees, OnlyTheExtraTreeIsNotCoherent) {
    for (const auto& top : demo::project().tops)
        EXPECT_EQ(demo::solved(top.id).solution.coherent(), top.id != "E1-1") << top.id;
}

TEST(DemoTrees, ANoSparkStartLeavesOilOnlyWherePilotFuelComes) {
    const auto& node = demo::nodeOf("E1-1");
    EXPECT_TRUE(demo::holds(node, {"ET-1.fouled"}));
    EXPECT_FALSE(demo::holds(node, {"ET-1.fouled", "PV-1.coil-open"}));
    const auto solved = demo::solved("E1-1");
    EXPECT_THAT(solved.setsOfOrder(4), Contains(demo::Names{"ET-1.fouled", "not PV-1.coil-open",
                                                            "not PN-1.plugged", "not PP-1.low"}));
}

TEST(DemoTrees, InPortOnGasOilTheHeaterDoesNotCount) {
    const auto atSea = demo::solved("T3-1"), inPort = demo::solved("T3-1", {{"H-fuel-oil", false}});
    EXPECT_THAT(atSea.singles(), Contains("HT-1.thermostat-stuck"));
    EXPECT_THAT(inPort.relevant(), Not(Contains("HT-1.thermostat-stuck")));
    EXPECT_TRUE(atSea.setsOfOrder(2).contains({"HE-11.open", "HE-12.open"}));
    EXPECT_THAT(atSea.singles(), Not(Contains("HE-11.open")));
}

TEST(DemoTrees, WithTheSelectorInManualTheDutyPumpIsASingleFailure) {
    EXPECT_THAT(demo::solved("T3-1").singles(), Not(Contains("FP-1A.worn")));
    EXPECT_THAT(demo::solved("T3-1", {{"H-pumps-by-hand-1", true}}).singles(),
                Contains("FP-1A.worn"));
}

demo::Forced forcedBy(const std::string& assessment) {
    demo::Forced forced;
    for (const auto& one : demo::project().assessments)
        if (one.id == assessment)
            for (const auto& event : one.forced)
                forced[event.event.id] = event.state;
    return forced;
}

TEST(DemoAssessments, WithTheTransmitterBridgedTheProbeIsAlone) {
    const auto before = demo::solved("T4-1"), after = demo::solved("T4-1", forcedBy("A1"));
    EXPECT_TRUE(after.setsOfOrder(2).contains({"LL-1.fouled", "level-falls-1"}));
    EXPECT_GT(after.probability(), 100 * before.probability());
    EXPECT_THAT(demo::solved("T3-1", forcedBy("A1")).relevant(), Not(Contains("LT-1.frozen")));
}

TEST(DemoAssessments, OnOneScannerThatScannerCanTripTheBoiler) {
    EXPECT_THAT(demo::solved("T3-2").relevant(), Not(Contains("SC-21.lens-dirty")));
    const auto singles = demo::solved("T3-2", forcedBy("A2")).singles();
    EXPECT_THAT(singles, Contains("SC-21.lens-dirty"));
    EXPECT_THAT(singles, Not(Contains("SC-22.lens-dirty")));
}

TEST(DemoAssessments, OnTheBatteryLegItsBreakerIsASingleFailure) {
    const auto before = demo::solved("T3-1").singles();
    const auto after = demo::solved("T3-1", forcedBy("A3")).singles();
    demo::Names gained;
    std::set_difference(after.begin(), after.end(), before.begin(), before.end(),
                        std::inserter(gained, gained.end()));
    EXPECT_EQ(gained, (demo::Names{"BAT.no-output", "BB-1.opens", "BCH.no-output", "DI-1B.opens"}));
}

// A figure a day's watch would believe: the log is the yardstick, within a factor of three.
TEST(DemoFigures, StartsFailAboutAsOftenAsTheLogSays) {
    const std::map<std::string, double> starts{{"T1-1", 6264}, {"T1-2", 4074}};
    for (const auto& [top, count] : starts) {
        const double predicted = demo::solved(top).probability() * count;
        const double seen = entriesOf(top);
        EXPECT_GT(predicted, seen / 3) << top;
        EXPECT_LT(predicted, seen * 3) << top;
    }
}

TEST(DemoFigures, ABoilerIsTrippedForAboutAnHourAMonth) {
    for (const char* top : {"T3-1", "T3-2"}) {
        const double hoursInThirtyDays = demo::solved(top).probability() * 720;
        EXPECT_GT(hoursInThirtyDays, 0.3) << top;
        EXPECT_LT(hoursInThirtyDays, 4) << top;
    }
}

TEST(DemoFigures, LowWaterIsRareAndBothBoilersOutRarerThanOne) {
    for (const char* top : {"T4-1", "T4-2"}) {
        const double p = demo::solved(top).probability();
        EXPECT_GT(p, 1e-8) << top;
        EXPECT_LT(p, 1e-5) << top;
    }
    const double one = demo::solved("T3-1").probability(), both = demo::solved("T5").probability();
    EXPECT_LT(both, one / 5);
    EXPECT_GT(both, one * one);
}

TEST(DemoFigures, EveryEventHasAProbability) {
    for (const auto& top : demo::project().tops)
        for (const double q : demo::solved(top.id).q) {
            EXPECT_GT(q, 0) << top.id;
            EXPECT_LE(q, 1) << top.id;
        }
}

} // namespace
