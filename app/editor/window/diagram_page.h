// SPDX-License-Identifier: GPL-3.0-or-later
// The diagram as the first page of the window, and its menu.
#pragma once

class QMenu;
class QTabWidget;

namespace cutwater::sdk {
class Host;
}

namespace cutwater::editor {

class DiagramPanel;
class Selection;
class Session;

DiagramPanel* addDiagram(QTabWidget& pages, Session& session, Selection& selection,
                         sdk::Host& host);

// What the diagram can do, sorted. Editing stands in the outline's menus and in the diagram's
// context menu.
void fillDiagramMenu(QMenu& menu, const DiagramPanel& diagram);

} // namespace cutwater::editor
