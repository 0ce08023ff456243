// SPDX-License-Identifier: GPL-3.0-or-later
// ScalesPage: the rating scales and the risk matrix of the project, to be changed.
#pragma once

#include "app/editor/risk/level_model.h"

#include <QPoint>
#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;
class QTableView;

namespace cutwater::editor {

class ScalesPage : public QWidget {
    Q_OBJECT
public:
    explicit ScalesPage(Session& session, QWidget* parent = nullptr);

    LevelModel& levels() { return *m_levels; }

private:
    void showState();

    LevelModel* m_levels;
    QComboBox* m_list;
    QLabel* m_whose;
    QTableView* m_table;
    QLabel* m_wrong;
    QPushButton* m_reset;
    QPoint m_current{-1, -1}; // row and column
};

} // namespace cutwater::editor
