// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/coverage/coverage.h"

#include "models/project/index.h"
#include "models/worksheet/coverage.h"
#include "models/worksheet/top_figures.h"
#include "plugins/sdk/cells.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/circumstances.h"
#include "plugins/sdk/tree/common_causes.h"

#include <fmt/format.h>

#include <map>
#include <set>

namespace cutwater::coverage_plugin {
namespace {

using project::Project;
using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;
using sdk::textCell;
using worksheet::Coverage;
using worksheet::EndEffect;

std::string topIds(const Project& project, const std::vector<std::size_t>& tops) {
    std::vector<std::string> ids;
    for (const std::size_t top : tops)
        ids.push_back(project.tops[top].id);
    return fmt::format("{}", fmt::join(ids, ", "));
}

sdk::Table modesTable(const Project& project, const project::Index& index,
                      const Coverage& coverage) {
    sdk::Table table{"modes-in-no-tree",
                     "Failure modes that are in no tree",
                     {{"id", "Row", ColumnType::text, ""},
                      {"component", "Component", ColumnType::text, ""},
                      {"mode", "Failure mode", ColumnType::text, ""},
                      {"end-effect", "End effect", ColumnType::text, ""},
                      {"severity", "Severity", ColumnType::text, ""}},
                     {},
                     {}};
    for (const std::size_t at : coverage.modesInNoTree) {
        const project::FailureMode& mode = project.modes[at];
        const project::Component* component = index.component(mode.component);
        table.rows.push_back(
            {mode.id,
             component ? textCell(component->tag.empty() ? component->id : component->tag) : Cell(),
             textCell(mode.name), textCell(mode.endEffect), textCell(mode.severity)});
    }
    return table;
}

sdk::Table eventsTable(const Project& project, const Coverage& coverage) {
    sdk::Table table{"events-in-no-row",
                     "Events that are in no row of the worksheet",
                     {{"event", "Event", ColumnType::reference, ""},
                      {"name", "Name", ColumnType::text, ""},
                      {"kind", "Kind", ColumnType::text, ""}},
                     {},
                     {}};
    for (const std::size_t at : coverage.eventsInNoRow) {
        const project::Event& event = project.events[at];
        table.rows.push_back({event.id, textCell(event.name), std::string(word(event.kind))});
    }
    return table;
}

struct Figures {
    std::map<std::size_t, worksheet::TopFigures> of;
    std::set<std::size_t> groups; // common-cause groups that were counted
    bool cancelled = false;
};

Figures figuresFor(const Project& project, const project::Index& index, bool commonCauses,
                   const sdk::Job& job) {
    Figures figures;
    for (std::size_t top = 0; top < project.tops.size(); ++top) {
        if (job.progress)
            job.progress(static_cast<double>(top) / static_cast<double>(project.tops.size()),
                         "computing " + project.tops[top].id);
        figures.of[top] = worksheet::topFiguresOf(project, index, project.tops[top],
                                                  {job.memoryBytes, job.stop, commonCauses});
        figures.groups.insert(figures.of[top].groups.begin(), figures.of[top].groups.end());
        if (figures.of[top].cancelled) {
            figures.cancelled = true;
            return figures;
        }
    }
    return figures;
}

sdk::Table effectsTable(const Project& project, const Coverage& coverage, const Figures& figures) {
    sdk::Table table{"end-effects",
                     "End effects: severity beside computed probability",
                     {{"end-effect", "End effect", ColumnType::text, ""},
                      {"modes", "Failure modes", ColumnType::integer, ""},
                      {"severity", "Worst severity", ColumnType::text, ""},
                      {"top", "Tree", ColumnType::text, ""},
                      {"top-severity", "Severity of the top event", ColumnType::text, ""},
                      {"probability", "Probability", ColumnType::probability, ""},
                      {"frequency", "Frequency", ColumnType::number, "/y"},
                      {"remark", "Remark", ColumnType::text, ""}},
                     {},
                     {}};
    for (const EndEffect& effect : coverage.effects) {
        std::vector<Cell> start{effect.text, static_cast<std::int64_t>(effect.modes.size()),
                                textCell(effect.severity)};
        if (effect.answeredBy.empty()) {
            std::string remark = "no tree answers for it";
            if (!effect.foundIn.empty())
                remark += "; its failure modes stand in " + topIds(project, effect.foundIn);
            start.insert(start.end(), {Cell(), Cell(), Cell(), Cell(), remark});
            table.rows.push_back(std::move(start));
            continue;
        }
        for (const std::size_t at : effect.answeredBy) {
            const project::TopEvent& top = project.tops[at];
            const worksheet::TopFigures& its = figures.of.at(at);
            std::vector<Cell> row = start;
            row.insert(row.end(), {top.id, textCell(top.severity),
                                   its.probability ? Cell(*its.probability) : Cell(),
                                   its.perYear ? Cell(*its.perYear) : Cell(), textCell(its.how)});
            table.rows.push_back(std::move(row));
        }
    }
    return table;
}

} // namespace

std::vector<sdk::Parameter> CoveragePlugin::parameters(const project::Project*) const {
    return {sdk::tree::commonCauseParameter()};
}

sdk::Answer<sdk::Result> CoveragePlugin::run(const Project& project, const sdk::Values& values,
                                             const sdk::Job& job) const {
    using Answer = sdk::Answer<sdk::Result>;
    const project::Index index(project);
    const Coverage coverage = worksheet::coverageOf(project, index);
    const Figures figures = figuresFor(project, index, values.flag("common-cause"), job);
    if (figures.cancelled)
        return Answer::stopped(sdk::Ending::cancelled, {project::Severity::error,
                                                        "cancelled while a top event was computed",
                                                        "start it again when there is time",
                                                        {},
                                                        0});
    sdk::Result result;
    result.title = "Worksheet against trees";
    result.tables = {modesTable(project, index, coverage), eventsTable(project, coverage),
                     effectsTable(project, coverage, figures)};
    for (std::size_t i = 0; i < coverage.eventsInNoRow.size(); ++i)
        result.marks.push_back(
            {"events-in-no-row", i, {project.events[coverage.eventsInNoRow[i]].id}});
    for (const auto& [top, effect] : coverage.unknownEffects)
        result.notes.push_back(
            {NoteKind::warning,
             fmt::format("The top event {} answers for the end effect \"{}\", which no row has.",
                         project.tops[top].id, effect)});
    std::size_t open = 0;
    for (const EndEffect& effect : coverage.effects)
        open += effect.answeredBy.empty() ? 1 : 0;
    result.notes.push_back(
        {NoteKind::method,
         fmt::format(
             "{} of {} failure modes are in no tree, {} of {} end effects have no tree. "
             "Whether they need one is for people to say; `cutwater tree-proposals` makes a "
             "start.",
             coverage.modesInNoTree.size(), project.modes.size(), open, coverage.effects.size())});
    sdk::tree::addGroupNotes(result.notes, project, figures.groups, values.flag("common-cause"));
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::figures, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::coverage_plugin
