// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/periods/timed_plant.h"

namespace plants {

using project::GateKind;
using project::Role;
using project::Unit;

project::Quantity quantity(double value, Unit unit) {
    project::Quantity made;
    made.value = value;
    made.unit = unit;
    return made;
}

project::Event tested(const std::string& id, double rate, double interval, double firstTest) {
    project::Event made = event(id);
    made.model.kind = project::ModelKind::tested;
    made.model.clock = project::Clock::calendarHour;
    made.model.set(Role::rate, quantity(rate, Unit::perHour));
    made.model.set(Role::interval, quantity(interval, Unit::hours));
    if (firstTest > 0) made.model.set(Role::firstTest, quantity(firstTest, Unit::hours));
    return made;
}

project::Event initiating(const std::string& id, double perYear) {
    project::Event made = event(id);
    made.model.kind = project::ModelKind::frequency;
    made.model.clock = project::Clock::calendarHour;
    made.model.set(Role::frequency, quantity(perYear, Unit::perYear));
    return made;
}

project::Project twoProbes(bool inTurn) {
    project::Project plant;
    plant.events = {tested("probe-a", 1e-5, 8760),
                    tested("probe-b", 1e-5, 8760, inTurn ? 4380.0 : 0.0)};
    plant.gates = {gate("blind", GateKind::andGate, {"probe-a", "probe-b"})};
    plant.tops = {top("T1", "blind")};
    return plant;
}

project::Project lowWater() {
    project::Project plant;
    plant.events = {initiating("low", 0.1), tested("probe", 1e-5, 8760)};
    plant.gates = {gate("dry", GateKind::andGate, {"low", "probe"})};
    plant.tops = {top("T1", "dry")};
    return plant;
}

} // namespace plants
