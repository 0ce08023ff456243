// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/plant_place.h"

#include "app/editor/plant/plant_page.h"

#include <QCoreApplication>
#include <QMenu>
#include <QTabWidget>

namespace cutwater::editor {

PlantPage* addPlant(QTabWidget& pages, Session& session, Selection& selection) {
    auto* page = new PlantPage(session, selection, &pages);
    pages.addTab(page, QCoreApplication::translate("PlantPlace", "Plant"));
    return page;
}

void fillPlantMenu(QMenu& menu, const PlantPage& page) {
    for (QAction* action : page.commands()) {
        if (action)
            menu.addAction(action);
        else
            menu.addSeparator();
    }
}

} // namespace cutwater::editor
