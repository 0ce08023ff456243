// SPDX-License-Identifier: GPL-3.0-or-later
// OutlineView: the trees as rows, and typing that builds them. The accessible twin of the diagram.
#pragma once

#include "app/editor/outline/node_edit.h"
#include "app/editor/outline/outline_model.h"
#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"

#include <QTreeView>

#include <vector>

namespace cutwater::editor {

class OutlineView : public QTreeView {
    Q_OBJECT
public:
    OutlineView(Session& session, Selection& selection, QWidget* parent = nullptr);

    OutlineModel& rows() { return *m_model; }
    // What is chosen, from top to bottom; what stands below something chosen is not named again.
    std::vector<project::edits::Use> chosen() const;

    void addBeside();
    void addBelow();
    void editText();
    void removeChosen();
    void moveChosen(int steps);
    void setKind(project::GateKind kind);
    void setKind(project::EventKind kind);
    void setVotes(int k);
    void toggleState();
    void insertGate();
    void dissolve();
    void makeTop();
    void separate();
    void unfoldBelow(); // the current row, level by level, until there are very many rows
    void copy() const;
    void cut();
    void paste();
    // What is being dragged from here; asked for by the drop where the data says that it is ours.
    void setDragged(std::vector<project::edits::Use> uses) { m_dragged = std::move(uses); }

signals:
    void sentence(const QString& text); // why nothing happened

protected:
    bool focusNextPrevChild(bool next) override;
    void keyPressEvent(QKeyEvent* event) override;
    void keyboardSearch(const QString& text) override;
    void paintEvent(QPaintEvent* event) override;
    void changeEvent(QEvent* event) override;
    void selectionChanged(const QItemSelection& selected,
                          const QItemSelection& deselected) override;
    void startDrag(Qt::DropActions supported) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void startTyping(const QModelIndex& parent, int row);
    void typed(const QModelIndex& index, const QString& text, const Reuse& reuse, Next next);
    void goOn(Next next);
    void follow();        // the selection of the others
    void tellSelection(); // to the others
    bool apply(const Edit& edit, const project::Id& parentOfTouched);
    void showTouched(const std::vector<project::Id>& touched);
    project::edits::Place dropPlace(const QPoint& at) const;
    QModelIndex currentRow() const { return currentIndex().siblingAtColumn(0); }
    Spot currentSpot() const { return m_model->spotAt(currentRow()); }
    void showInk();

    Session& m_session;
    Selection& m_selection;
    OutlineModel* m_model;
    project::Id m_parentOfTouched; // where the rows that an edit touched are looked for first
    std::vector<project::edits::Use> m_dragged;
    bool m_following = false;
};

} // namespace cutwater::editor
