// SPDX-License-Identifier: GPL-3.0-or-later
// Parts of trees as clipboard content: a small project for Cutwater, indented lines for others.
#pragma once

#include "app/editor/session/session.h"
#include "models/project/edits/changed.h"
#include "models/project/edits/place.h"
#include "models/project/project.h"

#include <QMimeData>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

namespace cutwater::editor {

inline constexpr const char* kFragmentType = "application/x-cutwater-fragment";
inline constexpr const char* kUsesType = "application/x-cutwater-uses";       // within one window
inline constexpr const char* kSessionType = "application/x-cutwater-session"; // which one that is

// Null where nothing can be copied.
std::unique_ptr<QMimeData> toMime(const project::Project& project,
                                  const std::vector<project::Id>& nodes);
// The part of a tree in the data: from Cutwater, or lines of text, whose indentation (tabs or
// blanks) says what stands below what. Empty where there is none.
std::optional<project::Project> fromMime(const QMimeData& data);
// The lines alone; "[and]" or "[2 of 3]" behind a text says what kind of gate it is.
std::optional<project::Project> fromLines(const QString& text);

// What is dragged from one view to another of the same session: as a fragment for other windows and
// programs, and as uses for this one.
std::unique_ptr<QMimeData> dragMime(const Session& session,
                                    const std::vector<project::edits::Use>& uses);
// The uses, where they are of this session; else empty.
std::vector<project::edits::Use> usesOf(const Session& session, const QMimeData& data);
// Moves the uses to the place or, with `share`, uses the nodes there as well.
project::edits::Result putUses(const project::Project& project,
                               const std::vector<project::edits::Use>& uses,
                               const project::edits::Place& place, bool share);

QByteArray usesToBytes(const std::vector<project::edits::Use>& uses);
std::vector<project::edits::Use> usesFromBytes(const QByteArray& bytes);

} // namespace cutwater::editor
