// SPDX-License-Identifier: GPL-3.0-or-later
// The diagram as it is looked at: selection, marks, folds, search, sheets, zoom, the window's size.
#include "app/editor/diagram/find_bar.h"
#include "app/editor/diagram/overview.h"
#include "models/project/edits/add.h"
#include "models/project/edits/facts.h"
#include "tests/app/editor/diagram/stage.h"

#include <QAction>
#include <QApplication>
#include <QLabel>
#include <QLineEdit>
#include <QScrollBar>
#include <QTest>
#include <QWheelEvent>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;
using ::testing::ElementsAre;
using ::testing::IsEmpty;

QImage picture(test::Stage& stage) {
    return stage.panel->view().viewport()->grab().toImage().convertToFormat(QImage::Format_RGB32);
}

void wheel(QWidget* viewport, QPoint at, int delta, Qt::KeyboardModifiers modifiers) {
    QWheelEvent event(at, viewport->mapToGlobal(at), {}, {0, delta}, Qt::NoButton, modifiers,
                      Qt::NoScrollPhase, false);
    QCoreApplication::sendEvent(viewport, &event);
}

TEST(Panel, ShowsTheTreeOfTheSelectedTop) {
    test::Stage stage(test::smallTree());
    ASSERT_NE(stage.panel->scene().page(), nullptr);
    EXPECT_EQ(stage.panel->scene().page()->boxes.size(), 10U);
    EXPECT_TRUE(stage.panel->message().isEmpty());
    stage.selection.showTop("c"); // a gate will do
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.at(0).node, "c");
}

TEST(Panel, SaysWhyThereIsNoTree) {
    test::Stage stage(project::Project{}, {});
    EXPECT_FALSE(stage.panel->message().isEmpty());
    EXPECT_TRUE(stage.panel->findChild<QLabel*>("diagramMessage")->isVisible());
    stage.session.start(test::smallTree());
    // One that is gone, or was never chosen: the first tree is looked at.
    stage.selection.showTop("nowhere");
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.at(0).node, stage.session.project()->tops.front().node.id);
    project::Project broken = test::smallTree();
    broken.gates.front().inputs.front().id = "nobody";
    stage.session.start(broken);
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(stage.panel->message().contains("nobody"));
}

TEST(Panel, ATopThatWasJustTypedIsALoneBox) {
    test::Stage stage(project::Project{}, {});
    stage.session.apply([](const project::Project& project) {
        return project::edits::addEvent(project, {}, "no steam");
    });
    ASSERT_TRUE(stage.settle());
    ASSERT_NE(stage.panel->scene().page(), nullptr);
    EXPECT_EQ(stage.panel->scene().page()->boxes.size(), 1U);
    EXPECT_TRUE(stage.panel->message().isEmpty()) << stage.panel->message().toStdString();
}

TEST(Panel, WhatIsSelectedElsewhereIsBroughtIntoView) {
    project::Project two = test::largeTree(400);
    project::Gate other;
    other.id = "other";
    other.inputs = {{two.events.front().id, {}}};
    project::Event lone;
    lone.id = "lone";
    two.events.push_back(lone);
    other.inputs.push_back({"lone", {}});
    two.gates.push_back(other);
    project::TopEvent second;
    second.id = "T2";
    second.node.id = "other";
    two.tops.push_back(second);
    test::Stage stage(two, "T1", QSize(500, 350));
    const auto seen = [&](const std::string& node) {
        const std::size_t box = stage.box(node);
        return box != kNoBox && stage.panel->view().viewport()->rect().contains(
                                    stage.panel->view().boxOnScreen(box).center());
    };
    const std::string deep = two.events[399].id;
    stage.selection.select({deep});
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(seen(deep));
    // In another tree, by a list of problems or a search, which know nothing of trees.
    stage.selection.select({"lone"});
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.selection.top(), "T2");
    EXPECT_TRUE(seen("lone"));
    // And back, the tree first: as the outline does it.
    stage.selection.showTop("T1");
    stage.selection.select({deep});
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(seen(deep));
    // Something else takes room.
    stage.panel->resize(300, 250);
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(seen(deep));
}

