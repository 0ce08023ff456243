// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/node_delegate.h"

#include "app/editor/outline/outline_model.h"

#include <QAbstractItemView>
#include <QCompleter>
#include <QFocusEvent>

namespace cutwater::editor {

QWidget* NodeDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem&,
                                    const QModelIndex& index) const {
    const auto* model = qobject_cast<const OutlineModel*>(index.model());
    auto* edit = new NodeEdit(parent);
    if (model && model->isDraft(index)) {
        const project::Id above = model->draftPlace().parent;
        if (above.empty())
            edit->setPlaceholderText(tr("the top event: what must not happen?"));
        else
            edit->setPlaceholderText(tr("what fails? (Enter: next, Tab: below, Esc: done)"));
        edit->offer(new ReuseList(model->project(), above, edit));
    }
    auto* self = const_cast<NodeDelegate*>(this);
    const QPersistentModelIndex where(index);
    connect(edit, &NodeEdit::accepted, this, [self, edit, where](Next next) {
        const QString text = edit->text().trimmed();
        const Reuse reuse = edit->choice();
        emit self->closeEditor(edit, NoHint);
        emit self->typed(where, text, reuse, next);
    });
    connect(edit, &NodeEdit::cancelled, this, [self, edit, where] {
        emit self->closeEditor(edit, NoHint);
        emit self->givenUp(where);
    });
    return edit;
}

void NodeDelegate::setEditorData(QWidget* editor, const QModelIndex& index) const {
    auto* edit = qobject_cast<NodeEdit*>(editor);
    // What is being typed stays when the project changes meanwhile.
    if (edit && !edit->isModified()) {
        edit->setText(index.data(Qt::EditRole).toString());
        edit->selectAll();
    }
}

void NodeDelegate::setModelData(QWidget* editor, QAbstractItemModel*,
                                const QModelIndex& index) const {
    if (const auto* edit = qobject_cast<NodeEdit*>(editor))
        emit typed(index, edit->text().trimmed(), edit->choice(), Next::nowhere);
}

bool NodeDelegate::eventFilter(QObject* object, QEvent* event) {
    auto* edit = qobject_cast<NodeEdit*>(object);
    if (!edit) return QStyledItemDelegate::eventFilter(object, event);
    // The edit handles its own keys. Another window, or its own list, takes the focus for a while;
    // anything else ends the typing, and what was typed counts.
    if (event->type() == QEvent::FocusOut) {
        const auto reason = static_cast<QFocusEvent*>(event)->reason();
        const bool list = edit->offered() && edit->offered()->popup()->isVisible();
        if (reason != Qt::ActiveWindowFocusReason && reason != Qt::PopupFocusReason && !list)
            emit edit->accepted(Next::nowhere);
    }
    return false;
}

QSize NodeDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QSize size = QStyledItemDelegate::sizeHint(option, index);
    size.setHeight(qMax(size.height(), option.fontMetrics.height() + 8)); // room for the edit
    return size;
}

} // namespace cutwater::editor
