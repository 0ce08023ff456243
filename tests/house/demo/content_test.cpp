// SPDX-License-Identifier: GPL-3.0-or-later
// What the demo holds: enough of a plant, and no number without its source.
#include "tests/house/demo/demo.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

using namespace cutwater::project;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

const Project& ship() {
    return demo::project();
}

// Calls `see(where, quantity)` for every number of the project.
template <typename See>
void eachQuantity(See see) {
    const auto ofModel = [&](const std::string& where, const FailureModel& model) {
        for (const auto& number : model.numbers)
            see(where, number.quantity);
    };
    for (const auto& parameter : ship().parameters)
        see("parameter " + parameter.id, parameter.quantity);
    for (const auto& mode : ship().modes)
        ofModel("mode " + mode.id, mode.model);
    for (const auto& event : ship().events)
        ofModel("event " + event.id, event.model);
    for (const auto& connection : ship().connections)
        if (connection.capacity) see("connection " + connection.id, *connection.capacity);
    for (const auto& group : ship().commonCauses)
        for (const auto& factor : group.factors)
            see("group " + group.id, factor);
    for (const auto& assessment : ship().assessments)
        if (assessment.duration) see("assessment " + assessment.id, *assessment.duration);
}

void expectSource(const std::string& where, const SourceNote& source) {
    SCOPED_TRACE(where);
    EXPECT_THAT(allSourceTags(), testing::Contains(source.tag));
    EXPECT_FALSE(source.document.empty());
    if (source.tag == "invented") {
        EXPECT_EQ(source.document, "invented for the demo");
    }
}

// "HV-1.tracking" and "HV-2.tracking" become one: every '1' or '2' that names a boiler is '#'.
std::string withoutBoiler(std::string id) {
    for (std::size_t i = 1; i < id.size(); ++i)
        if ((id[i] == '1' || id[i] == '2') &&
            (id[i - 1] == '-' || id[i - 1] == 'B' || id[i - 1] == 'F')) {
            id[i] = '#';
            break;
        }
    return id;
}

TEST(DemoContent, HoldsAPlantWorthAnalysing) {
    EXPECT_GE(ship().components.size(), 60u);
    EXPECT_GE(ship().modes.size(), 170u);
    EXPECT_GE(ship().connections.size(), 30u);
    EXPECT_GE(ship().assessments.size(), 3u);
    std::vector<std::string> tops;
    for (const auto& top : ship().tops)
        tops.push_back(top.id);
    EXPECT_THAT(tops, ElementsAre("T1-1", "T1-2", "T2-1", "T2-2", "T3-1", "T3-2", "T4-1", "T4-2",
                                  "T5", "E1-1"));
}

TEST(DemoContent, EveryNumberHasASource) {
    int seen = 0;
    eachQuantity([&](const std::string& where, const Quantity& quantity) {
        const Quantity* resolved = demo::index().resolved(quantity);
        ASSERT_NE(resolved, nullptr) << where << " names " << quantity.parameter;
        expectSource(where, resolved->source);
        ++seen;
    });
    for (const auto& exposure : ship().exposures)
        expectSource("exposure of " + exposure.component, exposure.source);
    for (const auto& entry : ship().log)
        expectSource("entry " + entry.id, entry.source);
    EXPECT_GT(seen, 500);
}

// Public sources were recalled, not opened: none of their numbers may pass as read in them.
TEST(DemoContent, PublicSourcesAreMarkedFromMemory) {
    int found = 0;
    eachQuantity([&](const std::string& where, const Quantity& quantity) {
        const auto& source = quantity.source;
        for (const char* document :
             {"WASH-1400", "NUREG/CR-6928", "NUREG/CR-1278", "IEC 61508-6"}) {
            if (source.document != document) continue;
            EXPECT_EQ(source.tag, "from memory") << where;
            EXPECT_FALSE(source.place.empty()) << where;
            EXPECT_FALSE(source.edition.empty()) << where;
            ++found;
        }
    });
    EXPECT_GE(found, 20);
}

// Recalled values of WASH-1400 tables III 4-1 and 4-2 as the trade notes 3.2 give them, from
// memory.
TEST(DemoContent, CarriesPublishedMediansAsGiven) {
    const auto expect = [](const char* id, double median, double errorFactor) {
        const auto& quantity = demo::index().parameter(id)->quantity;
        const auto* lognormal = std::get_if<Lognormal>(&quantity.uncertainty);
        ASSERT_NE(lognormal, nullptr) << id;
        EXPECT_EQ(lognormal->median, median) << id;
        EXPECT_EQ(lognormal->errorFactor, errorFactor) << id;
        EXPECT_EQ(quantity.value, median) << id;
    };
    expect("fuse-opens", 1e-6, 3);
    expect("terminal-open", 1e-7, 10);
    expect("relay-contact-open", 3e-7, 3);
    expect("relay-contact-welded", 1e-8, 10);
    expect("relay-coil-open", 1e-7, 10);
    expect("breaker-opens", 1e-6, 3);
    expect("transformer-open", 1e-6, 3);
    expect("wire-open", 3e-6, 3);
    expect("pump-run", 3e-5, 10);
    expect("limit-switch", 3e-4, 3);
}

