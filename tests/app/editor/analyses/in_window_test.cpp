// SPDX-License-Identifier: GPL-3.0-or-later
// Answers and analyses where the user meets them: in the window, with edits and undo of its
// session.
#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/analyses/analysis_page.h"
#include "app/editor/answers/answer_panel.h"
#include "app/editor/window/main_window.h"
#include "tests/plugins/analyses/plants.h"

#include <QAction>
#include <QLabel>
#include <QMenuBar>
#include <QTabWidget>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater;
using editor::AnalysesPane;
using editor::AnswerPanel;
using editor::LiveAnswers;

namespace {

class InWindow : public testing::Test {
protected:
    InWindow() {
        window.session().start(plants::twoPumps());
        window.show();
    }
    AnswerPanel& panel() { return *window.findChild<AnswerPanel*>(); }
    std::string figure() {
        if (!QTest::qWaitFor(
                [&] { return panel().answers().state() == LiveAnswers::State::current; }, 30000))
            return "no answer";
        return panel().findChild<QLabel*>("answerFigure")->text().toStdString();
    }
    bool setPanel(double probability) {
        return window.session().apply([probability](const project::Project& project) {
            project::edits::Changed changed;
            changed.project = project;
            changed.project.events[2] = plants::event("panel", probability);
            changed.doing = "Change a number";
            return project::edits::Result(std::move(changed));
        });
    }

    sdk::Host host{{CUTWATER_PLUGINS}};
    editor::MainWindow window{host};
};

} // namespace

TEST_F(InWindow, TheAnswerFollowsEditsAndUndo) {
    EXPECT_EQ(figure(), "6.900e-02");
    ASSERT_TRUE(setPanel(0.1));
    EXPECT_TRUE(panel().answers().isStale());
    EXPECT_EQ(figure(), "1.180e-01");
    window.session().undoStack()->undo();
    EXPECT_TRUE(panel().answers().isStale());
    EXPECT_EQ(figure(), "6.900e-02");
    window.session().undoStack()->redo();
    EXPECT_EQ(figure(), "1.180e-01");
    // Many at once, and all of them back.
    for (int i = 0; i < 50; ++i) {
        ASSERT_TRUE(setPanel(0.001 * (i + 1)));
        QTest::qWait(i % 5 == 0 ? 5 : 0);
    }
    EXPECT_EQ(figure(), "6.900e-02"); // 0.05 again
    while (window.session().undoStack()->canUndo())
        window.session().undoStack()->undo();
    EXPECT_EQ(figure(), "6.900e-02");
}

TEST_F(InWindow, EveryAnalysisHasItsEntryInAMenu) {
    QStringList entries;
    QAction* sets = nullptr;
    for (QAction* menu : window.menuBar()->actions()) {
        if (!menu->menu()) continue;
        for (QAction* entry : menu->menu()->actions()) {
            if (entry->objectName().startsWith("analysis-")) entries.push_back(entry->text());
            if (entry->objectName() == "analysis-cut-sets") sets = entry;
        }
    }
    auto* const pane = window.findChild<AnalysesPane*>();
    ASSERT_TRUE(pane && sets);
    EXPECT_EQ(entries.size(), static_cast<qsizetype>(pane->actions().size()));
    sets->trigger();
    EXPECT_TRUE(pane->isVisible());
    EXPECT_EQ(window.pages().currentWidget(), pane);
    auto* const page = qobject_cast<editor::AnalysisPage*>(pane->tabs()->currentWidget());
    ASSERT_TRUE(page);
    page->run();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !page->runner().isRunning(); }, 30000));
    EXPECT_TRUE(page->newest());
    ASSERT_TRUE(setPanel(0.3)); // the page knows the new project
    EXPECT_THAT(page->findChild<QLabel*>("state")->text().toStdString(),
                testing::HasSubstr("Stale"));
}
