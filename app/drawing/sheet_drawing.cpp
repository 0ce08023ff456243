// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/sheet_drawing.h"

#include "app/drawing/palette.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace cutwater::drawing {
namespace {

SymbolKind symbolFor(const Item& item, bool transfer) {
    if (transfer) return SymbolKind::transferIn;
    return item.gate ? symbolOf(item.gate->kind) : symbolOf(item.event->kind);
}

std::string listed(const std::vector<int>& numbers) {
    return fmt::format("{}", fmt::join(numbers, ", "));
}

// Ids of elements: letters, digits, '-', '_', '.'; once each.
class Names {
public:
    std::string of(const std::string& prefix, const std::string& id) {
        std::string name = prefix + "-";
        for (const char c : id) {
            const bool plain = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') ||
                               (c >= '0' && c <= '9') || c == '-' || c == '_' || c == '.';
            name +=
                plain ? std::string(1, c) : fmt::format("_{:02X}", static_cast<unsigned char>(c));
        }
        std::string unique = name;
        for (int n = 2; !m_taken.insert(unique).second; ++n)
            unique = fmt::format("{}-{}", name, n);
        return unique;
    }

private:
    std::set<std::string> m_taken;
};

class Composer {
public:
    Composer(const SheetSet& set, std::size_t sheet, const PlacedSheet& placed)
        : m_set(set), m_planned(set.plan.sheets[sheet]), m_placed(placed) {
        const Item& root = item(m_planned.root);
        m_sheet.number = static_cast<int>(sheet) + 1;
        m_sheet.root = root.node;
        m_sheet.continued = root.role == ItemRole::continuation;
        m_sheet.scale = placed.scale;
        const Box& room = set.frame.room();
        const double spareX = room.width - placed.graph.width * placed.scale;
        const double spareY = room.height - placed.graph.height * placed.scale;
        m_origin = {room.left + spareX / 2, room.top + std::min(spareY * 0.4, 60.0)};
        m_sheet.origin = m_origin;
        m_sheet.textHeight = placed.textHeight;
    }

    Sheet compose() {
        startPicture();
        for (std::size_t n = 0; n < m_placed.graph.nodes.size(); ++n)
            drawLines(n);
        for (std::size_t n = 0; n < m_placed.graph.nodes.size(); ++n) {
            const sdk::LayoutNode& node = m_placed.graph.nodes[n];
            const PlannedBox& box = m_planned.boxes[m_placed.boxOf[n]];
            const Spot at{node.centre.x, node.centre.y - node.height / 2};
            const std::size_t condition = item(box.item).condition;
            drawOne(box.item, box.transfer, at);
            if (!box.transfer && condition != kNoItem) drawCondition(box.item, at);
        }
        nameParents();
        FrameWords words = m_set.words;
        words.sheet = m_sheet.number;
        words.sheetTitle = m_sheet.picture.title;
        m_set.frame.draw(m_sheet.picture, words, m_legend);
        return std::move(m_sheet);
    }

private:
    const Item& item(std::size_t i) const { return m_set.plan.items[i]; }

    void startPicture() {
        Picture& picture = m_sheet.picture;
        picture.width = m_set.paperWidth;
        picture.height = m_set.paperHeight;
        picture.family = m_set.lettering.family;
        picture.title = m_set.labels[m_planned.root].whole;
        picture.description =
            fmt::format("Fault tree, sheet {} of {}: {}. {}", m_sheet.number,
                        m_set.plan.sheets.size(), m_set.words.topEvent, kStandingCaution);
        m_legend.valuesRemark = m_set.wishes.valuesRemark;
    }

    bool marked(std::size_t i) const { return m_set.wishes.marked.contains(item(i).node); }

    static void follow(Path& path, const std::vector<sdk::Point>& route) {
        for (const sdk::Point& point : route) {
            if (&point == &route.front())
                path.moveTo({point.x, point.y});
            else
                path.lineTo({point.x, point.y});
        }
    }

