// SPDX-License-Identifier: GPL-3.0-or-later
// Every rule: a sound project is spoilt in one place, and exactly that is found, with its line.
#include "tests/models/project/validate_rule.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater::project {

using test::quantity;
using ::testing::HasSubstr;

namespace {

std::string sentences(const Problems& problems) {
    std::string all;
    for (const Problem& problem : problems)
        all += toSentence(problem) + '\n';
    return all;
}

class Validate : public ::testing::TestWithParam<Rule> {};

} // namespace

TEST(ValidateAll, SoundProjectHasNoProblem) {
    EXPECT_EQ(sentences(validate(test::soundProject())), "");
    EXPECT_EQ(sentences(validate(Project())), "");
}

TEST_P(Validate, FindsIt) {
    const Rule& rule = GetParam();
    Project project = test::soundProject();
    rule.spoil(project);
    const Problems problems = validate(project);
    ASSERT_EQ(problems.size(), 1u) << sentences(problems);
    EXPECT_EQ(problems[0].severity, rule.severity) << sentences(problems);
    EXPECT_EQ(problems[0].line, rule.line) << sentences(problems);
    EXPECT_THAT(problems[0].what, HasSubstr(rule.what));
    EXPECT_THAT(problems[0].remedy, HasSubstr(rule.remedy));
    EXPECT_FALSE(problems[0].where.empty());
}

