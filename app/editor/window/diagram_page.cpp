// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/diagram_page.h"

#include "app/editor/diagram/panel.h"
#include "plugins/sdk/host.h"

#include <QCoreApplication>
#include <QMenu>
#include <QTabWidget>

namespace cutwater::editor {

DiagramPanel* addDiagram(QTabWidget& pages, Session& session, Selection& selection,
                         sdk::Host& host) {
    auto* panel = new DiagramPanel(session, selection, host.layout("graphviz-layout"));
    pages.addTab(panel, QCoreApplication::translate("DiagramPage", "Diagram"));
    return panel;
}

void fillDiagramMenu(QMenu& menu, const DiagramPanel& diagram) {
    for (const char* name :
         {"showTree", "showSheets", "previousSheet", "nextSheet",    "",          "zoomIn",
          "zoomOut",  "zoomNormal", "fit",           "fitWidth",     "overview",  "animate",
          "",         "toggleFold", "unfoldBelow",   "foldBelow",    "unfoldAll", "foldAll",
          "",         "find",       "findNext",      "findPrevious", "jump",      "",
          "export",   "print"}) {
        if (*name == '\0')
            menu.addSeparator();
        else if (QAction* action = diagram.action(name))
            menu.addAction(action);
    }
}

} // namespace cutwater::editor
