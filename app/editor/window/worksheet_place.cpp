// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/worksheet_place.h"

#include "app/editor/worksheet/worksheet_page.h"

#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QTabWidget>

namespace cutwater::editor {

WorksheetPage* addWorksheet(QTabWidget& pages, Session& session, Selection& selection,
                            sdk::Host& host) {
    auto* page = new WorksheetPage(session, selection, host);
    pages.addTab(page, QCoreApplication::translate("WorksheetPlace", "Worksheet"));
    return page;
}

QMenu* addWorksheetMenu(QMainWindow& window, QTabWidget& pages, WorksheetPage& page) {
    QMenu* menu =
        window.menuBar()->addMenu(QCoreApplication::translate("WorksheetPlace", "&Worksheet"));
    QAction* show =
        menu->addAction(QCoreApplication::translate("WorksheetPlace", "&Show the worksheet"));
    show->setObjectName("sheet.show");
    show->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_E));
    const auto toFront = [&pages, &page] {
        pages.setCurrentWidget(&page);
        page.view().setFocus();
    };
    QObject::connect(show, &QAction::triggered, &page, toFront);
    menu->addSeparator();
    for (QAction* action : page.actions()) {
        if (!action) {
            menu->addSeparator();
            continue;
        }
        menu->addAction(action);
        // From the menu or the finder: what is done shall be seen.
        QObject::connect(action, &QAction::triggered, &page, [&pages, &page] {
            if (!page.isVisible()) pages.setCurrentWidget(&page);
        });
    }
    return menu;
}

} // namespace cutwater::editor
