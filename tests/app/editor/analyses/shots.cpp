// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the live answers and the analyses, light and dark, to be looked at:
// editor_shots PROJECT FOLDER
#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/analyses/analysis_page.h"
#include "app/editor/analyses/parameter_field.h"
#include "app/editor/analyses/parameter_form.h"
#include "app/editor/analyses/plugins_dialog.h"
#include "app/editor/analyses/result_view.h"
#include "app/editor/answers/answer_panel.h"
#include "models/document/document.h"
#include "tests/app/editor/plant/plant_shots.h"
#include "tests/app/editor/worksheet/worksheet_shots.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QListView>
#include <QStyleFactory>
#include <QTest>

#include <cstdio>

using namespace cutwater;
using namespace cutwater::editor;

namespace {

struct Shot {
    const char* analysis;
    std::vector<std::pair<const char*, const char*>> fields;
    const char* shown; // what the chooser's entry begins with
};

const std::vector<Shot> kShots = {
    {"single-failures", {{"top", "T1-1"}}, "Table: Failures that show"},
    {"cut-sets", {{"top", "T1-1"}, {"max-order", "3"}}, "Table: The sets"},
    {"importance", {{"top", "T1-1"}}, "Plot"},
    {"over-time", {{"top", "T4-1"}}, "Plot"},
    {"sensitivity", {{"top", "T1-1"}}, "Plot"},
    {"uncertainty", {{"top", "T1-1"}, {"samples", "2000"}}, "Plot: T1-1: Prob"},
    {"probability", {}, "Table"},
};

QPalette darkPalette() {
    QPalette dark(QColor(45, 48, 52), QColor(35, 37, 40));
    dark.setColor(QPalette::Base, QColor(30, 32, 35));
    dark.setColor(QPalette::AlternateBase, QColor(40, 43, 47));
    dark.setColor(QPalette::Highlight, QColor(38, 97, 156));
    dark.setColor(QPalette::HighlightedText, Qt::white);
    dark.setColor(QPalette::Link, QColor(122, 178, 245));
    dark.setColor(QPalette::PlaceholderText, QColor(170, 170, 170));
    dark.setColor(QPalette::ToolTipBase, QColor(60, 63, 68));
    dark.setColor(QPalette::ToolTipText, Qt::white);
    return dark;
}

void save(QWidget& widget, const QDir& folder, const QString& name) {
    QTest::qWait(50);
    widget.grab().save(folder.filePath(name + ".png"));
}

void choose(ResultView* view, const char* begin) {
    if (!view) return;
    for (int i = 0; i < view->chooser()->count(); ++i)
        if (view->chooser()->itemText(i).startsWith(QLatin1String(begin))) {
            view->chooser()->setCurrentIndex(i);
            return;
        }
}

bool wait(AnalysisPage& page) {
    return QTest::qWaitFor([&] { return !page.runner().isRunning(); }, 120000);
}

void panel(std::shared_ptr<const project::Project> project, const QDir& folder,
           const QString& look) {
    Selection selection;
    selection.showTop("T1-1");
    AnswerPanel panel(&selection);
    panel.resize(360, 760);
    panel.show();
    save(panel, folder, "answers-empty-" + look);
    const auto current = [&] {
        return QTest::qWaitFor(
            [&] { return panel.answers().state() == LiveAnswers::State::current; }, 60000);
    };
    panel.setProject(project);
    current();
    panel.list()->setCurrentIndex(panel.list()->model()->index(3, 0));
    save(panel, folder, "answers-" + look);
    auto edited = std::make_shared<project::Project>(*project);
    for (project::Parameter& parameter : edited->parameters)
        parameter.quantity.value *= 1.5;
    for (project::FailureMode& mode : edited->modes)
        for (project::Assignment& number : mode.model.numbers)
            if (number.role == project::Role::rate) number.quantity.value *= 1.5;
    panel.setProject(edited);
    save(panel, folder, "answers-stale-" + look);
    current();
    save(panel, folder, "answers-changed-" + look);
    edited = std::make_shared<project::Project>(*edited);
    for (project::Gate& gate : edited->gates)
        if (gate.id == "G-T1-1") gate.inputs.push_back({"not-there", {}});
    panel.setProject(edited);
    current();
    save(panel, folder, "answers-error-" + look);
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    QApplication::setStyle(QStyleFactory::create("Fusion"));
    if (argc != 3) {
        std::fputs("usage: editor_shots PROJECT FOLDER\n", stderr);
        return 2;
    }
    const auto loaded = document::load(argv[1]);
    if (!loaded) {
        std::fputs("the project cannot be read\n", stderr);
        return 1;
    }
    const auto project = std::make_shared<const project::Project>(loaded->project);
    const QDir folder(QString::fromLocal8Bit(argv[2]));
    folder.mkpath(".");
    const QPalette light = QApplication::palette();
    sdk::Host host({CUTWATER_PLUGINS, CUTWATER_FIXTURES "/fixture-stranger",
                    CUTWATER_FIXTURES "/fixture-old-interface"});
    for (const QString look : {"light", "dark"}) {
        QApplication::setPalette(look == "dark" ? darkPalette() : light);
        test::plantShots(*project, folder, look);
        panel(project, folder, look);
        test::worksheetShots(*project, host, folder, look);
        Selection selection;
        AnalysesPane pane(host, &selection);
        pane.resize(1180, 720);
        pane.show();
        pane.setProject(project);
        save(pane, folder, "analyses-empty-" + look);
        for (const Shot& shot : kShots) {
            AnalysisPage* const page = pane.open(shot.analysis);
            if (!page) continue;
            for (const auto& [name, value] : shot.fields)
                if (ParameterField* field = page->form()->field(name)) field->type(value);
            page->run();
            wait(*page);
            choose(page->newest(), shot.shown);
            save(pane, folder, QString(shot.analysis) + '-' + look);
        }
        AnalysisPage* const sets = pane.open("cut-sets");
        sets->keep();
        sets->form()->field("max-order")->type("1");
        sets->run();
        wait(*sets);
        save(pane, folder, "kept-" + look);
        sets->form()->field("max-order")->type("-3");
        sets->run();
        save(pane, folder, "wrong-input-" + look);
        PluginsDialog dialog(host, {}, nullptr);
        dialog.show();
        save(dialog, folder, "plugins-" + look);
    }
    return 0;
}
