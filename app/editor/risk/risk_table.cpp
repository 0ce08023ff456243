// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/risk/risk_table.h"

#include "models/project/index.h"
#include "plugins/sdk/cells.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>

namespace cutwater::editor {

namespace {

// Why it stands in no cell.
std::string whyNot(const worksheet::RiskItem& item) {
    std::string why;
    if (!item.perYear)
        why = item.how;
    else if (!item.frequencyIndex)
        why = QCoreApplication::translate("RiskTable", "its frequency is 0").toStdString();
    if (item.severityIndex) return why;
    if (!why.empty()) why += "; ";
    return why +
           (item.severity.empty()
                ? QCoreApplication::translate("RiskTable", "it has no severity").toStdString()
                : QCoreApplication::translate("RiskTable", "the matrix has no severity \"%1\"")
                      .arg(QString::fromStdString(item.severity))
                      .toStdString());
}

} // namespace

std::shared_ptr<const sdk::Result> riskTable(const project::Project& project,
                                             const worksheet::RiskPicture& picture,
                                             const CellWish& cell) {
    using sdk::ColumnType;
    auto result = std::make_shared<sdk::Result>();
    sdk::Table table{"placed",
                     QCoreApplication::translate("RiskTable", "Risk matrix").toStdString(),
                     {},
                     {},
                     {}};
    const auto column = [&](const char* id, const QString& title, ColumnType type,
                            const char* unit = "") {
        table.columns.push_back({id, title.toStdString(), type, unit});
    };
    column("risk-index", QCoreApplication::translate("RiskTable", "RI"), ColumnType::integer);
    column("what", QCoreApplication::translate("RiskTable", "What"), ColumnType::text);
    column("name", QCoreApplication::translate("RiskTable", "Name"), ColumnType::text);
    column("frequency", QCoreApplication::translate("RiskTable", "Frequency"), ColumnType::number,
           "/y");
    column("severity", QCoreApplication::translate("RiskTable", "Severity"), ColumnType::text);
    column("band", QCoreApplication::translate("RiskTable", "Called"), ColumnType::text);
    column("how", QCoreApplication::translate("RiskTable", "From, or why it has no place"),
           ColumnType::text);
    column("id", QCoreApplication::translate("RiskTable", "Id"), ColumnType::text);
    std::map<std::string_view, std::vector<std::string>> events;
    for (const project::Event& event : project.events)
        if (!event.mode.empty()) events[event.mode].push_back(event.id);
    std::vector<const worksheet::RiskItem*> items;
    for (const worksheet::RiskItem& item : picture.items) {
        const bool here = !cell || (item.riskIndex && item.frequencyIndex->index == cell->first &&
                                    item.severityIndex == cell->second);
        if (here) items.push_back(&item);
    }
    std::stable_sort(items.begin(), items.end(), [](const auto* a, const auto* b) {
        return a->riskIndex.value_or(-1000) > b->riskIndex.value_or(-1000);
    });
    const std::string top = QCoreApplication::translate("RiskTable", "top event").toStdString();
    const std::string mode = QCoreApplication::translate("RiskTable", "failure mode").toStdString();
    for (const worksheet::RiskItem* item : items) {
        std::vector<std::string> nodes;
        if (item->isTop)
            nodes = {project.tops[item->position].node.id};
        else if (const auto found = events.find(item->id); found != events.end())
            nodes = found->second;
        result->marks.push_back({table.id, table.rows.size(), nodes});
        table.rows.push_back({sdk::numberCell(item->riskIndex), item->isTop ? top : mode,
                              sdk::textCell(item->name), sdk::numberCell(item->perYear),
                              sdk::textCell(item->severity), sdk::textCell(item->band),
                              sdk::textCell(item->riskIndex ? item->how : whyNot(*item)),
                              item->id});
    }
    result->title = table.title;
    result->tables = {std::move(table)};
    return result;
}

} // namespace cutwater::editor
