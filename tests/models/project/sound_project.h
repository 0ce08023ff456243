// SPDX-License-Identifier: GPL-3.0-or-later
// A small project without any problem, to be spoilt by one test after another. Lines are set as if
// it had been read: the n-th thing of a section that starts at 100, 200 ... stands n lines below.
#pragma once

#include "models/project/project.h"

namespace cutwater::test {

project::Quantity quantity(double value, project::Unit unit, int line = 0);
project::Project soundProject();

} // namespace cutwater::test
