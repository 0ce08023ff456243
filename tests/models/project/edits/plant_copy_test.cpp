// SPDX-License-Identifier: GPL-3.0-or-later
// Parts of the plant copied, supply and scales edited.
#include "models/project/edits/plant_copy.h"
#include "models/project/edits/scales.h"
#include "models/project/edits/supply.h"
#include "tests/models/project/edits/small_plant.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::project::edits;
using testing::ElementsAre;
using testing::HasSubstr;

TEST(EditPlantCopy, ACopyIsNewAndCountsItsTagsOn) {
    const auto fragment = copyParts(smallPlant(), {"B1"});
    ASSERT_TRUE(fragment);
    EXPECT_EQ(fragment->components.size(), 4u);
    const auto result = pasteParts(smallPlant(), *fragment, {});
    ASSERT_TRUE(result);
    const Project& made = result->project;
    EXPECT_FALSE(hasErrors(validate(made)));
    EXPECT_THAT(partsOf(made, ""), ElementsAre("B1", "PS", "B2"));
    EXPECT_THAT(partsOf(made, "B2"), ElementsAre("FP-3", "FP-4"));
    EXPECT_EQ(partOf(made, "FP-4")->suppliedBy[0].id, "FP-3") << "inside the copy";
    EXPECT_EQ(partOf(made, "SEAL-2")->parent, "FP-3") << "a tag without a number gets one";
    ASSERT_NE(modeOf(made, "FP-3.stops"), nullptr);
    EXPECT_EQ(modeOf(made, "FP-3.stops")->model, smallPlant().modes[0].model);
    EXPECT_EQ(made.log.size(), 1u) << "the log is not copied";
}

TEST(EditPlantCopy, SuppliersOutsideStayWhereTheyAreKnown) {
    const auto fragment = copyParts(smallPlant(), {"FP-2"});
    const auto same = pasteParts(smallPlant(), *fragment, {"B1", "FP-2"});
    EXPECT_EQ(partOf(same->project, "FP-3")->suppliedBy[0].id, "FP-1");
    EXPECT_THAT(partsOf(same->project, "B1"), ElementsAre("FP-1", "FP-3", "FP-2"));
    const auto other = pasteParts(Project(), *fragment, {});
    EXPECT_TRUE(partOf(other->project, "FP-2")->suppliedBy.empty());
}

TEST(EditPlantCopy, AModeAloneGoesToAnotherComponent) {
    const auto fragment = copyParts(smallPlant(), {"FP-1.stops"});
    ASSERT_TRUE(fragment);
    const auto result = pasteParts(smallPlant(), *fragment, {"FP-2", {}}, true);
    ASSERT_TRUE(result);
    EXPECT_EQ(result->project.components.size(), smallPlant().components.size());
    EXPECT_EQ(modeOf(result->project, "FP-2.stops")->component, "FP-2");
    EXPECT_FALSE(pasteParts(smallPlant(), *fragment, {}, true));
    EXPECT_FALSE(pasteParts(smallPlant(), Project(), {}));
}

TEST(EditPlantCopy, IndentedLinesAreAPlant) {
    const Project made = partsFromLines("B1 boiler\n  FP-1 fuel pump\n    - stops\n    * leaks\n"
                                        "  air fan\n\nB2 boiler\r\n");
    EXPECT_THAT(partsOf(made, ""), ElementsAre("B1", "B2"));
    EXPECT_THAT(partsOf(made, "B1"), ElementsAre("FP-1", "air-fan"));
    ASSERT_EQ(made.modes.size(), 2u);
    EXPECT_EQ(made.modes[1].component, "FP-1");
    EXPECT_EQ(made.modes[1].name, "leaks");
}

TEST(EditSupply, ConnectionsHaveTwoDifferentEnds) {
    Connection facts;
    facts.medium = "24 V DC";
    facts.from = "PS";
    facts.to = "B1";
    facts.through = {{"SEAL", {}}};
    const auto made = setConnection(smallPlant(), facts);
    ASSERT_TRUE(made);
    EXPECT_EQ(made->project.connections.back().id, "ps-b1");
    facts.id = "feed";
    EXPECT_EQ(setConnection(smallPlant(), facts)->project.connections[0].to, "B1");
    facts.through = {{"B1", {}}};
    EXPECT_THAT(sentenceOf(setConnection(smallPlant(), facts)), HasSubstr("twice"));
    facts.to = "PS";
    EXPECT_THAT(sentenceOf(setConnection(smallPlant(), facts)), HasSubstr("to itself"));
    facts.to = "";
    EXPECT_THAT(sentenceOf(setConnection(smallPlant(), facts)), HasSubstr("two ends"));
    EXPECT_EQ(removeConnection(smallPlant(), "feed")->project.connections.size(), 1u);
    EXPECT_FALSE(removeConnection(smallPlant(), "gone"));
}

namespace {

RatingLevel step(int rating, double limit) {
    RatingLevel level;
    level.rating = rating;
    level.limit = limit;
    return level;
}

RiskLevel level(int index, const char* word) {
    RiskLevel made;
    made.index = index;
    made.word = word;
    return made;
}

} // namespace

TEST(EditScales, AreSortedAndSound) {
    const auto made = setScale(Project(), Scale::occurrence, {step(5, 1), step(2, 0.1)});
    ASSERT_TRUE(made) << sentenceOf(made);
    EXPECT_EQ(made->project.worksheet.occurrenceScale[0].rating, 2);
    EXPECT_FALSE(setScale(Project(), Scale::occurrence, {step(2, 1), step(5, 0.1)}));
    EXPECT_FALSE(setScale(Project(), Scale::severity, {step(2, 1), step(2, 1)}));
    EXPECT_FALSE(setScale(Project(), Scale::detection, {step(11, 1)}));
    EXPECT_TRUE(
        setScale(made->project, Scale::occurrence, {})->project.worksheet.occurrenceScale.empty());
}

TEST(EditScales, ASeverityThatIsRenamedTakesItsFailureModesAlong) {
    RiskMatrix standard;
    standard.frequencies = {level(1, "seldom")};
    standard.severities = {level(1, "minor"), level(2, "bad")};
    Project project = smallPlant();
    project.modes[0].severity = "bad";
    RiskMatrix now = standard;
    now.severities[1].word = "severe";
    const auto made = setMatrix(project, now, standard);
    ASSERT_TRUE(made) << sentenceOf(made);
    EXPECT_EQ(made->project.modes[0].severity, "severe");
    const auto back = setMatrix(made->project, {}, standard);
    ASSERT_TRUE(back);
    EXPECT_EQ(back->project, project) << "the standard one with its words";
    now.severities.clear();
    EXPECT_THAT(sentenceOf(setMatrix(project, now, standard)), HasSubstr("lacks one"));
}
