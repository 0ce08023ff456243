// SPDX-License-Identifier: GPL-3.0-or-later
// FrozenView: the columns that stay in sight, laid over the grid. It has no focus of its own.
#pragma once

#include <QTableView>

namespace cutwater::editor {

class GridView;

class FrozenView : public QTableView {
    Q_OBJECT
public:
    explicit FrozenView(GridView& grid);
    bool editCell(const QModelIndex& index, EditTrigger trigger, QEvent* event) {
        return QTableView::edit(index, trigger, event);
    }

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;

private:
    GridView& m_grid;
};

} // namespace cutwater::editor
