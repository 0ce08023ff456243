// SPDX-License-Identifier: GPL-3.0-or-later
// Components and failure modes taken away, and what is lost with them.
#include "models/project/edits/parts.h"
#include "models/project/edits/plant.h"
#include "models/project/edits/tree.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::project::edits {

namespace {

bool isIn(const std::vector<Reference>& references, const IdSet& ids) {
    return std::any_of(references.begin(), references.end(),
                       [&](const Reference& each) { return ids.contains(each.id); });
}

bool speaksOf(const LogEntry& entry, const Chosen& chosen) {
    return chosen.components.contains(entry.component) || chosen.modes.contains(entry.mode);
}

// The event stands alone from now on: what the mode said about it stays with it.
void releaseEvent(Event& event, const Project& before) {
    const FailureMode* mode = findMode(before, event.mode);
    event.mode.clear();
    if (!mode) return;
    event.model = mode->model;
    if (!event.name.empty()) return;
    const Component* component = findPart(before, mode->component);
    event.name = fmt::format("{}{}{}", component ? partWords(*component) : "",
                             component ? ": " : "", mode->name.empty() ? mode->id : mode->name);
}

void note(std::string& remark, const std::string& text) {
    if (!remark.empty()) remark += ' ';
    remark += text;
}

} // namespace

Loss lossOf(const Project& project, const std::vector<Id>& ids) {
    const Chosen chosen = withAllBelow(project, ids);
    Loss loss;
    loss.components = chosen.components.size();
    loss.modes = chosen.modes.size();
    for (const Event& event : project.events)
        if (chosen.modes.contains(event.mode)) loss.events.push_back(event.id);
    for (const Component& each : project.components)
        if (!chosen.components.contains(each.id) && isIn(each.suppliedBy, chosen.components))
            ++loss.supplied;
    for (const Connection& each : project.connections)
        if (chosen.components.contains(each.from) || chosen.components.contains(each.to) ||
            isIn(each.through, chosen.components))
            ++loss.connections;
    for (const LogEntry& entry : project.log)
        loss.logEntries += speaksOf(entry, chosen);
    for (const Exposure& each : project.exposures)
        loss.exposures += chosen.components.contains(each.component);
    return loss;
}

Result removeParts(const Project& project, const std::vector<Id>& ids) {
    const Chosen chosen = withAllBelow(project, ids);
    if (chosen.components.empty() && chosen.modes.empty())
        return refuse("nothing is chosen", "choose a component or a failure mode");
    Changed changed{project, "Delete %1", {}, {}};
    if (ids.size() > 1)
        changed.about = fmt::format("{} items", ids.size());
    else if (const Component* component = findPart(project, ids.front()))
        changed.about = partWords(*component);
    else
        changed.about = findMode(project, ids.front())->name;
    Project& made = changed.project;
    const auto gone = [&](const Id& id) { return chosen.components.contains(id); };
    std::erase_if(made.components, [&](const Component& each) { return gone(each.id); });
    std::erase_if(made.modes,
                  [&](const FailureMode& each) { return chosen.modes.contains(each.id); });
    std::erase_if(made.connections,
                  [&](const Connection& each) { return gone(each.from) || gone(each.to); });
    std::erase_if(made.exposures, [&](const Exposure& each) { return gone(each.component); });
    const auto goneFrom = [&](std::vector<Reference>& references) {
        std::erase_if(references, [&](const Reference& each) { return gone(each.id); });
    };
    for (Component& each : made.components)
        goneFrom(each.suppliedBy);
    for (Connection& each : made.connections)
        goneFrom(each.through);
    for (Event& event : made.events)
        if (chosen.modes.contains(event.mode)) releaseEvent(event, project);
    for (LogEntry& entry : made.log) {
        if (!speaksOf(entry, chosen)) continue;
        if (gone(entry.component)) {
            note(entry.remark,
                 fmt::format("(Was about component {}, which was deleted.)", entry.component));
            entry.component.clear();
        }
        if (chosen.modes.contains(entry.mode)) {
            const FailureMode* mode = findMode(project, entry.mode);
            note(entry.remark, fmt::format("(Was failure mode {}: {}, which was deleted.)",
                                           mode->id, mode->name));
            entry.mode.clear();
        }
    }
    return changed;
}

} // namespace cutwater::project::edits
