// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/grid_view.h"

#include "app/editor/worksheet/frozen_view.h"

#include <QGuiApplication>
#include <QHeaderView>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollBar>
#include <QSignalBlocker>

#include <algorithm>
#include <set>

namespace cutwater::editor {

namespace {

constexpr double kMostFrozen = 0.6; // of the width: the rest has to be seen, too
constexpr int kCellMargin = 6;      // above and below the text of a row, together

} // namespace

GridView::GridView(GridModel& grid, QWidget* parent)
    : QTableView(parent), m_grid(grid), m_frozenView(new FrozenView(*this)) {
    setObjectName("worksheetGrid");
    setAccessibleName(tr("Worksheet"));
    setAlternatingRowColors(false);
    setWordWrap(true);
    setHorizontalScrollMode(ScrollPerPixel);
    setVerticalScrollMode(ScrollPerPixel);
    setSelectionMode(ExtendedSelection);
    setSelectionBehavior(SelectItems);
    setEditTriggers(DoubleClicked | EditKeyPressed | AnyKeyPressed);
    setTabKeyNavigation(true);
    setCornerButtonEnabled(true);
    setModel(&m_grid);
    m_frozenView->setModel(&m_grid);
    delete m_frozenView->selectionModel();
    m_frozenView->setSelectionModel(selectionModel());
    m_frozenView->setEditTriggers(editTriggers());
    m_frozenView->setSelectionMode(selectionMode());
    m_frozenView->setWordWrap(true);
    for (QTableView* view :
         {static_cast<QTableView*>(this), static_cast<QTableView*>(m_frozenView)}) {
        auto* delegate = new CellDelegate(view);
        view->setShowGrid(false); // the delegate draws it, as dark as it has to be
        view->setItemDelegate(delegate);
        connect(delegate, &CellDelegate::left, this, &GridView::step);
        prepareHeading(*view);
    }
    verticalHeader()->setDefaultAlignment(Qt::AlignRight | Qt::AlignTop);
    verticalHeader()->setMinimumSectionSize(fontMetrics().height() + 2);
    m_frozenView->verticalHeader()->setMinimumSectionSize(verticalHeader()->minimumSectionSize());
    setLines(2);
    const auto together = [](QScrollBar* a, QScrollBar* b) {
        connect(a, &QScrollBar::valueChanged, b, &QScrollBar::setValue);
    };
    together(verticalScrollBar(), m_frozenView->verticalScrollBar());
    together(m_frozenView->verticalScrollBar(), verticalScrollBar());
    connect(verticalHeader(), &QHeaderView::sectionResized, this,
            [this](int row, int, int height) { m_frozenView->setRowHeight(row, height); });
    connect(selectionModel(), &QItemSelectionModel::currentChanged, this,
            [this](const QModelIndex& now) {
                if (!m_anchor.isValid()) m_anchor = now;
            });
    connect(&m_grid, &QAbstractItemModel::modelAboutToBeReset, this, &GridView::remember);
    connect(&m_grid, &QAbstractItemModel::modelReset, this, &GridView::restore);
}

QTableView* GridView::frozenView() const {
    return m_frozenView;
}

void GridView::prepareHeading(QTableView& view) {
    QHeaderView* heading = view.horizontalHeader();
    heading->setSectionsClickable(true);
    heading->setSectionsMovable(true);
    heading->setHighlightSections(false);
    heading->setTextElideMode(Qt::ElideRight);
    heading->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    heading->setContextMenuPolicy(Qt::CustomContextMenu);
    // A heading sorts; columns are chosen with Ctrl+Space.
    disconnect(heading, SIGNAL(sectionPressed(int)), &view, SLOT(selectColumn(int)));
    disconnect(heading, SIGNAL(sectionEntered(int)), &view, SLOT(_q_selectColumn(int)));
    connect(heading, &QHeaderView::sectionClicked, this, [this](int section) {
        emit sortWished(section, QGuiApplication::keyboardModifiers() &
                                     (Qt::ShiftModifier | Qt::ControlModifier));
    });
    connect(heading, &QWidget::customContextMenuRequested, this, [this, heading](QPoint where) {
        const int section = heading->logicalIndexAt(where);
        if (section >= 0) emit headingMenuWished(section, heading->mapToGlobal(where));
    });
    connect(heading, &QHeaderView::sectionMoved, this, [this, heading](int, int from, int to) {
        if (m_placing) return;
        m_placing = true; // the model has the order: the heading shows it as it is
        heading->moveSection(to, from);
        m_placing = false;
        QMetaObject::invokeMethod(
            this, [this, from, to] { emit columnsMoved(from, to); }, Qt::QueuedConnection);
    });
    connect(heading, &QHeaderView::sectionResized, this,
            [this, &view](int section, int, int width) {
                if (m_placing || width == 0) return;
                m_placing = true;
                for (QTableView* other :
                     {static_cast<QTableView*>(this), static_cast<QTableView*>(m_frozenView)})
                    if (other != &view && !other->isColumnHidden(section))
                        other->setColumnWidth(section, width);
                m_placing = false;
                emit columnResized(section, width);
                placeFrozen();
            });
}

void GridView::setLines(int lines) {
    const int height = fontMetrics().lineSpacing() * lines + kCellMargin;
    verticalHeader()->setDefaultSectionSize(height);
    m_frozenView->verticalHeader()->setDefaultSectionSize(height);
}

void GridView::setFrozen(int columns) {
    m_frozen = std::clamp(columns, 0, m_grid.columnCount());
    placeFrozen();
}

void GridView::placeFrozen() {
    if (m_placing) return;
    m_placing = true;
    int width = 0, count = 0;
    const int most = static_cast<int>(viewport()->width() * kMostFrozen);
    while (count < std::min(m_frozen, m_grid.columnCount()) && width + columnWidth(count) <= most)
        width += columnWidth(count++);
    m_frozenNow = count;
    for (int section = 0; section < m_grid.columnCount(); ++section) {
        m_frozenView->setColumnHidden(section, section >= count);
        if (section < count && m_frozenView->columnWidth(section) != columnWidth(section))
            m_frozenView->setColumnWidth(section, columnWidth(section));
    }
    m_frozenView->setVisible(count > 0);
    m_frozenView->horizontalHeader()->setFixedHeight(horizontalHeader()->height());
    m_frozenView->setGeometry(viewport()->x(), viewport()->y() - horizontalHeader()->height(),
                              width, viewport()->height() + horizontalHeader()->height());
    m_frozenView->raise();
    m_placing = false;
}

void GridView::resizeEvent(QResizeEvent* event) {
    QTableView::resizeEvent(event);
    placeFrozen();
}

void GridView::updateGeometries() {
    QTableView::updateGeometries();
    if (m_frozenView) placeFrozen();
}

void GridView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        placeFrozen();
}

