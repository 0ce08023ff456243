// SPDX-License-Identifier: GPL-3.0-or-later
// The shapes of the diagram, small, in the colours of the palette.
#pragma once

#include "app/drawing/symbols.h"

#include <QColor>
#include <QIcon>

namespace cutwater::editor {

QIcon nodeIcon(drawing::SymbolKind kind, const QColor& line);

} // namespace cutwater::editor
