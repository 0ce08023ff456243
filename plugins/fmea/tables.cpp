// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/fmea/tables.h"

#include "plugins/sdk/cells.h"

#include <fmt/format.h>

namespace cutwater::fmea_plugin {
namespace {

using sdk::Cell;
using sdk::ColumnType;
using sdk::numberCell;
using sdk::textCell;
using worksheet::Row;
using worksheet::Sheet;

ColumnType typeOf(worksheet::ColumnKind kind) {
    switch (kind) {
    case worksheet::ColumnKind::text: return ColumnType::text;
    case worksheet::ColumnKind::whole: return ColumnType::integer;
    case worksheet::ColumnKind::number: return ColumnType::number;
    case worksheet::ColumnKind::probability: return ColumnType::probability;
    }
    return ColumnType::text;
}

std::string tagOf(const Row& row) {
    if (!row.component) return row.facts->component;
    return row.component->tag.empty() ? row.component->id : row.component->tag;
}

std::string intervalOf(const project::FailureMode& mode, const project::Index& index) {
    const project::Quantity* interval = mode.model.find(project::Role::interval);
    if (interval) interval = index.resolved(*interval);
    if (!interval) return {};
    return fmt::format("{} {}", interval->value, project::facts(interval->unit).symbol);
}

} // namespace

sdk::Table worksheetTable(const Sheet& sheet,
                          const std::vector<const worksheet::Column*>& columns) {
    sdk::Table table{"worksheet", "FMEA worksheet", {}, {}, {}};
    for (const worksheet::Column* column : columns)
        table.columns.push_back({std::string(column->id), std::string(column->title),
                                 typeOf(column->kind), std::string(column->unit)});
    for (const Row& row : sheet.rows) {
        auto& cells = table.rows.emplace_back();
        for (const worksheet::Column* column : columns)
            cells.push_back(column->read(sheet, row));
    }
    return table;
}

sdk::Table dormantTable(const Sheet& sheet, const project::Index& index) {
    sdk::Table table{"dormant",
                     "Dormant failures: nobody sees them until a test or a demand",
                     {{"id", "Row", ColumnType::text, ""},
                      {"component", "Component", ColumnType::text, ""},
                      {"mode", "Failure mode", ColumnType::text, ""},
                      {"end-effect", "End effect", ColumnType::text, ""},
                      {"interval", "Tested every", ColumnType::text, ""},
                      {"last-test", "Last test", ColumnType::text, ""},
                      {"compensation", "Compensating provision", ColumnType::text, ""},
                      {"proved-by", "Proved by", ColumnType::text, ""},
                      {"proved-on", "Proved on", ColumnType::text, ""},
                      {"missing", "Missing", ColumnType::text, ""}},
                     {},
                     {}};
    for (const Row& row : sheet.rows) {
        if (!row.dormant) continue;
        const project::FailureMode& mode = *row.facts;
        std::vector<std::string> missing;
        for (std::string& gap : worksheet::gapsOf(row))
            if (gap.find("dormant") != std::string::npos ||
                gap.find("provision") != std::string::npos)
                missing.push_back(std::move(gap));
        table.rows.push_back({mode.id, tagOf(row), textCell(mode.name), textCell(mode.endEffect),
                              textCell(intervalOf(mode, index)), textCell(mode.model.lastTest),
                              textCell(mode.compensation), textCell(mode.provedBy),
                              textCell(mode.provedOn),
                              textCell(fmt::format("{}", fmt::join(missing, "; ")))});
    }
    return table;
}

sdk::Table itemTable(const project::Project& project,
                     const std::vector<worksheet::ItemCriticality>& items) {
    sdk::Table table{"items",
                     "Item criticality by severity",
                     {{"component", "Component", ColumnType::text, ""},
                      {"name", "Name", ColumnType::text, ""},
                      {"severity", "Severity", ColumnType::text, ""},
                      {"criticality", "Cr", ColumnType::number, ""},
                      {"share", "Share of the item", ColumnType::number, ""},
                      {"modes", "Failure modes", ColumnType::integer, ""},
                      {"without", "Without a number", ColumnType::integer, ""}},
                     {},
                     {}};
    for (const worksheet::ItemCriticality& item : items) {
        const project::Component& component = project.components[item.component];
        table.rows.push_back({component.tag.empty() ? component.id : component.tag,
                              textCell(component.name), textCell(item.severity),
                              item.without < item.modes ? Cell(item.number) : Cell(),
                              numberCell(item.share), static_cast<std::int64_t>(item.modes),
                              static_cast<std::int64_t>(item.without)});
    }
    return table;
}

sdk::Table actionTable(const Sheet& sheet, const std::string& today) {
    sdk::Table table{"actions",
                     "Actions",
                     {{"id", "Row", ColumnType::text, ""},
                      {"component", "Component", ColumnType::text, ""},
                      {"mode", "Failure mode", ColumnType::text, ""},
                      {"action", "What", ColumnType::text, ""},
                      {"owner", "Owner", ColumnType::text, ""},
                      {"due", "Due", ColumnType::text, ""},
                      {"state", "State", ColumnType::text, ""},
                      {"done-on", "Done on", ColumnType::text, ""},
                      {"proof", "How it was proved", ColumnType::text, ""},
                      {"rpn", "RPN", ColumnType::integer, ""},
                      {"rpn-after", "RPN after", ColumnType::integer, ""},
                      {"overdue", "Overdue", ColumnType::text, ""}},
                     {},
                     {}};
    for (const Row& row : sheet.rows)
        for (const project::Action& action : row.facts->actions)
            table.rows.push_back(
                {row.facts->id, tagOf(row), textCell(row.facts->name), textCell(action.what),
                 textCell(action.owner), textCell(action.due), std::string(word(action.state)),
                 textCell(action.doneOn), textCell(action.proof), numberCell(row.rpn),
                 numberCell(row.rpnAfter),
                 worksheet::isOverdue(action, today) ? Cell(std::string("yes")) : Cell()});
    return table;
}

sdk::Table scaleTable(const Sheet& sheet) {
    sdk::Table table{"scales",
                     "Rating scales",
                     {{"scale", "Scale", ColumnType::text, ""},
                      {"rating", "Rating", ColumnType::integer, ""},
                      {"word", "Word", ColumnType::text, ""},
                      {"meaning", "Meaning", ColumnType::text, ""},
                      {"limit", "Up to", ColumnType::number, "/y"},
                      {"whose", "Whose", ColumnType::text, ""}},
                     {},
                     {}};
    const auto add = [&](const char* name, const std::vector<project::RatingLevel>& scale,
                         bool own) {
        for (const project::RatingLevel& level : scale)
            table.rows.push_back({std::string(name), numberCell(level.rating), textCell(level.word),
                                  textCell(level.meaning), numberCell(level.limit),
                                  std::string(own ? "the project's own" : "standard")});
    };
    add("severity", sheet.scales.severity, sheet.scales.ownSeverity);
    add("occurrence", sheet.scales.occurrence, sheet.scales.ownOccurrence);
    add("detection", sheet.scales.detection, sheet.scales.ownDetection);
    return table;
}

} // namespace cutwater::fmea_plugin
