// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/hang.h"

#include <fmt/format.h>

namespace cutwater::editor {

int hang(PageBox& box, Page& page, Times& times) {
    if (box.owner != kNoBox) {
        PageBox& above = page.boxes[box.owner];
        box.parent = above.node;
        if (box.beside)
            above.condition = page.boxes.size();
        else
            above.inputs.push_back(page.boxes.size());
    }
    const std::string place = box.node + '\n' + box.parent;
    const int before = times[place]++;
    box.key = before == 0 ? place : fmt::format("{}\n{}", place, before);
    return before;
}

} // namespace cutwater::editor
