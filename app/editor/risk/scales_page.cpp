// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/risk/scales_page.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QShortcut>
#include <QTableView>
#include <QVBoxLayout>

namespace cutwater::editor {

ScalesPage::ScalesPage(Session& session, QWidget* parent)
    : QWidget(parent), m_levels(new LevelModel(session, this)), m_list(new QComboBox(this)),
      m_whose(new QLabel(this)), m_table(new QTableView(this)), m_wrong(new QLabel(this)),
      m_reset(new QPushButton(this)) {
    setObjectName("scalesPage");
    const std::pair<LevelList, QString> lists[] = {
        {LevelList::frequencies, tr("Risk matrix: frequencies")},
        {LevelList::severities, tr("Risk matrix: severities")},
        {LevelList::bands, tr("Risk matrix: what a risk index is called")},
        {LevelList::severity, tr("Rating: severity")},
        {LevelList::occurrence, tr("Rating: occurrence")},
        {LevelList::detection, tr("Rating: detection")}};
    for (const auto& [list, text] : lists)
        m_list->addItem(text, static_cast<int>(list));
    m_list->setObjectName("levelList");
    m_list->setAccessibleName(tr("Which scale"));
    m_whose->setObjectName("whose");
    m_whose->setWordWrap(true);
    m_table->setObjectName("levels");
    m_table->setAccessibleName(tr("Steps of the scale"));
    m_table->setModel(m_levels);
    m_table->setSelectionBehavior(QAbstractItemView::SelectRows);
    m_table->setEditTriggers(QAbstractItemView::DoubleClicked | QAbstractItemView::EditKeyPressed |
                             QAbstractItemView::AnyKeyPressed);
    m_table->setWordWrap(true);
    m_table->verticalHeader()->hide();
    m_table->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_table->setTabKeyNavigation(false);
    m_wrong->setObjectName("wrong");
    m_wrong->setWordWrap(true);
    auto* add = new QPushButton(tr("Add a step"), this);
    add->setObjectName("addStep");
    auto* remove = new QPushButton(tr("Remove the step"), this);
    remove->setObjectName("removeStep");
    m_reset->setObjectName("resetScale");
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(add);
    buttons->addWidget(remove);
    buttons->addStretch();
    buttons->addWidget(m_reset);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_list);
    layout->addWidget(m_whose);
    layout->addWidget(m_table, 1);
    layout->addWidget(m_wrong);
    layout->addLayout(buttons);

    connect(m_list, qOverload<int>(&QComboBox::currentIndexChanged), this, [this] {
        m_wrong->clear();
        m_levels->setList(static_cast<LevelList>(m_list->currentData().toInt()));
    });
    // Each change makes the rows anew; who types stays where he was.
    connect(m_levels, &QAbstractItemModel::modelAboutToBeReset, this, [this] {
        m_current = {m_table->currentIndex().row(), m_table->currentIndex().column()};
    });
    connect(m_levels, &QAbstractItemModel::modelReset, this,
            [this] { m_table->setCurrentIndex(m_levels->index(m_current.x(), m_current.y())); });
    connect(m_levels, &LevelModel::refused, m_wrong, &QLabel::setText);
    connect(m_levels, &LevelModel::ownChanged, this, &ScalesPage::showState);
    connect(add, &QPushButton::clicked, this, [this] {
        if (!m_levels->addStep()) return;
        const QModelIndex last = m_levels->index(m_levels->rowCount() - 1, 1);
        m_table->setCurrentIndex(last);
        m_table->edit(last);
    });
    const auto removeCurrent = [this] { m_levels->removeStep(m_table->currentIndex().row()); };
    connect(remove, &QPushButton::clicked, this, removeCurrent);
    auto* key = new QShortcut(QKeySequence::Delete, m_table);
    key->setContext(Qt::WidgetShortcut);
    connect(key, &QShortcut::activated, this, removeCurrent);
    connect(m_reset, &QPushButton::clicked, m_levels, &LevelModel::reset);
    showState();
}

void ScalesPage::showState() {
    const bool matrix = m_levels->list() == LevelList::frequencies ||
                        m_levels->list() == LevelList::severities ||
                        m_levels->list() == LevelList::bands;
    const bool own = m_levels->isOwn();
    m_reset->setEnabled(own);
    m_reset->setText(matrix ? tr("Back to the matrix of the IMO")
                            : tr("Back to the standard scale"));
    if (matrix)
        m_whose->setText(
            own ? tr("The matrix of this project. Where a word of a severity is changed, failure "
                     "modes and top events with it follow.")
                : tr("The matrix of the IMO's Formal Safety Assessment, MSC-MEPC.2/Circ.12/Rev.2, "
                     "appendix 4. Change anything, and the project has a matrix of its own."));
    else
        m_whose->setText(own ? tr("The scale of this project.")
                             : tr("The standard scale, which is ours and no part of a standard. "
                                  "Change anything, and the project has a scale of its own."));
    QHeaderView* header = m_table->horizontalHeader();
    for (int column = 0; column < m_levels->columnCount(); ++column)
        header->setSectionResizeMode(column, column == 2 ? QHeaderView::Stretch
                                                         : QHeaderView::ResizeToContents);
}

} // namespace cutwater::editor
