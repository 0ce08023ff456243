// SPDX-License-Identifier: GPL-3.0-or-later
// The events of a solved tree over time: what the analyses of periods share.
#pragma once

#include "models/reliability/profile_reader.h"
#include "models/reliability/top_event.h"
#include "plugins/sdk/tree/common_causes.h"
#include "plugins/sdk/tree/solved.h"

#include <map>
#include <set>
#include <string>
#include <vector>

namespace cutwater::sdk::tree {

// Collects the courses of the events of one run, each event read once. Not thread-safe.
class CourseBook {
public:
    CourseBook(const project::Project& project, const project::Index& index,
               reliability::ProfileWish wish)
        : m_project(project), m_index(index), m_wish(wish) {}

    // Profiles by variable; problems of all relevant events that have none.
    project::Outcome<std::vector<reliability::EventProfile>> of(const Solved& solved);

    // What was assumed about the events asked about: tests, missions, instant events, clocks,
    // independence; and their warnings.
    void addNotes(std::vector<Note>& notes) const;

private:
    void noteClock(std::size_t position, const reliability::Exposed& converted);

    const project::Project& m_project;
    const project::Index& m_index;
    reliability::ProfileWish m_wish;
    std::map<std::size_t, reliability::EventProfile> m_profiles;
    CommonCauseUse m_commonCauses;
    std::map<std::string, std::set<std::size_t>> m_warnings;  // sentence -> events
    std::map<std::string, std::set<std::size_t>> m_converted; // sentence -> events
};

// The course of a solved tree; for one that is not coherent with what its exact frequency needs, as
// far as the limits of the job allow.
reliability::TopCourse courseOfTop(const Solved& solved,
                                   std::vector<reliability::EventProfile> profiles, const Job& job);

// A period with more tests and missions than this is refused: it would take minutes.
constexpr double kMostBreakpoints = 200'000;

// The problem where it has, or nothing.
std::optional<project::Problem>
tooManyBreakpoints(const Target& target, const reliability::TopCourse& course, double end);

} // namespace cutwater::sdk::tree