TEST(Panel, AFailedLayoutKeepsTheOldPictureAndSaysSo) {
    test::Stage stage(test::smallTree());
    stage.layout.fails = true;
    stage.session.apply([](const project::Project& project) {
        return project::edits::rename(project, "x", "Another");
    });
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(stage.panel->message().contains("the boxes do not fit"));
    EXPECT_NE(stage.panel->scene().page(), nullptr);
    stage.layout.fails = false;
    stage.layout.throws = true;
    stage.selection.showTop("c");
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(stage.panel->message().contains("out of paper"));
    stage.layout.throws = false;
    stage.selection.showTop("T1");
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(stage.panel->message().isEmpty());
}

TEST(Panel, WithoutALayoutPluginItSaysSo) {
    Session session;
    Selection selection;
    session.start(test::smallTree());
    selection.showTop("T1");
    DiagramPanel panel(session, selection, nullptr);
    ASSERT_TRUE(QTest::qWaitFor([&] { return !panel.isBusy(); }, 5000));
    EXPECT_FALSE(panel.message().isEmpty());
}

TEST(Panel, SelectionGoesBothWays) {
    test::Stage stage(test::smallTree());
    stage.click(stage.box("y", "b"));
    EXPECT_THAT(stage.selection.spots(), ElementsAre(Spot{"y", "b"}));
    stage.click(stage.box("s"), Qt::ControlModifier);
    EXPECT_THAT(stage.selection.spots(), ElementsAre(Spot{"y", "b"}, Spot{"s", "top"}));
    stage.click(stage.box("s"), Qt::ControlModifier);
    EXPECT_THAT(stage.selection.spots(), ElementsAre(Spot{"y", "b"}));
    stage.selection.select({"z"});
    EXPECT_EQ(stage.panel->scene().current(), stage.box("z"));
    EXPECT_TRUE(stage.panel->scene().item(stage.box("z"))->state().selected);
    EXPECT_FALSE(stage.panel->scene().item(stage.box("s"))->state().selected);
}

TEST(Panel, WhatIsSelectedElsewhereIsUnfoldedAndBroughtIntoView) {
    test::Stage stage(test::largeTree(2000));
    const project::Id event = "E1500";
    ASSERT_EQ(stage.box(event), kNoBox);
    stage.selection.select({event});
    ASSERT_TRUE(stage.settle());
    ASSERT_NE(stage.box(event), kNoBox);
    EXPECT_TRUE(stage.panel->view().viewport()->rect().contains(stage.middle(stage.box(event))));
    EXPECT_EQ(stage.panel->scene().current(), stage.box(event));
}

TEST(Panel, FoldingHidesSaysHowMuchAndComesBack) {
    test::Stage stage(test::smallTree());
    const std::size_t all = stage.panel->scene().page()->boxes.size();
    QTest::mouseClick(stage.panel->view().viewport(), Qt::LeftButton, {},
                      stage.handle(stage.box("c")));
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.box("b"), kNoBox);
    EXPECT_EQ(stage.at(stage.box("c")).words.folded, "+ 3 events");
    stage.click(stage.box("c"));
    stage.key(Qt::Key_Space);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.panel->scene().page()->boxes.size(), all);
    stage.key(Qt::Key_Minus);
    ASSERT_TRUE(stage.settle());
    EXPECT_TRUE(stage.panel->isFolded("c"));
    stage.key(Qt::Key_Plus);
    ASSERT_TRUE(stage.settle());
    EXPECT_FALSE(stage.panel->isFolded("c"));
    stage.panel->action("foldAll")->trigger();
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.panel->scene().page()->boxes.size(), 4U);
    stage.panel->action("unfoldAll")->trigger();
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.panel->scene().page()->boxes.size(), all);
}

TEST(Panel, ArrowsWalkAndHomeGoesToTheTop) {
    test::Stage stage(test::smallTree());
    stage.key(Qt::Key_Home);
    EXPECT_EQ(stage.selection.current().node, "top");
    stage.key(Qt::Key_Down);
    EXPECT_EQ(stage.selection.current().node, "c");
    stage.key(Qt::Key_Left);
    EXPECT_EQ(stage.selection.current().node, "a");
    stage.key(Qt::Key_Down);
    stage.key(Qt::Key_Up);
    EXPECT_EQ(stage.selection.current().node, "a");
    stage.key(Qt::Key_Right, Qt::ShiftModifier);
    EXPECT_EQ(stage.selection.spots().size(), 2U);
}

