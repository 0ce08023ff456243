// SPDX-License-Identifier: GPL-3.0-or-later
// Import and export in the menu "File".
#pragma once

class QMainWindow;
class QMenu;

namespace cutwater::sdk {
class Host;
}

namespace cutwater::editor {

class Commands;
class ExchangeDesk;
class FileDesk;
class MessageBar;
class Session;

// Two menus with an entry for each plug-in that can read, or write. What came of it is said in the
// status bar, what went wrong in the message bar.
ExchangeDesk* addExchange(QMainWindow& window, QMenu& file, Session& session, FileDesk& desk,
                          MessageBar& bar, Commands& commands, sdk::Host& host);

} // namespace cutwater::editor
