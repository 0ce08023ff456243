// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/scales.h"

#include <algorithm>

namespace cutwater::worksheet {

namespace {

using project::RatingLevel;
using Scale = std::vector<RatingLevel>;

RatingLevel step(int rating, const char* word, const char* meaning,
                 std::optional<double> limit = {}) {
    RatingLevel level;
    level.rating = rating;
    level.word = word;
    level.meaning = meaning;
    level.limit = limit;
    return level;
}

Scale standardSeverity() {
    return {
        step(1, "none", "nobody notices"),
        step(2, "nuisance", "an alarm, a word in the log"),
        step(3, "slight", "mended within the watch, the plant goes on"),
        step(4, "reserve lost", "the plant goes on without its second leg"),
        step(5, "one unit down, hours", "one of several units is out for hours"),
        step(6, "one unit down, days",
             "one of several units is out for days, or until a part comes"),
        step(7, "all units down", "the function is lost: the voyage or the cargo suffers"),
        step(8, "damage or slight injury", "somebody is hurt, or the plant is damaged"),
        step(9, "grave injury", "somebody is hurt for life, or the ship is in danger"),
        step(10, "death", "somebody may die"),
    };
}

Scale standardOccurrence() {
    return {
        step(1, "not in this trade", "at most once in 100,000 years of one ship", 1e-5),
        step(2, "hardly thinkable", "at most once in 10,000 years", 1e-4),
        step(3, "remote", "at most once in 1,000 years: somewhere in a large fleet", 1e-3),
        step(4, "seldom", "at most once in 100 years: once in a small fleet's life", 1e-2),
        step(5, "once in a ship's life", "at most once in 20 years", 0.05),
        step(6, "between dockings", "at most once in 5 years", 0.2),
        step(7, "yearly", "at most once a year", 1),
        step(8, "each quarter", "at most four times a year", 4),
        step(9, "each month", "at most twelve times a year", 12),
        step(10, "each week", "more often"),
    };
}

Scale standardDetection() {
    return {
        step(1, "stops itself", "it is seen by the control, which brings the plant to rest"),
        step(2, "own alarm", "an alarm of its own says what it is"),
        step(3, "common alarm", "an alarm says that something is wrong"),
        step(4, "plain to see", "seen or heard on every round"),
        step(5, "reading", "a reading on the round shows it to who compares"),
        step(6, "weekly test", "found by a test at least each week"),
        step(7, "monthly test", "found by a test at least each month"),
        step(8, "yearly test", "found by a test at least each year"),
        step(9, "docking", "found when the part is opened"),
        step(10, "nothing", "nothing shows it until it is needed"),
    };
}

Scale ordered(Scale scale) {
    std::stable_sort(scale.begin(), scale.end(), [](const RatingLevel& a, const RatingLevel& b) {
        return a.rating.value_or(0) < b.rating.value_or(0);
    });
    return scale;
}

} // namespace

Scales scalesOf(const project::Project& project) {
    const project::Worksheet& own = project.worksheet;
    Scales scales;
    scales.ownSeverity = !own.severityScale.empty();
    scales.ownOccurrence = !own.occurrenceScale.empty();
    scales.ownDetection = !own.detectionScale.empty();
    scales.severity = scales.ownSeverity ? ordered(own.severityScale) : standardSeverity();
    scales.occurrence = scales.ownOccurrence ? ordered(own.occurrenceScale) : standardOccurrence();
    scales.detection = scales.ownDetection ? ordered(own.detectionScale) : standardDetection();
    return scales;
}

const RatingLevel* stepOf(const Scale& scale, int rating) {
    const RatingLevel* found = nullptr;
    for (const RatingLevel& level : scale)
        if (level.rating && *level.rating <= rating) found = &level;
    return found;
}

std::optional<int> occurrenceRating(const Scale& scale, double perYear) {
    std::optional<int> last;
    bool limited = false;
    for (const RatingLevel& level : scale) {
        if (!level.rating) continue;
        last = level.rating;
        if (!level.limit) continue;
        limited = true;
        if (perYear <= *level.limit) return level.rating;
    }
    return limited ? last : std::nullopt;
}

std::optional<int> riskPriorityNumber(const std::optional<int>& severity,
                                      const std::optional<int>& occurrence,
                                      const std::optional<int>& detection) {
    if (!severity || !occurrence || !detection) return {};
    return *severity * *occurrence * *detection;
}

} // namespace cutwater::worksheet