TEST(Panel, ADoubleClickOnATransferGoesWhereTheNodeIsDrawn) {
    test::Stage stage(test::smallTree());
    stage.panel->fold("a", true);
    ASSERT_TRUE(stage.settle());
    const std::size_t transfer = stage.box("y", "b");
    ASSERT_TRUE(stage.at(transfer).transfer);
    stage.doubleClick(transfer);
    ASSERT_TRUE(stage.settle());
    EXPECT_FALSE(stage.panel->isFolded("a"));
    EXPECT_EQ(stage.selection.current(), (Spot{"y", "a"}));
    EXPECT_FALSE(stage.at(stage.panel->scene().current()).transfer);
}

TEST(Panel, SearchCountsJumpsAndGoesOn) {
    test::Stage stage(test::largeTree(2000));
    auto* field = stage.panel->findChild<QLineEdit*>("findField");
    auto* count = stage.panel->findChild<QLabel*>("findCount");
    stage.key(Qt::Key_F, Qt::ControlModifier);
    EXPECT_EQ(QApplication::focusWidget(), field);
    QTest::keyClicks(field, "valve e19");
    ASSERT_TRUE(stage.settle());
    // E19, E190 to E199, E1900 to E1999.
    EXPECT_EQ(stage.panel->hits().size(), 111U);
    EXPECT_EQ(count->text(), "1 of 111");
    const project::Id first = stage.selection.current().node;
    QTest::keyClick(field, Qt::Key_Return);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(count->text(), "2 of 111");
    EXPECT_NE(stage.selection.current().node, first);
    EXPECT_NE(stage.box(stage.selection.current().node), kNoBox);
    QTest::keyClick(field, Qt::Key_Escape);
    stage.key(Qt::Key_F3, Qt::ShiftModifier);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.selection.current().node, first);
    field->setText("no such thing");
    EXPECT_EQ(count->text(), "none");
}

TEST(Panel, ACutSetIsDrawnHeavyUpToTheTop) {
    test::Stage stage(test::smallTree());
    stage.panel->view().setZoom(1.5);
    const QImage before = picture(stage);
    stage.selection.mark({"x", "y"}, "Cut set 1");
    ASSERT_TRUE(stage.settle());
    for (const char* node : {"x", "y", "a", "c", "top"})
        EXPECT_TRUE(stage.panel->scene().item(stage.box(node))->state().marked) << node;
    EXPECT_FALSE(stage.panel->scene().item(stage.box("s"))->state().marked);
    EXPECT_TRUE(stage.panel->message().startsWith("Cut set 1"));
    EXPECT_NE(before, picture(stage));
    stage.key(Qt::Key_Escape);
    EXPECT_THAT(stage.selection.marked(), IsEmpty());
    EXPECT_FALSE(stage.panel->scene().item(stage.box("x"))->state().marked);
}

// A mark without its colour: the same picture in grey still differs.
TEST(Panel, MarksAreSeenWithoutColour) {
    test::Stage stage(test::smallTree());
    stage.panel->view().setZoom(1.5);
    stage.panel->view().showBox(stage.box("x"));
    const QRect around = stage.panel->view().boxOnScreen(stage.box("x"));
    const auto darkPixels = [&] {
        const QImage grey = picture(stage).convertToFormat(QImage::Format_Grayscale8);
        int dark = 0;
        for (int y = std::max(0, around.top()); y <= std::min(around.bottom(), grey.height() - 1);
             ++y)
            for (int x = std::max(0, around.left());
                 x <= std::min(around.right(), grey.width() - 1); ++x)
                if (qGray(grey.pixel(x, y)) < 110) ++dark;
        return dark;
    };
    const int before = darkPixels();
    stage.panel->scene().setMarked({"x"});
    EXPECT_GT(darkPixels(), before * 3 / 2);
}

TEST(Panel, MarkedEventsInFoldedGatesAreUnfolded) {
    test::Stage stage(test::largeTree(2000));
    stage.selection.mark({"E100", "E1900"}, "Two");
    ASSERT_TRUE(stage.settle());
    EXPECT_NE(stage.box("E100"), kNoBox);
    EXPECT_NE(stage.box("E1900"), kNoBox);
}

