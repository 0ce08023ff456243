// SPDX-License-Identifier: GPL-3.0-or-later
// One analysis from form to result, with plug-ins that behave and plug-ins that do not.
#include "app/editor/analyses/analysis_page.h"
#include "app/editor/analyses/parameter_field.h"
#include "app/editor/analyses/parameter_form.h"
#include "app/editor/analyses/result_view.h"
#include "app/editor/analyses/table_page.h"

#include "tests/plugins/analyses/plants.h"

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QSignalSpy>
#include <QTableView>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

using namespace cutwater;
using editor::AnalysisPage;
using editor::TablePage;
using testing::HasSubstr;

namespace {

std::string fixture(const std::string& id) {
    return std::string(CUTWATER_FIXTURES) + '/' + id;
}

class Page : public testing::Test {
protected:
    AnalysisPage& open(const std::string& id,
                       const project::Project& project = plants::twoPumps()) {
        const sdk::PluginFacts* const facts = host.find(sdk::PluginKind::analysis, id);
        EXPECT_TRUE(facts) << id;
        page = std::make_unique<AnalysisPage>(host, *facts, &selection);
        failed = std::make_unique<QSignalSpy>(page.get(), &AnalysisPage::pluginFailed);
        page->resize(1000, 600);
        page->show();
        page->setProject(std::make_shared<const project::Project>(project));
        return *page;
    }
    bool ended() {
        return QTest::qWaitFor([&] { return !page->runner().isRunning(); }, 30000);
    }
    void runAndWait() {
        QTest::mouseClick(button("run"), Qt::LeftButton);
        ASSERT_TRUE(ended());
    }
    QPushButton* button(const char* name) const { return page->findChild<QPushButton*>(name); }
    std::string state() const { return page->findChild<QLabel*>("state")->text().toStdString(); }
    // The sentences said where there is no result.
    std::string problems() const {
        const auto* const list = page->findChild<QListView*>("problems");
        std::string all;
        if (!list->isVisible()) return all;
        for (int row = 0; row < list->model()->rowCount(); ++row)
            all += list->model()->index(row, 0).data().toString().toStdString() + '\n';
        return all;
    }

    sdk::Host host{{CUTWATER_PLUGINS, fixture("fixture-good"), fixture("fixture-misbehaves"),
                    fixture("fixture-throws-when-made")}};
    editor::Selection selection;
    std::unique_ptr<AnalysisPage> page;
    std::unique_ptr<QSignalSpy> failed;
};

} // namespace

TEST_F(Page, FromFormToResult) {
    open("fixture-good");
    EXPECT_THAT(state(), HasSubstr("Nothing computed yet"));
    EXPECT_FALSE(button("cancel")->isEnabled());
    page->form()->field("word")->type("steam");
    page->form()->field("hours")->type("2 d");
    runAndWait();
    EXPECT_EQ(state(), "\u2714 Current");
    ASSERT_TRUE(page->newest());
    EXPECT_EQ(page->newest()->caption().toStdString(), "word steam, hours 2 d");
    const sdk::Table& table = page->newest()->result()->tables.at(0);
    EXPECT_EQ(std::get<std::string>(table.rows[0][0]), "steam");
    EXPECT_EQ(std::get<double>(table.rows[0][1]), 3);
    EXPECT_EQ(std::get<double>(table.rows[1][1]), 48);
}

TEST_F(Page, WrongInputIsNotRun) {
    open("fixture-good");
    page->form()->field("count")->type("99");
    QTest::mouseClick(button("run"), Qt::LeftButton);
    EXPECT_FALSE(page->runner().isRunning());
    EXPECT_THAT(state(), HasSubstr("Not run"));
    EXPECT_TRUE(page->form()->field("count")->complaint()->isVisible());
    EXPECT_FALSE(page->newest());
}

