// SPDX-License-Identifier: GPL-3.0-or-later
// Every analysis that the host finds, in the pane, with the demo project, held to what the shell
// says about the same file.
#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/analyses/analysis_page.h"
#include "app/editor/analyses/parameter_field.h"
#include "app/editor/analyses/parameter_form.h"
#include "app/editor/analyses/plugins_dialog.h"
#include "app/editor/analyses/result_view.h"

#include "models/document/document.h"
#include "tests/app/cli/process.h"
#include "tests/plugins/analyses/plants.h"

#include <QAction>
#include <QApplication>
#include <QComboBox>
#include <QSignalSpy>
#include <QTabWidget>
#include <QTableWidget>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater;
using editor::AnalysesPane;
using editor::AnalysisPage;
using testing::HasSubstr;

namespace {

const char* const kDemo = CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";

std::string fixture(const std::string& id) {
    return std::string(CUTWATER_FIXTURES) + '/' + id;
}

std::shared_ptr<const project::Project> demo() {
    static const auto loaded = document::load(kDemo);
    if (!loaded) return nullptr;
    return {std::shared_ptr<const project::Project>(), &loaded->project};
}

bool ended(AnalysisPage& page) {
    return QTest::qWaitFor([&] { return !page.runner().isRunning(); }, 120000);
}

// Values that keep a long analysis short, and those that it cannot do without.
const std::map<std::string, std::vector<std::pair<std::string, std::string>>>& wishes() {
    static const std::map<std::string, std::vector<std::pair<std::string, std::string>>> all = {
        {"cut-sets", {{"top", "T1-1"}}},
        {"path-sets", {{"top", "T2-1"}, {"max-order", "3"}}},
        {"uncertainty", {{"top", "T2-1"}, {"samples", "200"}}},
        {"over-time", {{"top", "T4-1"}, {"period", "500"}}},
        {"sensitivity", {{"top", "T2-1"}}},
        {"safety-function", {{"top", "T4-1"}}},
        {"sweep", {{"top", "T4-1"}, {"vary", "pump-run"}, {"steps", "5"}}},
    };
    return all;
}

} // namespace

TEST(AnalysesPane, EveryAnalysisHasItsEntryAndItsPage) {
    sdk::Host host({CUTWATER_PLUGINS});
    editor::Selection selection;
    AnalysesPane pane(host, &selection);
    pane.resize(1100, 700);
    pane.show();
    pane.setProject(demo());
    std::size_t analyses = 0;
    for (const sdk::PluginFacts& facts : host.plugins())
        analyses += facts.kind == sdk::PluginKind::analysis ? 1 : 0;
    ASSERT_GE(analyses, 12u);
    EXPECT_EQ(pane.actions().size(), analyses);
    QSignalSpy opened(&pane, &AnalysesPane::opened);
    for (QAction* const action : pane.actions()) {
        SCOPED_TRACE(action->objectName().toStdString());
        EXPECT_FALSE(action->statusTip().isEmpty());
        action->trigger();
        auto* const page = qobject_cast<AnalysisPage*>(pane.tabs()->currentWidget());
        ASSERT_TRUE(page);
        EXPECT_EQ("analysis-" + page->facts().id, action->objectName().toStdString());
        action->trigger(); // no second one
    }
    EXPECT_EQ(pane.tabs()->count(), static_cast<int>(analyses));
    EXPECT_EQ(opened.count(), static_cast<int>(2 * analyses));
    EXPECT_FALSE(pane.open("nothing"));
}

TEST(AnalysesPane, AnswersAsTheShellDoes) {
    sdk::Host host({CUTWATER_PLUGINS});
    editor::Selection selection;
    AnalysesPane pane(host, &selection);
    pane.resize(1100, 700);
    pane.show();
    pane.setProject(demo());
    int compared = 0;
    for (const sdk::PluginFacts& facts : host.plugins()) {
        if (facts.kind != sdk::PluginKind::analysis) continue;
        SCOPED_TRACE(facts.id);
        AnalysisPage* const page = pane.open(facts.id);
        std::vector<std::string> words{facts.id, kDemo, "--format", "csv", "--quiet"};
        if (const auto wish = wishes().find(facts.id); wish != wishes().end())
            for (const auto& [name, value] : wish->second) {
                ASSERT_TRUE(page->form()->field(name)) << name;
                page->form()->field(name)->type(QString::fromStdString(value));
                words.insert(words.end(), {"--" + name, value});
            }
        page->run();
        ASSERT_TRUE(ended(*page));
        const shell::Ran ran = shell::cutwater(words);
        if (ran.code != 0) { // one that cannot do without values that are not known here
            EXPECT_FALSE(page->newest());
            EXPECT_FALSE(wishes().contains(facts.id)) << ran.err;
            continue;
        }
        ASSERT_TRUE(page->newest());
        EXPECT_EQ(page->newest()->asCsv().toStdString(), ran.out);
        // Each table and plot can be looked at.
        for (int item = 0; item < page->newest()->chooser()->count(); ++item) {
            page->newest()->chooser()->setCurrentIndex(item);
            EXPECT_FALSE(page->newest()->page()->grab().isNull());
        }
        ++compared;
    }
    EXPECT_GE(compared, 12);
    EXPECT_TRUE(pane.failures().empty());
}