TEST(Panel, ZoomByWheelKeepsTheSpotUnderThePointerAndKeysWork) {
    test::Stage stage(test::largeTree(200));
    DiagramView& view = stage.panel->view();
    view.setZoom(1);
    const QPoint at(500, 300);
    const QPointF before = view.mapToScene(at);
    wheel(view.viewport(), at, 240, Qt::ControlModifier);
    EXPECT_GT(view.zoom(), 1.2);
    EXPECT_LT((view.mapToScene(at) - before).manhattanLength(), 3);
    const int scrolled = view.verticalScrollBar()->value();
    wheel(view.viewport(), at, -120, Qt::NoModifier);
    EXPECT_GT(view.verticalScrollBar()->value(), scrolled);
    stage.key(Qt::Key_0, Qt::ControlModifier);
    EXPECT_NEAR(view.zoom(), 1, 1e-6);
    EXPECT_EQ(stage.panel->findChild<QLabel*>("zoomLabel")->text(), "100 %");
    stage.key(Qt::Key_Minus, Qt::ControlModifier);
    EXPECT_NEAR(view.zoom(), 0.8, 1e-6);
    stage.key(Qt::Key_9, Qt::ControlModifier);
    const drawing::Box all = stage.panel->scene().page()->extent;
    EXPECT_TRUE(view.mapToScene(view.viewport()->rect())
                    .boundingRect()
                    .contains(QRectF(all.left, all.top, all.width, all.height)));
    view.setZoom(1e9);
    EXPECT_LE(view.zoom(), DiagramView::kLargest + 1e-6);
}

TEST(Panel, AnEditLeavesTheCurrentBoxWhereItIsOnTheScreen) {
    test::Stage stage(test::largeTree(200));
    stage.panel->view().setZoom(1);
    const std::size_t some = stage.panel->scene().page()->boxes.size() / 2;
    const project::Id node = stage.at(some).node, parent = stage.at(some).parent;
    stage.panel->jumpTo({node, parent});
    ASSERT_TRUE(stage.settle());
    // The middle of its upper edge: its height may grow with its row.
    const auto place = [&] {
        const QRect box = stage.panel->view().boxOnScreen(stage.box(node, parent));
        return QPoint(box.center().x(), box.top());
    };
    const QPoint before = place();
    // Wide names in the first gate push everything to the right.
    for (int i = 0; i < 3; ++i)
        stage.session.apply([&](const project::Project& project) {
            return project::edits::addEvent(project, {"G1", 0}, "One more event of this gate");
        });
    stage.panel->fold("G1", false);
    ASSERT_TRUE(stage.settle());
    EXPECT_LE((place() - before).manhattanLength(), 2)
        << place().x() - before.x() << ' ' << place().y() - before.y();
}

TEST(Panel, AnimatedBoxesGoFromTheOldToTheNewPlace) {
    test::Stage stage(test::smallTree());
    stage.panel->setAnimated(true);
    stage.click(stage.box("top"));
    const QPointF before = stage.panel->scene().item(stage.box("s"))->pos();
    stage.panel->fold("c", true);
    ASSERT_TRUE(QTest::qWaitFor([&] { return stage.panel->scene().isMoving(); }, 5000));
    const BoxItem* moving = stage.panel->scene().item(stage.box("s"));
    EXPECT_NE(moving->target(), before);
    const QPointF top = stage.panel->scene().item(0)->pos();
    EXPECT_EQ(top, stage.panel->scene().item(0)->target()); // the current one stands still
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(moving->pos(), moving->target());
    EXPECT_EQ(moving->opacity(), 1);
}

