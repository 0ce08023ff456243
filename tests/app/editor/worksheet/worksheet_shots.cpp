// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/worksheet/worksheet_shots.h"

#include "app/editor/worksheet/cautions_dialog.h"
#include "app/editor/worksheet/columns_dialog.h"
#include "app/editor/worksheet/export_dialog.h"
#include "app/editor/worksheet/filter_dialog.h"
#include "app/editor/worksheet/import_dialog.h"
#include "app/editor/worksheet/new_row_dialog.h"
#include "app/editor/worksheet/worksheet_page.h"

#include <QApplication>
#include <QClipboard>
#include <QComboBox>
#include <QTest>

namespace cutwater::test {

using namespace editor;

namespace {

constexpr const char* kTable = "Component;Failure mode;Causes;S;RPN;Colour\n"
                               "B1;leaks;seal;7;100;red\n"
                               "NO-SUCH;stops;wear;12;;\n"
                               "B1;sticks;dirt;11;;\n";

} // namespace

void worksheetShots(const project::Project& project, sdk::Host& host, const QDir& folder,
                    const QString& look) {
    const auto save = [&](QWidget& widget, const QString& name) {
        QTest::qWait(60);
        widget.grab().save(folder.filePath("worksheet-" + name + '-' + look + ".png"));
    };
    QSettings().clear();
    Session session;
    Selection selection;
    WorksheetPage page(session, selection, host);
    page.resize(1280, 760);
    page.show();
    save(page, "empty");
    session.start(project);
    page.view().goTo(page.grid().index(2, 4));
    save(page, "overview");
    for (const ColumnSet& set : columnSets()) {
        ColumnChoice choice = page.columns();
        choice.set = set.id;
        choice.shown = set.columns;
        page.setColumns(choice);
        (void)QTest::qWaitFor([&] { return !page.effects().isWorking(); }, 60000);
        save(page, set.id);
    }
    page.setColumns(usualChoice());
    Arrangement grouped;
    grouped.group = GroupBy::endEffect;
    grouped.keys = {{sheetColumn("severity"), true}, {sheetColumn("rpn"), true}};
    page.arrange(grouped);
    page.grid().fold(0, true);
    page.view().goTo(page.grid().index(2, 3));
    save(page, "grouped");
    page.arrange({});
    // A field of each kind.
    for (const char* id : {"causes", "severity-rating", "component", "due"}) {
        const auto& shown = page.grid().shownColumns();
        const int section = static_cast<int>(
            std::find(shown.begin(), shown.end(), sheetColumn(id)) - shown.begin());
        page.view().goTo(page.grid().index(1, section));
        QTest::keyClick(&page.view(), Qt::Key_F2);
        save(page, QString("typing-") + id);
        QWidget* field = page.view().findChild<QWidget*>("cellField");
        if (field) QTest::keyClick(field, Qt::Key_Escape);
    }
    page.view().goTo(page.grid().index(1, 8));
    page.view().extendTo(page.grid().index(4, 10));
    QApplication::clipboard()->setText("5\t11\t3\noften\t4\t2");
    page.action("sheet.paste")->trigger();
    save(page, "not-taken");
    page.report().putAway();
    page.view().goTo(page.grid().index(0, 0));
    page.action("sheet.find")->trigger();
    save(page, "find");
    page.findBar().hide();
    page.view().goTo(page.grid().index(3, 1));
    page.questions.run = [&](QDialog& dialog) {
        dialog.show();
        if (auto* import = qobject_cast<TableImportDialog*>(&dialog)) {
            import->readText(kTable, "old-sheet.csv");
            (void)QTest::qWaitFor([&] { return !import->isLooking(); }, 10000);
        }
        save(dialog, dialog.objectName());
        return false;
    };
    for (const char* name : {"sheet.new-row", "sheet.filter-column", "sheet.columns",
                             "sheet.import", "sheet.export", "sheet.pdf", "sheet.cautions"})
        page.action(name)->trigger();
    if (look == "light")
        for (const bool a3 : {false, true}) {
            bool written = false;
            QObject::connect(&page, &WorksheetPage::exported, &page, [&] { written = true; });
            page.writePdf(folder.filePath(a3 ? "worksheet-a3.pdf" : "worksheet-a4.pdf"), a3);
            (void)QTest::qWaitFor([&] { return written; }, 60000);
        }
}

} // namespace cutwater::test
