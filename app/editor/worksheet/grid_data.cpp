// SPDX-License-Identifier: GPL-3.0-or-later
// GridModel: what its cells and headings show.
#include "app/editor/worksheet/grid_model.h"

#include <QFont>

#include <algorithm>

namespace cutwater::editor {

namespace {

constexpr int kLongTip = 40; // characters that a cell shows anyway

} // namespace

QString GridModel::shownText(int at, int place) const {
    const auto row = static_cast<std::size_t>(at);
    const worksheet::Cell cell = m_data->cell(row, place, m_figures);
    if (const auto* number = std::get_if<double>(&cell)) return shownNumber(*number);
    // A number that the project shares under a name: with what it is now.
    const project::FailureMode& mode = *m_data->row(row).facts;
    const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
    const project::Quantity* shared = nullptr;
    if (column.editor == CellEditor::interval) shared = mode.model.find(project::Role::interval);
    if (column.id == "effect-chance" && mode.effectChance) shared = &*mode.effectChance;
    if (column.id == "mode-ratio" && mode.ratio) shared = &*mode.ratio;
    if (shared && !shared->parameter.empty())
        if (const project::Quantity* now = m_data->index.resolved(*shared)) {
            const std::string_view unit = project::facts(now->unit).symbol;
            QString words = shownNumber(now->value);
            if (now->unit != project::Unit::number)
                words += QLatin1Char(' ') +
                         QString::fromUtf8(unit.data(), static_cast<qsizetype>(unit.size()));
            return QStringLiteral("%1 (%2)").arg(words, QString::fromStdString(shared->parameter));
        }
    return QString::fromStdString(worksheet::toText(cell));
}

QVariant GridModel::groupData(const Group& group, int column, int role) const {
    const int size = static_cast<int>(group.rows.size());
    const QString words =
        size == 1 ? tr("%1: 1 row").arg(group.name) : tr("%1: %2 rows").arg(group.name).arg(size);
    switch (role) {
    case groupRole: return words;
    case foldedRole: return group.folded;
    case Qt::DisplayRole: return column == 0 ? words : QString();
    case Qt::AccessibleTextRole: return group.folded ? tr("%1, folded").arg(words) : words;
    case Qt::ToolTipRole: return group.folded ? tr("Right unfolds it") : tr("Left folds it");
    default: return {};
    }
}

bool GridModel::isOverdue(int at, const SheetColumn& column) const {
    const worksheet::Row& row = m_data->row(static_cast<std::size_t>(at));
    const std::string today = m_today.toString(Qt::ISODate).toStdString();
    if (column.id == "next-test") return !row.nextTest.empty() && row.nextTest < today;
    if (column.id != "due") return false;
    return std::any_of(
        row.facts->actions.begin(), row.facts->actions.end(),
        [&](const project::Action& action) { return worksheet::isOverdue(action, today); });
}

QString GridModel::tip(int row, int place) const {
    const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
    const QString text = m_data->text(static_cast<std::size_t>(row), place, m_figures);
    QString tip;
    if (isOverdue(row, column)) tip = tr("This day has gone by.");
    if (column.id.starts_with("effect-")) {
        // Where it comes from, or why there is nothing.
        for (const auto& [effect, figure] : m_figures)
            if (m_data->text(static_cast<std::size_t>(row), sheetColumn("effect-tree"), m_figures)
                    .toStdString() == figure.top)
                tip = QString::fromStdString(figure.how);
    }
    if (text.size() > kLongTip || column.kind != worksheet::ColumnKind::text)
        tip = tip.isEmpty() ? text : QStringLiteral("%1\n%2").arg(text, tip);
    return tip;
}

QVariant GridModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Line line = m_lines[static_cast<std::size_t>(index.row())];
    if (line.row < 0)
        return groupData(m_groups[static_cast<std::size_t>(line.group)], index.column(), role);
    const int place = m_columns[static_cast<std::size_t>(index.column())];
    const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
    const auto row = static_cast<std::size_t>(line.row);
    switch (role) {
    case Qt::DisplayRole: return shownText(line.row, place);
    case Qt::EditRole: return m_data->text(row, place, m_figures);
    case Qt::ToolTipRole: return tip(line.row, place);
    case Qt::TextAlignmentRole:
        return static_cast<int>(column.kind == worksheet::ColumnKind::text
                                    ? Qt::AlignLeft | Qt::AlignTop
                                    : Qt::AlignRight | Qt::AlignTop);
    case Qt::FontRole: {
        if (column.isTyped()) return {};
        QFont font;
        font.setItalic(true);
        return font;
    }
    case Qt::AccessibleTextRole: {
        const QString text = m_data->text(row, place, m_figures);
        const QString words = text.isEmpty() ? tr("empty") : text;
        if (!column.isTyped()) return tr("%1, cannot be typed: %2").arg(column.title, words);
        return tr("%1: %2").arg(column.title, words);
    }
    case typedRole: return column.isTyped();
    case overdueRole: return isOverdue(line.row, column);
    default: return {};
    }
}

bool GridModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (!index.isValid() || role != Qt::EditRole || !typing || isGroup(index.row())) return false;
    const QString sentence = typing(index, value.toString());
    if (!sentence.isEmpty()) emit typingRefused(sentence);
    return sentence.isEmpty();
}

QVariant GridModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation == Qt::Vertical) {
        if (section < 0 || section >= rowCount()) return {};
        if (role == Qt::DisplayRole)
            return isGroup(section) ? QString() : QString::number(rowAt(section) + 1);
        return {};
    }
    if (section < 0 || section >= columnCount()) return {};
    const int place = m_columns[static_cast<std::size_t>(section)];
    const SheetColumn& column = columnAt(section);
    const bool filtered = m_arrangement.filters.contains(place);
    const auto& keys = m_arrangement.keys;
    const auto key = std::find_if(keys.begin(), keys.end(),
                                  [&](const SortKey& each) { return each.column == place; });
    switch (role) {
    case Qt::DisplayRole: {
        QString title = column.title;
        if (key != keys.end()) {
            title += key->descending ? QStringLiteral(" \u25BC") : QStringLiteral(" \u25B2");
            if (keys.size() > 1) title += QString::number(key - keys.begin() + 1);
        }
        if (filtered) title += QStringLiteral(" \u2234");
        return title;
    }
    case Qt::ToolTipRole: {
        QString tip = column.isTyped()
                          ? QStringLiteral("%1: %2").arg(column.title, column.tip)
                          : tr("%1 (cannot be typed here): %2").arg(column.title, column.tip);
        if (filtered) tip += QLatin1Char('\n') + tr("Rows are filtered by this column.");
        return tip;
    }
    case Qt::AccessibleTextRole: return column.title;
    case Qt::FontRole: {
        QFont font;
        font.setItalic(!column.isTyped());
        return font;
    }
    default: return {};
    }
}

Qt::ItemFlags GridModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
    if (!isGroup(index.row()) && columnAt(index.column()).isTyped()) flags |= Qt::ItemIsEditable;
    return flags;
}

} // namespace cutwater::editor
