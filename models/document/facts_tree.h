// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of events, gates and top events; see facts_values.h.
#pragma once

#include "models/document/facts_values.h"

namespace cutwater::document {

template <typename Io>
void describe(Io& io, Of<Io, project::Event>& event) {
    io.attribute("id", event.id, Need::required);
    io.attribute("kind", event.kind, Need::required);
    io.fact("name", event.name);
    io.reference("mode", event.mode);
    io.element("model", event.model);
    // A house event says how it is set even where it is set to the usual "false".
    io.fact("state", event.state,
            event.kind == project::EventKind::house ? Need::required : Need::optional);
    io.fact("remark", event.remark);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Gate>& gate) {
    io.attribute("id", gate.id, Need::required);
    io.attribute("kind", gate.kind, Need::required);
    io.fact("name", gate.name);
    io.fact("k", gate.k);
    io.references("input", gate.inputs);
    io.reference("condition", gate.condition);
    io.fact("remark", gate.remark);
}

template <typename Io>
void describe(Io& io, Of<Io, project::TopEvent>& top) {
    io.attribute("id", top.id, Need::required);
    io.fact("name", top.name);
    io.reference("node", top.node);
    io.fact("operating-mode", top.operatingMode);
    io.fact("severity", top.severity);
    io.facts("end-effect", top.endEffects);
    io.element("asked", top.asked);
    io.fact("remark", top.remark);
}

} // namespace cutwater::document
