// SPDX-License-Identifier: GPL-3.0-or-later
// WorksheetPage: following the session and the selection.
#include "app/editor/worksheet/cautions_dialog.h"
#include "app/editor/worksheet/worksheet_page.h"
#include "models/project/edits/facts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScopedValueRollback>
#include <QSignalBlocker>

#include <algorithm>
#include <set>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostTold = 200; // rows: nobody marks more than that in a tree by hand

} // namespace

void WorksheetPage::follow() {
    // What nobody sees costs nobody time.
    if (!isVisible()) {
        m_behind = true;
        return;
    }
    m_behind = false;
    const QScopedValueRollback telling(m_telling, true);
    m_grid->setData(std::make_shared<const SheetData>(m_session.project()));
    wishFigures();
    showState();
    showCell();
    if (m_find->isVisible()) countFound();
}

void WorksheetPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (!m_behind) return;
    follow();
    followSelection();
}

void WorksheetPage::wishFigures() {
    const bool shown = std::any_of(m_choice.shown.begin(), m_choice.shown.end(), [](int place) {
        return sheetColumns()[static_cast<std::size_t>(place)].id.starts_with("effect-");
    });
    if (shown && isVisible()) m_effects->work(m_grid->sheet().snapshot);
}

// The rows of the events that are selected elsewhere.
void WorksheetPage::followSelection() {
    if (m_telling || !isVisible()) return;
    const SheetData& sheet = m_grid->sheet();
    std::vector<int> lines;
    bool hidden = false;
    for (const Spot& spot : m_selection.spots()) {
        const project::Event* event = sheet.index.event(spot.node);
        if (!event || event->mode.empty()) continue;
        const int line = m_grid->lineOf(event->mode);
        if (line >= 0)
            lines.push_back(line);
        else
            hidden = hidden || sheet.rowOf(event->mode) >= 0;
    }
    const QScopedValueRollback telling(m_telling, true);
    if (!lines.empty())
        m_view->selectLines(lines);
    else if (hidden)
        emit said(tr("The row of the selected event is put away by the filter, or by a fold."));
}

void WorksheetPage::tellSelection() {
    if (!isVisible()) return;
    std::vector<project::Id> rows = chosenRows();
    if (rows.empty() || rows.size() > kMostTold) return;
    const std::set<project::Id> chosen(rows.begin(), rows.end());
    std::vector<project::Id> events;
    for (const project::Event& event : m_grid->sheet().snapshot->events)
        if (chosen.contains(event.mode)) events.push_back(event.id);
    const QScopedValueRollback telling(m_telling, true);
    m_selection.select(events);
}

void WorksheetPage::editMode() {
    const std::string mode = m_mode->text().trimmed().toStdString();
    if (mode == m_session.project()->operatingMode) return;
    apply([mode](const project::Project& project) {
        // Without the vectors: they are not looked at.
        project::Project facts;
        facts.name = project.name;
        facts.plant = project.plant;
        facts.description = project.description;
        facts.revision = project.revision;
        facts.date = project.date;
        facts.preparedBy = project.preparedBy;
        facts.checkedBy = project.checkedBy;
        facts.rules = project.rules;
        facts.assumptions = project.assumptions;
        facts.cautions = project.cautions;
        facts.operatingMode = mode;
        return project::edits::setProjectFacts(project, facts);
    });
}

void WorksheetPage::showState() {
    const SheetData& sheet = m_grid->sheet();
    const Arrangement& arrangement = m_grid->arrangement();
    const int all = static_cast<int>(sheet.rows()), seen = static_cast<int>(m_grid->rowsPassing());
    QString words = seen == all ? tr("Rows: %1").arg(all) : tr("Rows: %1 of %2").arg(seen).arg(all);
    if (m_grid->mayBeOutOfOrder() && all > 0)
        words += QLatin1Char(' ') + tr("(changed since they were sorted: Ctrl+Shift+L)");
    if (m_effects->isWorking()) words += QLatin1Char(' ') + tr("(working out end effects ...)");
    m_count->setText(words);
    action("sheet.again")->setEnabled(m_grid->mayBeOutOfOrder());
    action("sheet.every-row")->setEnabled(arrangement.hasFilter());
    action("sheet.file-order")->setEnabled(!arrangement.keys.empty());
    for (const char* name : {"sheet.fold-all", "sheet.unfold-all"})
        action(name)->setEnabled(m_grid->isGrouped());
    m_empty->setVisible(m_grid->rowCount() == 0);
    m_view->setVisible(m_grid->rowCount() > 0);
    m_empty->setText(
        all == 0 ? tr("The worksheet is empty. A row is a way in which a component of the plant "
                      "fails.\nInsert makes one; the menu Worksheet imports a table.")
                 : tr("No row passes the filter.\nCtrl+Shift+E shows every row."));
    const QSignalBlocker mode(m_mode), filter(m_filter);
    const QString operating = QString::fromStdString(sheet.snapshot->operatingMode);
    if (!m_mode->hasFocus() && m_mode->text() != operating) {
        m_mode->setText(operating);
        m_mode->setCursorPosition(0);
        m_mode->setToolTip(operating);
    }
    if (!m_filter->hasFocus() && m_filter->text() != arrangement.words)
        m_filter->setText(arrangement.words);
    m_dormant->setChecked(arrangement.dormantOnly);
    m_groups->setCurrentIndex(static_cast<int>(arrangement.group));
    const int more =
        static_cast<int>(standingCautions().size() + sheet.snapshot->cautions.size()) - 1;
    m_caution->setText(
        tr("! %1 There are %2 more cautions.").arg(standingCautions().front()).arg(more));
}

void WorksheetPage::showCell() {
    const QModelIndex now = m_view->currentIndex();
    if (!now.isValid() || m_grid->isGroup(now.row())) {
        m_cellTitle->clear();
        m_cell->clear();
        m_cell->setPlaceholderText(tr("Choose a cell: its whole text stands here."));
        return;
    }
    const SheetColumn& column = m_grid->columnAt(now.column());
    m_cellTitle->setText(column.isTyped() ? column.title
                                          : tr("%1 (cannot be typed here)").arg(column.title));
    m_cellTitle->setToolTip(column.tip);
    const QString text = now.data(Qt::EditRole).toString();
    if (m_cell->toPlainText() != text) m_cell->setPlainText(text);
    m_cell->setPlaceholderText(column.tip);
}

void WorksheetPage::showRow(const project::Id& mode, std::string_view column) {
    const int line = m_grid->lineOf(mode);
    if (line < 0) return;
    const auto& shown = m_grid->shownColumns();
    const auto found = std::find(shown.begin(), shown.end(), sheetColumn(column));
    const int section = found == shown.end() ? std::max(m_view->currentIndex().column(), 0)
                                             : static_cast<int>(found - shown.begin());
    m_view->goTo(m_grid->index(line, section));
    m_view->setFocus();
}

} // namespace cutwater::editor
