// SPDX-License-Identifier: GPL-3.0-or-later
// LibraryPage: component types to read and to take into the plant, the files they come from, and
// where they have moved on.
#pragma once

#include "app/editor/library/shelf.h"
#include "app/editor/session/session.h"

#include <QWidget>

#include <functional>

class QLabel;
class QLineEdit;
class QPushButton;
class QTableView;
class QTabWidget;
class QTextBrowser;
class QTreeWidget;

namespace cutwater::editor {

class ComponentBox;
class NewsPage;
class TypeModel;

class LibraryPage : public QWidget {
    Q_OBJECT
public:
    LibraryPage(Session& session, Shelf& shelf, QWidget* parent = nullptr);

    TypeModel& types() { return *m_types; }
    NewsPage& news() { return *m_news; }
    // Where a part would go: the component that is chosen in the plant; empty: at the top.
    void setParentComponent(const project::Id& component);
    void take();

    // The file to add, or empty; tests answer it.
    std::function<QString()> whichFile;

signals:
    void taken(const cutwater::project::Id& component);
    void sentence(const QString& text);

protected:
    void showEvent(QShowEvent* event) override;

private:
    QWidget* makeTypes();
    QWidget* makeFiles();
    void showContent();
    void showType();
    void showFiles();

    Session& m_session;
    Shelf& m_shelf;
    TypeModel* m_types;
    NewsPage* m_news;
    QTabWidget* m_tabs;
    QLineEdit* m_filter;
    QTableView* m_table;
    QTextBrowser* m_text;
    ComponentBox* m_parent;
    QLineEdit* m_tag;
    QLineEdit* m_name;
    QPushButton* m_take;
    QTreeWidget* m_files;
    project::Id m_parentComponent;
    bool m_read = false;
};

} // namespace cutwater::editor
