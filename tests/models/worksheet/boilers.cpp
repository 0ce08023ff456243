// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/models/worksheet/boilers.h"

#include <stdexcept>

namespace cutwater::test {

using namespace project;

namespace {

void part(Project& p, const char* id, const char* name, const char* type, const char* parent,
          std::vector<const char*> suppliers = {}) {
    Component component;
    component.id = id;
    component.tag = id;
    component.name = name;
    component.type = type;
    component.parent = parent;
    for (const char* supplier : suppliers)
        component.suppliedBy.push_back({supplier, {}});
    p.components.push_back(component);
}

FailureMode& add(Project& p, const char* id, const char* component, const char* name,
                 const char* effect, const char* severity) {
    FailureMode mode;
    mode.id = id;
    mode.component = component;
    mode.name = name;
    mode.endEffect = effect;
    mode.severity = severity;
    p.modes.push_back(mode);
    return p.modes.back();
}

void rate(FailureMode& mode, ModelKind kind, Clock clock, double perHour) {
    mode.model.kind = kind;
    mode.model.clock = clock;
    mode.model.set(Role::rate, number(perHour, Unit::perHour));
    if (kind == ModelKind::repairable) mode.model.set(Role::repair, number(10, Unit::hours));
    if (kind == ModelKind::tested) mode.model.set(Role::interval, number(1000, Unit::hours));
}

void feed(Project& p, const char* id, const char* from, const char* through) {
    Connection connection;
    connection.id = id;
    connection.medium = "24 V DC";
    connection.from = from;
    connection.to = "panel";
    connection.through = {{through, {}}};
    p.connections.push_back(connection);
}

} // namespace

Quantity number(double value, Unit unit) {
    Quantity quantity;
    quantity.value = value;
    quantity.unit = unit;
    return quantity;
}

FailureMode& mode(Project& project, const char* id) {
    for (FailureMode& one : project.modes)
        if (one.id == id) return one;
    throw std::out_of_range(id);
}

Project boilers() {
    Project p;
    p.name = "test plant";
    part(p, "boiler", "boiler", "boiler", "");
    part(p, "burner", "burner", "burner", "boiler");
    part(p, "electrodes", "electrodes", "electrodes", "burner", {"panel"});
    part(p, "pump-a", "pump A", "pump", "boiler");
    part(p, "pump-b", "pump B", "pump", "boiler");
    part(p, "panel", "panel", "panel", "boiler");
    part(p, "mains", "mains unit", "mains unit", "");
    part(p, "battery", "battery", "battery", "");
    part(p, "diode-a", "diode A", "diode", "panel");
    part(p, "diode-b", "diode B", "diode", "panel");
    for (Component& component : p.components)
        if (component.type == "pump") component.location = "pump room";
    const char* stop = "boiler without steam";
    FailureMode& fouled = add(p, "electrodes.fouled", "electrodes", "fouled", stop, "minor");
    fouled.model.kind = ModelKind::perDemand;
    fouled.model.clock = Clock::start;
    fouled.model.set(Role::probability, number(1e-3, Unit::perStart));
    rate(add(p, "electrodes.worn", "electrodes", "worn", "Boiler  without steam.", "minor"),
         ModelKind::mission, Clock::firingHour, 1e-4);
    rate(add(p, "pump-a.stops", "pump-a", "stops", "none at once", "significant"),
         ModelKind::repairable, Clock::calendarHour, 1e-5);
    rate(add(p, "pump-b.stops", "pump-b", "stops", "none at once", "significant"),
         ModelKind::tested, Clock::calendarHour, 1e-5);
    rate(add(p, "panel.dead", "panel", "dead", stop, "Severe"), ModelKind::repairable,
         Clock::calendarHour, 1e-6);
    rate(add(p, "mains.dead", "mains", "dead", "none at once", "minor"), ModelKind::repairable,
         Clock::calendarHour, 1e-6);
    rate(add(p, "battery.dead", "battery", "dead", "none at once", "minor"), ModelKind::repairable,
         Clock::calendarHour, 1e-6);
    add(p, "diode-a.open", "diode-a", "open", "none at once", "minor");
    feed(p, "feed-a", "mains", "diode-a");
    feed(p, "feed-b", "battery", "diode-b");
    for (const char* id : {"pump-a.stops", "pump-b.stops", "panel.dead"}) {
        Event event;
        event.id = id;
        event.mode = id;
        p.events.push_back(event);
    }
    Event other;
    other.id = "other";
    other.kind = EventKind::undeveloped;
    other.model.kind = ModelKind::probability;
    other.model.set(Role::probability, number(0.01));
    p.events.push_back(other);
    Gate pumps;
    pumps.id = "pumps";
    pumps.kind = GateKind::andGate;
    pumps.inputs = {{"pump-a.stops", {}}, {"pump-b.stops", {}}};
    Gate top;
    top.id = "top";
    top.kind = GateKind::orGate;
    top.inputs = {{"pumps", {}}, {"panel.dead", {}}, {"other", {}}};
    p.gates = {top, pumps};
    TopEvent t;
    t.id = "T1";
    t.name = "No water";
    t.node.id = "top";
    t.severity = "severe";
    p.tops = {t};
    Exposure exposure;
    exposure.component = "boiler";
    exposure.calendarHours = 8000;
    exposure.firingHours = 4000;
    exposure.starts = 2000;
    p.exposures = {exposure};
    return p;
}

} // namespace cutwater::test