    // The lines from one parent to its inputs are one group.
    void drawLines(std::size_t n) {
        // One path: stretches that lines share are then drawn once, not darker.
        Path path, heavy;
        const std::size_t parent = m_planned.boxes[m_placed.boxOf[n]].item;
        for (const sdk::LayoutEdge& edge : m_placed.graph.edges) {
            if (edge.parent != n) continue;
            const std::size_t child = m_planned.boxes[m_placed.boxOf[edge.child]].item;
            follow(path, edge.route);
            if (marked(parent) && marked(child)) follow(heavy, edge.route);
            DrawnLine line{parent, child, {}};
            for (const sdk::Point& point : edge.route)
                line.route.push_back({point.x, point.y});
            m_sheet.lines.push_back(std::move(line));
        }
        if (path.steps.empty()) return;
        path.width = kLine;
        path.line = kBlack;
        Group group;
        add(group.marks, std::move(path));
        // What is marked is followed by eye from the events to the top.
        heavy.width = kHeavy;
        heavy.line = kMarked;
        if (!heavy.steps.empty()) add(group.marks, std::move(heavy));
        const project::Id& id = item(parent).node;
        group.id = m_names.of("inputs", id);
        group.kind = "line";
        group.title = "Inputs of " + id;
        place(group.marks, m_placed.scale, m_origin);
        m_sheet.picture.groups.push_back(std::move(group));
    }

    void drawCondition(std::size_t gateItem, Spot gate) {
        const std::size_t condition = item(gateItem).condition;
        const double offset = m_set.sizes.boxWidth + m_set.sizes.besideGap;
        const bool transfer = item(condition).role == ItemRole::reference;
        drawOne(condition, transfer, {gate.x + offset, gate.y});
        // From the side of the hexagon to the side of the oval.
        const double y = gate.y + m_placed.textHeight + kStem + kSymbolHigh / 2;
        const std::vector<Spot> route{
            {gate.x + kSymbolWide / 2, y},
            {gate.x + offset - kSymbolWide * (transfer ? 0.25 : kOvalReach), y}};
        m_sheet.lines.push_back({gateItem, condition, route});
        Path path = polygon(route, false);
        const bool heavy = marked(gateItem) && marked(condition);
        path.width = heavy ? kHeavy : kLine;
        path.line = heavy ? kMarked : kBlack;
        Group group;
        group.id = m_names.of("condition", item(condition).node);
        group.kind = "line";
        add(group.marks, std::move(path));
        place(group.marks, m_placed.scale, m_origin);
        m_sheet.picture.groups.push_back(std::move(group));
    }

    // Items become positions in the sheet's boxes, a parent before its inputs.
    void nameParents() {
        std::map<std::size_t, std::size_t> boxOf;
        for (std::size_t b = 0; b < m_items.size(); ++b)
            boxOf[m_items[b]] = b;
        for (DrawnLine& line : m_sheet.lines) {
            line.upper = boxOf.at(line.upper);
            line.lower = boxOf.at(line.lower);
            m_sheet.boxes[line.lower].parent = line.upper;
        }
    }

    // The sheet that a transfer symbol points to.
    int target(std::size_t i) const {
        const std::size_t home =
            item(i).role == ItemRole::reference ? m_set.homeOf.at(item(i).node) : i;
        return static_cast<int>(m_set.plan.sheetOf[home]) + 1;
    }

