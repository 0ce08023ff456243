// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/redundancy/words.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::redundancy_plugin {
namespace {

bool runsOver(const project::Connection& connection, const project::Id& part) {
    return connection.from == part || connection.to == part ||
           std::any_of(connection.through.begin(), connection.through.end(),
                       [&](const project::Reference& device) { return device.id == part; });
}

} // namespace

std::string tagOf(const project::Component& component) {
    return component.tag.empty() ? component.id : component.tag;
}

std::string inWords(const project::Project& project, const project::Index& index,
                    std::size_t mode) {
    const project::Component* const part = index.component(project.modes[mode].component);
    const std::string& name = project.modes[mode].name;
    if (!part) return name;
    return fmt::format("{}{}{}: {}", tagOf(*part), part->name.empty() ? "" : " ", part->name, name);
}

std::string places(const project::Project& project, const project::Index& index,
                   const reliability::SupplyTrace& trace, const project::Id& part) {
    constexpr std::size_t kMost = 3;
    const auto tag = [&](const project::Id& id) {
        const project::Component* const component = index.component(id);
        return component ? tagOf(*component) : id;
    };
    std::vector<std::string> found;
    for (const std::size_t i : trace.connections) {
        const project::Connection& connection = project.connections[i];
        if (runsOver(connection, part))
            found.push_back(fmt::format(
                "the {} {} to {}", connection.path == project::SupplyPath::feed ? "feed" : "return",
                tag(connection.from), tag(connection.to)));
    }
    const std::size_t more = found.size() > kMost ? found.size() - kMost : 0;
    found.resize(found.size() - more);
    std::string text = fmt::format("{}", fmt::join(found, ", "));
    if (more > 0) text += fmt::format(" and {} more", more);
    return text;
}

std::string listOf(const project::Project& project, const ModeSet& set) {
    std::vector<std::string> ids;
    for (const std::size_t mode : set)
        ids.push_back(project.modes[mode].id);
    return fmt::format("{}", fmt::join(ids, ", "));
}

std::string capacityOf(const project::Project& project, const reliability::SupplyTrace& trace,
                       const reliability::SupplyLeg& leg) {
    const project::Quantity* least = nullptr;
    for (const std::size_t i : leg.connections) {
        const project::Connection& connection = project.connections[i];
        if (connection.medium != trace.load.medium || !connection.capacity) continue;
        if (!least ||
            (connection.capacity->unit == least->unit && connection.capacity->value < least->value))
            least = &*connection.capacity;
    }
    if (!least) return "not stated";
    return fmt::format("{:.6g} {}", least->value, project::facts(least->unit).symbol);
}

std::vector<std::string> nodesOf(const project::Project& project, const ModeSet& modes) {
    std::vector<std::string> nodes;
    for (const project::Event& event : project.events)
        for (const std::size_t mode : modes)
            if (event.mode == project.modes[mode].id) nodes.push_back(event.id);
    return nodes;
}

} // namespace cutwater::redundancy_plugin
