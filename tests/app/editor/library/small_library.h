// SPDX-License-Identifier: GPL-3.0-or-later
// A library of one pump: one mode with a recalled rate, one without.
#pragma once

#include "models/document/library_file.h"
#include "models/library/library.h"

#include <QFile>
#include <QString>

#include <gtest/gtest.h>

namespace cutwater::test {

inline library::Library smallLibrary(const char* revision = "1", const char* effect = "no flow") {
    using namespace project;
    library::Mode stops;
    stops.facts.id = "stops";
    stops.facts.name = "stops";
    stops.facts.localEffect = effect;
    stops.facts.causes = {"wear"};
    Check check;
    check.look = "listen at the bearing";
    check.minutes = 5;
    check.tells = "a growl: worn";
    stops.facts.checks = {check};
    stops.facts.model.kind = ModelKind::mission;
    stops.facts.model.clock = Clock::calendarHour;
    Quantity rate;
    rate.value = 3e-5;
    rate.unit = Unit::perHour;
    rate.uncertainty = Lognormal{3e-5, 10};
    rate.source = {"WASH-1400", "1975", "table III 4-1", "from memory", "", {}};
    stops.facts.model.set(Role::rate, rate);
    library::Mode leaks;
    leaks.facts.id = "leaks";
    leaks.facts.name = "leaks";
    leaks.noRate = "no public source was found";
    library::ComponentType type;
    type.id = "pump";
    type.name = "gear pump";
    type.group = "fuel";
    type.function = "move oil";
    type.revision = revision;
    type.modes = {stops, leaks};
    library::Library library;
    library.id = "mine";
    library.name = "Mine";
    library.types = {type};
    return library;
}

inline void write(const QString& path, const std::string& text) {
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::WriteOnly));
    file.write(QByteArray::fromStdString(text));
}

inline void write(const QString& path, const library::Library& library) {
    const auto text = document::writeLibrary(library);
    ASSERT_TRUE(text);
    write(path, *text);
}

} // namespace cutwater::test
