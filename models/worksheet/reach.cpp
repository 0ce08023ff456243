// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/reach.h"

#include <algorithm>
#include <string_view>
#include <unordered_set>

namespace cutwater::worksheet {

std::vector<std::size_t> eventsBelow(const project::Project& project, const project::Index& index,
                                     const project::Id& node) {
    std::vector<std::size_t> events;
    std::unordered_set<std::string_view> seen;
    std::vector<std::string_view> left;
    const auto reach = [&](const project::Id& id) {
        if (!id.empty() && seen.insert(id).second) left.push_back(id);
    };
    reach(node);
    while (!left.empty()) {
        const std::string_view id = left.back();
        left.pop_back();
        if (const project::Event* event = index.event(id)) {
            events.push_back(static_cast<std::size_t>(event - project.events.data()));
            continue;
        }
        const project::Gate* gate = index.gate(id);
        if (!gate) continue;
        for (const project::Reference& input : gate->inputs)
            reach(input.id);
        reach(gate->condition.id);
    }
    std::sort(events.begin(), events.end());
    return events;
}

std::vector<std::vector<std::size_t>> topsOfModes(const project::Project& project,
                                                  const project::Index& index) {
    std::vector<std::vector<std::size_t>> tops(project.modes.size());
    for (std::size_t top = 0; top < project.tops.size(); ++top)
        for (const std::size_t event : eventsBelow(project, index, project.tops[top].node.id)) {
            const project::FailureMode* mode = index.mode(project.events[event].mode);
            if (!mode) continue;
            auto& of = tops[static_cast<std::size_t>(mode - project.modes.data())];
            if (of.empty() || of.back() != top) of.push_back(top);
        }
    return tops;
}

} // namespace cutwater::worksheet
