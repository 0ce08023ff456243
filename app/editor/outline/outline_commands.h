// SPDX-License-Identifier: GPL-3.0-or-later
// The commands of the outline as actions, with their standard keys: for menus, the palette, and the
// list of shortcuts.
#pragma once

#include "app/editor/outline/outline_view.h"

#include <QAction>
#include <QList>

namespace cutwater::editor {

struct CommandGroup {
    QString title;           // of a menu
    QList<QAction*> actions; // null: a separator
};

// Actions with object names ("outline.add-beside"); their keys work while the outline has the
// focus. Owned by the view.
QList<CommandGroup> makeOutlineCommands(OutlineView& view);

} // namespace cutwater::editor
