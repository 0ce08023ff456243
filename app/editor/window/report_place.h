// SPDX-License-Identifier: GPL-3.0-or-later
// The report: its page of the window, and the way of a result to it.
#pragma once

class QTabWidget;

namespace cutwater::sdk {
class Host;
}

namespace cutwater::editor {

class AnalysesPane;
class FileDesk;
class ReportPage;
class Session;

// A page among `pages`. What is sent there is taken without leaving where one is; the page's own
// tab says how much it holds. `host` and `desk` live longer.
ReportPage* addReport(QTabWidget& pages, Session& session, FileDesk& desk, AnalysesPane& analyses,
                      sdk::Host& host);

} // namespace cutwater::editor