// One rule a line or two, so that they can be compared.
// clang-format off
const Rule kRules[] = {
    // ids
    {"DuplicateComponent", [](Project& p) { p.components[3].id = "supply"; p.connections[0].through = {}; },
     kError, 103, "supply is used twice, first in line 102", "another id"},
    {"DuplicateMode", [](Project& p) { p.modes.push_back(p.modes[0]); p.modes[1].line.number = 222; },
     kError, 222, "burner.fouled is used twice", "another id"},
    {"EventAndGateShareIds", [](Project& p) { p.gates[1].id = "e3"; p.gates[0].inputs[0].id = "e3"; },
     kError, 501, "e3 is used twice, first in line 402", "give this gate another id"},
    {"DuplicateTop", [](Project& p) { p.tops.push_back(p.tops[0]); p.tops[1].line.number = 666; },
     kError, 666, "T1 is used twice", "another id"},
    {"DuplicateConnection", [](Project& p) { p.connections.push_back(p.connections[0]); p.connections[1].line.number = 333; },
     kError, 333, "feed is used twice, first in line 300", "another id"},
    {"DuplicateLogEntry", [](Project& p) { p.log.push_back(p.log[0]); p.log[1].line.number = 999; },
     kError, 999, "L1 is used twice", "another id"},
    {"IllFormedId", [](Project& p) { p.log[0].id = "L 1"; }, kError, 900, "\"L 1\" is not an id", "characters"},
    {"NoId", [](Project& p) { p.assessments[0].id = ""; }, kError, 1000, "assessment has no id", "give it one"},
    {"DuplicateTag", [](Project& p) { p.components[0].tag = p.components[3].tag = "X-1"; },
     kWarning, 103, "same tag X-1", "own tag"},
    // references
    {"Input", [](Project& p) { p.gates[1].inputs[0].id = "e11"; }, kError, 550, "input of gate both is e11", "write e1"},
    {"InputFarFromAll", [](Project& p) { p.gates[1].inputs[0].id = "something-else"; }, kError, 550,
     "there is no event or gate of that id", "add it"},
    {"Parent", [](Project& p) { p.components[1].parent = "boilr"; }, kError, 101, "parent of component burner is boilr", "write boiler"},
    {"Supplier", [](Project& p) { p.components[1].suppliedBy[0].id = "suply"; }, kError, 150, "supplier of component burner", "write supply"},
    {"ModeOfEvent", [](Project& p) { p.events[0].mode = "burner.foulde"; }, kError, 400, "failure mode of event e1", "write burner.fouled"},
    {"ComponentOfMode", [](Project& p) { p.modes[0].component = "brner"; p.log[0].component = ""; }, kError, 200,
     "component of failure mode burner.fouled", "write burner"},
    {"ModeWithoutComponent", [](Project& p) { p.modes[0].component = ""; p.log[0].component = ""; }, kError, 200,
     "names nothing", "name a component"},
    {"TopNode", [](Project& p) { p.tops.push_back({"T2", "", {"tpo", {651}}, "", "", {}, {}, "", {601}, {}}); }, kError, 651, "node of top event T2 is tpo", "write top"},
    {"Member", [](Project& p) { p.commonCauses[0].members[2].id = "e9"; }, kError, 753, "member of common-cause group CC is e9", "write e1"},
    {"MemberIsGate", [](Project& p) { p.commonCauses[0].members[2].id = "both"; }, kError, 753, "is a gate, not an event", "name an event"},
    {"Through", [](Project& p) { p.connections[0].through[0].id = "fuze"; }, kError, 350, "way of connection feed is fuze", "write fuse"},
    {"From", [](Project& p) { p.connections[0].from = "suply"; }, kError, 300, "start of connection feed", "write supply"},
    {"To", [](Project& p) { p.connections[0].to = ""; }, kError, 300, "end of connection feed names nothing", "name a component"},
    {"ToItself", [](Project& p) { p.connections[0].to = "supply"; }, kError, 300, "to itself", "another component"},
    {"LogTop", [](Project& p) { p.log[0].topEvent = "T9"; }, kError, 900, "top event of log entry L1 is T9", "write T1"},
    {"Forced", [](Project& p) { p.assessments[0].forced[0].event.id = "swich"; }, kError, 1050, "forced event of assessment A1", "write switch"},
    {"ParameterMissing", [](Project& p) { probability(p).parameter = "p-rat"; }, kError, 451, "probability of event e2 is p-rat", "write p-rate"},
    {"ParameterOfParameter", [](Project& p) { p.parameters[0].quantity.parameter = "p-rate"; }, kError, 50, "names a parameter itself", "enter a value"},
    {"ExposureComponent", [](Project& p) { p.exposures[0].component = "burnr"; }, kError, 800, "component of exposure is burnr", "write burner"},
    // gates
    {"NoInputs", [](Project& p) { p.gates[4].inputs.clear(); }, kError, 504, "gate not has no inputs", "add an input"},
    {"NotWithTwo", [](Project& p) { p.gates[4].inputs.push_back({"e3", {}}); }, kError, 504, "has 2 inputs", "one input only"},
    {"KMissing", [](Project& p) { p.gates[2].k.reset(); }, kError, 502, "does not say how many", "from 1 to 3"},
    {"KTooLarge", [](Project& p) { p.gates[2].k = 1000000000; }, kError, 502, "needs 1000000000 of its 3 inputs", "from 1 to 3"},
    {"KZero", [](Project& p) { p.gates[2].k = 0; }, kError, 502, "needs 0 of its 3 inputs", "from 1 to 3"},
    {"KNegative", [](Project& p) { p.gates[2].k = -1; }, kError, 502, "needs -1 of", "from 1 to 3"},
    {"KOnAnd", [](Project& p) { p.gates[1].k = 1; }, kError, 501, "has k, but is of the kind and", "delete k"},
    {"InhibitWithoutCondition", [](Project& p) { p.gates[3].condition = {}; p.gates[1].inputs.push_back({"cold", {}}); },
     kError, 503, "without a condition", "name the conditioning event"},
    {"ConditionOnOr", [](Project& p) { p.gates[0].condition = {"cold", {}}; }, kError, 500, "has a condition, but is of the kind or", "delete the condition"},
    {"ConditionIsGate", [](Project& p) { p.gates[3].condition.id = "not"; p.gates[1].inputs.push_back({"cold", {}}); }, kError, 551,
     "condition of gate when is not, which is a gate", "name an event"},
    {"DuplicateInput", [](Project& p) { for (int i = 0; i < 3; ++i) p.gates[1].inputs.push_back({"e1", {}}); }, kWarning, 501,
     "e1 stands twice below gate both", "keep one"},
    {"Circle", [](Project& p) { p.gates[1].inputs[0].id = "some"; p.gates[2].inputs[0].id = "both"; p.gates[0].inputs.push_back({"e1", {}}); },
     kError, 501, "both -> some -> both", "take one of these inputs away"},
    {"CircleOfOne", [](Project& p) { p.gates[1].inputs.push_back({"both", {}}); }, kError, 501, "both -> both", "take one"},
    {"UnreachedGate", [](Project& p) { p.gates[0].inputs.erase(p.gates[0].inputs.begin() + 1); }, kWarning, 502,
     "gate some stands below no top event", "make it a top event"},
    {"UnreachedEvent", [](Project& p) { p.gates[0].inputs.pop_back(); }, kWarning, 404, "event switch stands below no top event", "use it in a tree"},
    {"NoTop", [](Project& p) { p.tops.clear(); p.log[0].topEvent = ""; }, kWarning, 0, "no top event", "name the gates"},
    // events
    {"ModeAndModel", [](Project& p) { p.events[1].mode = "burner.fouled"; }, kError, 401, "a failure mode and a failure model", "keep one"},
    {"NotQuantified", [](Project& p) { p.events[1].model = {}; }, kWarning, 401, "event e2 is not quantified", "give it a failure mode"},
    {"ModeNotQuantified", [](Project& p) { p.modes[0].model = {}; p.modes[0].dormant = false; }, kWarning, 400, "event e1 is not quantified",
     "give failure mode burner.fouled a failure model"},
    {"HouseWithModel", [](Project& p) { p.events[4].model = p.events[1].model; }, kWarning, 404, "is a house event", "make it a basic event"},
    {"StateOfBasic", [](Project& p) { p.events[1].state = true; }, kWarning, 401, "counts for house events only", "house event"},
    // ratings, checks, dates
    {"RatingEleven", [](Project& p) { p.modes[0].severityRating = 11; }, kError, 200, "severity rating of failure mode burner.fouled is 11", "1 to 10"},
    {"RatingZero", [](Project& p) { p.modes[0].occurrenceRating = 0; }, kError, 200, "occurrence rating", "1 to 10"},
    {"RatingNegative", [](Project& p) { p.modes[0].detectionRating = -3; }, kError, 200, "detection rating", "1 to 10"},
    {"Minutes", [](Project& p) { p.modes[0].checks.push_back({"look", -5, "", {280}, {}}); }, kError, 280, "minutes for a check", "0 or more"},
    {"ProjectDate", [](Project& p) { p.date = "1.3.2026"; }, kError, 0, "date of project", "2026-02-28"},
    {"LogDate", [](Project& p) { p.log[0].date = "2025-02-29"; }, kError, 900, "date of log entry L1", "2026-02-28"},
    {"LogWithoutDate", [](Project& p) { p.log[0].date = ""; }, kError, 900, "log entry L1 has no date", "2026-02-28"},
    {"LogTime", [](Project& p) { p.log[0].time = "3:10"; }, kError, 900, "time of log entry L1", "03:10"},
    {"LogModeOfOther", [](Project& p) { p.log[0].component = "fuse"; }, kWarning, 900, "belongs to burner", "correct one"},
    {"Downtime", [](Project& p) { p.log[0].downtimeHours = -1; }, kError, 900, "downtime of log entry L1", "0 or more"},
    {"ExposureDates", [](Project& p) { p.exposures[0].to = "2024-12-31"; }, kError, 800, "before it starts", "exchange"},
    {"ExposureEmpty", [](Project& p) { p.exposures[0].calendarHours.reset(); }, kWarning, 800, "neither hours nor starts", "meters"},
    {"ExposureNan", [](Project& p) { p.exposures[0].starts = kNan; }, kError, 800, "starts of exposure", "enter a number"},
    // the plant
    {"ParentCircle", [](Project& p) { p.components[0].parent = "burner"; }, kError, 100, "boiler -> burner -> boiler", "take the parent away"},
    {"OwnParent", [](Project& p) { p.components[3].parent = "fuse"; }, kError, 103, "fuse -> fuse", "take the parent away"},
    {"SupplyCircle", [](Project& p) { p.components[2].suppliedBy = {{"burner", {}}}; }, kWarning, 101, "burner -> supply -> burner", "check that it is so"},
    // common causes
    {"OneMember", [](Project& p) { p.commonCauses[0].members.resize(1); }, kError, 700, "has 1 members", "at least two"},
    {"MemberTwice", [](Project& p) { p.commonCauses[0].members[2].id = "e1"; }, kError, 753, "e1 is twice in", "keep one"},
    {"MemberHouse", [](Project& p) { p.commonCauses[0].members[2].id = "switch"; }, kError, 753, "a house event", "take it out"},
    {"TwoGroups", [](Project& p) { p.commonCauses.push_back(p.commonCauses[0]); p.commonCauses[1].id = "CC2"; p.commonCauses[1].members = {{"e3", {761}}, {"cold", {762}}}; },
     kWarning, 761, "e3 is in two common-cause groups, CC and CC2", "different"},
    {"FactorAboveOne", [](Project& p) { p.commonCauses[0].factors[0].value = 1.1; }, kError, 750, "factor of common-cause group CC", "from 0 to 1"},
    {"TwoBetas", [](Project& p) { p.commonCauses[0].factors.push_back(p.commonCauses[0].factors[0]); }, kError, 700, "(beta) of 3 members has 2 factors", "enter 1"},
    {"NoFactor", [](Project& p) { p.commonCauses[0].factors.clear(); }, kError, 700, "has 0 factors", "enter 1"},
    {"TooManyLetters", [](Project& p) { p.commonCauses[0].kind = CommonCauseKind::multipleGreekLetters; p.commonCauses[0].factors.assign(3, quantity(0.1, Unit::number)); },
     kError, 700, "has 3 factors", "enter 1 to 2"},
    {"AlphaSum", [](Project& p) { p.commonCauses[0].kind = CommonCauseKind::alpha; p.commonCauses[0].factors.assign(3, quantity(0.3, Unit::number)); },
     kError, 700, "add up to 0.9", "add up to 1"},
    {"AlphaCount", [](Project& p) { p.commonCauses[0].kind = CommonCauseKind::alphaStaggered; p.commonCauses[0].factors.assign(2, quantity(0.5, Unit::number)); },
     kError, 700, "has 2 factors", "enter 3"},
    // assessments
    {"ForcedTwice", [](Project& p) { p.assessments[0].forced.push_back(p.assessments[0].forced[0]); }, kError, 1050, "forced twice", "keep one"},
    {"DurationInAmperes", [](Project& p) { p.assessments[0].duration->unit = Unit::amperes; }, kError, 1051, "duration of assessment A1", "h, d"},
    {"DurationNegative", [](Project& p) { p.assessments[0].duration->value = -1; }, kError, 1051, "duration of assessment A1 is -1", "0 or more"},
};
// clang-format on

INSTANTIATE_TEST_SUITE_P(Rules, Validate, ::testing::ValuesIn(kRules),
                         [](const auto& rule) { return std::string(rule.param.name); });
INSTANTIATE_TEST_SUITE_P(WorksheetRules, Validate, ::testing::ValuesIn(worksheetRules()),
                         [](const auto& rule) { return std::string(rule.param.name); });
INSTANTIATE_TEST_SUITE_P(ModelRules, Validate, ::testing::ValuesIn(modelRules()),
                         [](const auto& rule) { return std::string(rule.param.name); });

} // namespace cutwater::project
