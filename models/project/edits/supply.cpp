// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/supply.h"

#include "models/project/edits/ids.h"
#include "models/project/edits/parts.h"
#include "models/project/edits/tree.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::project::edits {

namespace {

auto findConnection(Project& project, const Id& id) {
    return std::find_if(project.connections.begin(), project.connections.end(),
                        [&](const Connection& each) { return each.id == id; });
}

} // namespace

Result setConnection(const Project& project, const Connection& facts) {
    for (const Id& end : {facts.from, facts.to})
        if (!findPart(project, end))
            return end.empty()
                       ? refuse("a connection has two ends", "choose from where and to where")
                       : noSuchPart(end);
    if (facts.from == facts.to)
        return refuse(fmt::format("it would lead from {} to itself", facts.from),
                      "choose another component at one end");
    IdSet devices;
    for (const Reference& device : facts.through) {
        if (!findPart(project, device.id)) return noSuchPart(device.id);
        if (device.id == facts.from || device.id == facts.to || !devices.insert(device.id).second)
            return refuse(fmt::format("it would run through {} twice", device.id),
                          "name each component on the way once");
    }
    Changed changed{project, "Change the supply %1", {}, {}};
    Project& made = changed.project;
    if (facts.id.empty()) {
        changed.doing = "Add the supply %1";
        Connection connection = facts;
        connection.id = uniqueId(slug(facts.from + "-" + facts.to), [&](const Id& id) {
            return findConnection(made, id) != made.connections.end();
        });
        made.connections.push_back(std::move(connection));
    } else {
        const auto there = findConnection(made, facts.id);
        if (there == made.connections.end())
            return refuse(fmt::format("there is no connection {:.128}", facts.id),
                          "choose one that is there");
        Connection connection = facts;
        connection.kept = there->kept;
        connection.line = there->line;
        *there = std::move(connection);
    }
    changed.about = facts.medium.empty()
                        ? fmt::format("{} - {}", facts.from, facts.to)
                        : fmt::format("{}: {} - {}", facts.medium, facts.from, facts.to);
    return changed;
}

Result removeConnection(const Project& project, const Id& id) {
    Changed changed{project, "Delete the supply %1", {}, {}};
    const auto there = findConnection(changed.project, id);
    if (there == changed.project.connections.end())
        return refuse(fmt::format("there is no connection {:.128}", id),
                      "choose one that is there");
    changed.about = fmt::format("{} - {}", there->from, there->to);
    changed.project.connections.erase(there);
    return changed;
}

} // namespace cutwater::project::edits
