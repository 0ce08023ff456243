// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/risk_place.h"

#include "app/editor/risk/risk_page.h"

#include <QCoreApplication>
#include <QTabWidget>

namespace cutwater::editor {

RiskPage* addRisks(QTabWidget& pages, Session& session, Selection& selection) {
    auto* page = new RiskPage(session, selection, &pages);
    pages.addTab(page, QCoreApplication::translate("RiskPlace", "Risks"));
    return page;
}

} // namespace cutwater::editor
