// SPDX-License-Identifier: GPL-3.0-or-later
// RiskBoard: the drawing of the risk matrix, as it is printed, with cells to choose.
#pragma once

#include "app/drawing/picture.h"

#include <QWidget>

#include <optional>
#include <vector>

namespace cutwater::editor {

class RiskBoard : public QWidget {
    Q_OBJECT
public:
    struct Cell {
        int frequency = 0, severity = 0; // indices
        drawing::Box box;                // on the paper
        QString words;                   // for those who do not see it
    };

    explicit RiskBoard(QWidget* parent = nullptr);

    // The chosen cell stays chosen where it is still there.
    void show(drawing::Picture picture);
    const drawing::Picture& picture() const { return m_picture; }
    const std::vector<Cell>& cells() const { return m_cells; }
    const Cell* chosen() const;
    void choose(std::optional<std::size_t> cell); // a position in cells(); none: all of them
    void setStale(bool stale);
    QRectF onScreen(const drawing::Box& box) const;

    QSize sizeHint() const override { return {700, 500}; }

signals:
    void chosenChanged();

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void focusInEvent(QFocusEvent* event) override;
    bool event(QEvent* event) override;

private:
    double perPoint() const;
    QPointF origin() const;
    void go(int frequency, int severity);
    std::optional<std::size_t> cellAt(const QPointF& at) const;

    drawing::Picture m_picture;
    std::vector<Cell> m_cells;
    std::optional<std::size_t> m_chosen;
    bool m_stale = false;
};

} // namespace cutwater::editor
