// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/rows.h"

#include "models/project/edits/ids.h"
#include "models/project/edits/tree.h"

#include <algorithm>
#include <fmt/format.h>
#include <set>
#include <string_view>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace cutwater::project::edits {

namespace {

constexpr std::size_t kLongestId = 120; // room for "-2" behind it

using Places = std::unordered_map<std::string_view, std::size_t>;

// Of the project that is read, whose ids outlive the edit.
template <typename Value>
Places placesOf(const std::vector<Value>& values) {
    Places places;
    places.reserve(values.size());
    for (std::size_t i = 0; i < values.size(); ++i)
        places.emplace(values[i].id, i);
    return places;
}

Problem noSuchMode(const Id& id) {
    return refuse(fmt::format("there is no failure mode {}", id), "choose one that is there");
}

Problem noSuchComponent(const Id& id) {
    return refuse(fmt::format("there is no component {}", id), "choose one that is there");
}

bool blank(const std::string& text) {
    return text.find_first_not_of(" \t\r\n") == std::string::npos;
}

Id modeId(const Id& component, const std::string& name,
          const std::unordered_set<std::string>& used) {
    const Id wanted = (component + "." + slug(name)).substr(0, kLongestId);
    return uniqueId(wanted, [&](const Id& id) { return used.contains(id); });
}

std::unordered_set<std::string> idsOf(const std::vector<FailureMode>& modes) {
    std::unordered_set<std::string> ids;
    for (const FailureMode& mode : modes)
        ids.insert(mode.id);
    return ids;
}

Result put(Project project, const Id& component, const std::string& name, const Id& after) {
    if (blank(name))
        return refuse("the failure mode has no name", "type what fails, such as \"leaks\"");
    for (const FailureMode& mode : project.modes)
        if (mode.component == component && mode.name == name)
            return refuse(fmt::format("{} has a failure mode \"{}\" already", component, name),
                          "use that row, or call this one otherwise");
    FailureMode mode;
    mode.component = component;
    mode.name = name;
    mode.id = modeId(component, name, idsOf(project.modes));
    const Id id = mode.id;
    const auto behind = std::find_if(project.modes.begin(), project.modes.end(),
                                     [&](const FailureMode& each) { return each.id == after; });
    project.modes.insert(behind == project.modes.end() ? behind : behind + 1, std::move(mode));
    return Changed{std::move(project), "New row %1", name, {id}};
}

} // namespace

Result changeRows(const Project& project, std::vector<FailureMode> changed, std::string doing,
                  std::string about) {
    const Places modes = placesOf(project.modes), components = placesOf(project.components);
    Changed done{project, std::move(doing), std::move(about), {}};
    for (FailureMode& mode : changed) {
        const auto found = modes.find(mode.id);
        if (found == modes.end()) return noSuchMode(mode.id);
        const FailureMode& now = project.modes[found->second];
        if (mode.component != now.component && !components.contains(mode.component))
            return noSuchComponent(mode.component);
        done.touched.push_back(mode.id);
        done.project.modes[found->second] = std::move(mode);
    }
    return done;
}

Result addRow(const Project& project, const Id& component, const std::string& name,
              const Id& after) {
    if (!placesOf(project.components).contains(component)) return noSuchComponent(component);
    return put(project, component, name, after);
}

Result addRowOfNewComponent(const Project& project, const std::string& tag, const Id& parent,
                            const std::string& name, const Id& after) {
    if (blank(tag)) return refuse("the component has no tag", "type one, such as \"P-1\"");
    std::unordered_set<std::string> ids;
    for (const Component& each : project.components) {
        ids.insert(each.id);
        if (each.tag == tag || each.id == tag)
            return refuse(fmt::format("there is a component {} already", tag),
                          "choose it from the list, or take another tag");
    }
    if (!parent.empty() && !ids.contains(parent)) return noSuchComponent(parent);
    Project made = project;
    Component component;
    component.id = uniqueId(isWellFormedId(tag) ? tag : slug(tag).substr(0, kLongestId),
                            [&](const Id& id) { return ids.contains(id); });
    component.tag = tag;
    component.parent = parent;
    const Id id = component.id;
    made.components.push_back(std::move(component));
    return put(std::move(made), id, name, after);
}

Result duplicateRows(const Project& project, const std::vector<Id>& modes) {
    const Places places = placesOf(project.modes);
    for (const Id& id : modes)
        if (!places.contains(id)) return noSuchMode(id);
    const std::unordered_set<std::string_view> wanted(modes.begin(), modes.end());
    if (wanted.empty()) return refuse("no row is chosen", "choose one first");
    std::unordered_set<std::string> ids = idsOf(project.modes);
    std::set<std::pair<std::string, std::string>> names;
    for (const FailureMode& mode : project.modes)
        names.emplace(mode.component, mode.name);
    Changed done{project, "Duplicate %1", {}, {}};
    done.about = wanted.size() == 1 ? project.modes[places.at(modes.front())].name
                                    : fmt::format("{} rows", wanted.size());
    done.project.modes.clear();
    for (const FailureMode& mode : project.modes) {
        done.project.modes.push_back(mode);
        if (!wanted.contains(mode.id)) continue;
        FailureMode copy = mode;
        for (int n = 2;; ++n) {
            copy.name = fmt::format("{} ({})", mode.name, n);
            if (names.emplace(copy.component, copy.name).second) break;
        }
        copy.id = modeId(copy.component, copy.name, ids);
        copy.libraryMode.clear();
        ids.insert(copy.id);
        done.touched.push_back(copy.id);
        done.project.modes.push_back(std::move(copy));
    }
    return done;
}

Result removeRows(const Project& project, const std::vector<Id>& modes) {
    const Places places = placesOf(project.modes);
    for (const Id& id : modes)
        if (!places.contains(id)) return noSuchMode(id);
    const std::unordered_set<std::string_view> gone(modes.begin(), modes.end());
    if (gone.empty()) return refuse("no row is chosen", "choose one first");
    for (const LogEntry& entry : project.log)
        if (gone.contains(entry.mode))
            return refuse(fmt::format("the log speaks of the failure mode {} (entry {})",
                                      entry.mode, entry.id),
                          "keep the row: what happened has to stay readable");
    Changed done{project, "Remove %1", {}, {}};
    done.about = gone.size() == 1 ? project.modes[places.at(modes.front())].name
                                  : fmt::format("{} rows", gone.size());
    for (Event& event : done.project.events) {
        if (!gone.contains(event.mode)) continue;
        const FailureMode& mode = project.modes[places.at(event.mode)];
        if (event.name.empty()) event.name = mode.name;
        event.model = mode.model;
        event.mode.clear();
        done.touched.push_back(event.id);
    }
    std::erase_if(done.project.modes,
                  [&](const FailureMode& mode) { return gone.contains(mode.id); });
    return done;
}

} // namespace cutwater::project::edits
