// SPDX-License-Identifier: GPL-3.0-or-later
// Parts of trees as clipboard content: a small project for Cutwater, indented lines for others.
#pragma once

#include "models/project/edits/place.h"
#include "models/project/project.h"

#include <QMimeData>
#include <QString>

#include <memory>
#include <optional>
#include <vector>

namespace cutwater::editor {

inline constexpr const char* kFragmentType = "application/x-cutwater-fragment";
inline constexpr const char* kUsesType = "application/x-cutwater-uses"; // within one window

// Null where nothing can be copied.
std::unique_ptr<QMimeData> toMime(const project::Project& project,
                                  const std::vector<project::Id>& nodes);
// The part of a tree in the data: from Cutwater, or lines of text, whose indentation (tabs or
// blanks) says what stands below what. Empty where there is none.
std::optional<project::Project> fromMime(const QMimeData& data);
// The lines alone; "[and]" or "[2 of 3]" behind a text says what kind of gate it is.
std::optional<project::Project> fromLines(const QString& text);

QByteArray usesToBytes(const std::vector<project::edits::Use>& uses);
std::vector<project::edits::Use> usesFromBytes(const QByteArray& bytes);

} // namespace cutwater::editor
