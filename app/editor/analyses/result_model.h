// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plugins/sdk/result.h"

#include <QAbstractTableModel>
#include <QSortFilterProxyModel>

#include <memory>

namespace cutwater::editor {

// One table of a result. Titles carry their units; cells read as the shell prints them.
class ResultModel : public QAbstractTableModel {
    Q_OBJECT

public:
    // `result` is held as long as the model lives; `table` is a position in its tables.
    ResultModel(std::shared_ptr<const sdk::Result> result, std::size_t table,
                QObject* parent = nullptr);

    const sdk::Table& table() const { return m_result->tables[m_table]; }
    const sdk::Cell& cell(int row, int column) const;
    // What the result marks with this row; where it marks nothing, the ids in its reference cells.
    std::vector<std::string> nodes(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::shared_ptr<const sdk::Result> m_result;
    std::size_t m_table;
    std::vector<const sdk::Mark*> m_marks; // by row, null where there is none
};

// Sorts by value, not by letters; shows the rows that have every word of the filter in some cell.
class ResultFilter : public QSortFilterProxyModel {
    Q_OBJECT

public:
    explicit ResultFilter(ResultModel* model, QObject* parent = nullptr);

    void setWords(const QString& words);
    // The shown rows in the shown order; for copies.
    sdk::Table shown() const;

protected:
    bool filterAcceptsRow(int row, const QModelIndex& parent) const override;
    bool lessThan(const QModelIndex& left, const QModelIndex& right) const override;

private:
    ResultModel* m_model;
    QStringList m_words;
};

} // namespace cutwater::editor
