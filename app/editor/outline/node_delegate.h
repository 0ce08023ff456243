// SPDX-License-Identifier: GPL-3.0-or-later
// Puts a NodeEdit over the row that is typed in, and tells the view what came out of it.
#pragma once

#include "app/editor/outline/node_edit.h"

#include <QPersistentModelIndex>
#include <QStyledItemDelegate>

namespace cutwater::editor {

class NodeDelegate : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override;
    void setEditorData(QWidget* editor, const QModelIndex& index) const override;
    void setModelData(QWidget* editor, QAbstractItemModel* model,
                      const QModelIndex& index) const override;
    QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

signals:
    // The editor is closed already.
    void typed(const QModelIndex& index, const QString& text, const cutwater::editor::Reuse& reuse,
               cutwater::editor::Next next) const;
    void givenUp(const QModelIndex& index) const;

protected:
    bool eventFilter(QObject* object, QEvent* event) override;
};

} // namespace cutwater::editor
