// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/evidence/observed.h"
#include "models/evidence/rates.h"
#include "models/evidence/trend.h"
#include "tests/oracle/solved.h"

#include <gmock/gmock.h>

namespace cutwater::evidence {
namespace {

using namespace project;
using oracle::near;
using ::testing::HasSubstr;

Exposure exposure(const Id& component, const std::string& from, const std::string& to,
                  std::optional<double> calendar, std::optional<double> firing,
                  std::optional<double> starts) {
    Exposure made;
    made.component = component;
    made.from = from;
    made.to = to;
    made.calendarHours = calendar;
    made.firingHours = firing;
    made.starts = starts;
    return made;
}

void enter(Project& project, const Id& mode, const std::string& date, const std::string& time = {},
           CauseStatus status = CauseStatus::confirmed) {
    LogEntry entry;
    entry.id = "L" + std::to_string(project.log.size());
    entry.mode = mode;
    entry.date = date;
    entry.time = time;
    entry.status = status;
    project.log.push_back(entry);
}

// A boiler that was watched for two years, a burner in it, electrodes in that.
Project boiler(Clock clock = Clock::firingHour) {
    Project project;
    const std::pair<const char*, const char*> parts[] = {
        {"B1", ""}, {"BR-1", "B1"}, {"ET-1", "BR-1"}};
    for (const auto& [id, parent] : parts) {
        Component component;
        component.id = id;
        component.parent = parent;
        project.components.push_back(component);
    }
    FailureMode mode;
    mode.id = "ET-1.fouled";
    mode.component = "ET-1";
    mode.model.clock = clock;
    project.modes.push_back(mode);
    project.exposures.push_back(exposure("B1", "2024-03-01", "2026-02-28", 17520, 8572, 6264));
    return project;
}

Outcome<Observation> observe(const Project& project, const Id& mode = "ET-1.fouled") {
    return evidence::observe(project, Index(project), mode);
}

std::string sentence(const Project& project, const Id& mode = "ET-1.fouled") {
    const auto outcome = observe(project, mode);
    return outcome ? "an observation" : toSentence(outcome.problems().front());
}

// The 18 foulings of ET-1 in the invented log of the demo.
constexpr std::pair<const char*, const char*> kFoulings[] = {
    {"2024-05-06", "03:10"}, {"2024-07-19", "22:40"}, {"2024-10-08", "06:15"},
    {"2024-12-16", "11:05"}, {"2025-03-03", "19:30"}, {"2025-05-14", "02:20"},
    {"2025-07-01", "05:45"}, {"2025-08-11", "14:10"}, {"2025-09-13", "23:55"},
    {"2025-10-13", "08:30"}, {"2025-11-08", "16:20"}, {"2025-11-30", "01:15"},
    {"2025-12-19", "04:40"}, {"2026-01-05", "12:35"}, {"2026-01-19", "20:05"},
    {"2026-02-01", "03:50"}, {"2026-02-12", "09:25"}, {"2026-02-24", "18:10"}};

TEST(Observed, CountsTheDemosFoulingsOverTheBoilersHours) {
    Project project = boiler();
    for (const auto& [date, time] : kFoulings)
        enter(project, "ET-1.fouled", date);
    const auto got = observe(project);
    ASSERT_TRUE(got) << toSentence(got.problems().front());
    EXPECT_EQ(got->watched, "B1"); // two levels up
    EXPECT_EQ(got->component, "ET-1");
    EXPECT_EQ(got->count, 18u);
    EXPECT_EQ(got->exposure, 8572);
    EXPECT_EQ(got->calendarHours, 730 * 24);
    EXPECT_TRUE(got->warnings.empty());
    EXPECT_TRUE(near(countedRate(got->count, got->exposure, 0.9).mean, 18 / 8572.0L, 1e-15));
    // By whole days (derived): Laplace 2.8387, power-law shape 1.9601.
    const auto trend = trendOf(got->times, got->calendarHours, Stopping::atTime);
    ASSERT_TRUE(trend);
    EXPECT_NEAR(trend->laplace, 2.8387, 5e-5);
    EXPECT_NEAR(trend->plain.shape, 1.9601, 5e-5);
}

TEST(Observed, UsesTheTimeOfDayWhereItIsKnown) {
    Project project = boiler();
    for (const auto& [date, time] : kFoulings)
        enter(project, "ET-1.fouled", date, time);
    const auto got = observe(project);
    ASSERT_TRUE(got);
    EXPECT_TRUE(near(got->times.front(), 66 * 24 + 3 + 10 / 60.0L, 1e-12));
    const auto trend = trendOf(got->times, got->calendarHours, Stopping::atTime);
    ASSERT_TRUE(trend);
    EXPECT_NEAR(trend->laplace, 2.848215, 1e-6); // derived by a separate script
    EXPECT_NEAR(trend->plain.shape, 1.965068, 1e-6);
}

TEST(Observed, TheClockOfTheModeChoosesTheExposure) {
    EXPECT_EQ(observe(boiler(Clock::calendarHour))->exposure, 17520);
    EXPECT_EQ(observe(boiler(Clock::start))->exposure, 6264);
    const auto demands = observe(boiler(Clock::demand));
    EXPECT_EQ(demands->exposure, 6264);
    EXPECT_THAT(demands->warnings.front(), HasSubstr("starts are counted as demands"));
    EXPECT_THAT(sentence(boiler(Clock::unstated)), HasSubstr("has no clock"));
    Project noStarts = boiler(Clock::start);
    noStarts.exposures[0].starts.reset();
    EXPECT_THAT(sentence(noStarts), HasSubstr("does not say how many starts"));
}

TEST(Observed, ReplacedIsNotFailedAndOutsideIsNotCounted) {
    Project project = boiler();
    enter(project, "ET-1.fouled", "2024-03-01");
    enter(project, "ET-1.fouled", "2026-02-28", "23:59", CauseStatus::probable);
    enter(project, "ET-1.fouled", "2025-01-01", {}, CauseStatus::notFound);
    enter(project, "ET-1.other", "2025-01-02");
    enter(project, "", "2025-01-03");
    enter(project, "ET-1.fouled", "2024-02-29");
    enter(project, "ET-1.fouled", "2026-03-01");
    const auto got = observe(project);
    ASSERT_TRUE(got);
    EXPECT_EQ(got->count, 2u);
    ASSERT_EQ(got->warnings.size(), 1u);
    EXPECT_THAT(got->warnings.front(), HasSubstr("2 entries of the log lie outside"));
}

TEST(Observed, ExposuresAddUp) {
    Project project = boiler();
    project.exposures.push_back(exposure("ET-1", "2025-01-01", "2025-06-30", 4344, 2000, 1500));
    project.exposures.push_back(exposure("ET-1", "2024-07-01", "2024-12-31", 4416, 2100, 1600));
    enter(project, "ET-1.fouled", "2024-12-31");
    enter(project, "ET-1.fouled", "2025-01-01");
    const auto got = observe(project);
    ASSERT_TRUE(got);
    EXPECT_EQ(got->watched, "ET-1"); // nearer than the boiler
    EXPECT_EQ(got->exposure, 4100);
    EXPECT_EQ(got->times, (std::vector<double>{183 * 24.0, 184 * 24.0}));

    project.exposures.back().to = "2024-12-30"; // a gap of one day
    const auto gap = observe(project);
    ASSERT_TRUE(gap);
    EXPECT_EQ(gap->count, 1u);
    EXPECT_TRUE(gap->times.empty());
    EXPECT_EQ(gap->warnings.size(), 2u);

    project.exposures.back().to = "2025-01-01";
    EXPECT_THAT(sentence(project), HasSubstr("overlap"));
    project.exposures.back().to = "2024-02-30";
    EXPECT_THAT(sentence(project), HasSubstr("does not run from one date to a later one"));
}

TEST(Observed, SaysWhatIsMissing) {
    Project project = boiler();
    EXPECT_THAT(sentence(project, "ET-9.bent"), HasSubstr("ET-9.bent does not exist"));
    project.exposures.clear();
    EXPECT_THAT(sentence(project), HasSubstr("no exposure for ET-1 or anything above it"));
    project.components[0].parent = "ET-1"; // a cycle must not hang
    EXPECT_THAT(sentence(project), HasSubstr("no exposure"));
}

} // namespace
} // namespace cutwater::evidence