TEST(DemoContent, EveryWorksheetRowIsComplete) {
    for (const auto& mode : ship().modes) {
        SCOPED_TRACE(mode.id);
        EXPECT_NE(demo::index().component(mode.component), nullptr);
        EXPECT_FALSE(mode.causes.empty());
        for (const auto& text : {mode.name, mode.localEffect, mode.nextEffect, mode.endEffect,
                                 mode.detection, mode.compensation, mode.severity})
            EXPECT_FALSE(text.empty());
        EXPECT_TRUE(mode.severityRating && mode.occurrenceRating && mode.detectionRating);
        ASSERT_FALSE(mode.checks.empty());
        for (const auto& check : mode.checks) {
            EXPECT_GT(check.minutes.value_or(0), 0);
            EXPECT_FALSE(check.look.empty() || check.tells.empty());
        }
        if (mode.id != "FUEL.sooting") {
            EXPECT_NE(mode.model.kind, ModelKind::none);
        }
    }
}

// Actions in every state, each with its owner; what is done has its day, what is proved its proof.
TEST(DemoContent, ActionsAreFollowedUp) {
    std::set<ActionState> states;
    for (const auto& mode : ship().modes)
        for (const auto& action : mode.actions) {
            SCOPED_TRACE(mode.id + ": " + action.what);
            states.insert(action.state);
            EXPECT_FALSE(action.owner.empty() || action.due.empty());
            if (action.state == ActionState::done || action.state == ActionState::proved) {
                EXPECT_LE(action.doneOn, ship().date);
                EXPECT_FALSE(action.doneOn.empty());
            }
        }
    EXPECT_EQ(states.size(), 5u);
}

// The trees answer for end effects that the worksheet has, in its own words.
TEST(DemoContent, TreesAnswerForEndEffects) {
    std::set<std::string> effects;
    for (const auto& mode : ship().modes)
        effects.insert(mode.endEffect);
    std::size_t answered = 0;
    for (const auto& top : ship().tops)
        for (const auto& effect : top.endEffects) {
            EXPECT_TRUE(effects.contains(effect)) << top.id << ": " << effect;
            ++answered;
        }
    EXPECT_GE(answered, 10u);
    for (const char* id : {"T1-1", "T1-2", "T2-1", "T2-2", "E1-1"})
        EXPECT_TRUE(demo::index().top(id)->asked) << id;
}

// A dormant failure needs a test and the day of the last one; what is tested only is dormant.
TEST(DemoContent, DormantFailuresHaveTheirTest) {
    int tested = 0;
    for (const auto& mode : ship().modes) {
        if (mode.model.kind != ModelKind::tested) continue;
        SCOPED_TRACE(mode.id);
        EXPECT_TRUE(mode.dormant);
        EXPECT_EQ(mode.model.lastTest.size(), 10u);
        EXPECT_LE(mode.model.lastTest, ship().date);
        ++tested;
    }
    EXPECT_GE(tested, 30);
}

TEST(DemoContent, EveryClockIsTheOneThatMakesThePartOlder) {
    const auto clock = [](const char* id) { return demo::index().mode(id)->model.clock; };
    for (const char* id : {"ET-1.fouled", "ET-2.fouled", "NZ-2.carboned"})
        EXPECT_EQ(clock(id), Clock::start) << id;
    for (const char* id : {"SC-11.lens-dirty", "SC-22.lens-dirty", "PT-1.line-plugged"})
        EXPECT_EQ(clock(id), Clock::firingHour) << id;
    for (const char* id : {"LL-1.fouled", "LL-2.fouled", "X4:3.loose", "F7.open", "PS-1.no-output"})
        EXPECT_EQ(clock(id), Clock::calendarHour) << id;
}

TEST(DemoContent, EveryBasicEventIsAFailureMode) {
    for (const auto& event : ship().events) {
        SCOPED_TRACE(event.id);
        if (event.kind == EventKind::basic) {
            EXPECT_EQ(event.mode, event.id);
            EXPECT_NE(demo::index().mode(event.mode), nullptr);
        }
        if (event.kind == EventKind::house) {
            EXPECT_EQ(event.model.kind, ModelKind::none);
        }
    }
}

// What the two boilers do not have in common is the way their 24 V is fused, and nothing else.
TEST(DemoContent, TheBoilersDifferInTheirFusesOnly) {
    std::map<std::string, demo::Names> kinds;
    for (const auto& mode : ship().modes)
        kinds[withoutBoiler(mode.id)].insert(mode.id);
    demo::Names alone;
    for (const auto& [kind, ids] : kinds)
        if (ids.size() == 1) alone.insert(*ids.begin());
    // The ship's own parts; then F7, X4:3 and a shared F12 on Boiler 1, where Boiler 2 has a fuse
    // and a return for each leg and F24 beside F22.
    const demo::Names expected{"ERB.dead",     "BAT.no-output", "BCH.no-output", "FUEL.bad",
                               "FUEL.sooting", "ST.lost",       "HW.empty",      "F7.open",
                               "X4:3.loose",   "F24.open",      "F27A.open",     "F27B.open",
                               "X5:3.loose",   "X5:4.loose"};
    EXPECT_EQ(alone, expected);
}

} // namespace
