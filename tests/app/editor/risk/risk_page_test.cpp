// SPDX-License-Identifier: GPL-3.0-or-later
// The risk matrix: computed when somebody looks, stale after an edit, chosen by click and keys,
// written as picture and table.
#include "app/editor/analyses/table_page.h"
#include "app/editor/risk/risk_board.h"
#include "app/editor/risk/risk_page.h"
#include "models/project/edits/plant.h"
#include "tests/app/editor/risk/risky_plant.h"

#include <QApplication>
#include <QCheckBox>
#include <QClipboard>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QMimeData>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Risks : public testing::Test {
protected:
    Risks() {
        session.start(riskyPlant());
        page.resize(1300, 700);
        QObject::connect(&page, &RiskPage::sentence, &page,
                         [this](const QString& text) { told = text; });
    }
    void look() {
        page.show();
        QApplication::setActiveWindow(&page);
        EXPECT_TRUE(QTest::qWaitForWindowActive(&page));
        ready();
    }
    void ready() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !page.risks().isStale(); }, 10000));
    }
    const RiskBoard::Cell* cell(int frequency, int severity) {
        for (const auto& each : page.board().cells())
            if (each.frequency == frequency && each.severity == severity) return &each;
        return nullptr;
    }
    QString column(int row, int column) {
        return page.table()->view()->model()->index(row, column).data().toString();
    }
    int rows() { return page.table()->view()->model()->rowCount(); }

    Session session;
    Selection selection;
    RiskPage page{session, selection};
    QString told;
};

} // namespace

TEST_F(Risks, NothingIsComputedWhileNobodyLooks) {
    QTest::qWait(400);
    EXPECT_EQ(page.risks().answer<RiskAnswer>(), nullptr);
    look();
    ASSERT_NE(page.risks().answer<RiskAnswer>(), nullptr);
    // 1 a year is FI 6, 7 frequencies by 4 severities (MSC-MEPC.2/Circ.12/Rev.2, appendix 4).
    EXPECT_EQ(page.board().cells().size(), 28u);
    EXPECT_EQ(rows(), 3);
    EXPECT_EQ(column(0, 0), "9") << "RI = 6 + 3, the worst first";
    EXPECT_EQ(column(1, 0), "7") << "the top event: RI = 6 + 1";
}

TEST_F(Risks, AnEditMakesItStaleAndThenItIsCurrent) {
    look();
    FailureModel model = session.project()->modes[0].model;
    Quantity rate = *model.find(Role::rate);
    rate.value = 0.001;
    model.set(Role::rate, rate);
    session.apply([&](const Project& p) { return edits::setModeModel(p, "FP-1.stops", model); });
    EXPECT_TRUE(page.risks().isStale());
    EXPECT_TRUE(page.findChild<QLabel*>("riskState")->text().contains("tale"));
    ready();
    EXPECT_EQ(column(0, 0), "6") << "RI = 3 + 3";
    EXPECT_FALSE(page.findChild<QLabel*>("riskState")->text().contains("tale"));
}

TEST_F(Risks, AClickShowsWhatStandsInTheCell) {
    look();
    ASSERT_NE(cell(6, 3), nullptr);
    const QPoint at = page.board().onScreen(cell(6, 3)->box).center().toPoint();
    QTest::mouseClick(&page.board(), Qt::LeftButton, {}, at);
    EXPECT_EQ(rows(), 1);
    EXPECT_EQ(column(0, 2), "FP-1: stops");
    EXPECT_TRUE(page.findChild<QLabel*>("riskCell")->text().contains("risk index 9"));
    QTest::keyClick(&page.board(), Qt::Key_Left);
    EXPECT_EQ(rows(), 0) << "FI 6, SI 2";
    QTest::keyClick(&page.board(), Qt::Key_Left);
    EXPECT_EQ(rows(), 1);
    EXPECT_EQ(column(0, 1), "top event");
    QTest::keyClick(&page.board(), Qt::Key_Up);
    EXPECT_EQ(page.board().chosen()->frequency, 7);
    QTest::keyClick(&page.board(), Qt::Key_Escape);
    EXPECT_EQ(rows(), 3);
}

TEST_F(Risks, ARowSelects) {
    look();
    emit page.table()->rowChosen({"pump"}, {});
    EXPECT_EQ(selection.current().node, "pump");
    emit page.table()->rowChosen({"top"}, {});
    EXPECT_EQ(selection.top(), "T1");
    auto* view = page.table()->view();
    view->setCurrentIndex(view->model()->index(0, 2));
    EXPECT_EQ(selection.current().node, "pump");
    emit page.table()->rowChosen({}, {});
    EXPECT_FALSE(told.isEmpty()) << "in no tree";
}

TEST_F(Risks, PictureAndTableAreWritten) {
    look();
    const QTemporaryDir folder;
    QString name = "m.svg";
    page.whereToSave = [&](const QString&, const QString&, const QString&) {
        return folder.filePath(name);
    };
    const auto read = [&] {
        QFile file(folder.filePath(name));
        EXPECT_TRUE(file.open(QIODevice::ReadOnly));
        return file.readAll();
    };
    page.savePicture();
    EXPECT_TRUE(read().contains("<svg"));
    name = "m.png";
    page.savePicture();
    EXPECT_GT(QImage::fromData(read()).width(), 1000);
    name = "m.csv";
    page.saveTable();
    EXPECT_TRUE(read().contains("stops"));
    name = "no/such/folder.svg";
    page.savePicture();
    EXPECT_TRUE(told.contains("cannot be written"));
    page.copyPicture();
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasImage());
    EXPECT_TRUE(QApplication::clipboard()->mimeData()->hasFormat("image/svg+xml"));
    QApplication::clipboard()->clear();
}

TEST_F(Risks, CommonCausesAreCountedOnWish) {
    Project project = riskyPlant();
    project.events.push_back(smallEvent("other", "other"));
    project.events[1].model = project.modes[0].model;
    project.gates[0].kind = GateKind::andGate;
    project.gates[0].inputs.push_back({"other", {}});
    CommonCauseGroup group;
    group.id = "pair";
    Quantity beta;
    beta.value = 0.5;
    beta.unit = Unit::number;
    group.factors = {beta};
    group.members = {{"pump", {}}, {"other", {}}};
    project.commonCauses = {group};
    session.start(project);
    look();
    auto* causes = page.findChild<QCheckBox*>("commonCauses");
    ASSERT_TRUE(causes->isChecked());
    const auto top = [this] { return page.risks().answer<RiskAnswer>()->picture.items[0]; };
    // Half of 1 a year takes both: FI 6 at 0.5 a year (nearest to 1), else far below.
    EXPECT_NEAR(*top().perYear, 0.5, 0.01);
    EXPECT_TRUE(page.findChild<QLabel*>("riskState")->text().contains("Common causes are counted"));
    causes->click();
    EXPECT_TRUE(page.risks().isStale());
    ready();
    EXPECT_LT(*top().perYear, 0.001);
    EXPECT_TRUE(page.findChild<QLabel*>("riskState")->text().contains("independent"));
}

TEST_F(Risks, TheChosenCellStaysWhereThereIsOne) {
    look();
    page.board().choose(0);
    const int frequency = page.board().chosen()->frequency;
    session.apply([](const Project& p) { return edits::setPartWords(p, "PS", "PS x"); });
    ready();
    ASSERT_NE(page.board().chosen(), nullptr);
    EXPECT_EQ(page.board().chosen()->frequency, frequency);
}
