// SPDX-License-Identifier: GPL-3.0-or-later
// The analyses of the plug-ins: their page of the window, and the menu that opens them.
#pragma once

class QMainWindow;
class QMenu;
class QTabWidget;

namespace cutwater::sdk {
class Host;
}

namespace cutwater::editor {

class AnalysesPane;
class Selection;
class Session;

// A page among `pages`, shown when an analysis is opened. `host` lives longer.
AnalysesPane* addAnalyses(QTabWidget& pages, Session& session, Selection& selection,
                          sdk::Host& host);
// "Analyses": one entry for each that was found, and the dialog of the plug-ins.
QMenu* addAnalysesMenu(QMainWindow& window, AnalysesPane& pane);

} // namespace cutwater::editor
