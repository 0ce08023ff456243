// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of a library file; see facts_values.h. A mode has the facts of a failure mode that are
// true of every part of the type.
#pragma once

#include "models/document/facts_plant.h"
#include "models/library/library.h"

namespace cutwater::document {

template <typename Io>
void describe(Io& io, Of<Io, library::Mode>& mode) {
    auto& facts = mode.facts;
    io.attribute("id", facts.id, Need::required);
    io.fact("name", facts.name);
    io.facts("cause", facts.causes);
    io.fact("local-effect", facts.localEffect);
    io.fact("next-effect", facts.nextEffect);
    io.fact("detection", facts.detection);
    io.fact("compensation", facts.compensation);
    io.fact("proved-by", facts.provedBy);
    io.fact("dormant", facts.dormant);
    io.element("model", facts.model);
    io.fact("no-rate", mode.noRate);
    io.elements("check", facts.checks);
    io.fact("remark", facts.remark);
}

template <typename Io>
void describe(Io& io, Of<Io, library::ComponentType>& type) {
    io.attribute("id", type.id, Need::required);
    io.attribute("revision", type.revision, Need::optional);
    io.fact("name", type.name);
    io.fact("group", type.group);
    io.fact("function", type.function);
    io.elements("mode", type.modes);
    io.fact("remark", type.remark);
}

template <typename Io>
void describe(Io& io, Of<Io, library::Library>& library) {
    io.version(library.newerMinorVersion);
    io.section("library", library.keptInSections, [&](auto& section) {
        section.fact("id", library.id);
        section.fact("name", library.name);
        section.fact("description", library.description);
        section.fact("revision", library.revision);
    });
    io.section("types", library.keptInSections,
               [&](auto& section) { section.elements("type", library.types); });
}

} // namespace cutwater::document
