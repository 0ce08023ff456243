// SPDX-License-Identifier: GPL-3.0-or-later
// What the pages about the plant call components and failure modes, and how both travel over the
// clipboard.
#pragma once

#include "app/editor/session/session.h"
#include "models/project/edits/plant.h"

#include <QMimeData>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

namespace cutwater::editor {

inline constexpr const char* kPlantType = "application/x-cutwater-plant";

QString wordsOf(const project::Component& component); // "FP-1 fuel pump", else the id
QString wordsOf(const project::FailureMode& mode);    // "stops", else the id
QString wordsOf(const project::TopEvent& top);        // "T1 no steam"

// What is lost, as a question; empty where nothing but the chosen one itself is.
QString lossQuestion(const project::edits::Loss& loss);

// The parts as content for the clipboard: for this page a small project, for trees the events that
// the failure modes are, for others indented lines. Null where there is nothing.
std::unique_ptr<QMimeData> partsToMime(const project::Project& project,
                                       const std::vector<project::Id>& ids);
struct PastedParts {
    project::Project fragment;
    bool modesOnly = false;
};
std::optional<PastedParts> partsFromMime(const QMimeData& data);

} // namespace cutwater::editor
