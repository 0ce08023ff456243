// SPDX-License-Identifier: GPL-3.0-or-later
// GridView: keys, and the place that is found again when the rows change.
#include "app/editor/worksheet/grid_view.h"

#include "app/editor/worksheet/frozen_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QScrollBar>

#include <algorithm>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostRemembered = 5000; // chosen ranges; beyond only the current cell

} // namespace

void GridView::goTo(const QModelIndex& index) {
    if (!index.isValid()) return;
    m_anchor = index;
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::ClearAndSelect);
    scrollTo(index);
}

void GridView::extendTo(const QModelIndex& index) {
    if (!index.isValid()) return;
    const QModelIndex from = m_anchor.isValid() ? QModelIndex(m_anchor) : currentIndex();
    if (!from.isValid()) return goTo(index);
    const auto [top, bottom] = std::minmax({from.row(), index.row()});
    const auto [left, right] = std::minmax({from.column(), index.column()});
    selectionModel()->select(QItemSelection(m_grid.index(top, left), m_grid.index(bottom, right)),
                             QItemSelectionModel::ClearAndSelect);
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::NoUpdate);
    scrollTo(index);
}

void GridView::selectLines(const std::vector<int>& lines) {
    if (lines.empty()) return;
    QItemSelection chosen;
    const int last = m_grid.columnCount() - 1;
    for (const int line : lines)
        chosen.merge(QItemSelection(m_grid.index(line, 0), m_grid.index(line, last)),
                     QItemSelectionModel::Select);
    const int column = std::max(currentIndex().column(), 0);
    m_anchor = m_grid.index(lines.front(), 0);
    selectionModel()->setCurrentIndex(m_grid.index(lines.front(), column),
                                      QItemSelectionModel::NoUpdate);
    selectionModel()->select(chosen, QItemSelectionModel::ClearAndSelect);
    scrollTo(currentIndex());
}

// Out of a field, or by Enter and Tab: one cell on; from the end of a line to the next one.
void GridView::step(CellStep step) {
    QModelIndex now = currentIndex();
    if (!now.isValid()) return;
    int line = now.row(), section = now.column();
    switch (step) {
    case CellStep::none: break;
    case CellStep::left: --section; break;
    case CellStep::right: ++section; break;
    case CellStep::up: --line; break;
    case CellStep::down: ++line; break;
    }
    if (section < 0) section = m_grid.columnCount() - 1, --line;
    if (section >= m_grid.columnCount()) section = 0, ++line;
    // Over the head of a group.
    while (line >= 0 && line < m_grid.rowCount() && m_grid.isGroup(line))
        line += step == CellStep::up || step == CellStep::left ? -1 : 1;
    setFocus();
    if (line >= 0 && line < m_grid.rowCount()) goTo(m_grid.index(line, section));
}

// As far as the cells are filled, or to the next one that is.
QModelIndex GridView::blockEdge(QModelIndex from, int down, int right) const {
    const auto filled = [&](const QModelIndex& at) {
        return !m_grid.isGroup(at.row()) && !at.data(Qt::DisplayRole).toString().isEmpty();
    };
    const auto next = [&](const QModelIndex& at) {
        return m_grid.index(at.row() + down, at.column() + right);
    };
    QModelIndex at = from, ahead = next(at);
    if (!ahead.isValid()) return at;
    const bool inBlock = filled(at) && filled(ahead);
    do {
        at = ahead;
        ahead = next(at);
        if (inBlock ? ahead.isValid() && !filled(ahead) : filled(at)) break;
    } while (ahead.isValid());
    return at;
}

bool GridView::groupKey(const QKeyEvent& event) {
    const QModelIndex now = currentIndex();
    if (!now.isValid() || !m_grid.isGroup(now.row()) || event.modifiers() != Qt::NoModifier)
        return false;
    const bool folded = now.data(GridModel::foldedRole).toBool();
    switch (event.key()) {
    case Qt::Key_Left: m_grid.fold(now.row(), true); return true;
    case Qt::Key_Right: m_grid.fold(now.row(), false); return true;
    case Qt::Key_Space:
    case Qt::Key_Return:
    case Qt::Key_Enter: m_grid.fold(now.row(), !folded); return true;
    default: return false;
    }
}

bool GridView::moveKey(const QKeyEvent& event) {
    const QModelIndex now = currentIndex();
    const auto modifiers = event.modifiers() & ~Qt::KeypadModifier;
    const bool shift = modifiers & Qt::ShiftModifier, ctrl = modifiers & Qt::ControlModifier;
    if (modifiers & ~(Qt::ShiftModifier | Qt::ControlModifier)) return false;
    if (!now.isValid()) {
        if (m_grid.rowCount() == 0) return false;
        goTo(m_grid.index(0, 0));
        return true;
    }
    const int last = m_grid.rowCount() - 1, end = m_grid.columnCount() - 1;
    const int page = std::max(1, viewport()->height() / verticalHeader()->defaultSectionSize() - 1);
    const auto at = [&](int line, int section) {
        return m_grid.index(std::clamp(line, 0, last), std::clamp(section, 0, end));
    };
    QModelIndex to;
    switch (event.key()) {
    case Qt::Key_Left: to = ctrl ? blockEdge(now, 0, -1) : at(now.row(), now.column() - 1); break;
    case Qt::Key_Right: to = ctrl ? blockEdge(now, 0, 1) : at(now.row(), now.column() + 1); break;
    case Qt::Key_Up: to = ctrl ? blockEdge(now, -1, 0) : at(now.row() - 1, now.column()); break;
    case Qt::Key_Down: to = ctrl ? blockEdge(now, 1, 0) : at(now.row() + 1, now.column()); break;
    case Qt::Key_Home: to = at(ctrl ? 0 : now.row(), 0); break;
    case Qt::Key_End: to = at(ctrl ? last : now.row(), end); break;
    case Qt::Key_PageUp: to = at(now.row() - page, now.column()); break;
    case Qt::Key_PageDown: to = at(now.row() + page, now.column()); break;
    default: return false;
    }
    shift ? extendTo(to) : goTo(to);
    return true;
}

