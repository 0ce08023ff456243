// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/node_edit.h"

#include <QAbstractItemView>
#include <QAbstractProxyModel>
#include <QCompleter>
#include <QKeyEvent>

namespace cutwater::editor {

NodeEdit::NodeEdit(QWidget* parent) : QLineEdit(parent) {
    setFrame(false);
    setAccessibleName(tr("What fails"));
}

void NodeEdit::offer(ReuseList* list) {
    list->setParent(this);
    m_list = list;
    m_completer = new QCompleter(list, this);
    m_completer->setCaseSensitivity(Qt::CaseInsensitive);
    m_completer->setFilterMode(Qt::MatchContains);
    m_completer->setCompletionRole(Qt::UserRole);
    m_completer->setMaxVisibleItems(8);
    m_completer->popup()->setObjectName("reuseList");
    m_completer->popup()->setTextElideMode(Qt::ElideMiddle);
    // Not setCompleter(): that puts the words into the line while the list is walked through.
    m_completer->setWidget(this);
    connect(this, &QLineEdit::textEdited, this, [this](const QString& text) {
        m_choice = {};
        m_completer->setCompletionPrefix(text.trimmed());
        const bool useful = text.trimmed().size() >= 2 && m_completer->completionCount() > 0;
        if (!useful) return m_completer->popup()->hide();
        m_completer->popup()->setMinimumWidth(qMin(620, qMax(width(), 420)));
        m_completer->complete();
        m_completer->popup()->setCurrentIndex({}); // a choice is made, never suffered
    });
    connect(m_completer, qOverload<const QModelIndex&>(&QCompleter::activated), this,
            [this](const QModelIndex& completion) {
                choose(completion);
                emit accepted(Next::nowhere);
            });
}

void NodeEdit::choose(const QModelIndex& completion) {
    const auto* proxy = qobject_cast<const QAbstractProxyModel*>(completion.model());
    const QModelIndex source = proxy ? proxy->mapToSource(completion) : completion;
    if (source.isValid()) m_choice = m_list->at(source.row());
}

void NodeEdit::accept(Next next) {
    if (m_completer && m_completer->popup()->isVisible()) {
        const QModelIndex current = m_completer->popup()->currentIndex();
        if (current.isValid()) choose(current);
        m_completer->popup()->hide();
    }
    emit accepted(next);
}

bool NodeEdit::event(QEvent* event) {
    if (event->type() != QEvent::KeyPress) return QLineEdit::event(event);
    auto* key = static_cast<QKeyEvent*>(event);
    const bool plain = !(key->modifiers() & ~(Qt::ShiftModifier | Qt::KeypadModifier));
    switch (plain ? key->key() : 0) {
    case Qt::Key_Return:
    case Qt::Key_Enter: accept(Next::beside); return true;
    case Qt::Key_Tab: accept(Next::below); return true;
    case Qt::Key_Backtab: accept(Next::above); return true;
    case Qt::Key_Escape:
        if (m_completer && m_completer->popup()->isVisible())
            m_completer->popup()->hide();
        else
            emit cancelled();
        return true;
    default: return QLineEdit::event(event);
    }
}

} // namespace cutwater::editor
