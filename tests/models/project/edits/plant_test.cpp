// SPDX-License-Identifier: GPL-3.0-or-later
// The plant edited: what is typed, moved, renamed and deleted, and what follows elsewhere.
#include "models/project/edits/plant.h"

#include "models/project/edits/delta.h"
#include "tests/models/project/edits/small_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::project::edits;
using testing::ElementsAre;
using testing::HasSubstr;

TEST(EditPlant, ALineIsTagAndName) {
    const auto split = [](const char* text) {
        const PartWords words = splitPartWords(text);
        return words.tag + "|" + words.name;
    };
    EXPECT_EQ(split("FP-1 fuel pump"), "FP-1|fuel pump");
    EXPECT_EQ(split("  FP1\tfuel pump "), "FP1|fuel pump");
    EXPECT_EQ(split("fuel pump 2"), "|fuel pump 2");
    EXPECT_EQ(split("24V board"), "|24V board") << "a tag begins with a letter";
    EXPECT_EQ(split("FP-1"), "FP-1|");
    EXPECT_EQ(split("ERB engine-room board"), "ERB|engine-room board");
    EXPECT_EQ(split("A pump"), "|A pump");
    EXPECT_EQ(split("Pump left"), "|Pump left");
    EXPECT_EQ(split("BOILER"), "|BOILER") << "a name all the same";
    EXPECT_EQ(split(""), "|");
}

TEST(EditPlant, NewPartsStandWhereTheyAreTyped) {
    const auto first = addPart(smallPlant(), {"B1", "FP-2"}, "SV-1 solenoid valve");
    ASSERT_TRUE(first);
    EXPECT_THAT(partsOf(first->project, "B1"), ElementsAre("FP-1", "SV-1", "FP-2"));
    EXPECT_EQ(partOf(first->project, "SV-1")->name, "solenoid valve");
    const auto second = addPart(first->project, {}, "FP-1 another of that tag");
    EXPECT_EQ(second->project.components.back().id, "FP-1-2");
    EXPECT_FALSE(addPart(smallPlant(), {"B1", {}}, "  "));
    EXPECT_THAT(sentenceOf(addPart(smallPlant(), {"gone", {}}, "x")),
                HasSubstr("no component gone"));
    const auto mode = addMode(smallPlant(), {"FP-2", {}}, "bearing worn");
    EXPECT_EQ(mode->project.modes.back().id, "FP-2.bearing-worn");
    EXPECT_EQ(mode->project.modes.back().component, "FP-2");
}

TEST(EditPlant, ATypedLineKeepsATagThatIsThere) {
    Project project = smallPlant();
    partOf(project, "B1")->tag = "BOILER";
    const auto kept = setPartWords(project, "B1", "BOILER the first one");
    EXPECT_EQ(partOf(kept->project, "B1")->tag, "BOILER");
    EXPECT_EQ(partOf(kept->project, "B1")->name, "the first one");
    const auto other = setPartWords(project, "B1", "AB-1 auxiliary boiler");
    EXPECT_EQ(partOf(other->project, "B1")->tag, "AB-1");
    EXPECT_EQ(partOf(other->project, "B1")->id, "B1") << "ids stay";
}

TEST(EditPlant, MovesWithAllBelowButNeverIntoItself) {
    const auto moved = moveParts(smallPlant(), {"FP-1"}, {"PS", {}});
    ASSERT_TRUE(moved);
    EXPECT_EQ(partOf(moved->project, "FP-1")->parent, "PS");
    EXPECT_THAT(partsOf(moveParts(smallPlant(), {"FP-2"}, {"B1", "FP-1"})->project, "B1"),
                ElementsAre("FP-2", "FP-1"));
    EXPECT_THAT(sentenceOf(moveParts(smallPlant(), {"B1"}, {"FP-1", {}})),
                HasSubstr("become a part of itself"));
    EXPECT_THAT(sentenceOf(moveParts(smallPlant(), {"FP-1.stops"}, {})),
                HasSubstr("belongs to a component"));
    const auto mode = moveParts(smallPlant(), {"FP-1.stops"}, {"FP-2", {}});
    EXPECT_EQ(modeOf(mode->project, "FP-1.stops")->component, "FP-2");
}

