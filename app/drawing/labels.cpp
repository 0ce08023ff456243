// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/labels.h"

namespace cutwater::drawing {
namespace {

std::string tagOf(const Item& item, const project::Index& index) {
    if (!item.event || item.event->mode.empty()) return {};
    const project::FailureMode* mode = index.mode(item.event->mode);
    const project::Component* component = mode ? index.component(mode->component) : nullptr;
    if (!component) return {};
    return component->tag.empty() ? component->id : component->tag;
}

std::string nameOf(const Item& item, const project::Index& index) {
    std::string name = item.gate ? item.gate->name : item.event->name;
    // An event without a name of its own is called as its failure mode.
    if (name.empty() && item.event)
        if (const project::FailureMode* mode = index.mode(item.event->mode)) {
            const project::Component* component = index.component(mode->component);
            name = component ? component->name + ": " + mode->name : mode->name;
        }
    if (item.role == ItemRole::continuation) name += name.empty() ? "continued" : " (continued)";
    return name;
}

} // namespace

Label labelOf(const Item& item, const project::Index& index, const Lettering& lettering) {
    constexpr double kRoom = kBoxWidth - 2 * kTextMargin;
    Label label;
    const std::string name = nameOf(item, index), tag = tagOf(item, index);
    std::string id = item.node;
    if (!tag.empty() && id.find(tag) == std::string::npos && name.find(tag) == std::string::npos)
        id = tag + "  " + id;
    label.name = wrap(name, kRoom, kNameLines, kTextSize, false, lettering.measure);
    label.id = wrap(id, kRoom, kIdLines, kTextSize, true, lettering.measure);
    label.whole = name.empty() ? id : name + " (" + id + ")";
    return label;
}

double textHeight(std::size_t lines) {
    return static_cast<double>(lines) * kLineHeight + 5;
}

} // namespace cutwater::drawing
