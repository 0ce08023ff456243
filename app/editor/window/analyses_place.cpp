// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/analyses_place.h"

#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/session/session.h"

#include <QAction>
#include <QCoreApplication>
#include <QMainWindow>
#include <QMenuBar>
#include <QTabWidget>

namespace cutwater::editor {

AnalysesPane* addAnalyses(QTabWidget& pages, Session& session, Selection& selection,
                          sdk::Host& host) {
    auto* const pane = new AnalysesPane(host, &selection, &pages);
    pages.addTab(pane, QCoreApplication::translate("AnalysesPlace", "Analyses"));
    QObject::connect(pane, &AnalysesPane::opened, &pages,
                     [&pages, pane] { pages.setCurrentWidget(pane); });
    QObject::connect(&session, &Session::projectChanged, pane,
                     [pane, &session] { pane->setProject(session.project()); });
    pane->setProject(session.project());
    return pane;
}

QMenu* addAnalysesMenu(QMainWindow& window, AnalysesPane& pane) {
    QMenu* const menu =
        window.menuBar()->addMenu(QCoreApplication::translate("AnalysesPlace", "&Analyses"));
    for (QAction* action : pane.actions())
        menu->addAction(action);
    menu->addSeparator();
    QAction* const plugins =
        menu->addAction(QCoreApplication::translate("AnalysesPlace", "Plug-ins..."), &pane,
                        &AnalysesPane::showPlugins);
    plugins->setObjectName("plugins");
    return menu;
}

} // namespace cutwater::editor
