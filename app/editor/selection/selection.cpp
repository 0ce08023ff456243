// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/selection/selection.h"

#include <algorithm>
#include <utility>

namespace cutwater::editor {

bool Selection::isSelected(const project::Id& node) const {
    return std::any_of(m_spots.begin(), m_spots.end(),
                       [&](const Spot& spot) { return spot.node == node; });
}

void Selection::showTop(const project::Id& top) {
    if (top == m_top) return;
    m_top = top;
    emit topChanged();
}

void Selection::select(const std::vector<project::Id>& nodes) {
    std::vector<Spot> spots;
    for (const project::Id& node : nodes)
        spots.push_back({node});
    selectSpots(std::move(spots));
}

void Selection::selectSpots(std::vector<Spot> spots) {
    if (spots == m_spots) return;
    m_spots = std::move(spots);
    emit selectionChanged();
}

void Selection::mark(std::set<project::Id> nodes, const QString& reason) {
    if (nodes == m_marked && reason == m_reason) return;
    m_marked = std::move(nodes);
    m_reason = reason;
    emit marksChanged();
}

} // namespace cutwater::editor