TEST(Panel, SheetsAreThoseOfThePrint) {
    test::Stage stage(test::largeTree(200));
    stage.panel->setKind(ViewKind::sheets);
    ASSERT_TRUE(stage.settle());
    ASSERT_GT(stage.panel->sheets(), 3);
    EXPECT_EQ(stage.panel->scene().page()->number, 1);
    EXPECT_NE(stage.panel->scene().page()->frame, nullptr);
    stage.key(Qt::Key_PageDown);
    EXPECT_EQ(stage.panel->sheet(), 1);
    stage.key(Qt::Key_PageUp);
    EXPECT_EQ(stage.panel->sheet(), 0);
    // A transfer symbol leads to the sheet that it names.
    const Page& page = *stage.panel->scene().page();
    std::size_t transfer = kNoBox;
    for (std::size_t b = 0; b < page.boxes.size(); ++b)
        if (page.boxes[b].transfer) transfer = b;
    ASSERT_NE(transfer, kNoBox);
    const int there = page.boxes[transfer].sheet;
    const project::Id node = page.boxes[transfer].node;
    stage.doubleClick(transfer);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.panel->sheet() + 1, there);
    EXPECT_EQ(stage.selection.current().node, node);
    // What is selected elsewhere brings its sheet.
    stage.selection.select({"E150"});
    ASSERT_TRUE(stage.settle());
    const std::size_t box = stage.box("E150");
    ASSERT_NE(box, kNoBox);
    EXPECT_FALSE(stage.at(box).transfer);
}

TEST(Panel, TheOverviewLeadsToThePlaceThatIsClicked) {
    test::Stage stage(test::largeTree(2000));
    stage.panel->view().setZoom(1);
    auto* overview = stage.panel->findChild<Overview*>("overview");
    ASSERT_TRUE(overview->isVisible());
    const QPoint at(overview->width() - 20, overview->height() / 2);
    QTest::mouseClick(overview, Qt::LeftButton, {}, at);
    const QPointF middle =
        stage.panel->view().mapToScene(stage.panel->view().viewport()->rect().center());
    EXPECT_NEAR(middle.x(), overview->toScene(at).x(), 30);
    stage.panel->action("overview")->trigger();
    EXPECT_FALSE(overview->isVisible());
}

TEST(Panel, ADarkPaletteTurnsTheDrawingDark) {
    test::Stage stage(test::smallTree());
    const auto brightness = [&] {
        const QImage image =
            picture(stage).scaled(1, 1, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
        return qGray(image.pixel(0, 0));
    };
    EXPECT_GT(brightness(), 200);
    QPalette dark = stage.panel->palette();
    dark.setColor(QPalette::Base, QColor(28, 31, 36));
    dark.setColor(QPalette::Text, Qt::white);
    stage.panel->setPalette(dark);
    stage.settle();
    EXPECT_LT(brightness(), 70);
}

TEST(Panel, CaptionsStandUnderTheEvents) {
    test::Stage stage(test::smallTree());
    EXPECT_EQ(stage.at(stage.box("x")).words.under, "");
    stage.panel->setCaptions(CaptionKind::probabilities);
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.at(stage.box("x")).words.under, "1.00e-03");
}

TEST(Panel, HabitsAreKept) {
    test::Stage stage(test::smallTree());
    stage.panel->setCaptions(CaptionKind::tags);
    stage.panel->action("overview")->trigger();
    const QVariantMap habits = stage.panel->habits();
    test::Stage other(test::smallTree());
    other.panel->setHabits(habits);
    EXPECT_EQ(other.panel->habits(), habits);
    EXPECT_EQ(other.panel->captions(), CaptionKind::tags);
    EXPECT_FALSE(other.panel->action("overview")->isChecked());
    other.panel->setHabits({{"captions", 99}, {"paper", "nonsense"}});
    EXPECT_LE(other.panel->captions(), CaptionKind::gates);
}

TEST(Panel, EveryActionHasANameAndNoTwoShareTheirKeys) {
    test::Stage stage(test::smallTree());
    std::map<QString, QString> keys;
    for (const QAction* action : stage.panel->allActions()) {
        EXPECT_FALSE(action->text().isEmpty());
        EXPECT_FALSE(action->objectName().isEmpty());
        for (const QKeySequence& sequence : action->shortcuts()) {
            const auto [found, isNew] = keys.emplace(sequence.toString(), action->objectName());
            EXPECT_TRUE(isNew) << qPrintable(sequence.toString()) << ": "
                               << qPrintable(action->objectName()) << " and "
                               << qPrintable(found->second);
        }
    }
}

} // namespace
} // namespace cutwater
