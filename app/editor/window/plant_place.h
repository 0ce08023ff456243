// SPDX-License-Identifier: GPL-3.0-or-later
// The plant as a page of the window, and its menu.
#pragma once

class QMenu;
class QTabWidget;

namespace cutwater::editor {

class PlantPage;
class Selection;
class Session;

PlantPage* addPlant(QTabWidget& pages, Session& session, Selection& selection);
void fillPlantMenu(QMenu& menu, const PlantPage& page);

} // namespace cutwater::editor
