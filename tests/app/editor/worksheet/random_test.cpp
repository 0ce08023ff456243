// SPDX-License-Identifier: GPL-3.0-or-later
// Random hands: whatever is done, undo and redo walk the same way, and what is copied into itself
// changes nothing.
#include "tests/app/editor/worksheet/desk.h"

#include <QApplication>
#include <QClipboard>

#include <gtest/gtest.h>

#include <random>

namespace cutwater::editor {

using test::Desk;

namespace {

void everyColumn(Desk& desk) {
    ColumnChoice choice = desk.page->columns();
    choice.shown = columnSet("everything")->columns;
    desk.page->setColumns(choice);
}

} // namespace

TEST(WorksheetRandom, CopyThenPasteIntoItselfChangesNothing) {
    project::Project p = test::smallSheet();
    p.modes[0].causes = {"  wear ", "a | b", "=1"};
    p.modes[0].localEffect = "two\nlines\tand \"quotes\"";
    p.modes[1].remark = "'=x";
    p.modes[2].actions.resize(2);
    p.modes[2].actions[0].what = "a";
    p.modes[2].actions[0].due = "2026-01-01";
    p.modes[2].actions[1].what = "b";
    p.modes[2].actions[1].owner = "me";
    p.modes[3].ratio.emplace();
    p.modes[3].ratio->parameter = "share";
    Desk desk(p);
    everyColumn(desk);
    auto& grid = desk.page->grid();
    desk.page->view().goTo(grid.index(0, 0));
    desk.page->view().extendTo(grid.index(grid.rowCount() - 1, grid.columnCount() - 1));
    desk.act("sheet.copy");
    desk.act("sheet.paste");
    EXPECT_TRUE(desk.project() == p);
    EXPECT_EQ(desk.session.undoStack()->count(), 0);
    EXPECT_TRUE(desk.page->report().sentence().isEmpty())
        << desk.page->report().asText().toStdString();
}

TEST(WorksheetRandom, EditsUndoAndRedoAgainstAReplay) {
    std::mt19937 random(5);
    Desk desk(test::smallSheet());
    everyColumn(desk);
    auto& grid = desk.page->grid();
    auto& view = desk.page->view();
    std::vector<project::Project> states{desk.project()}; // by place in the undo stack
    const QStringList texts = {"5",  "11",         "word", "a\tb\n3\t4", "2026-02-28", "yes",
                               "no", "1\n2\n3\n4", "0.5",  "=1+1",       "done",       "P-2"};
    desk.page->questions.agree = [](QWidget*, const QString&) { return true; };
    for (int step = 0; step < 250; ++step) {
        const auto pick = [&](int count) { return static_cast<int>(random() % unsigned(count)); };
        view.goTo(grid.index(pick(grid.rowCount()), pick(grid.columnCount())));
        if (pick(2)) view.extendTo(grid.index(pick(grid.rowCount()), pick(grid.columnCount())));
        switch (pick(9)) {
        case 0: desk.undo(); break;
        case 1: desk.redo(); break;
        case 2: desk.act("sheet.fill-down"); break;
        case 3: desk.act("sheet.clear"); break;
        case 4: desk.act("sheet.duplicate"); break;
        case 5:
            if (grid.rowCount() > 30) desk.act("sheet.remove");
            break;
        case 6: desk.act("sheet.copy"); break;
        case 7: {
            Arrangement wanted;
            wanted.group = static_cast<GroupBy>(pick(5));
            wanted.keys = {{pick(int(sheetColumns().size())), pick(2) == 0}};
            desk.page->arrange(wanted);
            break;
        }
        default:
            if (pick(3)) QApplication::clipboard()->setText(texts[pick(int(texts.size()))]);
            desk.act("sheet.paste");
        }
        const auto at = static_cast<std::size_t>(desk.session.undoStack()->index());
        if (at == states.size())
            states.push_back(desk.project());
        else if (at < states.size() && !(desk.project() == states[at]))
            states.resize(at), states.push_back(desk.project()); // a new branch
        ASSERT_TRUE(at < states.size() && desk.project() == states[at]) << "step " << step;
        ASSERT_EQ(grid.rowsPassing(), desk.project().modes.size());
        if (grid.rowCount() == 0) break;
    }
    while (desk.session.undoStack()->canUndo()) {
        desk.undo();
        ASSERT_TRUE(desk.project() ==
                    states[static_cast<std::size_t>(desk.session.undoStack()->index())]);
    }
    EXPECT_TRUE(desk.project() == test::smallSheet());
}

} // namespace cutwater::editor
