// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/answer_panel.h"

#include "app/editor/answers/answer_model.h"
#include "models/document/document.h"
#include "tests/plugins/analyses/plants.h"

#include <QApplication>
#include <QClipboard>
#include <QLabel>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <thread>

using namespace cutwater;
using editor::AnswerModel;
using editor::AnswerPanel;
using editor::LineKind;
using editor::LiveAnswers;
using testing::HasSubstr;

namespace {

class Panel : public testing::Test {
protected:
    Panel() {
        panel.resize(380, 700);
        panel.show();
    }

    void show(const project::Project& project) {
        panel.setProject(std::make_shared<const project::Project>(project));
    }
    void showAndWait(const project::Project& project) {
        show(project);
        ASSERT_TRUE(QTest::qWaitFor(
            [&] { return panel.answers().state() == LiveAnswers::State::current; }, 30000));
    }
    std::string label(const char* name) const {
        const auto* const found = panel.findChild<QLabel*>(name);
        return found && found->isVisibleTo(&panel) ? found->text().toStdString() : std::string();
    }
    QModelIndex line(LineKind kind, int nth = 0) const {
        const QAbstractItemModel* const model = panel.list()->model();
        for (int row = 0; row < model->rowCount(); ++row)
            if (model->index(row, 0).data(AnswerModel::KindRole).toInt() ==
                    static_cast<int>(kind) &&
                nth-- == 0)
                return model->index(row, 0);
        return {};
    }
    void click(const QModelIndex& index) {
        panel.list()->scrollTo(index);
        QTest::mouseClick(panel.list()->viewport(), Qt::LeftButton, {},
                          panel.list()->visualRect(index).center());
    }

    editor::Selection selection;
    AnswerPanel panel{&selection};
};

} // namespace

TEST_F(Panel, SaysWhatItIsForBeforeThereIsATree) {
    EXPECT_EQ(label("answerTop"), "No top event");
    EXPECT_THAT(label("answerMeaning"), HasSubstr("Build a tree"));
    showAndWait({});
    EXPECT_EQ(label("answerTop"), "No top event");
    EXPECT_THAT(label("answerState"), HasSubstr("Nothing"));
}

TEST_F(Panel, ShowsTheFigureAndWhatChanged) {
    project::Project plant = plants::twoPumps();
    showAndWait(plant);
    EXPECT_EQ(label("answerTop"), "T1 top T1");
    EXPECT_EQ(label("answerFigure"), "6.900e-02");
    EXPECT_EQ(label("answerMeaning"), "about 1 in 14; exact");
    EXPECT_THAT(label("answerState"), HasSubstr("Current"));
    EXPECT_EQ(label("answerChange"), "");
    plant.events[2] = plants::event("panel", 0.1);
    show(plant);
    // At once: the old figure is marked stale by a word and a symbol.
    EXPECT_THAT(label("answerFigure"), HasSubstr("6.900e-02 (stale)"));
    EXPECT_THAT(label("answerState"), HasSubstr("\u27F3 Stale"));
    showAndWait(plant);
    EXPECT_EQ(label("answerFigure"), "1.180e-01");
    EXPECT_THAT(label("answerChange"), HasSubstr("higher by 71 %"));
    EXPECT_THAT(label("answerState"), HasSubstr("\u2714 Current"));
}

TEST_F(Panel, AClickedLineIsMarkedInTheTree) {
    showAndWait(plants::twoPumps());
    click(line(LineKind::single));
    EXPECT_EQ(selection.marked(), std::set<project::Id>{"panel"});
    EXPECT_THAT(selection.reason().toStdString(), HasSubstr("single failure"));
    EXPECT_TRUE(selection.isSelected("panel"));
    click(line(LineKind::set));
    EXPECT_EQ(selection.marked(), (std::set<project::Id>{"pump-a", "pump-b"}));
    // By keyboard, too, over the headings.
    QTest::keyClick(panel.list(), Qt::Key_Home);
    panel.list()->setCurrentIndex(line(LineKind::single));
    EXPECT_EQ(selection.marked(), std::set<project::Id>{"panel"});
    QTest::keyClick(panel.list(), Qt::Key_Escape);
    EXPECT_TRUE(selection.marked().empty());
}

TEST_F(Panel, KeysWalkFromLineToLine) {
    showAndWait(plants::twoPumps());
    panel.list()->setCurrentIndex(line(LineKind::single));
    QTest::keyClick(panel.list(), Qt::Key_Down);
    QTest::keyClick(panel.list(), Qt::Key_Down);
    EXPECT_EQ(panel.list()->currentIndex(), line(LineKind::order));
}

TEST_F(Panel, AnErrorIsSaidWithAJump) {
    project::Project plant = plants::twoPumps();
    showAndWait(plant);
    plant.gates[1].inputs.clear();
    showAndWait(plant);
    EXPECT_THAT(label("answerState"), HasSubstr("\u2716 No answer"));
    EXPECT_EQ(label("answerFigure"), "No figure");
    const QModelIndex error = line(LineKind::error);
    ASSERT_TRUE(error.isValid());
    EXPECT_THAT(error.data().toString().toStdString(), HasSubstr("no-flow"));
    click(error);
    EXPECT_TRUE(selection.isSelected("no-flow"));
    // Mended: compared with the last figure that there was.
    plant = plants::twoPumps();
    showAndWait(plant);
    EXPECT_THAT(label("answerChange"), HasSubstr("as before"));
}

