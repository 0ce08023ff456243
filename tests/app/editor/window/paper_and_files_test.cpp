// SPDX-License-Identifier: GPL-3.0-or-later
// Report, import and export, and the forms about a top event and the project: in the real window.
#include "tests/app/editor/window/room.h"

#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/analyses/analysis_page.h"
#include "app/editor/analyses/result_view.h"
#include "app/editor/details/facts_dialogs.h"
#include "app/editor/exchange/exchange_desk.h"
#include "app/editor/exchange/import_dialog.h"
#include "app/editor/report/report_page.h"
#include "app/editor/window/help_window.h"
#include "models/project/edits/facts.h"

#include <QAbstractItemModelTester>
#include <QComboBox>
#include <QDialogButtonBox>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QListWidget>
#include <QPlainTextEdit>
#include <QTextBrowser>
#include <QTimer>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Paper : public Room {
protected:
    QByteArray bytesOf(const QString& path) {
        QFile file(path);
        return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
    }
    void openDemo() { openPath(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater"); }
    ReportPage& report() { return *window->findChild<ReportPage*>(); }
    ExchangeDesk& exchange() { return *window->findChild<ExchangeDesk*>(); }
    bool exported(const QString& path) {
        QSignalSpy finished(&report(), &ReportPage::finished);
        report().exportTo(path);
        return (!finished.isEmpty() || finished.wait(60000)) && finished[0][0].toBool();
    }
    // The dialog that a command opens, filled by `act` and answered.
    template <typename Dialog, typename Act>
    void inDialog(const char* command, Act act) {
        bool met = false;
        QTimer::singleShot(0, window.get(), [&] {
            auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
            if (!dialog) return;
            met = true;
            act(*dialog);
            if (dialog->isVisible()) dialog->reject();
        });
        trigger(command);
        EXPECT_TRUE(met) << command;
    }
};

template <typename Widget>
Widget* child(QWidget& parent, const char* name) {
    return parent.findChild<Widget*>(QLatin1String(name));
}

QPushButton* accepting(QDialog& dialog) {
    for (QAbstractButton* button : dialog.findChild<QDialogButtonBox*>()->buttons())
        if (dialog.findChild<QDialogButtonBox*>()->buttonRole(button) ==
            QDialogButtonBox::AcceptRole)
            return qobject_cast<QPushButton*>(button);
    return nullptr;
}

} // namespace

