// SPDX-License-Identifier: GPL-3.0-or-later
// The libraries as a page of the window: parts go where the plant's page has its choice, and are
// shown there.
#pragma once

class QTabWidget;

namespace cutwater::editor {

class LibraryPage;
class PlantPage;
class Session;

LibraryPage* addLibrary(QTabWidget& pages, Session& session, PlantPage& plant);

} // namespace cutwater::editor
