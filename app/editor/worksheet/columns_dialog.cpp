// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/columns_dialog.h"

#include "app/editor/worksheet/sheet_columns.h"

#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>

namespace cutwater::editor {

SheetColumnsDialog::SheetColumnsDialog(const ColumnChoice& choice, QWidget* parent)
    : QDialog(parent), m_choice(choice), m_list(new QListWidget(this)),
      m_frozen(new QSpinBox(this)), m_lines(new QSpinBox(this)) {
    setObjectName("worksheetColumns");
    setWindowTitle(tr("Columns of the worksheet"));
    auto* words = new QLabel(tr("Ticked columns are shown, in this order. Drag a line, or move it "
                                "with Alt+Up and Alt+Down."),
                             this);
    words->setWordWrap(true);
    m_list->setObjectName("columnList");
    m_list->setAccessibleName(tr("Columns"));
    m_list->setDragDropMode(QAbstractItemView::InternalMove);
    fill(choice.shown);
    auto* up = new QPushButton(tr("&Up"), this);
    auto* down = new QPushButton(tr("&Down"), this);
    auto* usual = new QPushButton(tr("As &usual"), this);
    up->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Up));
    down->setShortcut(QKeySequence(Qt::ALT | Qt::Key_Down));
    usual->setToolTip(tr("The columns and widths that the program comes with"));
    connect(up, &QPushButton::clicked, this, [this] { move(-1); });
    connect(down, &QPushButton::clicked, this, [this] { move(1); });
    connect(usual, &QPushButton::clicked, this, [this] {
        m_choice = usualChoice();
        fill(m_choice.shown);
        m_frozen->setValue(m_choice.frozen);
        m_lines->setValue(m_choice.lines);
    });
    m_frozen->setRange(0, 10);
    m_frozen->setValue(choice.frozen);
    m_lines->setRange(1, 10);
    m_lines->setValue(choice.lines);
    auto* form = new QFormLayout;
    form->addRow(tr("First columns that &stay in sight:"), m_frozen);
    form->addRow(tr("&Lines of text in a row:"), m_lines);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &QDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    auto* side = new QVBoxLayout;
    side->addWidget(up);
    side->addWidget(down);
    side->addWidget(usual);
    side->addStretch();
    auto* middle = new QHBoxLayout;
    middle->addWidget(m_list, 1);
    middle->addLayout(side);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(words);
    layout->addLayout(middle, 1);
    layout->addLayout(form);
    layout->addWidget(buttons);
    resize(460, 560);
}

void SheetColumnsDialog::fill(const std::vector<int>& shown) {
    m_list->clear();
    const auto add = [&](int place, bool ticked) {
        const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
        auto* item = new QListWidgetItem(
            column.isTyped() ? column.title : tr("%1 (cannot be typed)").arg(column.title), m_list);
        item->setToolTip(column.tip);
        item->setData(Qt::UserRole, place);
        item->setFlags((item->flags() | Qt::ItemIsUserCheckable) & ~Qt::ItemIsDropEnabled);
        item->setCheckState(ticked ? Qt::Checked : Qt::Unchecked);
    };
    for (const int place : shown)
        add(place, true);
    for (int place = 0; place < static_cast<int>(sheetColumns().size()); ++place)
        if (std::find(shown.begin(), shown.end(), place) == shown.end()) add(place, false);
    m_list->setCurrentRow(0);
}

void SheetColumnsDialog::move(int steps) {
    const int row = m_list->currentRow(), to = row + steps;
    if (row < 0 || to < 0 || to >= m_list->count()) return;
    QListWidgetItem* item = m_list->takeItem(row);
    m_list->insertItem(to, item);
    m_list->setCurrentRow(to);
}

ColumnChoice SheetColumnsDialog::choice() const {
    ColumnChoice choice = m_choice;
    choice.shown.clear();
    for (int row = 0; row < m_list->count(); ++row)
        if (m_list->item(row)->checkState() == Qt::Checked)
            choice.shown.push_back(m_list->item(row)->data(Qt::UserRole).toInt());
    // A table without columns could not be got back from.
    if (choice.shown.empty()) choice.shown = usualChoice().shown;
    choice.frozen = m_frozen->value();
    choice.lines = m_lines->value();
    choice.set.clear();
    for (const ColumnSet& set : columnSets())
        if (set.columns == choice.shown) choice.set = set.id;
    return choice;
}

} // namespace cutwater::editor
