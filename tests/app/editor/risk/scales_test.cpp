// SPDX-License-Identifier: GPL-3.0-or-later
// Scales and matrix of the project, typed in a table.
#include "app/editor/risk/scales_page.h"
#include "models/worksheet/risk_matrix.h"
#include "models/worksheet/scales.h"
#include "tests/app/editor/risk/risky_plant.h"

#include <QAbstractItemModelTester>
#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTableView>
#include <QTest>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace worksheet = cutwater::worksheet;

namespace {

class Scales : public testing::Test {
protected:
    Scales() {
        session.start(riskyPlant());
        page.resize(700, 500);
        page.show();
        QApplication::setActiveWindow(&page);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
    }
    void list(LevelList which) {
        auto* box = page.findChild<QComboBox*>("levelList");
        box->setCurrentIndex(box->findData(static_cast<int>(which)));
    }
    // As a person does: go there, type, Enter.
    void enter(int row, int column, const QString& text) {
        auto* table = page.findChild<QTableView*>("levels");
        table->setFocus();
        table->setCurrentIndex(levels.index(row, column));
        table->edit(levels.index(row, column));
        auto* edit = table->findChild<QLineEdit*>();
        ASSERT_NE(edit, nullptr);
        edit->selectAll();
        QTest::keyClicks(edit, text);
        QTest::keyClick(edit, Qt::Key_Return);
        QApplication::processEvents(); // it is taken over when the key is done
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
    void press(const char* button) {
        QTest::mouseClick(page.findChild<QPushButton*>(button), Qt::LeftButton);
    }
    QString wrong() { return page.findChild<QLabel*>("wrong")->text(); }
    const Project& project() { return *session.project(); }

    Session session;
    ScalesPage page{session};
    LevelModel& levels = page.levels();
    QAbstractItemModelTester tester{&levels, QAbstractItemModelTester::FailureReportingMode::Fatal};
};

} // namespace

TEST_F(Scales, AChangedMatrixIsTheProjectsOwnUntilItIsGivenBack) {
    list(LevelList::severities);
    EXPECT_FALSE(levels.isOwn());
    EXPECT_EQ(levels.rowCount(), 4) << "MSC-MEPC.2/Circ.12/Rev.2, appendix 4";
    enter(2, 1, "Grave");
    EXPECT_TRUE(levels.isOwn());
    EXPECT_EQ(project().worksheet.matrix.severities[2].word, "Grave");
    EXPECT_EQ(project().worksheet.matrix.frequencies.size(), 7u);
    EXPECT_NE(project().worksheet.matrix.name, worksheet::imoMatrix().name)
        << "it is no longer what the source says";
    EXPECT_TRUE(project().worksheet.matrix.source.empty());
    EXPECT_EQ(project().modes[0].severity, "Grave") << "it was Severe";
    EXPECT_EQ(session.undoStack()->undoText(), "Change the risk matrix");
    press("resetScale");
    EXPECT_EQ(project(), riskyPlant());
    session.undoStack()->undo();
    session.undoStack()->undo();
    EXPECT_EQ(project(), riskyPlant());
}

TEST_F(Scales, WhatIsNotSoundIsRefusedAndSaid) {
    list(LevelList::frequencies);
    enter(0, 3, "lots");
    EXPECT_TRUE(wrong().contains("lots")) << wrong().toStdString();
    enter(0, 3, "5");
    EXPECT_FALSE(wrong().isEmpty()) << "the values do not rise";
    enter(0, 0, "2");
    EXPECT_FALSE(wrong().isEmpty()) << "two of one index";
    EXPECT_EQ(project(), riskyPlant());
    enter(0, 3, "2e-5");
    EXPECT_TRUE(wrong().isEmpty()) << wrong().toStdString();
    EXPECT_EQ(project().worksheet.matrix.frequencies[0].value, 2e-5);
}

TEST_F(Scales, StepsComeAndGo) {
    list(LevelList::bands);
    EXPECT_EQ(levels.rowCount(), 0) << "the guidelines name no limit";
    ASSERT_TRUE(levels.addStep());
    enter(0, 0, "8");
    enter(0, 1, "tell the office");
    EXPECT_EQ(worksheet::bandOf(worksheet::matrixOf(project()), 9)->word, "tell the office");
    EXPECT_EQ(worksheet::bandOf(worksheet::matrixOf(project()), 7), nullptr);
    EXPECT_TRUE(levels.removeStep(0));
    EXPECT_EQ(levels.rowCount(), 0);
    list(LevelList::occurrence);
    const int steps = levels.rowCount();
    EXPECT_TRUE(levels.removeStep(0));
    EXPECT_EQ(static_cast<int>(project().worksheet.occurrenceScale.size()), steps - 1);
    EXPECT_TRUE(levels.addStep() == false && !wrong().isEmpty()) << "a rating of 11";
    enter(0, 1, "seldom here");
    EXPECT_EQ(worksheet::scalesOf(project()).occurrence[0].word, "seldom here");
    EXPECT_EQ(session.undoStack()->undoText(), "Change the occurrence scale");
    press("resetScale");
    EXPECT_TRUE(project().worksheet.occurrenceScale.empty());
    list(LevelList::detection);
    while (levels.rowCount() > 1)
        ASSERT_TRUE(levels.removeStep(0));
    EXPECT_FALSE(levels.removeStep(0));
    EXPECT_FALSE(wrong().isEmpty());
}