void GridView::scrollTo(const QModelIndex& index, ScrollHint hint) {
    const int before = horizontalScrollBar()->value();
    QTableView::scrollTo(index, hint);
    if (!index.isValid()) return;
    if (index.column() < m_frozenNow || m_grid.isGroup(index.row())) {
        horizontalScrollBar()->setValue(before); // it is in sight anyway
        return;
    }
    const int hidden = m_frozenView->width() - visualRect(index).left();
    if (m_frozenNow > 0 && hidden > 0)
        horizontalScrollBar()->setValue(horizontalScrollBar()->value() - hidden);
}

// Heads of groups reach over all columns: drawn over the cells, which stay empty there.
void GridView::paintHeads(QTableView& view, QPainter& painter) const {
    if (!m_grid.isGrouped()) return;
    const int height = view.viewport()->height();
    for (int line = std::max(view.rowAt(0), 0); line < m_grid.rowCount(); ++line) {
        const int y = view.rowViewportPosition(line);
        if (y > height) break;
        if (!m_grid.isGroup(line)) continue;
        const QModelIndex index = m_grid.index(line, 0);
        const QRect band(0, y, view.viewport()->width(), view.rowHeight(line) - 1);
        const bool chosen = selectionModel()->isSelected(index) || currentIndex().row() == line;
        painter.fillRect(band, palette().color(chosen ? QPalette::Highlight : QPalette::Button));
        QFont bold = font();
        bold.setBold(true);
        painter.setFont(bold);
        painter.setPen(palette().color(chosen ? QPalette::HighlightedText : QPalette::ButtonText));
        const bool folded = index.data(GridModel::foldedRole).toBool();
        painter.drawText(band.adjusted(6, 0, 4000, 0), Qt::AlignVCenter | Qt::AlignLeft,
                         QStringLiteral("%1  %2").arg(folded ? QStringLiteral("\u25B8")
                                                             : QStringLiteral("\u25BE"),
                                                      index.data(GridModel::groupRole).toString()));
    }
}

void GridView::paintEvent(QPaintEvent* event) {
    QTableView::paintEvent(event);
    QPainter painter(viewport());
    paintHeads(*this, painter);
}

bool GridView::edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) {
    const bool frozenCell = index.isValid() && index.column() < m_frozenNow;
    auto* delegate =
        static_cast<CellDelegate*>(frozenCell ? m_frozenView->itemDelegate() : itemDelegate());
    delegate->beginByTyping(trigger == AnyKeyPressed);
    if (frozenCell) return m_frozenView->editCell(index, trigger, event);
    return QTableView::edit(index, trigger, event);
}

// True where it is done with.
bool GridView::pressed(QTableView& view, QMouseEvent& event) {
    const QModelIndex index = view.indexAt(event.position().toPoint());
    if (!index.isValid() || event.button() != Qt::LeftButton) return false;
    if (m_grid.isGroup(index.row())) {
        goTo(index);
        if (event.position().x() < fontMetrics().height() * 2)
            m_grid.fold(index.row(), !index.data(GridModel::foldedRole).toBool());
        return true;
    }
    if (event.modifiers() & Qt::ShiftModifier) {
        extendTo(index);
        return true;
    }
    m_anchor = index;
    return false;
}

void GridView::mousePressEvent(QMouseEvent* event) {
    if (!pressed(*this, *event)) QTableView::mousePressEvent(event);
}

GridView::Block GridView::block() const {
    std::set<int> lines, sections;
    for (const QItemSelectionRange& range : selectionModel()->selection()) {
        for (int line = range.top(); line <= range.bottom(); ++line)
            if (!m_grid.isGroup(line)) lines.insert(line);
        for (int section = range.left(); section <= range.right(); ++section)
            sections.insert(section);
    }
    if (lines.empty() && currentIndex().isValid() && !m_grid.isGroup(currentIndex().row())) {
        lines.insert(currentIndex().row());
        sections = {currentIndex().column()};
    }
    return {{lines.begin(), lines.end()}, {sections.begin(), sections.end()}};
}

QModelIndexList GridView::chosenCells() const {
    QModelIndexList cells;
    for (const QModelIndex& index : selectionModel()->selectedIndexes())
        if (!m_grid.isGroup(index.row())) cells.push_back(index);
    if (cells.isEmpty() && currentIndex().isValid() && !m_grid.isGroup(currentIndex().row()))
        cells.push_back(currentIndex());
    std::sort(cells.begin(), cells.end(), [](const QModelIndex& a, const QModelIndex& b) {
        return a.row() != b.row() ? a.row() < b.row() : a.column() < b.column();
    });
    return cells;
}

} // namespace cutwater::editor
