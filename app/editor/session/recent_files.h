// SPDX-License-Identifier: GPL-3.0-or-later
// The files that were opened last, the latest first.
#pragma once

#include <QSettings>
#include <QStringList>

namespace cutwater::editor {

inline constexpr int kMostRecent = 10;

// Files that are gone are left out of the answer, but come back with them (a disk that is off).
QStringList recentFiles(QSettings& settings);
void noteRecent(QSettings& settings, const QString& path);

} // namespace cutwater::editor
