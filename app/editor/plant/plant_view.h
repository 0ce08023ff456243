// SPDX-License-Identifier: GPL-3.0-or-later
// PlantView: the breakdown of the plant, and typing that builds it.
#pragma once

#include "app/editor/outline/node_edit.h"
#include "app/editor/plant/plant_model.h"
#include "app/editor/selection/selection.h"

#include <QTreeView>

#include <functional>
#include <set>
#include <utility>
#include <vector>

namespace cutwater::editor {

class PlantView : public QTreeView {
    Q_OBJECT
public:
    PlantView(Session& session, Selection& selection, QWidget* parent = nullptr);

    PlantModel& rows() { return *m_model; }
    // From top to bottom; what stands below something chosen is not named again.
    std::vector<project::Id> chosen() const;
    // Shows and chooses it, unfolding what is above. False where it is not there.
    bool reveal(PlantModel::Kind kind, const project::Id& id);
    // The id of the current row is about to be another one.
    void followId(PlantModel::Kind kind, const project::Id& id) { m_becomes = {kind, id}; }
    // What is being dragged from here.
    void setDragged(std::vector<project::Id> ids) { m_dragged = std::move(ids); }
    QModelIndex currentRow() const { return currentIndex().siblingAtColumn(0); }

    void addBeside();
    void addBelow();
    void addMode();
    void editText();
    void removeChosen();
    void moveChosen(int steps); // among its siblings
    void indent();              // becomes a part of the one above
    void outdent();             // goes beside what it is a part of
    void copy();
    void cut();
    void paste();

    // Asked before something that others use is deleted; tests answer it.
    std::function<bool(const QString& question)> ask;

signals:
    void sentence(const QString& text); // why nothing happened
    void currentChangedTo();            // another row is current, or what it says has changed

protected:
    bool focusNextPrevChild(bool next) override;
    void keyboardSearch(const QString& text) override;
    void paintEvent(QPaintEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;
    void startDrag(Qt::DropActions supported) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dragMoveEvent(QDragMoveEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void startTyping(const QModelIndex& parent, int row, PlantModel::Kind kind);
    void typed(const QModelIndex& index, const QString& text, Next next);
    bool applyAndShow(const Edit& edit);
    void follow();        // the selection of the others
    void tellSelection(); // to the others
    void remember();
    void restore();
    project::edits::PartPlace dropPlace(const QPoint& at, PlantModel::Kind kind) const;

    Session& m_session;
    Selection& m_selection;
    PlantModel* m_model;
    std::set<project::Id> m_open; // components that are unfolded, while rows are made anew
    std::vector<std::pair<PlantModel::Kind, project::Id>> m_chosenBefore;
    std::pair<PlantModel::Kind, project::Id> m_becomes;
    std::vector<project::Id> m_dragged;
    bool m_following = false;
    bool m_filtered = false; // the rows that are shown are those of a filter
};

} // namespace cutwater::editor