TEST_F(Page, CancelEndsARun) {
    open("fixture-good");
    page->form()->field("wait")->type("yes");
    page->form()->field("word")->editor()->setFocus();
    QTest::keyClick(page->form()->field("word")->editor(), Qt::Key_Return); // runs, too
    ASSERT_TRUE(page->runner().isRunning());
    EXPECT_TRUE(page->findChild<QProgressBar*>("progress")->isVisible());
    EXPECT_FALSE(button("run")->isEnabled());
    QTest::qWait(30);
    QTest::mouseClick(button("cancel"), Qt::LeftButton);
    EXPECT_FALSE(page->runner().isRunning());
    EXPECT_THAT(state(), HasSubstr("Cancelled"));
    EXPECT_THAT(problems(), HasSubstr("cancelled"));
    EXPECT_TRUE(button("run")->isEnabled());
    EXPECT_TRUE(QTest::qWaitFor([&] { return !page->runner().isBusy(); }, 10000));
    // The next run answers, and the old one's ending does not disturb it.
    page->form()->field("wait")->type("no");
    runAndWait();
    EXPECT_EQ(state(), "\u2714 Current");
    EXPECT_EQ(problems(), "");
}

TEST_F(Page, ClosedWhileItRuns) {
    open("fixture-good");
    page->form()->field("wait")->type("yes");
    page->run();
    QTest::qWait(20);
    page.reset(); // stops the run and waits for its end
}

// Two hundred snapshots, each analysed, some replaced half way by the next: every run that is not
// replaced answers, no other one does, and no snapshot is held any longer.
TEST_F(Page, TwoHundredQuickRuns) {
    const sdk::PluginFacts& facts = *host.find(sdk::PluginKind::analysis, "cut-sets");
    const sdk::Analysis& analysis = *host.analysis("cut-sets");
    std::vector<std::weak_ptr<const project::Project>> snapshots;
    editor::AnalysisRunner runner;
    int answers = 0, awaited = 0;
    double last = 0;
    QObject::connect(&runner, &editor::AnalysisRunner::finished, &runner, [&](const auto& answer) {
        ++answers;
        ASSERT_TRUE(answer->content);
        last = plants::number(plants::table(*answer->content, "sets"), 0, "probability");
    });
    for (int i = 0; i < 200; ++i) {
        auto plant = std::make_shared<project::Project>(plants::twoPumps());
        plant->events[2] = plants::event("panel", 0.001 * (i + 1));
        snapshots.emplace_back(plant);
        runner.run(analysis, facts, std::move(plant), {});
        if (i % 4 == 0) {
            ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.isRunning(); }, 10000));
            ++awaited;
            EXPECT_NEAR(last, 0.001 * (i + 1), 1e-15);
        }
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return !runner.isRunning() && !runner.isBusy(); }, 10000));
    EXPECT_NEAR(last, 0.2, 1e-15);
    EXPECT_GE(answers, awaited + 1);
    ASSERT_TRUE(QTest::qWaitFor(
        [&] {
            return std::all_of(snapshots.begin(), snapshots.end(),
                               [](const auto& snapshot) { return snapshot.expired(); });
        },
        10000));
}

TEST_F(Page, AResultOfBeforeIsMarkedStale) {
    open("fixture-good");
    runAndWait();
    EXPECT_EQ(state(), "\u2714 Current");
    page->setProject(std::make_shared<const project::Project>(plants::twoPumps()));
    EXPECT_THAT(state(), HasSubstr("\u27F3 Stale"));
    EXPECT_TRUE(page->newest()); // still in sight
    runAndWait();
    EXPECT_EQ(state(), "\u2714 Current");
    // Changed while it ran: the answer is of before.
    page->run();
    page->setProject(std::make_shared<const project::Project>(plants::twoPumps()));
    ASSERT_TRUE(ended());
    EXPECT_THAT(state(), HasSubstr("Stale"));
}

