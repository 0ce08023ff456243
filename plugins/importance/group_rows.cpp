// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/importance/group_rows.h"

#include <algorithm>
#include <map>
#include <set>

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

} // namespace

std::vector<Group> componentsOf(const EventRows& rows) {
    struct Found {
        reliability::EventGroup variables;
        std::set<std::string> nodes;
    };
    std::map<std::string, Found> byComponent;
    const auto& variables = rows.solved.variables;
    for (const std::uint32_t variable : rows.solved.solution.relevantVariables()) {
        std::set<std::string> taken; // a common cause may take two modes of one component
        for (const std::size_t event : variables.events(variable)) {
            const project::FailureMode* const mode =
                rows.index.mode(rows.project.events[event].mode);
            if (!mode) continue;
            Found& found = byComponent[mode->component];
            if (taken.insert(mode->component).second)
                found.variables.impossible.push_back(variable);
            if (rows.solved.isEvent(variable)) {
                found.variables.certain.push_back(variable);
                found.nodes.insert(rows.project.events[event].id);
            }
        }
    }
    std::vector<Group> groups;
    for (const project::Component& component : rows.project.components) {
        const auto found = byComponent.find(component.id);
        if (found == byComponent.end() || found->second.nodes.empty()) continue;
        groups.push_back({component.tag.empty() ? component.id : component.tag,
                          component.name,
                          found->second.variables,
                          {found->second.nodes.begin(), found->second.nodes.end()}});
    }
    return groups;
}

std::vector<Group> commonCausesOf(const EventRows& rows) {
    const auto& variables = rows.solved.variables;
    std::map<std::string, std::uint32_t> byId; // of the members themselves
    std::map<std::size_t, std::vector<std::uint32_t>> causes;
    for (const std::uint32_t variable : rows.solved.solution.relevantVariables()) {
        if (rows.solved.isEvent(variable))
            byId[rows.project.events[variables.events(variable).front()].id] = variable;
        else
            causes[variables.groups()[variables.groupOf(variable)]].push_back(variable);
    }
    std::vector<Group> groups;
    for (std::size_t g = 0; g < rows.project.commonCauses.size(); ++g) {
        const project::CommonCauseGroup& cause = rows.project.commonCauses[g];
        Group group{cause.id, cause.name, {}, {}};
        for (const project::Reference& member : cause.members) {
            const auto found = byId.find(member.id);
            if (found == byId.end()) continue;
            group.variables.certain.push_back(found->second);
            group.nodes.push_back(member.id);
        }
        if (group.nodes.size() < 2) continue;
        const auto counted = causes.find(g);
        group.variables.impossible =
            counted == causes.end() ? group.variables.certain : counted->second;
        groups.push_back(std::move(group));
    }
    return groups;
}

sdk::Table componentTable() {
    return {
        "components",
        "Importance of components, all their failure modes together",
        columns("component", "Component"),
        {},
        "Share: what of the top would go if none of these events could happen (where common causes "
        "are counted, neither those that take it). RAW: all of them at once, that is the component "
        "taken out."};
}

sdk::Table commonCauseTable(bool counted) {
    return {"common-cause-groups",
            counted ? "Importance of common-cause groups"
                    : "Importance of common-cause groups, all members together",
            columns("group", "Group"),
            {},
            counted ? "Share: what of the top would go if the common causes of this group could "
                      "not come, its members failing alone as before. RAW: how many times as "
                      "likely the top is once one cause has struck all members."
                    : "The common causes are NOT counted here: share, Birnbaum and RRW are of the "
                      "members as independent parts, all taken away. RAW: how many times as likely "
                      "the top is once one cause has struck all members."};
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
        result.tables[table].rows.push_back(
            {rows.solved.target.id, groups[i].id, groups[i].name,
             static_cast<std::int64_t>(groups[i].nodes.size()), 100 * entry.reduction,
             entry.birnbaum, entry.riskAchievement, entry.riskReduction, 100 * entry.differential});
        result.marks.push_back(
            {result.tables[table].id, result.tables[table].rows.size() - 1, groups[i].nodes});
    }
    return left;
}

} // namespace cutwater::importance_plugin
