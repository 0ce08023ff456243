// SPDX-License-Identifier: GPL-3.0-or-later
// WorksheetPage: what it can do, with names and keys.
#include "app/editor/worksheet/worksheet_page.h"

#include <QLineEdit>
#include <QMenu>

#include <algorithm>

namespace cutwater::editor {

QAction* WorksheetPage::make(const char* name, const QString& text, const QKeySequence& keys,
                             const std::function<void()>& act, QWidget* where) {
    auto* made = new QAction(text, where);
    made->setObjectName(QLatin1String(name));
    made->setShortcut(keys);
    made->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(made, &QAction::triggered, this, act);
    where->addAction(made);
    m_actions[QLatin1String(name)] = made;
    m_menu.push_back(made);
    return made;
}

void WorksheetPage::makeActions() {
    const auto line = [this] { m_menu.push_back(nullptr); };
    QWidget* const view = m_view;
    make(
        "sheet.new-row", tr("&New row ..."), QKeySequence(Qt::Key_Insert), [this] { newRow(); },
        this);
    make(
        "sheet.duplicate", tr("&Duplicate rows"), QKeySequence(Qt::ALT | Qt::Key_Insert),
        [this] { duplicateRows(); }, view);
    make(
        "sheet.remove", tr("&Remove rows ..."), QKeySequence(Qt::CTRL | Qt::Key_Delete),
        [this] { removeRows(); }, view);
    line();
    make(
        "sheet.copy", tr("&Copy cells"), QKeySequence::Copy, [this] { copy(); }, view);
    make(
        "sheet.cut", tr("Cu&t cells"), QKeySequence::Cut, [this] { cut(); }, view);
    make(
        "sheet.paste", tr("&Paste cells"), QKeySequence::Paste, [this] { paste(false); }, view);
    make(
        "sheet.paste-csv", tr("Paste text with commas"),
        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_V), [this] { paste(true); }, view);
    make(
        "sheet.fill-down", tr("Fill d&own"), QKeySequence(Qt::CTRL | Qt::Key_D),
        [this] { fillDown(); }, view);
    make(
        "sheet.fill-same", tr("Fill the choice with this cell"),
        QKeySequence(Qt::CTRL | Qt::Key_Return), [this] { fillSame(); }, view);
    make(
        "sheet.clear", tr("C&lear cells"), {}, [this] { clearCells(); }, view);
    line();
    make(
        "sheet.find", tr("&Find and replace ..."), QKeySequence::Find, [this] { beginFind(); },
        this);
    make(
        "sheet.find-next", tr("Find next"), QKeySequence(Qt::Key_F3), [this] { goToNext(1); },
        this);
    make(
        "sheet.find-previous", tr("Find previous"), QKeySequence(Qt::SHIFT | Qt::Key_F3),
        [this] { goToNext(-1); }, this);
    make(
        "sheet.filter", tr("Show rows that &hold ..."),
        QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_F),
        [this] {
            m_filter->setFocus();
            m_filter->selectAll();
        },
        this);
    make(
        "sheet.filter-column", tr("Filter this column ..."), QKeySequence(Qt::ALT | Qt::Key_Down),
        [this] { filterColumn(m_view->currentIndex().column()); }, view);
    make(
        "sheet.every-row", tr("Show &every row"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_E),
        [this] {
            Arrangement wanted = m_grid->arrangement();
            wanted.filters.clear();
            wanted.words.clear();
            wanted.dormantOnly = false;
            arrange(wanted);
        },
        this);
    make(
        "sheet.sort-up", tr("&Sort by this column"), {},
        [this] { setSort(m_view->currentIndex().column(), false, false); }, view);
    make(
        "sheet.sort-down", tr("Sort by this column, the largest first"), {},
        [this] { setSort(m_view->currentIndex().column(), true, false); }, view);
    make(
        "sheet.sort-more", tr("Sort by this column as well"), {},
        [this] { setSort(m_view->currentIndex().column(), false, true); }, view);
    make(
        "sheet.file-order", tr("The order of the project"), {},
        [this] {
            Arrangement wanted = m_grid->arrangement();
            wanted.keys.clear();
            arrange(wanted);
        },
        this);
    make(
        "sheet.again", tr("Sort and filter &again"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_L),
        [this] { arrange(m_grid->arrangement()); }, this);
    make(
        "sheet.fold-all", tr("Fold all groups"), {}, [this] { m_grid->foldAll(true); }, this);
    make(
        "sheet.unfold-all", tr("Unfold all groups"), {}, [this] { m_grid->foldAll(false); }, this);
    line();
    make(
        "sheet.columns", tr("Col&umns ..."), {}, [this] { chooseColumns(); }, this);
    make(
        "sheet.freeze", tr("Keep the columns up to here in sight"), {},
        [this] {
            ColumnChoice choice = m_choice;
            choice.frozen = m_view->currentIndex().column() + 1;
            setColumns(choice);
        },
        view);
    make(
        "sheet.unfreeze", tr("Let all columns move"), {},
        [this] {
            ColumnChoice choice = m_choice;
            choice.frozen = 0;
            setColumns(choice);
        },
        this);
    line();
    make(
        "sheet.import", tr("&Import a table ..."), {}, [this] { importTable(); }, this);
    make(
        "sheet.export", tr("E&xport ..."), {}, [this] { askExport(); }, this);
    make(
        "sheet.pdf", tr("&Write as PDF ..."), {}, [this] { askPdf(); }, this);
    make(
        "sheet.print", tr("Prin&t ..."), QKeySequence::Print, [this] { print(); }, this);
    make(
        "sheet.cautions", tr("Cautions ..."), {}, [this] { askCautions(); }, this);
}

void WorksheetPage::fillHeadingMenu(QMenu& menu, int section) {
    const int place = m_grid->shownColumns()[static_cast<std::size_t>(section)];
    menu.addAction(tr("Sort, the smallest first"), this,
                   [this, section] { setSort(section, false, false); });
    menu.addAction(tr("Sort, the largest first"), this,
                   [this, section] { setSort(section, true, false); });
    menu.addAction(tr("Sort by this as well"), this,
                   [this, section] { setSort(section, false, true); });
    menu.addSeparator();
    menu.addAction(tr("Filter ..."), this, [this, section] { filterColumn(section); });
    QAction* every = menu.addAction(tr("No filter on this column"), this, [this, place] {
        Arrangement wanted = m_grid->arrangement();
        wanted.filters.erase(place);
        arrange(wanted);
    });
    every->setEnabled(m_grid->arrangement().filters.contains(place));
    menu.addSeparator();
    QAction* hide = menu.addAction(tr("Hide this column"), this, [this, section] {
        ColumnChoice choice = m_choice;
        choice.shown.erase(choice.shown.begin() + section);
        choice.set.clear();
        setColumns(choice);
    });
    hide->setEnabled(m_grid->columnCount() > 1);
    menu.addAction(tr("Keep the columns up to here in sight"), this, [this, section] {
        ColumnChoice choice = m_choice;
        choice.frozen = section + 1;
        setColumns(choice);
    });
    menu.addAction(action("sheet.unfreeze"));
    menu.addAction(action("sheet.columns"));
}

} // namespace cutwater::editor