TEST_F(Page, APluginThatMisbehavesIsNamed) {
    open("fixture-misbehaves");
    for (const char* const how :
         {"exception", "number", "nothing", "ragged", "stray-mark", "silent", "memory"}) {
        SCOPED_TRACE(how);
        page->form()->field("how")->type(how);
        failed->clear();
        runAndWait();
        EXPECT_FALSE(page->newest());
        EXPECT_THAT(problems(), HasSubstr("fixture-misbehaves"));
        EXPECT_EQ(failed->count(), 1);
    }
    page->form()->field("how")->type("exception");
    runAndWait();
    EXPECT_THAT(problems(), HasSubstr("the bilge is full"));
}

TEST_F(Page, APluginThatCannotBeUsedSaysWhy) {
    open("fixture-throws-when-made");
    EXPECT_THAT(state(), HasSubstr("cannot be used"));
    EXPECT_THAT(problems(), HasSubstr("fixture-throws-when-made"));
    EXPECT_FALSE(button("run")->isEnabled());
    project::Project plant = plants::twoPumps();
    plant.name = "parameters throw";
    open("fixture-misbehaves", plant);
    EXPECT_THAT(problems(), HasSubstr("no parameters"));
    EXPECT_FALSE(button("run")->isEnabled());
    // With another project it can.
    page->setProject(std::make_shared<const project::Project>(plants::twoPumps()));
    EXPECT_TRUE(button("run")->isEnabled());
}

TEST_F(Page, AnErrorOfTheProjectIsSaidWithAJump) {
    project::Project plant = plants::twoPumps();
    plant.gates[1].inputs.clear();
    open("probability", plant);
    runAndWait();
    EXPECT_THAT(state(), HasSubstr("No answer"));
    EXPECT_THAT(problems(), HasSubstr("no-flow"));
    auto* const list = page->findChild<QListView*>("problems");
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                      list->visualRect(list->model()->index(0, 0)).center());
    EXPECT_TRUE(selection.isSelected("no-flow"));
}

TEST_F(Page, ARowIsShownInTheTree) {
    open("cut-sets");
    runAndWait();
    ASSERT_TRUE(page->newest());
    page->newest()->chooser()->setCurrentIndex(2); // the sets
    auto* const sets = qobject_cast<TablePage*>(page->newest()->page());
    ASSERT_TRUE(sets);
    sets->view()->selectRow(1);
    EXPECT_EQ(selection.marked(), (std::set<project::Id>{"pump-a", "pump-b"}));
    EXPECT_THAT(selection.reason().toStdString(), HasSubstr("pump-a, pump-b"));
    // A row about a whole tree shows that tree.
    page->newest()->chooser()->setCurrentIndex(0);
    qobject_cast<TablePage*>(page->newest()->page())->view()->selectRow(0);
    EXPECT_EQ(selection.top(), "T1");
    EXPECT_EQ(selection.marked(), std::set<project::Id>{"stops"});
}

TEST_F(Page, AKeptResultStandsBesideTheNext) {
    open("cut-sets");
    EXPECT_FALSE(button("keep")->isEnabled());
    runAndWait();
    page->newest()->chooser()->setCurrentIndex(2);
    QTest::mouseClick(button("keep"), Qt::LeftButton);
    ASSERT_TRUE(page->kept());
    page->form()->field("max-order")->type("1");
    runAndWait();
    EXPECT_EQ(page->newest()->result()->tables.at(2).rows.size(), 1u);
    EXPECT_EQ(page->kept()->result()->tables.at(2).rows.size(), 2u);
    EXPECT_EQ(page->newest()->chooser()->currentIndex(), 2); // the same table as before
    EXPECT_EQ(page->newest()->caption(), "max-order 1");
    EXPECT_EQ(page->kept()->caption(), "Kept: with the standards");
    QTest::qWait(10);
    EXPECT_GT(page->kept()->width(), 200);
    EXPECT_GT(page->newest()->width(), 200);
    QTest::mouseClick(button("closeKept"), Qt::LeftButton);
    EXPECT_FALSE(page->kept());
}
