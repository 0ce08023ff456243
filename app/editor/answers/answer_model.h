// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/editor/answers/answer_lines.h"

#include <QAbstractListModel>

namespace cutwater::editor {

// The lines of the live answer for a view. Headings cannot be selected.
class AnswerModel : public QAbstractListModel {
    Q_OBJECT

public:
    enum Role { KindRole = Qt::UserRole, ReasonRole, NodesRole };
    using QAbstractListModel::QAbstractListModel;

    // Keeps the rows that stay the same, so that a view keeps its place while somebody types.
    void show(std::vector<AnswerLine> lines);
    // The row of a line that says the same or the like of the same nodes; -1 where there is none.
    int find(const AnswerLine& line) const;
    const AnswerLine& line(int row) const { return m_lines[static_cast<std::size_t>(row)]; }

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    std::vector<AnswerLine> m_lines;
};

} // namespace cutwater::editor
