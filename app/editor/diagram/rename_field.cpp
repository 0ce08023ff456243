// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/rename_field.h"

#include <QKeyEvent>

#include <algorithm>

namespace cutwater::editor {

RenameField::RenameField(QWidget* viewport) : QLineEdit(viewport) {
    setObjectName(QStringLiteral("renameField"));
    setAccessibleName(tr("Name of the event or gate"));
    hide();
}

void RenameField::start(const project::Id& node, const QString& name, const QRect& place) {
    finish(true);
    m_node = node;
    m_before = name;
    m_open = true;
    setText(name);
    const QSize room = parentWidget()->size();
    const int wide = std::clamp(std::max(place.width(), fontMetrics().horizontalAdvance(name) + 24),
                                160, std::max(160, room.width() - 8));
    QRect frame(place.left(), place.top(), wide, sizeHint().height());
    frame.moveLeft(
        std::clamp(place.center().x() - wide / 2, 4, std::max(4, room.width() - wide - 4)));
    frame.moveTop(std::clamp(place.top(), 4, std::max(4, room.height() - frame.height() - 4)));
    setGeometry(frame);
    show();
    raise();
    selectAll();
    setFocus(Qt::OtherFocusReason);
}

void RenameField::cancel() {
    finish(false);
}

void RenameField::finish(bool take) {
    if (!m_open) return;
    m_open = false;
    const bool focused = hasFocus();
    hide();
    if (focused) parentWidget()->parentWidget()->setFocus(Qt::OtherFocusReason);
    const QString name = text().simplified();
    if (take && name != m_before.simplified()) emit renamed(m_node, name);
    emit ended();
}

void RenameField::keyPressEvent(QKeyEvent* event) {
    switch (event->key()) {
    case Qt::Key_Return:
    case Qt::Key_Enter: finish(true); return;
    case Qt::Key_Escape: finish(false); return;
    default: QLineEdit::keyPressEvent(event);
    }
    event->accept(); // the view must not take it for its own
}

void RenameField::focusOutEvent(QFocusEvent* event) {
    QLineEdit::focusOutEvent(event);
    if (event->reason() != Qt::PopupFocusReason && event->reason() != Qt::ActiveWindowFocusReason)
        finish(true);
}

} // namespace cutwater::editor
