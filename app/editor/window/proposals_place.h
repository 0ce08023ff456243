// SPDX-License-Identifier: GPL-3.0-or-later
// Proposals and coverage as a page of the window; a failure mode is shown on the plant's page.
#pragma once

class QTabWidget;

namespace cutwater::editor {

class PlantPage;
class ProposalsPage;
class Selection;
class Session;

ProposalsPage* addProposals(QTabWidget& pages, Session& session, Selection& selection,
                            PlantPage& plant);

} // namespace cutwater::editor
