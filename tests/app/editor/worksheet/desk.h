// SPDX-License-Identifier: GPL-3.0-or-later
// The worksheet page with a session of its own, as a hand meets it.
#pragma once

#include "app/editor/worksheet/worksheet_page.h"

#include <QTest>

#include <memory>

namespace cutwater::test {

// Four components with two failure modes each; the first pump's modes stand in a tree, and one of
// the valves is tested.
project::Project smallSheet();
// `rows` failure modes of a fifth as many components, half of them in trees.
project::Project largeSheet(int rows);

class Desk {
public:
    explicit Desk(const project::Project& project, std::vector<std::string> plugins = {});

    const project::Project& project() const { return *session.project(); }
    const project::FailureMode& mode(const char* id) const;
    int line(const char* id) const { return page->grid().lineOf(id); }
    int section(const char* column) const;
    QModelIndex at(const char* id, const char* column) const;
    QString text(const char* id, const char* column) const;
    void goTo(const char* id, const char* column) { page->view().goTo(at(id, column)); }
    void extendTo(const char* id, const char* column) { page->view().extendTo(at(id, column)); }
    // A key where the focus is; the field of the cell where one is open.
    void press(int key, Qt::KeyboardModifiers modifiers = Qt::NoModifier);
    void type(const QString& text);
    QWidget* field() const; // null where no cell is typed in
    void act(const char* action);
    QStringList column(const char* column) const; // as it is seen, from the top
    void undo() { session.undoStack()->undo(); }
    void redo() { session.undoStack()->redo(); }
    QString undoName() { return session.undoStack()->undoText(); }

    editor::Session session;
    editor::Selection selection;
    sdk::Host host;
    std::unique_ptr<editor::WorksheetPage> page;
};

} // namespace cutwater::test
