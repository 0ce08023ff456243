// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/accept_cause.h"

#include "models/project/edits/ids.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>

namespace cutwater::worksheet {

namespace {

project::Problem problem(std::string what, std::string remedy) {
    return {project::Severity::error, std::move(what), std::move(remedy), "common cause", 0};
}

} // namespace

std::string causeId(std::size_t position) {
    return fmt::format("C{}", position + 1);
}

project::Outcome<project::Project> acceptCause(const project::Project& project,
                                               const CauseProposal& proposal,
                                               const CauseTerms& terms) {
    if (terms.beta.parameter.empty() && !(terms.beta.value > 0 && terms.beta.value <= 1))
        return problem(fmt::format("the beta factor is {:g}", terms.beta.value),
                       "give a share above 0 and at most 1");
    if (terms.beta.parameter.empty() && terms.beta.source.document.empty() &&
        terms.beta.source.tag.empty())
        return problem("nothing says where the beta factor comes from",
                       "name the document, the log, or say that it is common practice");
    std::set<project::Id> members;
    for (const std::size_t event : proposal.events) {
        if (event >= project.events.size())
            return problem("the project has changed since the proposal was made",
                           "look at the proposals again");
        members.insert(project.events[event].id);
    }
    for (const project::CommonCauseGroup& group : project.commonCauses) {
        std::set<project::Id> there;
        for (const project::Reference& member : group.members)
            there.insert(member.id);
        if (there == members)
            return problem(
                fmt::format("group {} has these {} events already", group.id, members.size()),
                "change that group instead of making a second one");
    }
    project::CommonCauseGroup group;
    group.name = terms.name.empty() ? fmt::format("{}: {}", word(proposal.kind), proposal.shared)
                                    : terms.name;
    group.id = project::edits::uniqueId(
        project::edits::slug("ccf " + proposal.shared), [&](const project::Id& id) {
            return std::any_of(
                project.commonCauses.begin(), project.commonCauses.end(),
                [&](const project::CommonCauseGroup& each) { return each.id == id; });
        });
    group.kind = project::CommonCauseKind::beta;
    group.factors = {terms.beta};
    if (group.factors.front().unit == project::Unit::unstated)
        group.factors.front().unit = project::Unit::number;
    for (const std::size_t event : proposal.events)
        group.members.push_back({project.events[event].id, {}});
    group.reason = proposal.reason;
    project::Project made = project;
    made.commonCauses.push_back(std::move(group));
    return made;
}

} // namespace cutwater::worksheet
