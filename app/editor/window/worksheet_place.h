// SPDX-License-Identifier: GPL-3.0-or-later
// The worksheet: its page of the window, and its menu.
#pragma once

class QMainWindow;
class QMenu;
class QTabWidget;

namespace cutwater::sdk {
class Host;
}

namespace cutwater::editor {

class Selection;
class Session;
class WorksheetPage;

// `host` lives longer.
WorksheetPage* addWorksheet(QTabWidget& pages, Session& session, Selection& selection,
                            sdk::Host& host);
// What can be done with the page, sorted; opening the menu's first entry shows the page.
QMenu* addWorksheetMenu(QMainWindow& window, QTabWidget& pages, WorksheetPage& page);

} // namespace cutwater::editor
