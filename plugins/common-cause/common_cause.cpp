// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/common-cause/common_cause.h"

#include "plugins/common-cause/tables.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/tree_notes.h"

#include <fmt/format.h>

#include <set>

namespace cutwater::common_cause_plugin {
namespace {

using reliability::UnequalRule;
using sdk::NoteKind;

sdk::Parameter ruleParameter() {
    sdk::Parameter parameter;
    parameter.name = "unequal";
    parameter.type = sdk::ParameterType::choice;
    parameter.choices = {"geometric-mean", "smallest"};
    parameter.standard = std::string("geometric-mean");
    parameter.sentence = "whose probability counts where the members of a group are not equally "
                         "bad: the geometric mean of those taken, or the smallest";
    return parameter;
}

void addMethod(std::vector<sdk::Note>& notes) {
    notes.push_back({NoteKind::method,
                     "Each member of a group is replaced by \"alone, or one of the causes that "
                     "take it with others\"; its total stays what it was. Factors after "
                     "NUREG/CR-4780 (1988) and NUREG/CR-5485 (1998), from memory."});
    notes.push_back({NoteKind::assumption,
                     "The causes of a group are independent of each other and of everything else, "
                     "and take whole members at once. What is fed, cooled or controlled by one "
                     "part is not a common cause: it belongs into the tree as an event."});
    notes.push_back({NoteKind::assumption,
                     "No group, no common cause: parts of one kind that stand in no group count as "
                     "independent here, too."});
}

} // namespace

std::vector<sdk::Parameter> CommonCauses::parameters(const project::Project* project) const {
    return {sdk::tree::topParameter(project), sdk::tree::missionParameter(), ruleParameter(),
            sdk::tree::assessmentParameter(project)};
}

sdk::Answer<sdk::Result> CommonCauses::run(const project::Project& project,
                                           const sdk::Values& values, const sdk::Job& job) const {
    using Answer = sdk::Answer<sdk::Result>;
    if (project.commonCauses.empty())
        return Answer::failed({{project::Severity::error, "the project has no common-cause group",
                                "add a group of events that one cause can take together", "", 0}});
    const project::Index index(project);
    const auto targets = sdk::tree::targetsOf(project, index, values.text("top"));
    if (!targets) return Answer::failed(targets.problems());
    const auto circumstances = sdk::tree::circumstancesOf(project, values);
    if (!circumstances) return Answer::failed(circumstances.problems());
    auto solved =
        sdk::tree::solveAll(project, index, *targets, sdk::tree::Side::fails, job, *circumstances);
    if (!solved.content) return {solved.ending, {}, std::move(solved.problems)};

    Numbers numbers{values.number("mission"), values.text("unequal") == "smallest"
                                                  ? UnequalRule::smallest
                                                  : UnequalRule::geometricMean};
    sdk::tree::FigureBook book(project, index, numbers.mission);
    Tables tables = emptyTables();
    sdk::Result result;
    result.title = "With and without common causes";
    std::size_t overdrawn = 0, grouped = 0;
    std::vector<std::string> lower;
    for (const sdk::tree::Solved& one : *solved.content) {
        auto compared = compare(project, index, one, book.of(one), numbers, job);
        if (!compared.content) return {compared.ending, {}, std::move(compared.problems)};
        addTop(tables, project, one.target, *compared.content);
        if (compared.content->common < compared.content->plain) lower.push_back(one.target.id);
        overdrawn = std::max(overdrawn, compared.content->overdrawn);
        grouped += compared.content->grouped;
        if (one.tree.hasPriorityAnd) result.exactness = sdk::Exactness::bounded;
    }
    addGroups(tables, project, index);
    tables.added.remark = "Sets of one: with such a cause the parts behind them protect each other "
                          "on paper only.";
    result.tables = {std::move(tables.tops), std::move(tables.added), std::move(tables.effects),
                     std::move(tables.groups)};
    result.marks = std::move(tables.marks);

    addMethod(result.notes);
    if (grouped == 0)
        result.notes.push_back({NoteKind::warning,
                                "No group has two members in a tree that was asked about: nothing "
                                "changes."});
    if (!lower.empty())
        result.notes.push_back(
            {NoteKind::method,
             fmt::format("{} become a little less likely, and that is right: there each member "
                         "brings the top about alone, and what one cause takes together is counted "
                         "once instead of twice.",
                         fmt::join(lower, ", "))});
    if (overdrawn > 0)
        result.notes.push_back(
            {NoteKind::warning,
             fmt::format("{} members give away more than they have to their groups: nothing is "
                         "left for them alone. Look at their factors and at members that stand in "
                         "two groups.",
                         overdrawn)});
    std::set<std::size_t> groups;
    for (std::size_t group = 0; group < project.commonCauses.size(); ++group)
        groups.insert(group);
    sdk::tree::addMemberWarnings(result.notes, project, index, groups, numbers.mission,
                                 numbers.rule);
    sdk::tree::addAssessmentNotes(result, *circumstances);
    sdk::tree::addTreeNotes(result.notes, *solved.content, sdk::tree::Side::fails);
    book.addAssumptions(result.notes);
    book.addWarnings(result.notes);
    for (const std::string& own : project.assumptions)
        result.notes.push_back({NoteKind::assumption, own});
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::machine, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::common_cause_plugin
