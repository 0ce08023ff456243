// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/sheet_find_bar.h"

#include <QCheckBox>
#include <QComboBox>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

namespace cutwater::editor {

SheetFindBar::SheetFindBar(QWidget* parent)
    : QFrame(parent), m_find(new QLineEdit(this)), m_replace(new QLineEdit(this)),
      m_scope(new QComboBox(this)), m_whole(new QCheckBox(tr("&Whole cell"), this)),
      m_case(new QCheckBox(tr("C&apitals count"), this)), m_count(new QLabel(this)),
      m_replaceAll(new QPushButton(tr("Replace a&ll"), this)) {
    setObjectName("worksheetFind");
    setFrameShape(QFrame::StyledPanel);
    m_find->setObjectName("find");
    m_replace->setObjectName("replace");
    m_scope->setObjectName("scope");
    m_whole->setObjectName("whole");
    m_case->setObjectName("case");
    m_count->setObjectName("count");
    m_replaceAll->setObjectName("replaceAll");
    m_find->setClearButtonEnabled(true);
    m_scope->addItems({tr("all rows that are seen"), tr("this column"), tr("the chosen cells")});
    m_scope->setAccessibleName(tr("Where to look"));
    auto* find = new QLabel(tr("&Find:"), this);
    find->setBuddy(m_find);
    auto* replace = new QLabel(tr("&Replace by:"), this);
    replace->setBuddy(m_replace);
    auto* in = new QLabel(tr("&in:"), this);
    in->setBuddy(m_scope);
    auto* previous = new QPushButton(tr("&Previous"), this);
    auto* next = new QPushButton(tr("&Next"), this);
    auto* close = new QPushButton(tr("&Close"), this);
    connect(previous, &QPushButton::clicked, this, [this] { emit nextWished(-1); });
    connect(next, &QPushButton::clicked, this, [this] { emit nextWished(1); });
    connect(close, &QPushButton::clicked, this, [this] {
        hide();
        emit closed();
    });
    connect(m_replaceAll, &QPushButton::clicked, this, &SheetFindBar::replaceAllWished);
    for (QLineEdit* field : {m_find, m_replace})
        connect(field, &QLineEdit::textChanged, this, &SheetFindBar::changed);
    for (QCheckBox* box : {m_whole, m_case})
        connect(box, &QCheckBox::toggled, this, &SheetFindBar::changed);
    connect(m_scope, &QComboBox::currentIndexChanged, this, &SheetFindBar::changed);
    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(6, 4, 6, 4);
    int column = 0;
    for (QWidget* widget : {static_cast<QWidget*>(find), static_cast<QWidget*>(m_find),
                            static_cast<QWidget*>(in), static_cast<QWidget*>(m_scope),
                            static_cast<QWidget*>(previous), static_cast<QWidget*>(next)})
        layout->addWidget(widget, 0, column++);
    layout->addWidget(replace, 1, 0);
    layout->addWidget(m_replace, 1, 1);
    layout->addWidget(m_whole, 1, 2);
    layout->addWidget(m_case, 1, 3);
    layout->addWidget(m_replaceAll, 1, 4);
    layout->addWidget(close, 1, 5);
    layout->addWidget(m_count, 0, 6, 2, 1);
    layout->setColumnStretch(1, 2);
    layout->setColumnStretch(6, 1);
    m_count->setWordWrap(true);
    m_count->setMinimumWidth(160);
    hide();
}

CellSearch SheetFindBar::search() const {
    return {m_find->text(), m_whole->isChecked(), m_case->isChecked()};
}

SearchScope SheetFindBar::scope() const {
    return static_cast<SearchScope>(m_scope->currentIndex());
}

QString SheetFindBar::replacement() const {
    return m_replace->text();
}

void SheetFindBar::begin(const QString& text, bool inSelection) {
    if (inSelection)
        m_scope->setCurrentIndex(static_cast<int>(SearchScope::selection));
    else if (scope() == SearchScope::selection)
        m_scope->setCurrentIndex(static_cast<int>(SearchScope::all));
    if (!text.isEmpty()) m_find->setText(text);
    show();
    m_find->setFocus();
    m_find->selectAll();
    emit changed();
}

void SheetFindBar::tellCount(int cells, int places, int changes) {
    if (m_find->text().isEmpty() && !m_whole->isChecked())
        m_count->setText(tr("Type what to look for."));
    else if (cells == 0)
        m_count->setText(tr("Found nowhere."));
    else
        m_count->setText(tr("Cells found: %1. Places: %2. Cells that a replacement changes: %3.")
                             .arg(cells)
                             .arg(places)
                             .arg(changes));
    m_replaceAll->setEnabled(changes > 0);
}

void SheetFindBar::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape) {
        hide();
        emit closed();
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        emit nextWished(event->modifiers() & Qt::ShiftModifier ? -1 : 1);
        return;
    }
    QFrame::keyPressEvent(event);
}

} // namespace cutwater::editor
