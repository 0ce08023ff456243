// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/captions.h"

#include "models/reliability/event_model.h"

#include <fmt/format.h>

namespace cutwater::editor {

Captions captionsFor(const project::Project& project, const project::Index& index,
                     CaptionKind kind) {
    Captions result;
    if (kind == CaptionKind::tags) {
        for (const project::Event& event : project.events) {
            const project::FailureMode* mode = index.mode(event.mode);
            const project::Component* part = mode ? index.component(mode->component) : nullptr;
            if (part) result.words[event.id] = part->tag.empty() ? part->id : part->tag;
        }
        result.remark = "word under an event: tag of the component";
    }
    if (kind == CaptionKind::probabilities || kind == CaptionKind::gates) {
        for (const project::Event& event : project.events) {
            if (event.kind == project::EventKind::house) continue;
            const auto p = reliability::probabilityOf(project, index, event, std::nullopt);
            if (p) result.words[event.id] = fmt::format("{:.2e}", p->value);
        }
        result.remark =
            kind == CaptionKind::gates
                ? "number: probability of the event or gate, an estimate with wide limits"
                : "number: probability of the event, an estimate with wide limits";
    }
    return result;
}

} // namespace cutwater::editor
