// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/worksheet/desk.h"

#include <QApplication>
#include <QSettings>

#include <stdexcept>

namespace cutwater::test {

using namespace project;

namespace {

FailureMode modeOf(const std::string& component, const std::string& name) {
    FailureMode mode;
    mode.id = component + "." + name;
    mode.component = component;
    mode.name = name;
    return mode;
}

Quantity quantity(double value, Unit unit) {
    Quantity made;
    made.value = value;
    made.unit = unit;
    return made;
}

} // namespace

Project smallSheet() {
    Project p;
    p.name = "small plant";
    for (const char* id : {"P-1", "P-2", "V-1", "V-10"}) {
        Component component;
        component.id = component.tag = id;
        component.name = id[0] == 'P' ? "pump" : "valve";
        component.location = id[0] == 'P' ? "pump room" : "boiler front";
        p.components.push_back(component);
        for (const char* name : {"leaks", "sticks"}) {
            FailureMode mode = modeOf(id, name);
            mode.endEffect = name[0] == 'l' ? "oil on deck" : "no steam";
            mode.severity = name[0] == 'l' ? "minor" : "severe";
            p.modes.push_back(mode);
        }
    }
    p.modes[0].severityRating = 9;
    p.modes[1].severityRating = 10;
    p.modes[2].severityRating = 2;
    p.modes[4].model.kind = ModelKind::tested;
    p.modes[4].model.set(Role::rate, quantity(1e-5, Unit::perHour));
    p.modes[4].model.set(Role::interval, quantity(4, Unit::weeks));
    p.modes[4].model.lastTest = "2026-01-01";
    for (const char* id : {"P-1.leaks", "P-1.sticks"}) {
        Event event;
        event.id = std::string("E-") + id;
        event.name = id;
        event.mode = id;
        p.events.push_back(event);
    }
    Gate gate;
    gate.id = "G1";
    gate.name = "no steam";
    gate.inputs = {{"E-P-1.leaks", {}}, {"E-P-1.sticks", {}}};
    p.gates.push_back(gate);
    TopEvent top;
    top.id = "T1";
    top.name = "no steam";
    top.node.id = "G1";
    p.tops.push_back(top);
    return p;
}

Project largeSheet(int rows) {
    Project p;
    p.name = "large plant";
    for (int i = 0; i < rows; ++i) {
        const std::string id = "C" + std::to_string(i / 5);
        if (i % 5 == 0) {
            Component component;
            component.id = component.tag = id;
            component.name = "component number " + std::to_string(i / 5);
            component.location = "room " + std::to_string(i / 200);
            if (i > 0) component.parent = "C" + std::to_string(i / 50);
            if (component.parent == id) component.parent.clear();
            p.components.push_back(component);
        }
        FailureMode mode = modeOf(id, "m" + std::to_string(i));
        mode.name = "fails in the way " + std::to_string(i % 97);
        mode.causes = {"wear and tear of the seat", "dirt in the line before it"};
        mode.localEffect = "the part does not do what it is for, in way " + std::to_string(i % 31);
        mode.endEffect = "end effect " + std::to_string(i % 40) + ": boiler without steam";
        mode.detection = "alarm " + std::to_string(i) + " at the local panel";
        mode.compensation = "the standby unit takes over";
        mode.severity = i % 3 ? "minor" : "severe";
        mode.severityRating = i % 10 + 1;
        mode.occurrenceRating = i % 7 + 1;
        mode.detectionRating = i % 4 + 1;
        mode.model.kind = i % 3 ? ModelKind::mission : ModelKind::tested;
        mode.model.set(Role::rate, quantity(1e-6, Unit::perHour));
        if (i % 3 == 0) mode.model.set(Role::interval, quantity(4, Unit::weeks));
        mode.actions.resize(1);
        mode.actions[0].what = "shorten the interval";
        mode.actions[0].owner = "chief engineer";
        mode.actions[0].due = "2026-03-01";
        p.modes.push_back(mode);
        if (i % 2) continue;
        Event event;
        event.id = "E" + std::to_string(i);
        event.mode = mode.id;
        p.events.push_back(event);
    }
    for (int t = 0; t < 20; ++t) {
        Gate gate;
        gate.id = "G" + std::to_string(t);
        for (std::size_t i = static_cast<std::size_t>(t); i < p.events.size(); i += 20)
            gate.inputs.push_back({p.events[i].id, {}});
        TopEvent top;
        top.id = "T" + std::to_string(t);
        top.name = top.id;
        top.node.id = gate.id;
        p.gates.push_back(gate);
        p.tops.push_back(top);
    }
    return p;
}

Desk::Desk(const Project& project, std::vector<std::string> plugins) : host(plugins) {
    QSettings().clear();
    page = std::make_unique<editor::WorksheetPage>(session, selection, host);
    page->resize(1200, 700);
    page->show();
    QApplication::setActiveWindow(page.get());
    (void)QTest::qWaitForWindowActive(page.get());
    session.start(project);
    page->view().setFocus();
}

const FailureMode& Desk::mode(const char* id) const {
    for (const FailureMode& each : project().modes)
        if (each.id == id) return each;
    throw std::out_of_range(id);
}

int Desk::section(const char* column) const {
    for (int section = 0; section < page->grid().columnCount(); ++section)
        if (page->grid().columnAt(section).id == column) return section;
    throw std::out_of_range(column);
}

QModelIndex Desk::at(const char* id, const char* column) const {
    return page->grid().index(line(id), section(column));
}

QString Desk::text(const char* id, const char* column) const {
    return at(id, column).data(Qt::EditRole).toString();
}

QWidget* Desk::field() const {
    for (QWidget* each : page->view().findChildren<QWidget*>("cellField"))
        if (each->isVisible()) return each;
    return nullptr;
}

void Desk::press(int key, Qt::KeyboardModifiers modifiers) {
    QWidget* open = field();
    QTest::keyClick(open ? open : &page->view(), static_cast<Qt::Key>(key), modifiers);
    // Fields that were closed are deleted when the event loop comes round.
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QCoreApplication::processEvents();
}

void Desk::type(const QString& text) {
    for (const QChar c : text) {
        QWidget* open = field();
        QTest::keyClick(open ? open : &page->view(), c.toLatin1());
    }
}

void Desk::act(const char* action) {
    page->action(action)->trigger();
    QCoreApplication::processEvents();
}

QStringList Desk::column(const char* name) const {
    QStringList texts;
    for (int line = 0; line < page->grid().rowCount(); ++line) {
        const QModelIndex index = page->grid().index(line, section(name));
        const QVariant head = index.data(editor::GridModel::groupRole);
        texts.append(head.isValid() ? '[' + head.toString() + ']'
                                    : index.data(Qt::EditRole).toString());
    }
    return texts;
}

} // namespace cutwater::test