    BoxWords wordsFor(std::size_t i, bool transfer, DrawnBox& drawn) const {
        const Item& it = item(i);
        BoxWords words;
        words.label = m_set.labels[i];
        words.dashed = transfer || it.role == ItemRole::continuation;
        words.marked = m_set.wishes.marked.contains(it.node);
        const auto value = m_set.wishes.values.find(it.node);
        if (transfer) {
            drawn.sheet = target(i);
            words.inside = std::to_string(drawn.sheet);
            words.under = drawn.sheet == m_sheet.number ? "on this sheet"
                                                        : fmt::format("see sheet {}", drawn.sheet);
            return words;
        }
        words.hasFoot = !it.children.empty();
        words.rightTaken = it.condition != kNoItem && it.role == ItemRole::itself;
        if (it.gate && it.gate->kind == project::GateKind::vote)
            words.inside = fmt::format("{}/{}", it.gate->k.value_or(0), it.gate->inputs.size());
        if (it.event && it.event->kind == project::EventKind::house)
            words.inside = it.event->state ? "true" : "false";
        if (value != m_set.wishes.values.end() && it.role == ItemRole::itself)
            (it.gate ? words.atLeft : words.under) = value->second;
        if (it.role == ItemRole::continuation) {
            if (it.cut) drawn.usedOn = {static_cast<int>(m_set.plan.sheetOf[it.parent]) + 1};
        } else if (const auto used = m_set.usedOn.find(it.node); used != m_set.usedOn.end()) {
            drawn.usedOn = used->second;
        }
        if (!drawn.usedOn.empty()) words.usedOn = shortened(drawn.usedOn);
        return words;
    }

    // "1, 3" or, where that finds no room beside the symbol, "1 +12".
    std::string shortened(const std::vector<int>& sheets) const {
        constexpr double kRoom = (kBoxWidth - kSymbolWide) / 2 - 2;
        const std::string all = listed(sheets);
        if (sheets.size() == 1 || m_set.lettering.measure(all, kTextSize, false) <= kRoom)
            return all;
        return fmt::format("{} +{}", sheets.front(), sheets.size() - 1);
    }

    std::string describe(std::size_t i, const DrawnBox& drawn) const {
        const Item& it = item(i);
        if (drawn.transfer) return fmt::format("Transfer: drawn on sheet {}.", drawn.sheet);
        std::string text = nameOf(drawn.symbol);
        if (it.gate && it.gate->kind == project::GateKind::vote)
            text +=
                fmt::format(", at least {} of {}", it.gate->k.value_or(0), it.gate->inputs.size());
        std::vector<std::string> inputs;
        for (const std::size_t child : it.children)
            inputs.push_back(item(child).node);
        if (!inputs.empty()) text += fmt::format("; inputs: {}", fmt::join(inputs, ", "));
        if (it.condition != kNoItem) text += "; condition: " + item(it.condition).node;
        if (const auto value = m_set.wishes.values.find(it.node);
            value != m_set.wishes.values.end())
            text += "; " + value->second;
        if (!drawn.usedOn.empty())
            text += (it.role == ItemRole::continuation ? "; continued from sheet "
                                                       : "; used on sheets ") +
                    listed(drawn.usedOn);
        if (m_set.wishes.marked.contains(it.node)) text += "; marked";
        return text + ".";
    }

    void drawOne(std::size_t i, bool transfer, Spot at) {
        const Item& it = item(i);
        DrawnBox drawn;
        drawn.node = it.node;
        drawn.role = it.role;
        drawn.transfer = transfer;
        drawn.beside = it.beside;
        drawn.symbol = symbolFor(it, transfer);
        drawn.at = at;
        const BoxWords words = wordsFor(i, transfer, drawn);
        drawn.words = words;
        drawn.words.marked = false;
        drawn.title = m_set.labels[i].whole;
        const double scale = m_placed.scale;
        const double height = boxHeight(m_placed.textHeight, it.gate && !transfer);
        drawn.place = {m_origin.x + (at.x - kBoxWidth / 2) * scale, m_origin.y + at.y * scale,
                       kBoxWidth * scale, height * scale};
        Group group;
        group.kind = transfer ? "transfer" : it.gate ? "gate" : "event";
        group.id = m_names.of(transfer                            ? "transfer"
                              : it.role == ItemRole::continuation ? "continued"
                                                                  : "node",
                              it.node);
        group.node = it.node;
        group.title = m_set.labels[i].whole;
        group.description = describe(i, drawn);
        group.marks = drawBox(drawn.symbol, words, at, m_placed.textHeight, m_set.lettering);
        place(group.marks, scale, m_origin);
        drawn.group = group.id;
        m_legend.symbols.insert(drawn.symbol);
        if (!drawn.usedOn.empty()) m_legend.symbols.insert(SymbolKind::transferOut);
        if (words.marked) m_legend.marked = true;
        m_sheet.picture.groups.push_back(std::move(group));
        m_sheet.boxes.push_back(std::move(drawn));
        m_items.push_back(i);
    }

