// SPDX-License-Identifier: GPL-3.0-or-later
// Theme: light, dark, or as the desktop has it.
#pragma once

#include <QPalette>

namespace cutwater::editor {

enum class Theme { desktop, light, dark };

// Texts against their grounds at least 4.5 : 1 in both.
QPalette paletteOf(Theme look, const QPalette& desktop);

} // namespace cutwater::editor
