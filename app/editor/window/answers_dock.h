// SPDX-License-Identifier: GPL-3.0-or-later
// The live answers beside the tree.
#pragma once

class QDockWidget;
class QMainWindow;

namespace cutwater::editor {

class Selection;
class Session;

// A dock on the right that answers after every change of the session.
QDockWidget* addAnswers(QMainWindow& window, Session& session, Selection& selection);

} // namespace cutwater::editor
