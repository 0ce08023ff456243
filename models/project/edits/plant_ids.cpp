// SPDX-License-Identifier: GPL-3.0-or-later
// Ids of the plant changed, and carried to everything that refers to them.
#include "models/project/edits/parts.h"
#include "models/project/edits/plant.h"
#include "models/project/edits/tree.h"

#include <fmt/format.h>

namespace cutwater::project::edits {

namespace {

Problem noId(const Id& id) {
    return refuse(fmt::format("\"{:.60}\" is no id", id),
                  "write letters, digits and _ - . : / only, a letter, digit or _ first");
}

void carryMode(Project& project, const Id& from, const Id& to) {
    for (Event& event : project.events)
        if (event.mode == from) event.mode = to;
    for (LogEntry& entry : project.log)
        if (entry.mode == from) entry.mode = to;
}

} // namespace

Result renameModeId(const Project& project, const Id& old, const Id& id) {
    Changed changed{project, "Change the id of a failure mode to %1", id, {}};
    FailureMode* mode = findMode(changed.project, old);
    if (!mode) return noSuchMode(old);
    if (!isWellFormedId(id)) return noId(id);
    if (id != old && findMode(project, id))
        return refuse(fmt::format("there is a failure mode {} already", id), "choose another id");
    mode->id = id;
    carryMode(changed.project, old, id);
    return changed;
}

Result renameComponentId(const Project& project, const Id& old, const Id& id) {
    Changed changed{project, "Change the id of a component to %1", id, {}};
    Project& made = changed.project;
    Component* component = findPart(made, old);
    if (!component) return noSuchPart(old);
    if (!isWellFormedId(id)) return noId(id);
    if (id == old) return changed;
    if (findPart(project, id))
        return refuse(fmt::format("there is a component {} already", id), "choose another id");
    component->id = id;
    const auto carry = [&](Id& reference) {
        if (reference == old) reference = id;
    };
    for (Component& each : made.components) {
        carry(each.parent);
        for (Reference& supplier : each.suppliedBy)
            carry(supplier.id);
    }
    for (Connection& each : made.connections) {
        carry(each.from);
        carry(each.to);
        for (Reference& device : each.through)
            carry(device.id);
    }
    for (LogEntry& entry : made.log)
        carry(entry.component);
    for (Exposure& exposure : made.exposures)
        carry(exposure.component);
    const std::string prefix = old + ".";
    for (FailureMode& mode : made.modes) {
        if (mode.component != old) continue;
        mode.component = id;
        if (!mode.id.starts_with(prefix)) continue;
        const Id before = mode.id;
        const Id after = uniqueId(id + "." + before.substr(prefix.size()), [&](const Id& wanted) {
            return findMode(made, wanted) != nullptr;
        });
        if (!isWellFormedId(after)) return noId(after); // too long
        mode.id = after;
        carryMode(made, before, after);
    }
    return changed;
}

} // namespace cutwater::project::edits
