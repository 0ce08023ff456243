// SPDX-License-Identifier: GPL-3.0-or-later
// CellDelegate: draws the cells, and gives each column the field that fits it.
#pragma once

#include "app/editor/worksheet/cell_editors.h"
#include "app/editor/worksheet/grid_model.h"

#include <QStyledItemDelegate>

namespace cutwater::editor {

enum class CellStep { none, left, right, up, down };

class CellDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    explicit CellDelegate(QObject* parent);

    // The next field opens for a key that replaces what is there.
    void beginByTyping(bool typing) { m_byTyping = typing; }

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;
    void paint(QPainter* painter, const QStyleOptionViewItem& option,
               const QModelIndex& index) const override;

signals:
    // A field was closed by a key: where to go on.
    void left(cutwater::editor::CellStep step);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    void initStyleOption(QStyleOptionViewItem* option, const QModelIndex& index) const override;

private:
    QWidget* fieldFor(const SheetColumn& column, const GridModel& grid, QWidget* parent) const;
    static void drawText(QPainter& painter, const QStyleOptionViewItem& option,
                         const QString& text);
    bool key(QWidget* editor, const QKeyEvent& event);
    void finish(QWidget* editor, CellStep step);

    bool m_byTyping = false;
    mutable bool m_taken = false;
};

// What the list of a cell offers.
CellChoiceField::Choices choicesFor(CellEditor editor, const SheetData& data);

} // namespace cutwater::editor
