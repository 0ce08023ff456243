// SPDX-License-Identifier: GPL-3.0-or-later
// A small plant whose events have courses over time.
#pragma once

#include "tests/plugins/analyses/plants.h"

namespace plants {

project::Quantity quantity(double value, project::Unit unit);
// rate per hour, tested every `interval` h, first after `firstTest` h (0: not given).
project::Event tested(const std::string& id, double rate, double interval, double firstTest = 0);
project::Event initiating(const std::string& id, double perYear);

// T1: two probes, 1e-5/h, tested every 8760 h; the second half an interval later where wished.
project::Project twoProbes(bool inTurn);
// T1: water low (0.1 a year) and the probe (1e-5/h, tested every 8760 h) does not see it.
project::Project lowWater();

} // namespace plants
