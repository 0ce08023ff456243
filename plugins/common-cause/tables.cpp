// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/common-cause/tables.h"

#include <fmt/format.h>

namespace cutwater::common_cause_plugin {
namespace {

using sdk::Cell;
using sdk::ColumnType;

Cell whole(std::uint64_t value) {
    return static_cast<std::int64_t>(value);
}

} // namespace

Tables emptyTables() {
    Tables tables;
    tables.tops = {"top-events",
                   "Each top event without and with common causes",
                   {{"top", "Top", ColumnType::reference, ""},
                    {"name", "Name", ColumnType::text, ""},
                    {"without", "Independent", ColumnType::probability, ""},
                    {"with", "With common causes", ColumnType::probability, ""},
                    {"times", "Times", ColumnType::number, ""},
                    {"sets-without", "Sets before", ColumnType::integer, ""},
                    {"sets-with", "Sets with them", ColumnType::integer, ""},
                    {"singles-without", "Single failures before", ColumnType::integer, ""},
                    {"singles-added", "Single failures added", ColumnType::integer, ""}}};
    tables.added = {"single-failures-added",
                    "Single failures that common causes add",
                    {{"top", "Top", ColumnType::reference, ""},
                     {"cause", "One cause takes", ColumnType::text, ""},
                     {"probability", "Probability", ColumnType::probability, ""},
                     {"group", "Group", ColumnType::text, ""},
                     {"reason", "Why together", ColumnType::text, ""}}};
    tables.effects = {"effects",
                      "What each group does to a top event",
                      {{"top", "Top", ColumnType::reference, ""},
                       {"group", "Group", ColumnType::text, ""},
                       {"name", "Name", ColumnType::text, ""},
                       {"without-it", "Top without this group", ColumnType::probability, ""},
                       {"share", "Group's share of the top", ColumnType::number, "%"}}};
    tables.groups = {
        "groups",
        "The groups and their factors",
        {{"group", "Group", ColumnType::text, ""},
         {"name", "Name", ColumnType::text, ""},
         {"model", "Model", ColumnType::text, ""},
         {"members", "Members", ColumnType::integer, ""},
         {"size", "Lost together", ColumnType::integer, ""},
         {"causes", "Such causes", ColumnType::number, ""},
         {"share", "Chance of each one, by the chance of one member", ColumnType::number, ""},
         {"reason", "Why together", ColumnType::text, ""}}};
    return tables;
}

void addTop(Tables& tables, const project::Project& project, const sdk::tree::Target& target,
            const Comparison& comparison) {
    tables.tops.rows.push_back(
        {target.id, target.name, comparison.plain, comparison.common,
         comparison.plain > 0 ? Cell(comparison.common / comparison.plain) : Cell(),
         sdk::tree::countCell(comparison.plainSets), sdk::tree::countCell(comparison.commonSets),
         whole(comparison.plainSingles), whole(comparison.added.size())});
    for (const Comparison::Single& single : comparison.added) {
        const auto& group = project.commonCauses[single.group];
        sdk::Mark mark{tables.added.id, tables.added.rows.size(), {}};
        for (const std::size_t event : single.events)
            mark.nodes.push_back(project.events[event].id);
        tables.marks.push_back(std::move(mark));
        tables.added.rows.push_back(
            {target.id, single.id, single.probability, group.id, group.reason});
    }
    for (const GroupFigure& figure : comparison.groups) {
        const auto& group = project.commonCauses[figure.group];
        tables.effects.rows.push_back(
            {target.id, group.id, group.name, figure.withoutIt,
             comparison.common > 0
                 ? Cell(100 * (comparison.common - figure.withoutIt) / comparison.common)
                 : Cell()});
    }
}

void addGroups(Tables& tables, const project::Project& project, const project::Index& index) {
    for (const project::CommonCauseGroup& group : project.commonCauses) {
        const std::size_t members = group.members.size();
        const auto shares = reliability::commonCauseShares(
            group.kind, reliability::factorsOf(index, group), members);
        double causes = 1; // C(members, size)
        for (std::size_t size = 1; size <= members; ++size) {
            causes = causes * static_cast<double>(members - size + 1) / static_cast<double>(size);
            if (shares[size - 1] <= 0) continue;
            tables.groups.rows.push_back({group.id, group.name,
                                          std::string(project::word(group.kind)), whole(members),
                                          whole(size), causes, shares[size - 1], group.reason});
        }
    }
}

} // namespace cutwater::common_cause_plugin
