// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/plant_copy.h"

#include "models/project/edits/ids.h"
#include "models/project/edits/parts.h"
#include "models/project/edits/tree.h"

#include <algorithm>
#include <cctype>
#include <fmt/format.h>
#include <map>

namespace cutwater::project::edits {

namespace {

using Renamed = std::map<Id, Id>;

Id renamed(const Renamed& ids, const Id& id) {
    const auto found = ids.find(id);
    return found == ids.end() ? id : found->second;
}

template <typename Do>
void eachQuantity(Project& project, Do act) {
    for (Component& each : project.components)
        if (each.failureRate) act(*each.failureRate);
    for (FailureMode& mode : project.modes) {
        if (mode.ratio) act(*mode.ratio);
        if (mode.effectChance) act(*mode.effectChance);
        for (Assignment& number : mode.model.numbers)
            act(number.quantity);
    }
    for (Connection& each : project.connections)
        if (each.capacity) act(*each.capacity);
}

// "FP-1" -> "FP-2" ...; a tag without a number at its end gets one.
std::string nextTag(const std::string& tag, const std::set<std::string>& taken) {
    if (tag.empty() || !taken.contains(tag)) return tag;
    std::size_t digits = tag.size();
    while (digits > 0 && std::isdigit(static_cast<unsigned char>(tag[digits - 1])))
        --digits;
    if (tag.size() - digits > 8) digits = tag.size();
    const bool counted = digits < tag.size();
    const std::string stem = counted ? tag.substr(0, digits) : tag + "-";
    const std::size_t width = tag.size() - digits;
    for (long number = counted ? std::stol(tag.substr(digits)) + 1 : 2;; ++number)
        if (std::string made =
                fmt::format("{}{:0{}}", stem, number, std::max<std::size_t>(width, 1));
            !taken.contains(made))
            return made;
}

} // namespace

Outcome<Project> copyParts(const Project& project, const std::vector<Id>& ids) {
    const Chosen chosen = withAllBelow(project, ids);
    if (chosen.components.empty() && chosen.modes.empty())
        return refuse("nothing is chosen", "choose a component or a failure mode");
    Project fragment;
    fragment.name = "Copied part";
    IdSet owners = chosen.components;
    for (const FailureMode& mode : project.modes)
        if (chosen.modes.contains(mode.id)) {
            fragment.modes.push_back(mode);
            owners.insert(mode.component);
        }
    for (const Component& each : project.components) {
        if (!owners.contains(each.id)) continue;
        fragment.components.push_back(each);
        if (!owners.contains(each.parent)) fragment.components.back().parent.clear();
    }
    const auto within = [&](const Id& id) { return chosen.components.contains(id); };
    for (const Connection& each : project.connections)
        if (within(each.from) && within(each.to) &&
            std::all_of(each.through.begin(), each.through.end(),
                        [&](const Reference& device) { return within(device.id); }))
            fragment.connections.push_back(each);
    IdSet parameters;
    eachQuantity(fragment, [&](Quantity& quantity) { parameters.insert(quantity.parameter); });
    for (const Parameter& each : project.parameters)
        if (parameters.contains(each.id)) fragment.parameters.push_back(each);
    return fragment;
}

namespace {

// Shared parameters that the project has already are used; others come along.
void pasteParameters(Project& made, Project& fragment) {
    Renamed ids;
    for (const Parameter& each : fragment.parameters) {
        const auto named = [&](const Id& id) {
            return std::find_if(made.parameters.begin(), made.parameters.end(),
                                [&](const Parameter& own) { return own.id == id; });
        };
        const auto there = named(each.id);
        if (there != made.parameters.end() && *there == each) continue;
        Parameter copy = each;
        copy.id =
            uniqueId(each.id, [&](const Id& id) { return named(id) != made.parameters.end(); });
        ids[each.id] = copy.id;
        made.parameters.push_back(std::move(copy));
    }
    eachQuantity(fragment, [&](Quantity& quantity) {
        quantity.parameter = renamed(ids, quantity.parameter);
    });
}

// Old ids to new ones; the components stand in the place then.
Renamed pasteComponents(Project& made, const Project& fragment, const PartPlace& place) {
    const auto old = static_cast<std::ptrdiff_t>(made.components.size());
    std::set<std::string> tags;
    IdSet known;
    for (const Component& each : made.components) {
        tags.insert(each.tag);
        known.insert(each.id);
    }
    Renamed ids;
    for (Component copy : fragment.components) {
        const Id before = copy.id;
        copy.tag = nextTag(copy.tag, tags);
        tags.insert(copy.tag);
        copy.id = newPartId(made, copy.tag, copy.name);
        copy.line = {};
        ids[before] = copy.id;
        made.components.push_back(std::move(copy));
    }
    for (auto copy = made.components.begin() + old; copy != made.components.end(); ++copy) {
        copy->parent = ids.contains(copy->parent) ? ids[copy->parent] : place.parent;
        std::erase_if(copy->suppliedBy, [&](const Reference& supplier) {
            return !ids.contains(supplier.id) && !known.contains(supplier.id);
        });
        for (Reference& supplier : copy->suppliedBy)
            supplier = {renamed(ids, supplier.id), {}};
    }
    const auto at = std::find_if(
        made.components.begin(), made.components.begin() + old,
        [&](const Component& each) { return !place.before.empty() && each.id == place.before; });
    std::rotate(at, made.components.begin() + old, made.components.end());
    return ids;
}

void pasteConnections(Project& made, const Project& fragment, const Renamed& parts) {
    for (Connection copy : fragment.connections) {
        copy.id = uniqueId(copy.id, [&](const Id& id) {
            return std::any_of(made.connections.begin(), made.connections.end(),
                               [&](const Connection& own) { return own.id == id; });
        });
        copy.line = {};
        copy.from = renamed(parts, copy.from);
        copy.to = renamed(parts, copy.to);
        for (Reference& device : copy.through)
            device = {renamed(parts, device.id), {}};
        made.connections.push_back(std::move(copy));
    }
}

} // namespace

Result pasteParts(const Project& project, const Project& source, const PartPlace& place,
                  bool modesOnly) {
    if (source.components.empty() && source.modes.empty())
        return refuse("there is nothing to paste", "copy a component or a failure mode first");
    if (!place.parent.empty() && !findPart(project, place.parent)) return noSuchPart(place.parent);
    if (modesOnly && place.parent.empty())
        return refuse("a failure mode belongs to a component", "choose the component first");
    Changed changed{project, "Paste %1", {}, {}};
    Project& made = changed.project;
    Project fragment = source;
    pasteParameters(made, fragment);
    Renamed parts;
    if (!modesOnly) {
        parts = pasteComponents(made, fragment, place);
        pasteConnections(made, fragment, parts);
    }
    for (FailureMode copy : fragment.modes) {
        copy.component = modesOnly ? place.parent : renamed(parts, copy.component);
        copy.id = newModeId(made, copy.component, copy.name);
        copy.line = {};
        if (changed.about.empty()) changed.about = copy.name;
        made.modes.push_back(std::move(copy));
    }
    if (!modesOnly && !parts.empty())
        changed.about = partWords(*findPart(made, parts[fragment.components.front().id]));
    return changed;
}

Project partsFromLines(std::string_view lines) {
    Project fragment;
    struct Open {
        int depth;
        Id id;
    };
    std::vector<Open> open;
    while (!lines.empty()) {
        const auto end = std::min(lines.find('\n'), lines.size());
        std::string_view line = lines.substr(0, end);
        lines.remove_prefix(std::min(end + 1, lines.size()));
        int depth = 0;
        while (!line.empty() && (line[0] == ' ' || line[0] == '\t')) {
            depth += line[0] == '\t' ? 4 : 1;
            line.remove_prefix(1);
        }
        while (!line.empty() && (line.back() == ' ' || line.back() == '\r' || line.back() == '\t'))
            line.remove_suffix(1);
        if (line.empty()) continue;
        while (!open.empty() && open.back().depth >= depth)
            open.pop_back();
        const bool isMode = line.size() > 1 && (line[0] == '-' || line[0] == '*');
        if (isMode && !open.empty()) {
            line.remove_prefix(1);
            while (!line.empty() && line[0] == ' ')
                line.remove_prefix(1);
            if (line.empty()) continue;
            FailureMode mode;
            mode.name = std::string(line);
            mode.component = open.back().id;
            mode.id = newModeId(fragment, mode.component, mode.name);
            fragment.modes.push_back(std::move(mode));
            continue;
        }
        const PartWords words = splitPartWords(line);
        Component part;
        part.id = newPartId(fragment, words.tag, words.name);
        part.tag = words.tag;
        part.name = words.name;
        if (!open.empty()) part.parent = open.back().id;
        open.push_back({depth, part.id});
        fragment.components.push_back(std::move(part));
    }
    return fragment;
}

} // namespace cutwater::project::edits
