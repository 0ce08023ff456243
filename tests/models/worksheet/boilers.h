// SPDX-License-Identifier: GPL-3.0-or-later
// A small plant for the tests of the worksheet: a boiler with a burner, two pumps and two sources.
#pragma once

#include "models/project/project.h"

namespace cutwater::test {

// boiler > burner > electrodes (starts), pump-a and pump-b (one type, one place), panel fed by
// mains and battery over two feeds through a diode each. 8000 h of the calendar, 4000 firing hours
// and 2000 starts are logged for the boiler.
project::Project boilers();

project::Quantity number(double value, project::Unit unit = project::Unit::number);
project::FailureMode& mode(project::Project& project, const char* id);

} // namespace cutwater::test
