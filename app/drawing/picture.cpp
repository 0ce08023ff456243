// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/picture.h"

#include <utility>

namespace cutwater::drawing {

void add(std::vector<Mark>& marks, Path path) {
    marks.emplace_back(std::move(path));
}

void add(std::vector<Mark>& marks, Text text) {
    marks.emplace_back(std::move(text));
}

Path& Path::moveTo(Spot spot) {
    steps.push_back({StepKind::move, {}, {}, spot});
    return *this;
}

Path& Path::lineTo(Spot spot) {
    steps.push_back({StepKind::line, {}, {}, spot});
    return *this;
}

Path& Path::curveTo(Spot first, Spot second, Spot end) {
    steps.push_back({StepKind::curve, first, second, end});
    return *this;
}

Path& Path::close() {
    steps.push_back({StepKind::close, {}, {}, {}});
    return *this;
}

Path rectangle(const Box& box) {
    return polygon({{box.left, box.top},
                    {box.right(), box.top},
                    {box.right(), box.bottom()},
                    {box.left, box.bottom()}},
                   true);
}

Path ellipse(Spot c, double a, double b) {
    // Four cubic arcs; the constant makes each of them pass through the middle of its quarter.
    constexpr double k = 0.5522847498;
    Path path;
    path.moveTo({c.x - a, c.y});
    path.curveTo({c.x - a, c.y - k * b}, {c.x - k * a, c.y - b}, {c.x, c.y - b});
    path.curveTo({c.x + k * a, c.y - b}, {c.x + a, c.y - k * b}, {c.x + a, c.y});
    path.curveTo({c.x + a, c.y + k * b}, {c.x + k * a, c.y + b}, {c.x, c.y + b});
    path.curveTo({c.x - k * a, c.y + b}, {c.x - a, c.y + k * b}, {c.x - a, c.y});
    return path.close();
}

Path polygon(const std::vector<Spot>& spots, bool closed) {
    Path path;
    for (const Spot& spot : spots) {
        if (path.steps.empty())
            path.moveTo(spot);
        else
            path.lineTo(spot);
    }
    if (closed) path.close();
    return path;
}

double smallestType(const Picture& picture) {
    double smallest = 0;
    for (const Group& group : picture.groups)
        for (const Mark& mark : group.marks)
            if (const Text* text = std::get_if<Text>(&mark))
                if (smallest == 0 || text->size < smallest) smallest = text->size;
    return smallest;
}

} // namespace cutwater::drawing
