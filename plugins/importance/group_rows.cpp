// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/importance/group_rows.h"

#include <algorithm>
#include <map>

namespace cutwater::importance_plugin {
namespace {

using reliability::GroupImportance;
using sdk::ColumnType;

std::vector<sdk::Column> columns(const char* what, const char* title) {
    return {{"top", "Top", ColumnType::reference, ""},
            {what, title, ColumnType::text, ""},
            {"name", "Name", ColumnType::text, ""},
            {"events", "Events", ColumnType::integer, ""},
            {"reduction", "Share", ColumnType::number, "%"},
            {"birnbaum", "Birnbaum", ColumnType::number, ""},
            {"risk-achievement", "RAW", ColumnType::number, ""},
            {"risk-reduction", "RRW", ColumnType::number, ""},
            {"differential", "Differential", ColumnType::number, "%"}};
}

std::map<std::string, std::uint32_t> variablesById(const EventRows& rows) {
    std::map<std::string, std::uint32_t> variables;
    for (const std::uint32_t variable : rows.solved.solution.relevantVariables())
        variables[rows.event(variable).id] = variable;
    return variables;
}

} // namespace

std::vector<Group> componentsOf(const EventRows& rows) {
    std::map<std::string, std::vector<std::uint32_t>> byComponent;
    for (const std::uint32_t variable : rows.solved.solution.relevantVariables()) {
        const project::FailureMode* const mode = rows.index.mode(rows.event(variable).mode);
        if (mode) byComponent[mode->component].push_back(variable);
    }
    std::vector<Group> groups;
    for (const project::Component& component : rows.project.components) {
        const auto found = byComponent.find(component.id);
        if (found == byComponent.end()) continue;
        groups.push_back(
            {component.tag.empty() ? component.id : component.tag, component.name, found->second});
    }
    return groups;
}

std::vector<Group> commonCausesOf(const EventRows& rows) {
    const auto variables = variablesById(rows);
    std::vector<Group> groups;
    for (const project::CommonCauseGroup& cause : rows.project.commonCauses) {
        Group group{cause.id, cause.name, {}};
        for (const project::Reference& member : cause.members) {
            const auto found = variables.find(member.id);
            if (found != variables.end()) group.variables.push_back(found->second);
        }
        if (group.variables.size() > 1) groups.push_back(std::move(group));
    }
    return groups;
}

sdk::Table componentTable() {
    return {
        "components",
        "Importance of components, all their failure modes together",
        columns("component", "Component"),
        {},
        "Share: what of the top would go if none of these events could happen. RAW: all of them "
        "at once, that is the component taken out."};
}

sdk::Table commonCauseTable() {
    return {"common-cause-groups",
            "Importance of common-cause groups, all members together",
            columns("group", "Group"),
            {},
            "RAW: how many times as likely the top is once the common cause has "
            "struck all members."};
}

std::size_t addGroups(sdk::Result& result, std::size_t table, const EventRows& rows,
                      const std::vector<Group>& groups,
                      const std::vector<GroupImportance>& entries) {
    std::vector<std::size_t> order(groups.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return entries[a].reduction > entries[b].reduction;
    });
    const std::size_t left = order.size() > rows.most ? order.size() - rows.most : 0;
    order.resize(order.size() - left);
    for (const std::size_t i : order) {
        const GroupImportance& entry = entries[i];
        std::vector<std::string> nodes;
        for (const std::uint32_t variable : groups[i].variables)
            nodes.push_back(rows.event(variable).id);
        result.tables[table].rows.push_back(
            {rows.solved.target.id, groups[i].id, groups[i].name,
             static_cast<std::int64_t>(nodes.size()), 100 * entry.reduction, entry.birnbaum,
             entry.riskAchievement, entry.riskReduction, 100 * entry.differential});
        result.marks.push_back(
            {result.tables[table].id, result.tables[table].rows.size() - 1, std::move(nodes)});
    }
    return left;
}

} // namespace cutwater::importance_plugin
