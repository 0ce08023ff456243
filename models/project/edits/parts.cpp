// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/parts.h"

#include "models/project/edits/ids.h"
#include "models/project/edits/plant.h"

#include <algorithm>
#include <fmt/format.h>
#include <unordered_map>

namespace cutwater::project::edits {

namespace {

template <typename Values>
auto* find(Values& values, std::string_view id) {
    const auto found =
        std::find_if(values.begin(), values.end(), [&](const auto& each) { return each.id == id; });
    return found == values.end() ? nullptr : &*found;
}

} // namespace

Component* findPart(Project& project, std::string_view id) {
    return find(project.components, id);
}
FailureMode* findMode(Project& project, std::string_view id) {
    return find(project.modes, id);
}
const Component* findPart(const Project& project, std::string_view id) {
    return find(project.components, id);
}
const FailureMode* findMode(const Project& project, std::string_view id) {
    return find(project.modes, id);
}

Chosen withAllBelow(const Project& project, const std::vector<Id>& ids) {
    std::unordered_map<std::string_view, std::vector<std::string_view>> parts;
    IdSet known;
    for (const Component& each : project.components) {
        parts[each.parent].push_back(each.id);
        known.insert(each.id);
    }
    Chosen chosen;
    std::vector<std::string_view> left;
    for (const Id& id : ids) {
        if (known.contains(id))
            left.push_back(id);
        else if (findMode(project, id))
            chosen.modes.insert(id);
    }
    while (!left.empty()) {
        const std::string_view id = left.back();
        left.pop_back();
        if (!chosen.components.insert(Id(id)).second) continue;
        if (const auto found = parts.find(id); found != parts.end())
            left.insert(left.end(), found->second.begin(), found->second.end());
    }
    for (const FailureMode& mode : project.modes)
        if (chosen.components.contains(mode.component)) chosen.modes.insert(mode.id);
    return chosen;
}

Id newPartId(const Project& project, const std::string& tag, const std::string& name) {
    const Id wanted = isWellFormedId(tag) ? tag : slug(tag.empty() ? name : tag);
    return uniqueId(wanted, [&](const Id& id) { return findPart(project, id) != nullptr; });
}

Id newModeId(const Project& project, const Id& component, const std::string& name) {
    return uniqueId(component + "." + slug(name),
                    [&](const Id& id) { return findMode(project, id) != nullptr; });
}

Problem noSuchPart(std::string_view id) {
    if (id.empty())
        return {Severity::error, "no component is chosen", "choose one of the plant", {}, 0};
    return {Severity::error,
            fmt::format("the plant has no component {:.128}", id),
            "choose one that is there",
            {},
            0};
}

Problem noSuchMode(std::string_view id) {
    return {Severity::error,
            fmt::format("the plant has no failure mode {:.128}", id),
            "choose one that is there",
            {},
            0};
}

std::string quoted(const Component& component) {
    return fmt::format("\"{:.80}\"", partWords(component));
}

std::string quoted(const FailureMode& mode) {
    return fmt::format("\"{:.80}\"", mode.name.empty() ? mode.id : mode.name);
}

} // namespace cutwater::project::edits
