// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/plant.h"

#include "models/project/edits/parts.h"
#include "models/project/edits/tree.h"

#include <algorithm>
#include <cctype>
#include <fmt/format.h>

namespace cutwater::project::edits {

namespace {

std::string trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t\r\n");
    if (first == std::string_view::npos) return {};
    const auto last = text.find_last_not_of(" \t\r\n");
    return std::string(text.substr(first, last - first + 1));
}

// A letter first; then a digit with a capital letter or a dash, or capitals alone before a name.
bool looksLikeTag(std::string_view word, bool nameFollows) {
    if (word.empty() || word.size() > 24 || !std::isalpha(static_cast<unsigned char>(word[0])))
        return false;
    const auto any = [&](auto test) { return std::any_of(word.begin(), word.end(), test); };
    const bool capital = any([](unsigned char c) { return std::isupper(c); });
    if (any([](unsigned char c) { return std::isdigit(c); }))
        return capital || word.find('-') != std::string_view::npos;
    return nameFollows && word.size() > 1 && !any([](unsigned char c) { return !std::isupper(c); });
}

// Puts it into the vector where its place says; `before` is one of the same vector.
template <typename Values, typename Value>
void putBefore(Values& values, Value value, const Id& before) {
    const auto at = std::find_if(values.begin(), values.end(), [&](const auto& each) {
        return !before.empty() && each.id == before;
    });
    values.insert(at, std::move(value));
}

template <typename Values>
auto takeOut(Values& values, const Id& id) {
    const auto at =
        std::find_if(values.begin(), values.end(), [&](const auto& each) { return each.id == id; });
    auto value = std::move(*at);
    values.erase(at);
    return value;
}

Problem emptyText(const char* remedy) {
    return refuse("the text is empty", remedy);
}

} // namespace

PartWords splitPartWords(std::string_view text) {
    const std::string whole = trimmed(text);
    const auto end = whole.find_first_of(" \t");
    if (!looksLikeTag(std::string_view(whole).substr(0, end), end != std::string::npos))
        return {{}, whole};
    if (end == std::string::npos) return {whole, {}};
    return {whole.substr(0, end), trimmed(std::string_view(whole).substr(end))};
}

std::string partWords(const Component& component) {
    if (component.tag.empty() && component.name.empty()) return component.id;
    if (component.tag.empty() || component.name.empty()) return component.tag + component.name;
    return component.tag + " " + component.name;
}

Id proposedPartId(const Project& project, const std::string& tag, const std::string& name) {
    return newPartId(project, tag, name);
}

Result addPart(const Project& project, const PartPlace& place, const std::string& text) {
    const PartWords words = splitPartWords(text);
    if (words.tag.empty() && words.name.empty())
        return emptyText("type the tag and the name of the part");
    if (!place.parent.empty() && !findPart(project, place.parent)) return noSuchPart(place.parent);
    Component component;
    component.id = newPartId(project, words.tag, words.name);
    component.tag = words.tag;
    component.name = words.name;
    component.parent = place.parent;
    const std::string about = partWords(component);
    Changed changed{project, "Add component %1", about, {}};
    putBefore(changed.project.components, std::move(component), place.before);
    return changed;
}

Result addMode(const Project& project, const PartPlace& place, const std::string& name) {
    FailureMode mode;
    mode.name = trimmed(name);
    if (mode.name.empty()) return emptyText("type how the part fails");
    if (!findPart(project, place.parent)) return noSuchPart(place.parent);
    mode.id = newModeId(project, place.parent, mode.name);
    mode.component = place.parent;
    Changed changed{project, "Add failure mode %1", mode.name, {}};
    putBefore(changed.project.modes, std::move(mode), place.before);
    return changed;
}

