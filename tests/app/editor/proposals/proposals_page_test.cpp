// SPDX-License-Identifier: GPL-3.0-or-later
// Coverage, proposed trees and proposed common causes: shown, gone to, accepted, undone.
#include "app/editor/proposals/causes_page.h"
#include "app/editor/proposals/coverage_page.h"
#include "app/editor/proposals/proposals_page.h"
#include "app/editor/proposals/skeleton_page.h"
#include "tests/models/worksheet/boilers.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTest>
#include <QTreeWidget>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
using cutwater::project::Project;

namespace {

class Proposed : public testing::Test {
protected:
    Proposed() {
        session.start(boilers());
        QObject::connect(&page, &ProposalsPage::sentence, &page,
                         [this](const QString& text) { told = text; });
        QObject::connect(&session, &Session::refused, &page,
                         [this](const QString& text) { told = text; });
        page.resize(1000, 700);
        page.show();
        QApplication::setActiveWindow(&page);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
        ready();
    }
    void ready() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !page.findings().isStale(); }, 10000));
    }
    void tab(int index) { page.findChild<QTabWidget*>("proposalsTabs")->setCurrentIndex(index); }
    QTreeWidget& list(const char* name) { return *page.findChild<QTreeWidget*>(name); }
    QTreeWidgetItem* group(const char* words) {
        QTreeWidget& coverage = list("coverage");
        for (int i = 0; i < coverage.topLevelItemCount(); ++i)
            if (coverage.topLevelItem(i)->text(0).startsWith(words))
                return coverage.topLevelItem(i);
        return nullptr;
    }
    static QTreeWidgetItem* item(QTreeWidgetItem* above, const QString& words) {
        for (int i = 0; above && i < above->childCount(); ++i)
            if (above->child(i)->text(0).contains(words)) return above->child(i);
        return nullptr;
    }
    const Project& project() { return *session.project(); }

    Session session;
    Selection selection;
    ProposalsPage page{session, selection};
    QString told;
};

} // namespace

TEST_F(Proposed, CoverageListsWhatDoesNotMeet) {
    // Of eight failure modes three are in the tree of T1; `other` is no failure mode.
    EXPECT_EQ(group("Failure modes in no tree")->text(0), "Failure modes in no tree: 5");
    EXPECT_EQ(group("Events in no row")->text(0), "Events in no row of the worksheet: 1");
    EXPECT_EQ(group("End effects without a tree")->childCount(), 2);
    EXPECT_EQ(group("End effects with a tree")->childCount(), 0);
}

TEST_F(Proposed, AClickGoesThere) {
    QTreeWidget& coverage = list("coverage");
    coverage.expandAll();
    QSignalSpy mode(&page, &ProposalsPage::modeWished);
    const auto click = [&](QTreeWidgetItem* what) {
        ASSERT_NE(what, nullptr);
        coverage.scrollToItem(what);
        QTest::mouseClick(coverage.viewport(), Qt::LeftButton, {},
                          coverage.visualItemRect(what).center());
    };
    click(item(group("Failure modes in no tree"), "fouled"));
    ASSERT_EQ(mode.count(), 1);
    EXPECT_EQ(mode[0][0].value<cutwater::project::Id>(), "electrodes.fouled");
    click(item(group("Events in no row"), "other"));
    EXPECT_EQ(selection.current().node, "other");
    click(item(group("End effects without a tree"), "boiler without steam"));
    EXPECT_EQ(page.findChild<QTabWidget*>("proposalsTabs")->currentIndex(), 1);
    ready();
    EXPECT_GT(list("skeleton").topLevelItemCount(), 0);
}