void GridView::keyPressEvent(QKeyEvent* event) {
    const auto modifiers = event->modifiers() & ~Qt::KeypadModifier;
    if (state() != EditingState && m_grid.rowCount() > 0) {
        if (groupKey(*event) || moveKey(*event)) return;
        const bool shift = modifiers == Qt::ShiftModifier;
        switch (event->key()) {
        case Qt::Key_Return:
        case Qt::Key_Enter:
            if (modifiers == Qt::NoModifier || shift)
                return step(shift ? CellStep::up : CellStep::down);
            break;
        case Qt::Key_Tab: return step(CellStep::right);
        case Qt::Key_Backtab: return step(CellStep::left);
        case Qt::Key_Delete:
            if (modifiers == Qt::NoModifier) {
                emit clearWished();
                return;
            }
            break;
        case Qt::Key_Backspace: // empties the cell and begins to type
            if (modifiers == Qt::NoModifier && currentIndex().isValid()) {
                QKeyEvent wipe(QEvent::KeyPress, Qt::Key_Backspace, Qt::NoModifier);
                edit(currentIndex(), AnyKeyPressed, &wipe);
                return;
            }
            break;
        case Qt::Key_Space:
            if (modifiers == Qt::ControlModifier && currentIndex().isValid()) {
                selectColumn(currentIndex().column());
                return;
            }
            if (shift && currentIndex().isValid()) {
                selectRow(currentIndex().row());
                return;
            }
            break;
        default: break;
        }
    }
    QTableView::keyPressEvent(event);
}

void GridView::remember() {
    m_memory = {};
    m_memory.vertical = verticalScrollBar()->value();
    m_memory.horizontal = horizontalScrollBar()->value();
    const QModelIndex now = currentIndex();
    if (now.isValid() && !m_grid.isGroup(now.row())) {
        m_memory.current =
            Place{m_grid.idAt(now.row()), sheetColumn(m_grid.columnAt(now.column()).id)};
        m_memory.offset = rowViewportPosition(now.row());
    }
    for (const QItemSelectionRange& range : selectionModel()->selection()) {
        for (int line = range.top(); line <= range.bottom(); ++line) {
            if (m_memory.chosen.size() >= kMostRemembered) break;
            if (!m_grid.isGroup(line))
                m_memory.chosen.push_back({m_grid.idAt(line), {range.left(), range.right()}});
        }
    }
}

void GridView::restore() {
    const Memory memory = std::move(m_memory);
    m_memory = {};
    m_anchor = QPersistentModelIndex();
    placeFrozen();
    horizontalScrollBar()->setValue(memory.horizontal);
    verticalScrollBar()->setValue(memory.vertical);
    if (!memory.current) return;
    std::unordered_map<std::string, int> lines; // one walk over the lines, not one for each row
    for (int line = 0; line < m_grid.rowCount(); ++line)
        if (!m_grid.isGroup(line)) lines.emplace(m_grid.idAt(line), line);
    const auto& shown = m_grid.shownColumns();
    const auto column = std::find(shown.begin(), shown.end(), memory.current->column);
    const int section = column == shown.end() ? 0 : static_cast<int>(column - shown.begin());
    const auto found = lines.find(memory.current->row);
    QItemSelection chosen;
    for (const auto& [id, sections] : memory.chosen) {
        const auto line = lines.find(id);
        if (line == lines.end() || sections.second >= m_grid.columnCount()) continue;
        const QItemSelectionRange range(m_grid.index(line->second, sections.first),
                                        m_grid.index(line->second, sections.second));
        if (!chosen.isEmpty() && chosen.last().bottom() + 1 == range.top() &&
            chosen.last().left() == range.left() && chosen.last().right() == range.right())
            chosen.last() = QItemSelectionRange(chosen.last().topLeft(), range.bottomRight());
        else
            chosen.append(range);
    }
    selectionModel()->select(chosen, QItemSelectionModel::ClearAndSelect);
    if (found == lines.end()) return;
    const QModelIndex index = m_grid.index(found->second, section);
    m_anchor = index;
    selectionModel()->setCurrentIndex(index, QItemSelectionModel::NoUpdate);
    if (chosen.isEmpty()) selectionModel()->select(index, QItemSelectionModel::Select);
    // Where it was in the window.
    const int now = rowViewportPosition(found->second);
    verticalScrollBar()->setValue(verticalScrollBar()->value() + now - memory.offset);
    scrollTo(index);
}

} // namespace cutwater::editor
