// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/report/report_list.h"

#include <algorithm>

namespace cutwater::editor {

QString ReportItem::shownTitle() const {
    if (!title.isEmpty()) return title;
    return result ? QString::fromStdString(result->title) : method;
}

int ReportList::add(ReportItem item) {
    const auto same = std::find_if(m_items.begin(), m_items.end(), [&](const ReportItem& each) {
        return item.result ? each.result == item.result
                           : !each.result && each.analysis == item.analysis;
    });
    if (same != m_items.end()) return static_cast<int>(same - m_items.begin());
    const int row = rowCount();
    beginInsertRows({}, row, row);
    m_items.push_back(std::move(item));
    endInsertRows();
    emit changed();
    return row;
}

void ReportList::remove(int row) {
    if (row < 0 || row >= rowCount()) return;
    beginRemoveRows({}, row, row);
    m_items.erase(m_items.begin() + row);
    endRemoveRows();
    emit changed();
}

void ReportList::move(int row, int by) {
    const int to = row + by;
    if (row < 0 || row >= rowCount() || to < 0 || to >= rowCount() || by == 0) return;
    beginMoveRows({}, row, row, {}, by > 0 ? to + 1 : to);
    const ReportItem item = m_items[static_cast<std::size_t>(row)];
    m_items.erase(m_items.begin() + row);
    m_items.insert(m_items.begin() + to, item);
    endMoveRows();
    emit changed();
}

void ReportList::tell(int row) {
    emit dataChanged(index(row), index(row));
    emit changed();
}

void ReportList::setTitle(int row, const QString& title) {
    if (row < 0 || row >= rowCount() || item(row).title == title) return;
    m_items[static_cast<std::size_t>(row)].title = title;
    tell(row);
}

void ReportList::setComment(int row, const QString& comment) {
    if (row < 0 || row >= rowCount() || item(row).comment == comment) return;
    m_items[static_cast<std::size_t>(row)].comment = comment;
    tell(row);
}

void ReportList::clear() {
    if (m_items.empty()) return;
    beginResetModel();
    m_items.clear();
    endResetModel();
    emit changed();
}

void ReportList::setProject(std::shared_ptr<const project::Project> project) {
    m_project = std::move(project);
    if (!m_items.empty()) emit dataChanged(index(0), index(rowCount() - 1));
}

bool ReportList::isStale(int row) const {
    return item(row).result && item(row).of != m_project;
}

int ReportList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QVariant ReportList::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const ReportItem& one = item(index.row());
    switch (role) {
    case Qt::EditRole: return one.shownTitle();
    case Qt::DisplayRole:
        return !one.result ? tr("%1 (computed when the report is made)").arg(one.shownTitle())
               : isStale(index.row())
                   ? tr("%1 (stale: the project has changed since)").arg(one.shownTitle())
                   : one.shownTitle();
    case Qt::CheckStateRole: return one.wanted ? Qt::Checked : Qt::Unchecked;
    case Qt::ToolTipRole: return one.method;
    default: return {};
    }
}

bool ReportList::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return false;
    if (role == Qt::CheckStateRole) {
        m_items[static_cast<std::size_t>(index.row())].wanted = value.toInt() == Qt::Checked;
        tell(index.row());
        return true;
    }
    if (role != Qt::EditRole) return false;
    setTitle(index.row(), value.toString());
    return true;
}

Qt::ItemFlags ReportList::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    return Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsEditable | Qt::ItemIsUserCheckable |
           Qt::ItemNeverHasChildren;
}

} // namespace cutwater::editor