Result setPartWords(const Project& project, const Id& id, const std::string& text) {
    Changed changed{project, "Rename component to %1", {}, {}};
    Component* component = findPart(changed.project, id);
    if (!component) return noSuchPart(id);
    const std::string whole = trimmed(text);
    if (whole.empty()) return emptyText("type the tag and the name, or delete the component");
    const std::string& tag = component->tag;
    if (!tag.empty() && whole.starts_with(tag) &&
        (whole.size() == tag.size() || whole[tag.size()] == ' ')) {
        component->name = trimmed(std::string_view(whole).substr(tag.size()));
    } else {
        PartWords words = splitPartWords(whole);
        component->tag = std::move(words.tag);
        component->name = std::move(words.name);
    }
    changed.about = partWords(*component);
    return changed;
}

Result renameMode(const Project& project, const Id& id, const std::string& name) {
    Changed changed{project, "Rename failure mode to %1", trimmed(name), {}};
    FailureMode* mode = findMode(changed.project, id);
    if (!mode) return noSuchMode(id);
    if (changed.about.empty())
        return emptyText("type how the part fails, or delete the failure mode");
    mode->name = changed.about;
    return changed;
}

Result setModeModel(const Project& project, const Id& id, const FailureModel& model) {
    Changed changed{project, "Change the failure model of %1", {}, {}};
    FailureMode* mode = findMode(changed.project, id);
    if (!mode) return noSuchMode(id);
    mode->model = model;
    changed.about = mode->name.empty() ? mode->id : mode->name;
    return changed;
}

Result setPart(const Project& project, const Component& facts) {
    Changed changed{project, "Change component %1", {}, {}};
    Component* component = findPart(changed.project, facts.id);
    if (!component) return noSuchPart(facts.id);
    IdSet suppliers;
    for (const Reference& supplier : facts.suppliedBy) {
        const Component* other = findPart(project, supplier.id);
        if (!other) return noSuchPart(supplier.id);
        if (supplier.id == facts.id)
            return refuse(fmt::format("{} would supply itself", quoted(*component)),
                          "choose another component");
        if (!suppliers.insert(supplier.id).second)
            return refuse(fmt::format("{} supplies it already", quoted(*other)),
                          "choose another component");
    }
    component->tag = facts.tag;
    component->name = facts.name;
    component->type = facts.type;
    component->function = facts.function;
    component->location = facts.location;
    component->suppliedBy = facts.suppliedBy;
    component->failureRate = facts.failureRate;
    component->remark = facts.remark;
    changed.about = partWords(*component);
    return changed;
}

Result moveParts(const Project& project, const std::vector<Id>& ids, const PartPlace& place) {
    if (ids.empty()) return refuse("nothing is chosen", "choose what shall be moved");
    if (!place.parent.empty() && !findPart(project, place.parent)) return noSuchPart(place.parent);
    Changed changed{project, "Move %1", {}, {}};
    Project& made = changed.project;
    for (const Id& id : ids) {
        if (Component* component = findPart(made, id)) {
            if (withAllBelow(project, {id}).components.contains(place.parent))
                return refuse(fmt::format("{} would become a part of itself", quoted(*component)),
                              "choose a place outside of it");
            changed.about = partWords(*component);
            if (place.before == id) continue; // it stands there already
            Component moved = takeOut(made.components, id);
            moved.parent = place.parent;
            putBefore(made.components, std::move(moved), place.before);
        } else if (FailureMode* mode = findMode(made, id)) {
            if (place.parent.empty())
                return refuse(
                    fmt::format("{} is a failure mode and belongs to a component", quoted(*mode)),
                    "move it onto a component");
            changed.about = mode->name.empty() ? mode->id : mode->name;
            if (place.before == id) continue;
            FailureMode moved = takeOut(made.modes, id);
            moved.component = place.parent;
            putBefore(made.modes, std::move(moved), place.before);
        } else {
            return noSuchPart(id);
        }
    }
    if (ids.size() > 1) changed.about = fmt::format("{} items", ids.size());
    return changed;
}

} // namespace cutwater::project::edits
