// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of the worksheet page, to be looked at; part of editor_shots.
#pragma once

#include "models/project/project.h"
#include "plugins/sdk/host.h"

#include <QDir>

namespace cutwater::test {

void worksheetShots(const project::Project& project, sdk::Host& host, const QDir& folder,
                    const QString& look);

} // namespace cutwater::test
