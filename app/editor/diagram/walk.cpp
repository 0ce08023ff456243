// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/walk.h"

#include <cmath>
#include <limits>

namespace cutwater::editor {

std::size_t walk(const Page& page, std::size_t from, Direction direction) {
    if (from >= page.boxes.size()) return kNoBox;
    const PageBox& box = page.boxes[from];
    if (direction == Direction::up) return box.owner;
    if (direction == Direction::down) {
        // The input nearest to straight below.
        std::size_t best = kNoBox;
        for (const std::size_t input : box.inputs)
            if (best == kNoBox || std::abs(page.boxes[input].at.x - box.at.x) <
                                      std::abs(page.boxes[best].at.x - box.at.x) - 1e-6)
                best = input;
        return best;
    }
    const double sign = direction == Direction::left ? -1 : 1;
    std::size_t best = kNoBox;
    double nearest = std::numeric_limits<double>::max();
    for (std::size_t i = 0; i < page.boxes.size(); ++i) {
        const PageBox& other = page.boxes[i];
        if (i == from || std::abs(other.at.y - box.at.y) > 1) continue; // another row
        const double away = sign * (other.at.x - box.at.x);
        if (away > 0 && away < nearest) {
            nearest = away;
            best = i;
        }
    }
    return best;
}

} // namespace cutwater::editor
