// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/compose.h"
#include "app/editor/diagram/hang.h"

#include <algorithm>

namespace cutwater::editor {
namespace {

// Position of each box among its parent's inputs: as the project lists them.
int inputOf(const Tree& tree, const PageBox& box, int before) {
    const project::Gate* gate = tree.index.gate(box.parent);
    if (!gate) return -1;
    for (std::size_t i = 0; i < gate->inputs.size(); ++i)
        if (gate->inputs[i].id == box.node && before-- == 0) return static_cast<int>(i);
    return -1;
}

} // namespace

drawing::Box frameOf(const PageBox& box) {
    return {box.at.x - drawing::kBoxWidth / 2, box.at.y, drawing::kBoxWidth, box.height};
}

Page composeSheet(const Tree& tree, const drawing::Sheet& sheet, std::size_t count) {
    Page page;
    page.number = sheet.number;
    page.count = static_cast<int>(count);
    page.title = sheet.picture.title;
    page.family = sheet.picture.family;
    Times times;
    for (const drawing::DrawnBox& drawn : sheet.boxes) {
        PageBox box;
        box.node = drawn.node;
        box.isGate = tree.index.gate(drawn.node) != nullptr;
        box.transfer = drawn.transfer;
        box.beside = drawn.beside && drawn.parent != drawing::kNoItem;
        box.symbol = drawn.symbol;
        box.words = drawn.words;
        box.title = drawn.title;
        box.description = drawn.transfer ? box.words.under : drawing::nameOf(drawn.symbol);
        box.at = drawn.at;
        box.textHeight = sheet.textHeight;
        box.height = drawing::boxHeight(sheet.textHeight, box.isGate && !drawn.transfer);
        box.owner = drawn.parent;
        box.sheet = drawn.sheet;
        const int before = hang(box, page, times);
        if (!box.beside && drawn.role != drawing::ItemRole::continuation)
            box.input = inputOf(tree, box, before);
        page.boxes.push_back(std::move(box));
    }
    for (const drawing::DrawnLine& line : sheet.lines)
        page.lines.push_back({line.upper, line.lower, page.boxes[line.lower].beside, line.route});

    const double back = 1 / sheet.scale;
    page.frameScale = back;
    page.frameOrigin = {-sheet.origin.x * back, -sheet.origin.y * back};
    page.extent = {page.frameOrigin.x, page.frameOrigin.y, sheet.picture.width * back,
                   sheet.picture.height * back};
    auto frame = std::make_shared<drawing::Picture>();
    frame->width = sheet.picture.width;
    frame->height = sheet.picture.height;
    frame->family = sheet.picture.family;
    for (const drawing::Group& group : sheet.picture.groups)
        if (group.kind == "frame" || group.kind == "legend") frame->groups.push_back(group);
    page.frame = std::move(frame);
    return page;
}

} // namespace cutwater::editor
