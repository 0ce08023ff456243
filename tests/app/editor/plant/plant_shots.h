// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the pages about the plant, for editor_shots.
#pragma once

#include "models/project/project.h"

#include <QDir>
#include <QString>

namespace cutwater::test {

void plantShots(const project::Project& project, const QDir& folder, const QString& look);

} // namespace cutwater::test
