// SPDX-License-Identifier: GPL-3.0-or-later
// A component type as a text to read: function, failure modes, checks, numbers and how far to trust
// them.
#pragma once

#include "models/library/library.h"

#include <QString>

namespace cutwater::editor {

QString typeAsHtml(const library::Library& library, const library::ComponentType& type);
// "Failure rate: 3e-05 per hour, error factor 10; WASH-1400 ...; to be checked against the source".
QString numbersAsHtml(const project::FailureModel& model);

} // namespace cutwater::editor