TEST_F(Panel, FollowsTheTopEventThatIsShown) {
    project::Project plant = plants::twoPumps();
    plant.tops.push_back(plants::top("T2", "no-flow"));
    showAndWait(plant);
    EXPECT_EQ(label("answerFigure"), "6.900e-02");
    selection.showTop("T2");
    EXPECT_THAT(label("answerFigure"), HasSubstr("stale"));
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return panel.answers().state() == LiveAnswers::State::current; }, 30000));
    EXPECT_EQ(label("answerFigure"), "2.000e-02");
    EXPECT_EQ(label("answerTop"), "T2 top T2");
    EXPECT_EQ(label("answerChange"), ""); // another question, not a change
}

TEST_F(Panel, TheLineThatIsLookedAtStaysTheCurrentOne) {
    project::Project plant = plants::twoPumps();
    plant.gates[0].inputs.push_back({"fuse", {}});
    plant.events.push_back(plants::event("fuse", 0.01));
    showAndWait(plant);
    click(line(LineKind::single, 1));
    EXPECT_EQ(selection.marked(), std::set<project::Id>{"fuse"});
    plant.events.back() = plants::event("fuse", 0.5); // now the most probable: it stands first
    showAndWait(plant);
    EXPECT_EQ(panel.list()->currentIndex(), line(LineKind::single, 0));
    EXPECT_EQ(selection.marked(), std::set<project::Id>{"fuse"});
    plant.gates[0].inputs.pop_back();
    showAndWait(plant);
    EXPECT_FALSE(panel.list()->currentIndex().isValid());
}

TEST_F(Panel, AnotherViewsMarksTakeTheLineAway) {
    showAndWait(plants::twoPumps());
    click(line(LineKind::single));
    EXPECT_TRUE(panel.list()->selectionModel()->hasSelection());
    selection.mark({"pump-a"}, "found");
    EXPECT_FALSE(panel.list()->selectionModel()->hasSelection());
}

TEST_F(Panel, ProgressAndCancelOverOneSecond) {
    std::atomic<bool> wait{true};
    panel.answers().setCompute([&](const project::Project& project, const std::string& top,
                                   const editor::LiveMeans& means) {
        while (wait && !means.stop.stop_requested()) {
            means.progress(0.25);
            std::this_thread::sleep_for(std::chrono::milliseconds(1));
        }
        return editor::computeLive(project, top, means);
    });
    show(plants::twoPumps());
    auto* const button = panel.findChild<QPushButton*>("answerButton");
    auto* const bar = panel.findChild<QProgressBar*>("answerProgress");
    QTest::qWait(300);
    EXPECT_FALSE(button->isVisible());
    EXPECT_FALSE(bar->isVisible());
    ASSERT_TRUE(QTest::qWaitFor([&] { return bar->isVisible() && bar->value() == 250; }, 5000));
    ASSERT_TRUE(button->isVisible());
    EXPECT_EQ(button->text(), "Cancel");
    QTest::mouseClick(button, Qt::LeftButton);
    EXPECT_EQ(panel.answers().state(), LiveAnswers::State::cancelled);
    EXPECT_THAT(label("answerState"), HasSubstr("ancelled"));
    EXPECT_FALSE(bar->isVisible());
    EXPECT_EQ(button->text(), "Compute");
    wait = false;
    QTest::mouseClick(button, Qt::LeftButton);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] { return panel.answers().state() == LiveAnswers::State::current; }, 30000));
    EXPECT_FALSE(button->isVisible());
    EXPECT_EQ(label("answerFigure"), "6.900e-02");
}

TEST_F(Panel, CopiesALineOrEverything) {
    showAndWait(plants::twoPumps());
    panel.list()->setFocus();
    click(line(LineKind::single));
    QTest::keyClick(panel.list(), Qt::Key_C, Qt::ControlModifier);
    EXPECT_THAT(QApplication::clipboard()->text().toStdString(), HasSubstr("the panel"));
    QTest::keyClick(panel.list(), Qt::Key_C, Qt::ControlModifier | Qt::ShiftModifier);
    const std::string all = QApplication::clipboard()->text().toStdString();
    EXPECT_THAT(all, HasSubstr("6.900e-02 (exact; about 1 in 14)"));
    EXPECT_THAT(all, HasSubstr("Order 2: 1"));
    EXPECT_THAT(all, HasSubstr("Caution: "));
}

TEST_F(Panel, EverythingHasANameForScreenReaders) {
    showAndWait(plants::twoPumps());
    for (const QWidget* const widget : panel.findChildren<QWidget*>()) {
        if (widget->focusPolicy() == Qt::NoFocus || !widget->isVisible()) continue;
        const auto* const text = qobject_cast<const QLabel*>(widget);
        EXPECT_TRUE(!widget->accessibleName().isEmpty() || (text && !text->text().isEmpty()) ||
                    qobject_cast<const QPushButton*>(widget))
            << widget->objectName().toStdString();
    }
}
