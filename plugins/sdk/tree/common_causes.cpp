// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/common_causes.h"

#include "models/reliability/event_model.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::sdk::tree {
namespace {

constexpr double kUnequal = 3;    // above this ratio of the members' probabilities a warning is due
constexpr double kNotSmall = 0.1; // a member this likely: a share of its probability is no share
                                  // of its rate

std::string idsOf(const project::Project& project, const std::set<std::size_t>& groups) {
    std::vector<std::string> ids;
    for (const std::size_t group : groups)
        ids.push_back(project.commonCauses[group].id);
    return fmt::format("{}", fmt::join(ids, ", "));
}

} // namespace

void addCommonCauseNotes(std::vector<Note>& notes, const project::Project& project,
                         const std::vector<std::size_t>& events, const CommonCauseUse& use) {
    std::set<std::string> used;
    for (const std::size_t event : events)
        used.insert(project.events[event].id);
    std::set<std::size_t> left;
    for (std::size_t g = 0; g < project.commonCauses.size(); ++g) {
        const auto& members = project.commonCauses[g].members;
        const auto here = std::count_if(members.begin(), members.end(), [&](const auto& member) {
            return used.count(member.id) > 0;
        });
        if (here > 1 && use.counted.count(g) == 0) left.insert(g);
    }
    if (!use.counted.empty())
        notes.push_back(
            {NoteKind::method,
             fmt::format("Common causes are counted ({}): each member of a group is \"alone\" or "
                         "one of the causes that take it with others, and its total stays what it "
                         "was. The causes are independent of each other. Factors after "
                         "NUREG/CR-4780 (1988) and NUREG/CR-5485 (1998), from memory.",
                         idsOf(project, use.counted))});
    if (!left.empty())
        notes.push_back(
            {NoteKind::warning,
             fmt::format("The common-cause groups {} are not counted here: their events were taken "
                         "as independent, and the true figures are higher. The analyses count them "
                         "where that is asked for (in the shell: --common-cause).",
                         idsOf(project, left))});
    if (!use.mixed.empty())
        notes.push_back({NoteKind::warning,
                         fmt::format("Groups {}: their members have failure models of different "
                                     "kinds; a common cause is a share of its first member's.",
                                     idsOf(project, use.mixed))});
    if (use.overdrawn > 0)
        notes.push_back(
            {NoteKind::warning,
             fmt::format("{} members give away more than they have to their groups: nothing is "
                         "left for them alone. Look at their factors and at members that stand in "
                         "two groups.",
                         use.overdrawn)});
}

void addGroupNotes(std::vector<Note>& notes, const project::Project& project,
                   const std::set<std::size_t>& counted, bool asked) {
    if (!asked && !project.commonCauses.empty())
        notes.push_back({NoteKind::warning,
                         "The figures of the top events take events as independent: common-cause "
                         "groups are not counted, and the true figures are higher. Ask for them "
                         "(in the shell: --common-cause)."});
    CommonCauseUse use;
    use.counted = counted;
    addCommonCauseNotes(notes, project, {}, use);
}

void addMemberWarnings(std::vector<Note>& notes, const project::Project& project,
                       const project::Index& index, const std::set<std::size_t>& groups,
                       std::optional<double> mission, reliability::UnequalRule rule) {
    for (const std::size_t position : groups) {
        const project::CommonCauseGroup& group = project.commonCauses[position];
        double least = 1, most = 0;
        for (const project::Reference& member : group.members) {
            const project::Event* const event = index.event(member.id);
            if (!event) continue;
            const auto found = reliability::probabilityOf(project, index, *event, mission);
            if (!found) continue;
            least = std::min(least, found->value);
            most = std::max(most, found->value);
        }
        if (most > kUnequal * least)
            notes.push_back(
                {NoteKind::warning,
                 fmt::format("Group {}: its members are not equally bad ({:.2g} to {:.2g}). The "
                             "models are made for equal parts; here the {} of the members taken "
                             "counts, so its figure is a rough one.",
                             group.id, least, most,
                             rule == reliability::UnequalRule::smallest ? "smallest"
                                                                        : "geometric mean")});
        if (most > kNotSmall)
            notes.push_back(
                {NoteKind::warning,
                 fmt::format("Group {}: a member has the probability {:.2g}. The factors share out "
                             "rates; above {} a share of the probability is not the same.",
                             group.id, most, kNotSmall)});
    }
}

} // namespace cutwater::sdk::tree
