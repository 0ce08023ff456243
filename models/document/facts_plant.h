// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of components, failure modes and connections; see facts_values.h.
#pragma once

#include "models/document/facts_values.h"
#include "models/document/facts_worksheet.h"

namespace cutwater::document {

template <typename Io>
void describe(Io& io, Of<Io, project::Component>& component) {
    io.attribute("id", component.id, Need::required);
    io.fact("tag", component.tag);
    io.fact("name", component.name);
    io.fact("type", component.type);
    io.fact("function", component.function);
    io.fact("location", component.location);
    io.reference("parent", component.parent);
    io.references("supplied-by", component.suppliedBy);
    io.element("failure-rate", component.failureRate);
    io.element("from-library", component.origin);
    io.fact("remark", component.remark);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Check>& check) {
    io.fact("look", check.look);
    io.fact("minutes", check.minutes);
    io.fact("tells", check.tells);
}

template <typename Io>
void describe(Io& io, Of<Io, project::FailureMode>& mode) {
    io.attribute("id", mode.id, Need::required);
    io.reference("component", mode.component);
    io.fact("name", mode.name);
    io.facts("cause", mode.causes);
    io.fact("local-effect", mode.localEffect);
    io.fact("next-effect", mode.nextEffect);
    io.fact("end-effect", mode.endEffect);
    io.fact("detection", mode.detection);
    io.fact("compensation", mode.compensation);
    io.fact("proved-by", mode.provedBy);
    io.fact("proved-on", mode.provedOn);
    io.fact("dormant", mode.dormant);
    io.fact("severity", mode.severity);
    io.fact("severity-rating", mode.severityRating);
    io.fact("occurrence-rating", mode.occurrenceRating);
    io.fact("detection-rating", mode.detectionRating);
    io.fact("severity-after", mode.severityAfter);
    io.fact("occurrence-after", mode.occurrenceAfter);
    io.fact("detection-after", mode.detectionAfter);
    io.fact("operating-mode", mode.operatingMode);
    io.element("mode-ratio", mode.ratio);
    io.element("effect-chance", mode.effectChance);
    io.element("model", mode.model);
    io.elements("check", mode.checks);
    io.elements("action", mode.actions);
    io.fact("library-mode", mode.libraryMode);
    io.fact("remark", mode.remark);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Connection>& connection) {
    io.attribute("id", connection.id, Need::required);
    io.fact("name", connection.name);
    io.fact("medium", connection.medium);
    io.fact("path", connection.path);
    io.reference("from", connection.from);
    io.reference("to", connection.to);
    io.references("through", connection.through);
    io.element("capacity", connection.capacity);
}

} // namespace cutwater::document