TEST(AnalysesPane, PagesFollowTheProjectWhenTheyAreLookedAt) {
    sdk::Host host({CUTWATER_PLUGINS});
    editor::Selection selection;
    AnalysesPane pane(host, &selection);
    const auto first = std::make_shared<const project::Project>(plants::twoPumps());
    const auto second = std::make_shared<const project::Project>(plants::twoPumps());
    pane.setProject(first);
    pane.show();
    AnalysisPage* const sets = pane.open("cut-sets");
    AnalysisPage* const chance = pane.open("probability");
    chance->run();
    ASSERT_TRUE(ended(*chance));
    EXPECT_EQ(pane.results().size(), 1u);
    pane.setProject(second);
    EXPECT_EQ(chance->project(), second);
    EXPECT_EQ(sets->project(), first); // out of sight
    pane.open("cut-sets");
    EXPECT_EQ(sets->project(), second);
    pane.hide();
    pane.setProject(first);
    EXPECT_EQ(sets->project(), second);
    pane.show();
    EXPECT_EQ(sets->project(), first);
}

TEST(AnalysesPane, ATabIsClosedByKey) {
    sdk::Host host({CUTWATER_PLUGINS});
    editor::Selection selection;
    AnalysesPane pane(host, &selection);
    pane.show();
    pane.setProject(std::make_shared<const project::Project>(plants::twoPumps()));
    pane.open("probability");
    AnalysisPage* const page = pane.open("cut-sets");
    pane.activateWindow();
    ASSERT_TRUE(QTest::qWaitForWindowActive(&pane));
    page->form()->field("limit")->editor()->setFocus();
    QTest::keyClick(page->form()->field("limit")->editor(), Qt::Key_F4, Qt::ControlModifier);
    ASSERT_EQ(pane.tabs()->count(), 1);
    EXPECT_EQ(pane.tabs()->tabText(0), "Probability of the top events");
}

TEST(AnalysesPane, ATabIsClosedWhileItRuns) {
    sdk::Host host({fixture("fixture-good")});
    editor::Selection selection;
    AnalysesPane pane(host, &selection);
    pane.show();
    pane.setProject(std::make_shared<const project::Project>(plants::twoPumps()));
    AnalysisPage* const page = pane.open("fixture-good");
    page->form()->field("wait")->type("yes");
    page->run();
    QTest::qWait(20);
    QSignalSpy destroyed(page, &QObject::destroyed);
    pane.close(0);
    EXPECT_EQ(pane.tabs()->count(), 0);
    EXPECT_TRUE(QTest::qWaitFor([&] { return destroyed.count() == 1; }, 10000));
    EXPECT_TRUE(pane.open("fixture-good")); // and can be opened again
}

TEST(AnalysesPane, SaysWhereThereIsNothing) {
    sdk::Host host({fixture("fixture-stranger")});
    editor::Selection selection;
    AnalysesPane pane(host, &selection);
    EXPECT_TRUE(pane.actions().empty());
    EXPECT_FALSE(pane.tabs()->isVisibleTo(&pane));
}

TEST(PluginsDialog, ListsWhatWorksAndWhatDoesNot) {
    sdk::Host host({CUTWATER_PLUGINS, fixture("fixture-stranger"), fixture("fixture-old-interface"),
                    fixture("fixture-misbehaves"), fixture("fixture-throws-when-made")});
    editor::Selection selection;
    AnalysesPane pane(host, &selection);
    pane.setProject(std::make_shared<const project::Project>(plants::twoPumps()));
    AnalysisPage* const bad = pane.open("fixture-misbehaves");
    bad->run();
    ASSERT_TRUE(ended(*bad));
    pane.open("fixture-throws-when-made");
    const editor::PluginsDialog dialog(host, pane.failures(), nullptr);
    const QTableWidget& table = *dialog.table();
    std::map<std::string, std::string> states, says;
    for (int row = 0; row < table.rowCount(); ++row) {
        states[table.item(row, 1)->text().toStdString()] = table.item(row, 0)->text().toStdString();
        says[table.item(row, 1)->text().toStdString()] = table.item(row, 3)->text().toStdString();
    }
    EXPECT_THAT(states["fixture-stranger.so"], HasSubstr("left out"));
    EXPECT_THAT(states["fixture-old-interface.so"], HasSubstr("left out"));
    EXPECT_THAT(states["fixture-throws-when-made.so"], HasSubstr("left out"));
    EXPECT_THAT(says["fixture-throws-when-made.so"], HasSubstr("failed while it was made"));
    EXPECT_THAT(states["fixture-misbehaves.so"], HasSubstr("has failed"));
    EXPECT_THAT(says["fixture-misbehaves.so"], HasSubstr("the bilge is full"));
    EXPECT_THAT(states["Minimal cut sets 0.1.0"], HasSubstr("in use"));
    EXPECT_THAT(table.item(0, 0)->text().toStdString(), HasSubstr("left out")); // these first
}
