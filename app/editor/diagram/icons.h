// SPDX-License-Identifier: GPL-3.0-or-later
// Icons of the diagram's actions, drawn by us in the palette's ink: sharp at every size, light and
// dark.
#pragma once

#include <QIcon>
#include <QPalette>

namespace cutwater::editor {

// Null where the action has none.
QIcon iconFor(const QString& action, const QPalette& palette);

} // namespace cutwater::editor
