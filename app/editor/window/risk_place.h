// SPDX-License-Identifier: GPL-3.0-or-later
// The risk matrix as a page of the window.
#pragma once

class QTabWidget;

namespace cutwater::editor {

class RiskPage;
class Selection;
class Session;

RiskPage* addRisks(QTabWidget& pages, Session& session, Selection& selection);

} // namespace cutwater::editor
