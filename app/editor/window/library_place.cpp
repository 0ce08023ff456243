// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/library_place.h"

#include "app/editor/library/library_page.h"
#include "app/editor/library/shelf.h"
#include "app/editor/plant/plant_page.h"

#include <QCoreApplication>
#include <QTabWidget>

namespace cutwater::editor {

LibraryPage* addLibrary(QTabWidget& pages, Session& session, PlantPage& plant) {
    auto* shelf = new Shelf({}, &pages);
    auto* page = new LibraryPage(session, *shelf, &pages);
    pages.addTab(page, QCoreApplication::translate("LibraryPlace", "Library"));
    QObject::connect(&plant.view(), &PlantView::currentChangedTo, page,
                     [page, &plant] { page->setParentComponent(plant.component()); });
    QObject::connect(page, &LibraryPage::taken, &plant, [&plant](const project::Id& id) {
        plant.view().reveal(PlantModel::Kind::component, id);
    });
    return page;
}

} // namespace cutwater::editor
