// SPDX-License-Identifier: GPL-3.0-or-later
// AnswerPanel: what follows from the tree at this moment, always in sight beside it.
#pragma once

#include "app/editor/answers/live_answers.h"
#include "app/editor/selection/selection.h"

#include <QWidget>

class QLabel;
class QListView;
class QProgressBar;
class QPushButton;

namespace cutwater::editor {

class AnswerModel;

// Follows the top event of the selection; shows a clicked line in the tree through its marks.
class AnswerPanel : public QWidget {
    Q_OBJECT

public:
    explicit AnswerPanel(Selection* selection, QWidget* parent = nullptr);
    ~AnswerPanel() override;

    // A new snapshot: after every edit. The old answer stays in sight, marked stale.
    void setProject(std::shared_ptr<const project::Project> project);

    LiveAnswers& answers() { return *m_answers; }
    QListView* list() const { return m_list; }

private:
    void ask();
    void showAnswer();
    void showState();
    void showFigure();
    void showSlow(bool slow); // progress and Cancel, after a second
    void markLine(const QModelIndex& index);
    void followMarks();
    void copy(bool everything);
    void makeActions();

    Selection* m_selection;
    LiveAnswers* m_answers;
    AnswerModel* m_model;
    std::shared_ptr<const project::Project> m_project;
    QLabel* m_top;
    QLabel* m_figure;
    QLabel* m_meaning;
    QLabel* m_counted;
    QLabel* m_change;
    QLabel* m_state;
    QPushButton* m_button; // Cancel, or Compute again
    QProgressBar* m_progress;
    QListView* m_list;
    QTimer m_slow;
    bool m_marking = false; // the marks that come in are our own
};

} // namespace cutwater::editor
