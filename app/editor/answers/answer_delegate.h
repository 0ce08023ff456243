// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

class QAbstractItemView;

namespace cutwater::editor {

// Draws a line of the live answer: its symbol, its words over as many rows as they need, what comes
// after a line end in a quieter tone.
class AnswerDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    explicit AnswerDelegate(QAbstractItemView* view);

    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const QAbstractItemView* m_view; // its width is ours
};

} // namespace cutwater::editor
