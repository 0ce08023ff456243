// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/typing_tree.h"

#include <QHeaderView>
#include <QTreeView>

#include <algorithm>

namespace cutwater::editor {

void setUpTypingTree(QTreeView& view, int textColumn) {
    view.setUniformRowHeights(true);
    view.setSelectionMode(QAbstractItemView::ExtendedSelection);
    view.setEditTriggers(QAbstractItemView::NoEditTriggers);
    view.setDragEnabled(true);
    view.setAcceptDrops(true);
    view.setDropIndicatorShown(true);
    view.setAutoExpandDelay(700);
    view.setExpandsOnDoubleClick(false);
    view.setAllColumnsShowFocus(true);
    view.header()->setStretchLastSection(false);
    view.header()->setSectionResizeMode(textColumn, QHeaderView::Stretch);
}

QModelIndexList outermostRows(const QTreeView& view) {
    QModelIndexList rows = view.selectionModel()->selectedRows();
    if (rows.isEmpty() && view.currentIndex().isValid())
        rows = {view.currentIndex().siblingAtColumn(0)};
    const auto isBelowOther = [&](QModelIndex index) {
        for (index = index.parent(); index.isValid(); index = index.parent())
            if (rows.contains(index)) return true;
        return false;
    };
    QModelIndexList outer;
    for (const QModelIndex& row : rows)
        if (!isBelowOther(row)) outer.push_back(row);
    std::sort(outer.begin(), outer.end(), [&](const QModelIndex& a, const QModelIndex& b) {
        return view.visualRect(a).top() < view.visualRect(b).top();
    });
    return outer;
}

void unfoldAbove(QTreeView& view, const QModelIndex& row) {
    for (QModelIndex above = row.parent(); above.isValid(); above = above.parent())
        view.expand(above);
}

} // namespace cutwater::editor