TEST(EditPlant, AnIdCarriesAllReferencesAlong) {
    const auto renamed = renameComponentId(smallPlant(), "FP-1", "P101");
    ASSERT_TRUE(renamed);
    const Project& made = renamed->project;
    EXPECT_EQ(partOf(made, "SEAL")->parent, "P101");
    EXPECT_EQ(partOf(made, "FP-2")->suppliedBy[0].id, "P101");
    EXPECT_EQ(made.connections[0].to, "P101");
    EXPECT_EQ(made.connections[1].through[0].id, "P101");
    EXPECT_EQ(made.log[0].component, "P101");
    EXPECT_EQ(made.log[0].mode, "P101.stops");
    EXPECT_EQ(made.exposures[0].component, "P101");
    EXPECT_EQ(modeOf(made, "P101.stops")->component, "P101");
    EXPECT_EQ(eventOf(made, "pump")->mode, "P101.stops");
    EXPECT_FALSE(hasErrors(validate(made)));
    EXPECT_FALSE(renameComponentId(smallPlant(), "FP-1", "FP-2"));
    EXPECT_FALSE(renameComponentId(smallPlant(), "FP-1", "no id"));
    const auto mode = renameModeId(smallPlant(), "FP-1.stops", "stopped");
    EXPECT_EQ(eventOf(mode->project, "pump")->mode, "stopped");
    EXPECT_EQ(mode->project.log[0].mode, "stopped");
    EXPECT_FALSE(hasErrors(validate(mode->project)));
}

TEST(EditPlant, WhatIsLostIsCounted) {
    const Loss loss = lossOf(smallPlant(), {"FP-1"});
    EXPECT_EQ(loss.components, 2u); // with its seal
    EXPECT_EQ(loss.modes, 1u);
    EXPECT_THAT(loss.events, ElementsAre("pump"));
    EXPECT_EQ(loss.supplied, 1u);
    EXPECT_EQ(loss.connections, 2u);
    EXPECT_EQ(loss.logEntries, 1u);
    EXPECT_EQ(loss.exposures, 1u);
    EXPECT_FALSE(lossOf(smallPlant(), {"SEAL"}).anything());
}

TEST(EditPlant, DeletedPartsLeaveTheTreesAndTheLogTheirWords) {
    const Project before = smallPlant();
    const auto result = removeParts(before, {"FP-1"});
    ASSERT_TRUE(result);
    const Project& made = result->project;
    EXPECT_FALSE(hasErrors(validate(made)));
    EXPECT_EQ(partOf(made, "FP-1"), nullptr);
    EXPECT_EQ(partOf(made, "SEAL"), nullptr);
    EXPECT_EQ(eventOf(made, "pump")->mode, "");
    EXPECT_EQ(eventOf(made, "pump")->model, before.modes[0].model) << "the tree's figure stays";
    EXPECT_EQ(eventOf(made, "pump")->name, "FP-1 fuel pump: stops") << "it had no text of its own";
    EXPECT_EQ(made.connections.size(), 1u);
    EXPECT_TRUE(made.connections[0].through.empty());
    EXPECT_EQ(made.log[0].component, "");
    EXPECT_EQ(made.log[0].found, before.log[0].found);
    EXPECT_THAT(made.log[0].remark, HasSubstr("component FP-1"));
    EXPECT_THAT(made.log[0].remark, HasSubstr("failure mode FP-1.stops: stops"));
    EXPECT_TRUE(made.exposures.empty());
    EXPECT_EQ(revert(differences(before, made), made), before) << "undo";
}

TEST(EditPlant, FactsWithSuppliersThatExist) {
    Component facts = *partOf(std::as_const(*std::make_unique<Project>(smallPlant())), "FP-1");
    facts.location = "pump room";
    facts.suppliedBy = {{"PS", {}}};
    const auto result = setPart(smallPlant(), facts);
    ASSERT_TRUE(result);
    EXPECT_EQ(partOf(result->project, "FP-1")->location, "pump room");
    facts.suppliedBy = {{"FP-1", {}}};
    EXPECT_THAT(sentenceOf(setPart(smallPlant(), facts)), HasSubstr("supply itself"));
    facts.suppliedBy = {{"PS", {}}, {"PS", {}}};
    EXPECT_THAT(sentenceOf(setPart(smallPlant(), facts)), HasSubstr("supplies it already"));
    facts.suppliedBy = {{"gone", {}}};
    EXPECT_FALSE(setPart(smallPlant(), facts));
}
