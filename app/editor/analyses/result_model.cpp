// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/result_model.h"

#include "app/editor/answers/own_words.h"

#include "app/results/cell_text.h"

#include <QSize>

#include <algorithm>
#include <cmath>

namespace cutwater::editor {
namespace {

using sdk::Cell;

// Empty cells, then what is not a number, then numbers by value, then text.
int rank(const Cell& cell) {
    if (std::holds_alternative<std::monostate>(cell)) return 0;
    if (const auto* real = std::get_if<double>(&cell)) return std::isnan(*real) ? 1 : 2;
    return std::holds_alternative<std::int64_t>(cell) ? 2 : 3;
}

// Exact also where a whole number has more digits than a double.
bool numberLess(const Cell& left, const Cell& right) {
    const auto* a = std::get_if<std::int64_t>(&left);
    const auto* b = std::get_if<std::int64_t>(&right);
    if (a && b) return *a < *b;
    const auto real = [](const Cell& cell) {
        const auto* whole = std::get_if<std::int64_t>(&cell);
        return whole ? static_cast<double>(*whole) : std::get<double>(cell);
    };
    return real(left) < real(right);
}

bool cellLess(const Cell& left, const Cell& right) {
    const int a = rank(left), b = rank(right);
    if (a != b) return a < b;
    if (a == 2) return numberLess(left, right);
    if (a != 3) return false;
    return QString::compare(QString::fromStdString(std::get<std::string>(left)),
                            QString::fromStdString(std::get<std::string>(right)),
                            Qt::CaseInsensitive) < 0;
}

// "e1, not e2" to ids.
void addIds(std::vector<std::string>& ids, const std::string& text) {
    for (QString part : QString::fromStdString(text).split(", ", Qt::SkipEmptyParts)) {
        for (const char* const prefix : {"not ", "occurs: "})
            if (part.startsWith(QLatin1String(prefix)))
                part = part.mid(static_cast<qsizetype>(std::char_traits<char>::length(prefix)));
        ids.push_back(part.trimmed().toStdString());
    }
}

} // namespace

ResultModel::ResultModel(std::shared_ptr<const sdk::Result> result, std::size_t table,
                         QObject* parent)
    : QAbstractTableModel(parent), m_result(std::move(result)), m_table(table) {
    m_marks.assign(this->table().rows.size(), nullptr);
    for (const sdk::Mark& mark : m_result->marks)
        if (mark.table == this->table().id && mark.row < m_marks.size()) m_marks[mark.row] = &mark;
}

const Cell& ResultModel::cell(int row, int column) const {
    return table().rows[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)];
}

std::vector<std::string> ResultModel::nodes(int row) const {
    if (const sdk::Mark* mark = m_marks[static_cast<std::size_t>(row)]) return mark->nodes;
    std::vector<std::string> ids;
    for (int column = 0; column < columnCount(); ++column)
        if (table().columns[static_cast<std::size_t>(column)].type == sdk::ColumnType::reference)
            if (const auto* text = std::get_if<std::string>(&cell(row, column))) addIds(ids, *text);
    return ids;
}

int ResultModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table().rows.size());
}

int ResultModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(table().columns.size());
}

QVariant ResultModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const sdk::Column& column = table().columns[static_cast<std::size_t>(index.column())];
    switch (role) {
    case Qt::DisplayRole:
        return QString::fromStdString(results::cellText(cell(index.row(), index.column()), column));
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(results::isNumeric(column) ? Qt::AlignRight | Qt::AlignTop
                                                              : Qt::AlignLeft | Qt::AlignTop);
    case Qt::ToolTipRole:
        return results::isNumeric(column) ? QVariant() : data(index, Qt::DisplayRole);
    default: return {};
    }
}

QVariant ResultModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (section < 0) return {};
    if (orientation == Qt::Vertical)
        return role == Qt::DisplayRole && section < rowCount() ? QVariant(section + 1) : QVariant();
    if (section >= columnCount()) return {};
    const sdk::Column& column = table().columns[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole) return inOwnWords(column.title, column.unit);
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(results::isNumeric(column) ? Qt::AlignRight | Qt::AlignVCenter
                                                              : Qt::AlignLeft | Qt::AlignVCenter);
    return {};
}

ResultFilter::ResultFilter(ResultModel* model, QObject* parent)
    : QSortFilterProxyModel(parent), m_model(model) {
    setSourceModel(model);
}

void ResultFilter::setWords(const QString& words) {
    m_words = words.split(' ', Qt::SkipEmptyParts);
    invalidateFilter();
}

bool ResultFilter::filterAcceptsRow(int row, const QModelIndex&) const {
    if (m_words.isEmpty()) return true;
    QString all;
    for (int column = 0; column < m_model->columnCount(); ++column)
        all += m_model->index(row, column).data().toString() + '\n';
    return std::all_of(m_words.begin(), m_words.end(), [&](const QString& word) {
        return all.contains(word, Qt::CaseInsensitive);
    });
}

bool ResultFilter::lessThan(const QModelIndex& left, const QModelIndex& right) const {
    return cellLess(m_model->cell(left.row(), left.column()),
                    m_model->cell(right.row(), right.column()));
}

sdk::Table ResultFilter::shown() const {
    sdk::Table table = m_model->table();
    table.rows.clear();
    for (int row = 0; row < rowCount(); ++row)
        table.rows.push_back(
            m_model->table().rows[static_cast<std::size_t>(mapToSource(index(row, 0)).row())]);
    return table;
}

} // namespace cutwater::editor