    const SheetSet& m_set;
    const PlannedSheet& m_planned;
    const PlacedSheet& m_placed;
    Sheet m_sheet;
    std::vector<std::size_t> m_items; // of each box of the sheet
    Spot m_origin;
    FrameLegend m_legend;
    Names m_names;
};

} // namespace

void crossReference(SheetSet& set) {
    const Plan& plan = set.plan;
    for (std::size_t i = 0; i < plan.items.size(); ++i)
        if (plan.items[i].role == ItemRole::itself) set.homeOf[plan.items[i].node] = i;
    for (std::size_t s = 0; s < plan.sheets.size(); ++s)
        for (const PlannedBox& box : plan.sheets[s].boxes) {
            if (!box.transfer || plan.items[box.item].role == ItemRole::continuation) continue;
            std::vector<int>& sheets = set.usedOn[plan.items[box.item].node];
            const int number = static_cast<int>(s) + 1;
            if (sheets.empty() || sheets.back() != number) sheets.push_back(number);
        }
}

sdk::Answer<PlacedSheet> placeSheet(const SheetSet& set, std::size_t sheet,
                                    const sdk::Layout& layout, const sdk::Job& job) {
    const PlannedSheet& planned = set.plan.sheets[sheet];
    PlacedSheet placed;
    std::size_t lines = 2;
    for (const PlannedBox& box : planned.boxes)
        lines = std::max(lines, set.labels[box.item].lines());
    placed.textHeight = textHeight(lines);

    std::map<std::size_t, std::size_t> nodeOf; // item -> layout node
    std::map<std::size_t, int> inputs;
    for (std::size_t b = 0; b < planned.boxes.size(); ++b) {
        const PlannedBox& box = planned.boxes[b];
        const Item& item = set.plan.items[box.item];
        if (item.beside && box.item != planned.root) continue;
        sdk::LayoutNode node;
        node.id = fmt::format("{} ({})", item.node, b);
        node.width = box.transfer ? set.sizes.boxWidth : widthOf(item, set.sizes);
        node.height = boxHeight(placed.textHeight, item.gate && !box.transfer);
        nodeOf[box.item] = placed.graph.nodes.size();
        placed.boxOf.push_back(b);
        if (box.item != planned.root) {
            sdk::LayoutEdge edge;
            edge.parent = nodeOf.at(item.parent);
            edge.child = placed.graph.nodes.size();
            edge.order = inputs[item.parent]++;
            placed.graph.edges.push_back(std::move(edge));
        }
        placed.graph.nodes.push_back(std::move(node));
    }
    sdk::Values values;
    values.set("node-gap", set.sizes.nodeGap);
    values.set("row-gap", set.sizes.rowGap);
    sdk::Answer<sdk::LayoutGraph> answer = layout.place(placed.graph, values, job);
    if (!answer.content || answer.content->nodes.size() != placed.graph.nodes.size() ||
        answer.content->edges.size() != placed.graph.edges.size()) {
        if (answer.problems.empty()) {
            project::Problem problem;
            problem.what = "the layout plug-in answered for another graph than it was given";
            problem.remedy = "use another layout plug-in";
            answer.problems.push_back(problem);
        }
        return {answer.ending == sdk::Ending::finished ? sdk::Ending::failed : answer.ending,
                std::nullopt, answer.problems};
    }
    placed.graph = std::move(*answer.content);
    const Box& room = set.frame.room();
    placed.scale = std::min(
        {kLargestScale, room.width / placed.graph.width, room.height / placed.graph.height});
    return sdk::Answer<PlacedSheet>::of(std::move(placed));
}

Sheet drawSheet(const SheetSet& set, std::size_t sheet, const PlacedSheet& placed) {
    return Composer(set, sheet, placed).compose();
}

} // namespace cutwater::drawing
