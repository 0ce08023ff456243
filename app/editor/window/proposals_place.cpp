// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/proposals_place.h"

#include "app/editor/plant/plant_page.h"
#include "app/editor/proposals/proposals_page.h"

#include <QCoreApplication>
#include <QTabWidget>

namespace cutwater::editor {

ProposalsPage* addProposals(QTabWidget& pages, Session& session, Selection& selection,
                            PlantPage& plant) {
    auto* page = new ProposalsPage(session, selection, &pages);
    pages.addTab(page, QCoreApplication::translate("ProposalsPlace", "Proposals"));
    QObject::connect(page, &ProposalsPage::modeWished, &plant,
                     [&pages, &plant](const project::Id& mode) {
                         pages.setCurrentWidget(&plant);
                         plant.view().reveal(PlantModel::Kind::mode, mode);
                     });
    return page;
}

} // namespace cutwater::editor