TEST_F(Proposed, ATreeIsAcceptedGateByGateAndUndone) {
    tab(1);
    page.skeleton().choose("boiler without steam");
    ready();
    QTreeWidget& tree = list("skeleton");
    ASSERT_EQ(tree.topLevelItemCount(), 1);
    QTreeWidgetItem* top = tree.topLevelItem(0);
    EXPECT_TRUE(top->text(0).startsWith("P1"));
    EXPECT_GT(top->childCount(), 1);
    EXPECT_TRUE(item(top, "P2") != nullptr);
    item(top, "P2")->setCheckState(0, Qt::Unchecked);
    QTest::mouseClick(page.findChild<QPushButton*>("acceptSkeleton"), Qt::LeftButton);
    ASSERT_EQ(project().tops.size(), 2u);
    EXPECT_EQ(project().tops[1].endEffects.front(), "boiler without steam");
    EXPECT_EQ(selection.top(), project().tops[1].id);
    EXPECT_FALSE(hasErrors(validate(project())));
    EXPECT_EQ(session.undoStack()->undoText(), "Accept the proposed tree boiler without steam");
    ready();
    EXPECT_EQ(group("End effects with a tree")->childCount(), 1) << "now a tree answers for it";
    EXPECT_FALSE(group("End effects with a tree")->child(0)->text(1).isEmpty()) << "severity";
    session.undoStack()->undo();
    EXPECT_EQ(project(), boilers());
}

TEST_F(Proposed, WithoutItsTopThereIsNoTree) {
    tab(1);
    page.skeleton().choose("boiler without steam");
    ready();
    list("skeleton").topLevelItem(0)->setCheckState(0, Qt::Unchecked);
    page.skeleton().accept();
    EXPECT_TRUE(told.contains("top of the tree")) << told.toStdString();
    EXPECT_EQ(project(), boilers());
}

TEST_F(Proposed, ACommonCauseNeedsAFactorAndItsSource) {
    tab(2);
    QTreeWidget& causes = list("causes");
    ASSERT_EQ(causes.topLevelItemCount(), 2) << "one room, one type";
    causes.setFocus();
    causes.setCurrentItem(causes.topLevelItem(0));
    EXPECT_TRUE(page.findChild<QLabel*>("reason")->text().contains("counts on them"));
    EXPECT_TRUE(selection.marked().contains("pump-a.stops"));
    EXPECT_TRUE(selection.marked().contains("pump-b.stops"));
    auto* accept = page.findChild<QPushButton*>("acceptCause");
    QTest::mouseClick(accept, Qt::LeftButton);
    EXPECT_TRUE(told.contains("beta factor")) << told.toStdString();
    auto* beta = page.findChild<QLineEdit*>("beta");
    beta->setFocus();
    QTest::keyClicks(beta, "0,1");
    QTest::mouseClick(accept, Qt::LeftButton);
    EXPECT_TRUE(told.contains("where the beta factor comes from", Qt::CaseInsensitive))
        << told.toStdString();
    EXPECT_EQ(project(), boilers());
    auto* source = page.findChild<QLineEdit*>("source");
    source->setFocus();
    QTest::keyClicks(source, "our log");
    QTest::keyClick(source, Qt::Key_Return);
    ASSERT_EQ(project().commonCauses.size(), 1u);
    EXPECT_EQ(project().commonCauses[0].factors[0].value, 0.1);
    EXPECT_EQ(project().commonCauses[0].factors[0].source.document, "our log");
    EXPECT_EQ(session.undoStack()->undoText(), "Accept the common cause pump room");
    ready();
    EXPECT_EQ(causes.topLevelItemCount(), 0) << "both proposals are these two pumps";
    session.undoStack()->undo();
    EXPECT_EQ(project(), boilers());
    ready();
    EXPECT_EQ(causes.topLevelItemCount(), 2);
}

TEST_F(Proposed, AnEditDoesNotPullTheSelection) {
    tab(2);
    QTreeWidget& causes = list("causes");
    causes.setCurrentItem(causes.topLevelItem(0));
    selection.select({"other"});
    session.apply([](const Project& p) {
        auto changed = cutwater::project::edits::Changed{p, "x", {}, {}};
        changed.project.name = "another";
        return cutwater::project::edits::Result(changed);
    });
    ready();
    EXPECT_EQ(selection.current().node, "other");
    EXPECT_NE(causes.currentItem(), nullptr);
}
