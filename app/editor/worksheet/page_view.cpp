// SPDX-License-Identifier: GPL-3.0-or-later
// WorksheetPage: what is seen: sorting, filtering, columns, finding.
#include "app/editor/worksheet/columns_dialog.h"
#include "app/editor/worksheet/filter_dialog.h"
#include "app/editor/worksheet/worksheet_page.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QSignalBlocker>

#include <algorithm>

namespace cutwater::editor {

namespace {

constexpr const char* kReplace = QT_TRANSLATE_NOOP("Edits", "Replace in %1");
constexpr int kPadding = 14; // of a column, pixels

} // namespace

void WorksheetPage::arrange(const Arrangement& arrangement) {
    m_narrow.stop();
    m_grid->arrange(arrangement);
    if (m_find->isVisible()) countFound();
}

// A click: the smallest first, then the largest, then the order of the project.
void WorksheetPage::sortBy(int section, bool more) {
    const int place = m_grid->shownColumns()[static_cast<std::size_t>(section)];
    Arrangement wanted = m_grid->arrangement();
    const auto key = std::find_if(wanted.keys.begin(), wanted.keys.end(),
                                  [&](const SortKey& each) { return each.column == place; });
    if (key == wanted.keys.end()) return setSort(section, false, more);
    if (!key->descending) {
        key->descending = true;
        if (!more) wanted.keys = {*key};
    } else if (more) {
        wanted.keys.erase(key);
    } else {
        wanted.keys.clear();
    }
    arrange(wanted);
}

void WorksheetPage::setSort(int section, bool descending, bool more) {
    if (section < 0) return;
    const int place = m_grid->shownColumns()[static_cast<std::size_t>(section)];
    Arrangement wanted = m_grid->arrangement();
    if (!more) wanted.keys.clear();
    std::erase_if(wanted.keys, [&](const SortKey& each) { return each.column == place; });
    wanted.keys.push_back({place, descending});
    arrange(wanted);
}

void WorksheetPage::filterColumn(int section) {
    if (section < 0) return;
    const int place = m_grid->shownColumns()[static_cast<std::size_t>(section)];
    Arrangement wanted = m_grid->arrangement();
    const auto now = wanted.filters.find(place);
    SheetFilterDialog dialog(m_grid->sheet(), m_grid->figures(), place,
                             now == wanted.filters.end() ? ColumnFilter() : now->second, this);
    if (!questions.run(dialog)) return;
    const ColumnFilter filter = dialog.filter();
    wanted.filters.erase(place);
    if (!filter.empty()) wanted.filters[place] = filter;
    arrange(wanted);
}

void WorksheetPage::chooseColumns() {
    SheetColumnsDialog dialog(m_choice, this);
    if (questions.run(dialog)) setColumns(dialog.choice());
    takeColumns(); // the list of sets shows again what is
}

void WorksheetPage::setColumns(const ColumnChoice& choice) {
    m_choice = choice;
    m_choice.frozen = std::min(m_choice.frozen, static_cast<int>(m_choice.shown.size()));
    saveColumns();
    takeColumns();
    // Dormant failures stand apart: their columns bring their rows.
    const ColumnSet* set = columnSet(m_choice.set);
    const bool dormant = set && set->dormantOnly;
    if (dormant == m_dormantBySet) return;
    m_dormantBySet = dormant;
    Arrangement wanted = m_grid->arrangement();
    wanted.dormantOnly = dormant;
    arrange(wanted);
}

void WorksheetPage::takeColumns() {
    m_grid->showColumns(m_choice.shown);
    const int letter = m_view->fontMetrics().averageCharWidth();
    {
        const QSignalBlocker quiet(m_view->horizontalHeader());
        for (int section = 0; section < m_grid->columnCount(); ++section) {
            const int place = m_choice.shown[static_cast<std::size_t>(section)];
            const auto own = m_choice.widths.find(place);
            const SheetColumn& column = sheetColumns()[static_cast<std::size_t>(place)];
            m_view->setColumnWidth(section, own != m_choice.widths.end()
                                                ? own->second
                                                : column.width * letter + kPadding);
        }
    }
    m_view->setLines(m_choice.lines);
    m_view->setFrozen(m_choice.frozen);
    const auto shown = [&](std::string_view id) {
        return std::find(m_choice.shown.begin(), m_choice.shown.end(), sheetColumn(id)) !=
               m_choice.shown.end();
    };
    m_rpn->setVisible(shown("rpn") || shown("rpn-after"));
    m_sets->setCurrentIndex(std::max(m_sets->findData(m_choice.set), 0));
    wishFigures();
    showCell();
}

void WorksheetPage::moveColumn(int from, int to) {
    ColumnChoice choice = m_choice;
    const int place = choice.shown[static_cast<std::size_t>(from)];
    choice.shown.erase(choice.shown.begin() + from);
    choice.shown.insert(choice.shown.begin() + to, place);
    choice.set.clear();
    setColumns(choice);
}

void WorksheetPage::saveColumns() {
    saveChoice(m_settings, m_choice);
}

void WorksheetPage::beginFind() {
    const QModelIndexList cells = m_view->chosenCells();
    const QString text =
        cells.size() == 1 ? cells.front().data(Qt::EditRole).toString() : QString();
    m_find->begin(text.contains(u'\n') || text.size() > 80 ? QString() : text, cells.size() > 1);
}

QModelIndexList WorksheetPage::searched() const {
    const CellSearch search = m_find->search();
    switch (m_find->scope()) {
    case SearchScope::all: return foundCells(*m_grid, search);
    case SearchScope::selection: return foundCells(*m_grid, search, m_view->chosenCells());
    case SearchScope::column: break;
    }
    QModelIndexList column;
    const int section = std::max(m_view->currentIndex().column(), 0);
    for (int line = 0; line < m_grid->rowCount(); ++line)
        column.push_back(m_grid->index(line, section));
    return foundCells(*m_grid, search, column);
}

void WorksheetPage::countFound() {
    const CellSearch search = m_find->search();
    int cells = 0, places = 0, changes = 0;
    for (const QModelIndex& cell : searched()) {
        const QString text = cell.data(Qt::EditRole).toString();
        ++cells;
        places += placesIn(text, search);
        changes += cell.data(GridModel::typedRole).toBool() &&
                   replaced(text, search, m_find->replacement()) != text;
    }
    m_find->tellCount(cells, places, changes);
}

void WorksheetPage::goToNext(int direction) {
    // In a choice of cells going on would lose the choice: the whole sheet is walked then.
    const CellSearch search = m_find->search();
    const QModelIndexList cells =
        m_find->scope() == SearchScope::selection ? foundCells(*m_grid, search) : searched();
    if (cells.isEmpty()) {
        emit said(search.text.isEmpty() ? tr("Type what to look for.")
                                        : tr("\"%1\" is found nowhere.").arg(search.text));
        return;
    }
    const QModelIndex now = m_view->currentIndex();
    const auto before = [](const QModelIndex& a, const QModelIndex& b) {
        return a.row() != b.row() ? a.row() < b.row() : a.column() < b.column();
    };
    QModelIndex to;
    if (direction > 0) {
        const auto next = std::upper_bound(cells.begin(), cells.end(), now, before);
        to = next == cells.end() ? cells.front() : *next;
    } else {
        const auto next = std::lower_bound(cells.begin(), cells.end(), now, before);
        to = next == cells.begin() ? cells.back() : *(next - 1);
    }
    m_view->goTo(to);
}

void WorksheetPage::replaceAll() {
    const CellSearch search = m_find->search();
    CellPlan plan;
    for (const QModelIndex& cell : searched()) {
        if (!cell.data(GridModel::typedRole).toBool()) continue;
        const QString text = cell.data(Qt::EditRole).toString();
        const QString made = replaced(text, search, m_find->replacement());
        if (made != text)
            plan.cells.push_back(
                {m_grid->idAt(cell.row()), m_grid->columnAt(cell.column()).id, made.toStdString()});
    }
    if (plan.cells.empty()) {
        emit said(tr("There is nothing to replace."));
        return;
    }
    report(run(std::move(plan), kReplace));
    countFound();
}

} // namespace cutwater::editor
