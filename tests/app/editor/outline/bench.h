// SPDX-License-Identifier: GPL-3.0-or-later
// An outline on the small tree, shown and with the keys.
#pragma once

#include "app/editor/outline/outline_commands.h"
#include "tests/models/project/edits/small_tree.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QTest>

#include <gtest/gtest.h>

namespace cutwater::test {

class OutlineBench : public testing::Test {
protected:
    explicit OutlineBench(const Project& project = smallTree()) {
        // In its check after a reset Qt's tester would take its own fetching for a nested change.
        tester.setUseFetchMore(false);
        session.start(project);
        view.resize(700, 500);
        editor::makeOutlineCommands(view);
        view.show();
        QApplication::setActiveWindow(&view);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&view));
        view.setFocus();
        QObject::connect(&session, &editor::Session::refused, &view,
                         [this](const QString& sentence) { refused = sentence; });
    }

    // The row of a node, by its ids from the top: {"stop", "fuel"}.
    QModelIndex row(std::initializer_list<const char*> path) {
        QModelIndex at;
        for (const char* id : path) {
            if (view.rows().canFetchMore(at)) view.rows().fetchMore(at);
            QModelIndex found;
            for (int i = 0; i < view.rows().rowCount(at); ++i)
                if (view.rows().index(i, 0, at).data(editor::OutlineModel::nodeRole) == id)
                    found = view.rows().index(i, 0, at);
            if (!found.isValid()) return {};
            at = found;
        }
        return at;
    }
    void choose(std::initializer_list<const char*> path) {
        const QModelIndex index = row(path);
        ASSERT_TRUE(index.isValid());
        view.scrollTo(index);
        view.setCurrentIndex(index);
    }
    void key(int code, Qt::KeyboardModifiers modifiers = Qt::NoModifier) {
        QTest::keyClick(QApplication::focusWidget(), static_cast<Qt::Key>(code), modifiers);
    }
    void type(const QString& text) { QTest::keyClicks(QApplication::focusWidget(), text); }
    const Project& project() { return *session.project(); }
    std::string current() { return selection.current().node; }

    editor::Session session;
    editor::Selection selection;
    editor::OutlineView view{session, selection};
    QAbstractItemModelTester tester{&view.rows(),
                                    QAbstractItemModelTester::FailureReportingMode::Fatal};
    QString refused;
};

} // namespace cutwater::test
