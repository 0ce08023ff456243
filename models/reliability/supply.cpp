// SPDX-License-Identifier: GPL-3.0-or-later
// The network as it is drawn: media, sources, and which loads claim to be redundant.
#include "models/reliability/supply.h"

#include <algorithm>
#include <cassert>

namespace cutwater::reliability {

using project::SupplyPath;

SupplyNetwork::SupplyNetwork(const project::Project& project, const project::Index& index,
                             SupplyWish wish)
    : m_project(project), m_index(index), m_wish(std::move(wish)) {
    for (std::size_t i = 0; i < project.connections.size(); ++i) {
        const project::Connection& connection = project.connections[i];
        auto found = std::find_if(m_media.begin(), m_media.end(), [&](const Medium& medium) {
            return medium.name == connection.medium;
        });
        if (found == m_media.end()) {
            m_media.push_back(
                {connection.medium, isElectrical(connection.medium), false, {}, {}, {}});
            found = std::prev(m_media.end());
        }
        (connection.path == SupplyPath::feed ? found->feeds : found->returns).push_back(i);
    }
    for (Medium& medium : m_media) {
        medium.hasReturns = !medium.returns.empty();
        findSources(medium);
    }
}

std::size_t SupplyNetwork::position(const project::Id& component) const {
    const project::Component* const found = m_index.component(component);
    assert(found && "validate() reports missing components");
    return static_cast<std::size_t>(found - m_project.components.data());
}

const SupplyNetwork::Medium& SupplyNetwork::medium(const std::string& name) const {
    return *std::find_if(m_media.begin(), m_media.end(),
                         [&](const Medium& medium) { return medium.name == name; });
}

bool SupplyNetwork::arrives(const Medium& medium, std::size_t component) const {
    return std::any_of(medium.feeds.begin(), medium.feeds.end(), [&](std::size_t feed) {
        return position(m_project.connections[feed].to) == component;
    });
}

bool SupplyNetwork::leaves(const Medium& medium, std::size_t component) const {
    return std::any_of(medium.feeds.begin(), medium.feeds.end(), [&](std::size_t feed) {
        return position(m_project.connections[feed].from) == component;
    });
}

bool SupplyNetwork::returnLeaves(const Medium& medium, std::size_t component) const {
    return std::any_of(medium.returns.begin(), medium.returns.end(), [&](std::size_t back) {
        return position(m_project.connections[back].from) == component;
    });
}

void SupplyNetwork::findSources(Medium& medium) const {
    std::set<std::size_t> ends;
    for (const std::size_t i : medium.feeds) {
        ends.insert(position(m_project.connections[i].from));
        ends.insert(position(m_project.connections[i].to));
    }
    for (const std::size_t component : ends) {
        if (m_wish.sources.contains(m_project.components[component].id)) {
            medium.sources.insert(component);
            continue;
        }
        if (medium.hasReturns) continue;
        if (leaves(medium, component) && !arrives(medium, component))
            medium.sources.insert(component);
    }
    // Where the current comes home to and goes no further.
    for (const std::size_t i : medium.returns) {
        const std::size_t home = position(m_project.connections[i].to);
        if (!returnLeaves(medium, home) && leaves(medium, home)) medium.sources.insert(home);
    }
}

std::vector<SupplyLoad> SupplyNetwork::loadsAt(const project::Id& component) const {
    std::vector<SupplyLoad> loads;
    const std::size_t at = position(component);
    for (const Medium& medium : m_media)
        if (arrives(medium, at) && !medium.sources.contains(at)) loads.push_back({at, medium.name});
    return loads;
}

std::vector<SupplyLoad> SupplyNetwork::redundantLoads() const {
    std::vector<SupplyLoad> loads;
    for (const Medium& medium : m_media) {
        std::vector<std::size_t> feedsTo(m_project.components.size(), 0);
        for (const std::size_t feed : medium.feeds)
            ++feedsTo[position(m_project.connections[feed].to)];
        std::vector<bool> behind(m_project.components.size(), false);
        // A meeting hands on to the next node as long as it is only on the way: it has no return of
        // its own and one feed leaves it.
        std::vector<std::size_t> meetings;
        for (std::size_t component = 0; component < feedsTo.size(); ++component)
            if (feedsTo[component] >= 2) meetings.push_back(component);
        for (std::size_t component : meetings) {
            std::set<std::size_t> walked;
            while (walked.insert(component).second) {
                std::vector<std::size_t> next;
                for (const std::size_t feed : medium.feeds)
                    if (position(m_project.connections[feed].from) == component)
                        next.push_back(position(m_project.connections[feed].to));
                const bool onTheWay =
                    next.size() == 1 && medium.hasReturns && !returnLeaves(medium, component);
                if (!onTheWay) break;
                component = next.front();
            }
            behind[component] = true;
        }
        for (std::size_t component = 0; component < behind.size(); ++component)
            if (behind[component] && !medium.sources.contains(component))
                loads.push_back({component, medium.name});
    }
    std::sort(loads.begin(), loads.end(),
              [](const SupplyLoad& a, const SupplyLoad& b) { return a.component < b.component; });
    return loads;
}

} // namespace cutwater::reliability
