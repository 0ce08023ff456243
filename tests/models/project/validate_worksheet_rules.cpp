// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/models/project/validate_rule.h"

namespace cutwater::project {

using test::quantity;

namespace {

// The component burner with a failure rate, and its mode burner.fouled with a share of it.
void share(Project& p, double alpha, double rate = 2e-6) {
    p.components[1].failureRate = quantity(rate, Unit::perHour, 160);
    p.modes[0].ratio = quantity(alpha, Unit::number, 260);
}
void second(Project& p, double alpha) {
    FailureMode mode;
    mode.id = "burner.worn";
    mode.component = "burner";
    mode.ratio = quantity(alpha, Unit::number, 270);
    mode.line.number = 201;
    p.modes.push_back(mode);
}
Action& action(Project& p, ActionState state) {
    p.modes[0].actions = {{"clean", "second engineer", "2026-04-01", state, "", "", {280}, {}}};
    return p.modes[0].actions[0];
}
RiskMatrix& matrix(Project& p) {
    RiskMatrix& matrix = p.worksheet.matrix;
    matrix.frequencies = {{1, "rare", "", 0.1, {701}, {}}, {2, "often", "", 1.0, {702}, {}}};
    matrix.severities = {{1, "minor", "", 0.01, {711}, {}}, {2, "severe", "", 1.0, {712}, {}}};
    matrix.bands = {{3, "high", "", {721}, {}}};
    matrix.line.number = 700;
    return matrix;
}

} // namespace

// clang-format off
std::vector<Rule> worksheetRules() {
    return {
    {"FailureRateInAmperes", [](Project& p) { p.components[1].failureRate = quantity(1, Unit::amperes, 160); }, kError, 160,
     "failure rate of component burner is given in A", "/h"},
    {"FailureRateMeanTimeZero", [](Project& p) { p.components[1].failureRate = quantity(0, Unit::years, 160); }, kError, 160, "is 0", "above 0"},
    {"OriginWithoutType", [](Project& p) { p.components[1].origin = LibraryOrigin{"fuel", "", "1", {}}; }, kError, 101,
     "the library type of component burner is not an id", "as the library does"},
    {"RatioAboveOne", [](Project& p) { share(p, 1.5); }, kError, 260, "mode ratio of failure mode burner.fouled is 1.5", "from 0 to 1"},
    {"RatioWithoutRate", [](Project& p) { p.modes[0].ratio = quantity(0.5, Unit::number, 260); }, kWarning, 260,
     "component burner does not have", "give the component its failure rate"},
    {"RatiosAboveOne", [](Project& p) { share(p, 0.5); second(p, 0.7); }, kWarning, 101,
     "the mode ratios of component burner add up to 1.2 over 2 failure modes; they are shares of one failure rate", "lower them"},
    {"RateTwice", [](Project& p) { share(p, 0.5, 4e-6); }, kWarning, 260,
     "has a rate of its own, 1e-06 per hour, and its share of the failure rate of burner is 2e-06 per hour", "make them agree"},
    {"EffectChance", [](Project& p) { p.modes[0].effectChance = quantity(-0.1, Unit::number, 261); }, kError, 261, "chance of the effect", "from 0 to 1"},
    {"EffectChancePerHour", [](Project& p) { p.modes[0].effectChance = quantity(0.1, Unit::perHour, 261); }, kError, 261, "given in /h", "use one of"},
    {"RatingAfter", [](Project& p) { action(p, ActionState::open); p.modes[0].occurrenceAfter = 11; }, kError, 200, "occurrence rating after the action of failure mode burner.fouled is 11", "from 1 to 10"},
    {"RatingAfterNothing", [](Project& p) { p.modes[0].severityAfter = 3; }, kWarning, 200, "after an action that it does not have", "enter the action"},
    {"ProvedOnNoDate", [](Project& p) { p.modes[0].provedBy = "test"; p.modes[0].provedOn = "May"; }, kError, 200, "\"May\", which is not a date", "2026-02-28"},
    {"ProvedByNothing", [](Project& p) { p.modes[0].provedOn = "2026-02-01"; }, kWarning, 200, "nothing says by which test", "name the test"},
    {"ActionSaysNothing", [](Project& p) { action(p, ActionState::open).what.clear(); }, kError, 280, "does not say what is to be done", "delete the action"},
    {"ActionDueNoDate", [](Project& p) { action(p, ActionState::open).due = "soon"; }, kError, 280, "due date of an action of failure mode burner.fouled is \"soon\"", "2026-02-28"},
    {"ActionDoneNoDay", [](Project& p) { action(p, ActionState::done); }, kWarning, 280, "is done without a day", "the day it was done on"},
    {"ActionProvedNoProof", [](Project& p) { action(p, ActionState::proved).doneOn = "2026-03-01"; }, kWarning, 280, "nothing says how", "set it to done"},
    {"ActionDroppedNoReason", [](Project& p) { action(p, ActionState::dropped); }, kWarning, 280, "dropped without a reason", "say why"},
    {"AskedInHours", [](Project& p) { p.tops[0].asked = quantity(5, Unit::hours, 611); }, kError, 611, "how often it is asked of top event T1", "/y"},
    {"OperatingTimePerHour", [](Project& p) { p.worksheet.operatingTime = quantity(1, Unit::perHour, 690); }, kError, 690, "operating time", "use one of"},
    {"OperatingTimeZero", [](Project& p) { p.worksheet.operatingTime = quantity(0, Unit::hours, 690); }, kError, 690, "operating time", "above 0"},
    {"ScaleWithoutRating", [](Project& p) { p.worksheet.severityScale = {{{}, "x", "", {}, {691}, {}}}; }, kError, 691, "severity scale has no rating", "1 to 10"},
    {"ScaleRating", [](Project& p) { p.worksheet.severityScale = {{0, "x", "", {}, {691}, {}}}; }, kError, 691, "severity scale is 0", "1 to 10"},
    {"ScaleTwice", [](Project& p) { p.worksheet.detectionScale = {{2, "x", "", {}, {691}, {}}, {2, "y", "", {}, {692}, {}}}; }, kError, 692,
     "detection scale has two steps rated 2", "keep one"},
    {"ScaleLimitsFall", [](Project& p) { p.worksheet.occurrenceScale = {{1, "x", "", 0.5, {691}, {}}, {2, "y", "", 0.1, {692}, {}}}; }, kError, 692,
     "limit of rating 2 of the occurrence scale is 0.1 per year", "rise with the ratings"},
    {"ScaleLimitOfSeverity", [](Project& p) { p.worksheet.severityScale = {{1, "x", "", 0.5, {691}, {}}}; }, kWarning, 691, "has a limit per year", "take it away"},
    {"MatrixLacksAxis", [](Project& p) { matrix(p).severities.clear(); }, kError, 700, "lacks one of its two axes", "the IMO one then counts"},
    {"MatrixNoIndex", [](Project& p) { matrix(p).frequencies[0].index.reset(); }, kError, 701, "has no index", "number it"},
    {"MatrixIndexTwice", [](Project& p) { matrix(p).severities[1].index = 1; }, kError, 712, "severity index 1", "keep one"},
    {"MatrixWordTwice", [](Project& p) { matrix(p).severities[1].word = "minor"; }, kError, 712, "severity index \"minor\"", "its own word"},
    {"MatrixValuesFall", [](Project& p) { matrix(p).frequencies[1].value = 0.1; }, kError, 702, "value of the frequency index 2 is 0.1", "rise with the index"},
    {"MatrixValueZero", [](Project& p) { matrix(p).frequencies[0].value = 0; }, kError, 701, "is 0", "above 0"},
    {"MatrixBandNowhere", [](Project& p) { matrix(p).bands[0].from.reset(); }, kError, 721, "from which index on", "say it"},
    {"MatrixBandTwice", [](Project& p) { matrix(p).bands.push_back({3, "higher", "", {722}, {}}); }, kError, 722, "two bands of the risk matrix begin at 3", "keep one"},
    {"MatrixTag", [](Project& p) { matrix(p).source.tag = "sen"; }, kError, 700, "unknown tag", "write seen"},
    {"SeverityNotInMatrix", [](Project& p) { matrix(p); p.modes[0].severity = "grave"; }, kWarning, 200, "severity of failure mode burner.fouled is \"grave\"", "minor; severe"},
    };
}
// clang-format on

} // namespace cutwater::project
