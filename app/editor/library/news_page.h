// SPDX-License-Identifier: GPL-3.0-or-later
// NewsPage: where the library says something else than when components were taken from it, to be
// accepted component by component.
#pragma once

#include "app/editor/library/shelf.h"
#include "app/editor/session/session.h"
#include "models/library/take.h"

#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace cutwater::editor {

class NewsPage : public QWidget {
    Q_OBJECT
public:
    NewsPage(Session& session, Shelf& shelf, QWidget* parent = nullptr);

    // The ticked news of the component at (or above) the current row.
    void acceptCurrent();

signals:
    void counted(int components); // that have news
    void componentWished(const cutwater::project::Id& component);

protected:
    void showEvent(QShowEvent* event) override;

private:
    void look();
    QString wordsOf(const library::News& news) const;

    Session& m_session;
    Shelf& m_shelf;
    std::vector<library::News> m_news;
    QTreeWidget* m_tree;
    QLabel* m_words;
    QPushButton* m_accept;
};

} // namespace cutwater::editor
