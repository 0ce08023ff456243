// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of common causes, exposures, log entries and assessments; see facts_values.h.
#pragma once

#include "models/document/facts_values.h"

namespace cutwater::document {

template <typename Io>
void describe(Io& io, Of<Io, project::CommonCauseGroup>& group) {
    io.attribute("id", group.id, Need::required);
    io.attribute("kind", group.kind, Need::required);
    io.fact("name", group.name);
    io.elements("factor", group.factors);
    io.references("member", group.members);
    io.fact("reason", group.reason);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Exposure>& exposure) {
    io.reference("component", exposure.component);
    io.fact("from", exposure.from);
    io.fact("to", exposure.to);
    io.fact("calendar-hours", exposure.calendarHours);
    io.fact("firing-hours", exposure.firingHours);
    io.fact("starts", exposure.starts);
    io.element("source", exposure.source);
}

template <typename Io>
void describe(Io& io, Of<Io, project::LogEntry>& entry) {
    io.attribute("id", entry.id, Need::required);
    io.fact("date", entry.date);
    io.fact("time", entry.time);
    io.fact("unit", entry.unit);
    io.fact("running-hours", entry.runningHours);
    io.fact("starts", entry.starts);
    io.fact("phase", entry.phase);
    io.reference("component", entry.component);
    io.reference("mode", entry.mode);
    io.fact("found", entry.found);
    io.fact("indication", entry.indication);
    io.fact("effect", entry.effect);
    io.reference("top-event", entry.topEvent);
    io.fact("downtime-hours", entry.downtimeHours);
    io.fact("remedy", entry.remedy);
    io.fact("status", entry.status);
    io.fact("batch", entry.batch);
    io.fact("remark", entry.remark);
    io.element("source", entry.source);
}

template <typename Io>
void describe(Io& io, Of<Io, project::ForcedEvent>& forced) {
    io.target(forced.event);
    io.attribute("state", forced.state, Need::required);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Assessment>& assessment) {
    io.attribute("id", assessment.id, Need::required);
    io.fact("name", assessment.name);
    io.fact("state", assessment.state);
    io.elements("force", assessment.forced);
    io.element("duration", assessment.duration);
    io.facts("measure", assessment.measures);
    io.fact("reason", assessment.reason);
    io.fact("decided-by", assessment.decidedBy);
    io.fact("remark", assessment.remark);
}

} // namespace cutwater::document
