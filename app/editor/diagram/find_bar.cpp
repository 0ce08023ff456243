// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/find_bar.h"

#include <QHBoxLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QToolButton>

namespace cutwater::editor {

FindBar::FindBar(QWidget* parent)
    : QWidget(parent), m_field(new QLineEdit), m_count(new QLabel), m_previous(new QToolButton),
      m_next(new QToolButton) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(4);
    m_field->setObjectName(QStringLiteral("findField"));
    m_field->setPlaceholderText(tr("Find: id, name or tag"));
    m_field->setAccessibleName(tr("Find in the tree"));
    m_field->setClearButtonEnabled(true);
    m_field->setMinimumWidth(150);
    m_field->setMaximumWidth(260);
    m_field->installEventFilter(this);
    m_count->setObjectName(QStringLiteral("findCount"));
    m_count->setMinimumWidth(
        m_count->fontMetrics().horizontalAdvance(tr("%1 of %2").arg(888).arg(888)));
    m_previous->setArrowType(Qt::UpArrow);
    m_previous->setToolTip(tr("Previous hit (Shift+F3)"));
    m_previous->setAccessibleName(tr("Previous hit"));
    m_next->setArrowType(Qt::DownArrow);
    m_next->setToolTip(tr("Next hit (F3)"));
    m_next->setAccessibleName(tr("Next hit"));
    for (QToolButton* button : {m_previous, m_next}) {
        button->setAutoRaise(true);
        button->setEnabled(false);
    }
    row->addWidget(m_field, 1);
    row->addWidget(m_count);
    row->addWidget(m_previous);
    row->addWidget(m_next);
    connect(m_field, &QLineEdit::textChanged, this, &FindBar::textChanged);
    connect(m_previous, &QToolButton::clicked, this, &FindBar::previousAsked);
    connect(m_next, &QToolButton::clicked, this, &FindBar::nextAsked);
}

void FindBar::begin() {
    m_field->setFocus(Qt::ShortcutFocusReason);
    m_field->selectAll();
}

QString FindBar::text() const {
    return m_field->text();
}

void FindBar::showHits(int at, int hits) {
    if (text().simplified().isEmpty())
        m_count->clear();
    else if (hits == 0)
        m_count->setText(tr("none"));
    else if (at < 0)
        m_count->setText(hits == 1 ? tr("1 hit") : tr("%1 hits").arg(hits));
    else
        m_count->setText(tr("%1 of %2").arg(at + 1).arg(hits));
    m_previous->setEnabled(hits > 0);
    m_next->setEnabled(hits > 0);
}

bool FindBar::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress) {
        auto* key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
            if (key->modifiers().testFlag(Qt::ShiftModifier))
                emit previousAsked();
            else
                emit nextAsked();
            return true;
        }
        if (key->key() == Qt::Key_Escape) {
            emit left();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace cutwater::editor
