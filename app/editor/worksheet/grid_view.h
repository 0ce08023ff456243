// SPDX-License-Identifier: GPL-3.0-or-later
// GridView: the table as people who live in spreadsheets expect it: first columns that stay in
// sight, keys, groups, and a hand that finds its place again when the rows change.
#pragma once

#include "app/editor/worksheet/cell_delegate.h"
#include "app/editor/worksheet/grid_model.h"

#include <QItemSelection>
#include <QPersistentModelIndex>
#include <QTableView>

#include <optional>
#include <vector>

namespace cutwater::editor {

class FrozenView;

class GridView : public QTableView {
    Q_OBJECT
public:
    explicit GridView(GridModel& grid, QWidget* parent = nullptr);

    GridModel& grid() const { return m_grid; }
    // The first columns stay where they are while the others are scrolled, as far as they leave
    // room for these.
    void setFrozen(int columns);
    int frozen() const { return m_frozen; }
    int frozenNow() const { return m_frozenNow; } // as many as there is room for
    QTableView* frozenView() const;

    void setLines(int lines); // of text in a row

    // What is chosen, as lines and sections in the order in which they are seen; heads of groups
    // left out. At least the current cell.
    struct Block {
        std::vector<int> lines, sections;
        bool empty() const { return lines.empty() || sections.empty(); }
    };
    Block block() const;
    // Every chosen cell that is no head of a group.
    QModelIndexList chosenCells() const;

    void goTo(const QModelIndex& index);     // and select it alone
    void extendTo(const QModelIndex& index); // select from where the choice began
    void selectLines(const std::vector<int>& lines);

    void scrollTo(const QModelIndex& index, ScrollHint hint = EnsureVisible) override;

    // For the part that stays in sight.
    void paintHeads(QTableView& view, QPainter& painter) const;
    bool pressed(QTableView& view, QMouseEvent& event);

signals:
    void clearWished();                                // Delete
    void sortWished(int section, bool more);           // a click on a heading
    void headingMenuWished(int section, QPoint where); // in global places
    void columnsMoved(int from, int to);
    void columnResized(int section, int width);

protected:
    bool edit(const QModelIndex& index, EditTrigger trigger, QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void changeEvent(QEvent* event) override;
    void updateGeometries() override;

private:
    void remember();
    void restore();
    void placeFrozen();
    void prepareHeading(QTableView& view);
    void step(CellStep step);
    bool groupKey(const QKeyEvent& event);
    bool moveKey(const QKeyEvent& event);
    QModelIndex blockEdge(QModelIndex from, int down, int right) const;

    struct Place {
        project::Id row;
        int column = 0; // place in sheetColumns()
    };
    struct Memory {
        std::optional<Place> current;
        std::vector<std::pair<project::Id, std::pair<int, int>>> chosen; // sections from, to
        int offset = 0; // of the current line in the window, pixels
        int vertical = 0, horizontal = 0;
        bool sameColumns = true;
    };

    GridModel& m_grid;
    FrozenView* m_frozenView;
    int m_frozen = 0, m_frozenNow = 0;
    bool m_placing = false;
    QPersistentModelIndex m_anchor; // where the choice began
    Memory m_memory;
};

} // namespace cutwater::editor