TEST_F(Paper, AResultIsSentNamedCommentedOrderedAndPrinted) {
    openDemo();
    auto* pane = window->findChild<AnalysesPane*>();
    AnalysisPage* page = pane->open("importance");
    ASSERT_TRUE(page);
    QSignalSpy finished(&page->runner(), &AnalysisRunner::finished);
    page->run();
    ASSERT_TRUE(finished.wait(60000));
    ASSERT_TRUE(page->newest());
    const int before = report().list().rowCount();
    auto* send = page->newest()->findChild<QPushButton*>("sendToReport");
    ASSERT_TRUE(send);
    QTest::mouseClick(send, Qt::LeftButton);
    QTest::mouseClick(send, Qt::LeftButton); // the same twice stands there once
    ASSERT_EQ(report().list().rowCount(), before + 1);

    trigger("file.report");
    EXPECT_TRUE(report().isVisible());
    auto* items = child<QListView>(report(), "reportItems");
    const QAbstractItemModelTester tester(&report().list(),
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    items->setCurrentIndex(report().list().index(before));
    auto* title = child<QLineEdit>(report(), "reportTitle");
    title->selectAll();
    QTest::keyClicks(title, "What counts most");
    child<QPlainTextEdit>(report(), "reportComment")->setPlainText("Look at <the> 24 V first.");
    QTest::mouseClick(child<QPushButton>(report(), "reportUp"), Qt::LeftButton);
    EXPECT_EQ(report().list().item(before - 1).shownTitle(), "What counts most");

    const QString path = folder.filePath("report.html");
    ASSERT_TRUE(exported(path));
    const QByteArray html = bytesOf(path);
    EXPECT_TRUE(html.contains("What counts most"));
    EXPECT_TRUE(html.contains("Look at &lt;the&gt; 24 V first."));
    EXPECT_TRUE(html.contains("(importance)"));
    EXPECT_TRUE(html.contains("<figure class=\"sheet\">"));
    EXPECT_LT(html.indexOf("What counts most"), html.indexOf("(cut-sets)")) << "the order";
    EXPECT_FALSE(html.contains("before the last changes"));

    // After an edit the result is an older one, and the paper says so.
    session().apply(
        [](const Project& p) { return edits::rename(p, p.events.front().id, "something else"); });
    EXPECT_TRUE(report().list().isStale(before - 1));
    ASSERT_TRUE(exported(path));
    EXPECT_TRUE(bytesOf(path).contains("before the last changes"));

    items->setCurrentIndex(report().list().index(before - 1));
    items->setFocus();
    QTest::keyClick(items, Qt::Key_Delete);
    EXPECT_EQ(report().list().rowCount(), before);
}

TEST_F(Paper, PreviewShowsWhatIsSavedAndABadPlaceIsOneSentence) {
    open(smallTree());
    trigger("file.report");
    QSignalSpy previewed(&report(), &ReportPage::previewed);
    QTest::mouseClick(child<QPushButton>(report(), "reportPreview"), Qt::LeftButton);
    ASSERT_TRUE(previewed.wait(30000));
    const QString text = report().sheet()->toPlainText();
    EXPECT_TRUE(text.contains("The top events")) << text.toStdString();
    EXPECT_TRUE(text.contains("Who signs decides"));
    EXPECT_FALSE(exported("/nowhere/at/all/report.html"));
    auto* state = child<QLabel>(report(), "reportState");
    EXPECT_TRUE(state->text().contains("choose another place")) << state->text().toStdString();
    EXPECT_FALSE(exported(folder.filePath("report.docx")));
    EXPECT_TRUE(state->text().contains(".pdf"));
    ASSERT_TRUE(exported(folder.filePath("report.pdf")));
    EXPECT_TRUE(bytesOf(folder.filePath("report.pdf")).startsWith("%PDF"));
    // Cancelled: no file, and the next one is made.
    report().exportTo(folder.filePath("cancelled.html"));
    QTest::mouseClick(child<QPushButton>(report(), "reportCancel"), Qt::LeftButton);
    QTest::qWait(300);
    EXPECT_FALSE(QFile::exists(folder.filePath("cancelled.html")));
    EXPECT_TRUE(exported(folder.filePath("next.html")));
}

TEST_F(Paper, EveryExchangePluginStandsInTheMenus) {
    int readers = 0, writers = 0;
    for (const auto& facts : host.plugins()) {
        if (facts.kind != cutwater::sdk::PluginKind::exchange) continue;
        const auto* plugin = host.exchange(facts.id);
        readers += plugin->canRead();
        writers += plugin->canWrite();
        const QString id = QString::fromStdString(facts.id);
        EXPECT_EQ(window->commands().find("file.import-" + id) != nullptr, plugin->canRead());
        EXPECT_EQ(window->commands().find("file.export-" + id) != nullptr, plugin->canWrite());
    }
    EXPECT_GT(readers, 0);
    EXPECT_GT(writers, readers);
}

TEST_F(Paper, AWorksheetGoesOutAndComesBack) {
    openDemo();
    const QString path = folder.filePath("sheet.csv");
    exchange().whereToSave = [&](QWidget*, const QString&, const QString& filter, const QString&) {
        EXPECT_TRUE(filter.contains("*.csv")) << filter.toStdString();
        return path;
    };
    QSignalSpy said(&exchange(), &ExchangeDesk::said);
    trigger("file.export-worksheet-csv");
    ASSERT_TRUE(said.wait(20000));
    ASSERT_TRUE(QFile::exists(path));
    const std::size_t modes = project().modes.size();

    session().start(smallTree());
    exchange().whatToOpen = [&](QWidget*, const QString&, const QString&) { return path; };
    std::size_t wouldCome = 0;
    exchange().decide = [&](QWidget*, const Incoming& incoming, const Project& current) {
        ImportDialog dialog(incoming, current, nullptr);
        EXPECT_TRUE(incoming.project);
        wouldCome = incoming.project ? incoming.project->modes.size() : 0;
        EXPECT_TRUE(incoming.merged) << incoming.whyNotMerged.toStdString();
        return Into::thisProject;
    };
    said.clear();
    trigger("file.import-worksheet-csv");
    ASSERT_TRUE(said.wait(20000));
    EXPECT_EQ(wouldCome, modes);
    EXPECT_EQ(project().modes.size(), modes + smallTree().modes.size());
    EXPECT_EQ(session().undoStack()->undoText(), "Import sheet.csv");
    session().undoStack()->undo();
    EXPECT_TRUE(project() == smallTree());

    exchange().decide = [](QWidget*, const Incoming&, const Project&) { return Into::newProject; };
    said.clear();
    trigger("file.import-worksheet-csv");
    ASSERT_TRUE(said.wait(20000));
    EXPECT_EQ(project().modes.size(), modes);
    EXPECT_TRUE(session().isDirty());
    EXPECT_EQ(session().path(), "");
}

TEST_F(Paper, AFailedImportLeavesTheDocumentAndNamesTheLine) {
    const QString path = open(smallTree());
    QFile bad(folder.filePath("bad.csv"));
    ASSERT_TRUE(bad.open(QIODevice::WriteOnly));
    bad.write("component,mode,severity-rating\nFAN,stops,much\n");
    bad.close();
    exchange().whatToOpen = [&](QWidget*, const QString&, const QString&) {
        return bad.fileName();
    };
    QStringList shown;
    exchange().decide = [&](QWidget*, const Incoming& incoming, const Project& current) {
        ImportDialog dialog(incoming, current, nullptr);
        auto* list = child<QListWidget>(dialog, "importProblems");
        for (int i = 0; i < list->count(); ++i)
            shown << list->item(i)->text();
        return dialog.choice();
    };
    QSignalSpy failed(&exchange(), &ExchangeDesk::failed);
    trigger("file.import-worksheet-csv");
    ASSERT_TRUE(failed.wait(20000));
    ASSERT_FALSE(shown.isEmpty());
    EXPECT_TRUE(shown[0].contains("Line 2") || shown[0].contains("2")) << shown[0].toStdString();
    EXPECT_TRUE(project() == smallTree());
    EXPECT_EQ(session().path(), path);
    EXPECT_FALSE(told().isEmpty());
    // A place that cannot be written.
    exchange().whereToSave = [](QWidget*, const QString&, const QString&, const QString&) {
        return QString("/nowhere/at/all/sheet.csv");
    };
    failed.clear();
    trigger("file.export-worksheet-csv");
    ASSERT_TRUE(failed.wait(20000));
    EXPECT_TRUE(told().contains("choose another place")) << told().toStdString();
}

TEST_F(Paper, TheFactsOfATopEventAreOneEdit) {
    open(smallTree());
    inDialog<TopFactsDialog>("edit.top-facts", [&](TopFactsDialog& dialog) {
        child<QLineEdit>(dialog, "topName")->setText("no steam");
        child<QLineEdit>(dialog, "topMode")->setText("at sea");
        child<QComboBox>(dialog, "topSeverity")->setCurrentText("severe");
        child<QPlainTextEdit>(dialog, "topEffects")->setPlainText("cargo cools\n\nvoyage stops");
        QTest::mouseClick(accepting(dialog), Qt::LeftButton);
    });
    const TopEvent& top = project().tops.front();
    EXPECT_EQ(top.name, "no steam");
    EXPECT_EQ(top.operatingMode, "at sea");
    EXPECT_EQ(top.severity, "severe");
    EXPECT_EQ(top.endEffects, (std::vector<std::string>{"cargo cools", "voyage stops"}));
    EXPECT_EQ(session().undoStack()->undoText(), "Change top event T1");
    session().undoStack()->undo();
    EXPECT_TRUE(project() == smallTree());
}

TEST_F(Paper, TheFactsOfTheProjectAreOneEditAndABadDateIsSaid) {
    open(smallTree());
    inDialog<ProjectFactsDialog>("file.facts", [&](ProjectFactsDialog& dialog) {
        child<QLineEdit>(dialog, "projectName")->setText("Boiler 1");
        child<QLineEdit>(dialog, "projectRevision")->setText("B");
        child<QPlainTextEdit>(dialog, "projectAssumptions")->setPlainText("at rated load");
        child<QLineEdit>(dialog, "projectDate")->setText("yesterday");
        QTest::mouseClick(accepting(dialog), Qt::LeftButton);
        EXPECT_TRUE(dialog.isVisible());
        EXPECT_TRUE(child<QLabel>(dialog, "factsSentence")->text().contains("no date"));
        child<QLineEdit>(dialog, "projectDate")->setText("2026-03-02");
        QTest::mouseClick(accepting(dialog), Qt::LeftButton);
    });
    EXPECT_EQ(project().name, "Boiler 1");
    EXPECT_EQ(project().revision, "B");
    EXPECT_EQ(project().date, "2026-03-02");
    EXPECT_EQ(project().assumptions, std::vector<std::string>{"at rated load"});
    EXPECT_EQ(session().undoStack()->undoText(), "Change the facts of the project");
    session().undoStack()->undo();
    EXPECT_TRUE(project() == smallTree());
}
