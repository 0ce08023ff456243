// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/compose.h"
#include "app/editor/diagram/hang.h"

#include <QCoreApplication>

#include <fmt/format.h>

#include <algorithm>
#include <map>

namespace cutwater::editor {
namespace {

using drawing::Item;
using drawing::ItemRole;
using drawing::kNoItem;
using drawing::SymbolKind;

constexpr double kNodeGap = 10, kRowGap = 28, kBesideGap = 10;

class Composer {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Composer)
public:
    Composer(const Tree& tree, const Folds& folds, const Captions& captions,
             const drawing::Lettering& lettering, LabelCache& labels)
        : m_tree(tree), m_folds(folds), m_captions(captions), m_lettering(lettering),
          m_labels(labels) {
        collect();
        stack();
    }

    sdk::LayoutGraph graph() {
        sdk::LayoutGraph graph;
        std::map<std::size_t, int> order;
        m_nodeOf.assign(m_page.boxes.size(), kNoBox);
        for (std::size_t b = 0; b < m_page.boxes.size(); ++b) {
            const PageBox& box = m_page.boxes[b];
            if (box.beside && box.owner != kNoBox) continue;
            m_nodeOf[b] = graph.nodes.size();
            sdk::LayoutNode node;
            node.id = box.key;
            node.width = box.condition == kNoBox ? drawing::kBoxWidth
                                                 : 3 * drawing::kBoxWidth + 2 * kBesideGap;
            node.height = box.height;
            graph.nodes.push_back(std::move(node));
            if (box.owner == kNoBox) continue;
            sdk::LayoutEdge edge;
            edge.parent = m_nodeOf[box.owner];
            edge.child = m_nodeOf[b];
            edge.order = order[box.owner]++;
            graph.edges.push_back(std::move(edge));
        }
        return graph;
    }

    Page finish(const sdk::LayoutGraph& placed) {
        std::vector<std::size_t> boxOf(placed.nodes.size(), kNoBox);
        for (std::size_t b = 0; b < m_page.boxes.size(); ++b) {
            if (m_nodeOf[b] == kNoBox) continue;
            boxOf[m_nodeOf[b]] = b;
            const sdk::LayoutNode& node = placed.nodes[m_nodeOf[b]];
            m_page.boxes[b].at = {node.centre.x, node.centre.y - node.height / 2};
        }
        for (const sdk::LayoutEdge& edge : placed.edges) {
            PageLine line{boxOf[edge.parent], boxOf[edge.child], false, {}};
            for (const sdk::Point& point : edge.route)
                line.route.push_back({point.x, point.y});
            m_page.lines.push_back(std::move(line));
        }
        for (std::size_t b = 0; b < m_page.boxes.size(); ++b)
            if (m_page.boxes[b].condition != kNoBox) placeCondition(b);
        m_page.extent = {0, 0, placed.width, placed.height};
        m_page.family = m_lettering.family;
        m_page.title = m_page.boxes.front().title;
        return std::move(m_page);
    }

private:
    // Boxes in the order of the tree, down to the folded gates.
    void collect() {
        struct Open {
            std::size_t item, owner;
            int input;
        };
        std::vector<Open> open{{0, kNoBox, -1}};
        while (!open.empty()) {
            const Open next = open.back();
            open.pop_back();
            const std::size_t b = m_page.boxes.size();
            const bool unfolds = add(next.item, next.owner, next.input);
            if (!unfolds) continue;
            const Item& item = m_tree.item(next.item);
            for (std::size_t i = item.children.size(); i-- > 0;)
                open.push_back({item.children[i], b, static_cast<int>(i)});
            if (item.condition != kNoItem) open.push_back({item.condition, b, -1});
        }
    }

    // True where its inputs are to follow.
    bool add(std::size_t i, std::size_t owner, int input) {
        const Item& item = m_tree.item(i);
        PageBox box;
        box.node = item.node;
        box.owner = owner;
        box.input = input;
        box.beside = item.beside;
        box.isGate = item.gate != nullptr;
        box.transfer = item.role == ItemRole::reference;
        box.foldable = m_tree.isHomeGate(i);
        box.folded = box.foldable && m_folds.contains(item.node);
        hang(box, m_page, m_times);
        const drawing::Label& label = m_labels.label(item, m_tree.index, m_lettering);
        box.title = label.whole;
        box.symbol = box.transfer ? SymbolKind::transferIn
                     : item.gate  ? drawing::symbolOf(item.gate->kind)
                                  : drawing::symbolOf(item.event->kind);
        box.words.label = label;
        speak(box, item, i);
        describe(box, item);
        const std::size_t row = owner == kNoBox ? 0 : m_row[owner] + (item.beside ? 0 : 1);
        m_row.push_back(row);
        if (m_lines.size() <= row) m_lines.resize(row + 1, 2);
        m_lines[row] = std::max(m_lines[row], label.lines());
        const bool unfolds = box.foldable && !box.folded;
        m_page.boxes.push_back(std::move(box));
        return unfolds;
    }

    void speak(PageBox& box, const Item& item, std::size_t i) const {
        drawing::BoxWords& words = box.words;
        words.dashed = box.transfer;
        if (box.transfer) {
            const std::size_t home = m_tree.homeOf(item.node);
            const std::size_t above = home == kNoItem ? kNoItem : m_tree.item(home).parent;
            const std::string where =
                (above == kNoItem
                     ? tr("at the top")
                     : tr("below %1").arg(QString::fromStdString(m_tree.item(above).node)))
                    .toStdString();
            words.under = drawing::wrap(where, drawing::kBoxWidth, 1, drawing::kTextSize, false,
                                        m_lettering.measure)
                              .front();
            return;
        }
        const bool open = box.foldable && !box.folded;
        words.hasFoot = open && !item.children.empty();
        words.rightTaken = open && item.condition != kNoItem;
        if (item.gate && item.gate->kind == project::GateKind::vote)
            words.inside = fmt::format("{}/{}", item.gate->k.value_or(0), item.children.size());
        if (item.event && item.event->kind == project::EventKind::house)
            words.inside = item.event->state ? "true" : "false";
        if (const auto found = m_captions.words.find(item.node); found != m_captions.words.end())
            (item.gate ? words.atLeft : words.under) = found->second;
        const std::size_t times = m_tree.times.at(item.node);
        if (times > 1) words.usedOn = fmt::format("{} \u00d7", times);
        if (box.folded) {
            const std::size_t n = m_tree.eventsBelow[i];
            words.folded = (n == 1 ? tr("+ 1 event") : tr("+ %1 events").arg(n)).toStdString();
        }
    }

    void describe(PageBox& box, const Item& item) const {
        QString text;
        if (box.transfer) {
            text = tr("transfer: drawn %1").arg(QString::fromStdString(box.words.under));
            box.description = text.toStdString();
            return;
        }
        text = QString::fromStdString(drawing::nameOf(box.symbol));
        if (item.gate && item.gate->kind == project::GateKind::vote)
            text = tr("%1, at least %2 of %3")
                       .arg(text)
                       .arg(item.gate->k.value_or(0))
                       .arg(item.children.size());
        if (item.gate) text = tr("%1, inputs: %2").arg(text).arg(item.gate->inputs.size());
        if (box.folded)
            text = tr("%1, folded: %2").arg(text, QString::fromStdString(box.words.folded));
        const std::size_t times = m_tree.times.at(item.node);
        if (times > 1) text = tr("%1, used %2 times").arg(text).arg(times);
        box.description = text.toStdString();
    }

    // One height of text for each row, so that its symbols stand in line.
    void stack() {
        for (std::size_t b = 0; b < m_page.boxes.size(); ++b) {
            PageBox& box = m_page.boxes[b];
            box.textHeight = drawing::textHeight(m_lines[m_row[b]]);
            box.height =
                drawing::boxHeight(box.textHeight, box.isGate && !box.transfer && !box.folded) +
                (box.folded ? 2 : 0);
        }
    }

    void placeCondition(std::size_t gate) {
        const PageBox& above = m_page.boxes[gate];
        PageBox& box = m_page.boxes[above.condition];
        const double offset = drawing::kBoxWidth + kBesideGap;
        box.at = {above.at.x + offset, above.at.y};
        const double y = above.at.y + above.textHeight + drawing::kStem + drawing::kSymbolHigh / 2;
        const double reach = drawing::kSymbolWide * (box.transfer ? 0.25 : drawing::kOvalReach);
        m_page.lines.push_back(
            {gate,
             above.condition,
             true,
             {{above.at.x + drawing::kSymbolWide / 2, y}, {above.at.x + offset - reach, y}}});
    }

    const Tree& m_tree;
    const Folds& m_folds;
    const Captions& m_captions;
    const drawing::Lettering& m_lettering;
    LabelCache& m_labels;
    Page m_page;
    std::vector<std::size_t> m_row, m_nodeOf;
    std::vector<std::size_t> m_lines; // of each row: the most lines of a label
    Times m_times;
};

} // namespace

const drawing::Label& LabelCache::label(const drawing::Item& item, const project::Index& index,
                                        const drawing::Lettering& lettering) {
    // All that a label is made of.
    std::string key = item.node + '\n' + (item.gate ? item.gate->name : item.event->name);
    if (item.event)
        if (const project::FailureMode* mode = index.mode(item.event->mode)) {
            key += '\n' + mode->name;
            if (const project::Component* part = index.component(mode->component))
                key += '\n' + part->tag + '\n' + part->id + '\n' + part->name;
        }
    const auto [found, isNew] = m_labels.try_emplace(std::move(key));
    if (isNew) found->second = drawing::labelOf(item, index, lettering);
    return found->second;
}

sdk::Answer<Page> composeTree(const Tree& tree, const Folds& folds, const Captions& captions,
                              const drawing::Lettering& lettering, LabelCache& labels,
                              const sdk::Layout& layout, const sdk::Job& job) {
    Composer composer(tree, folds, captions, lettering, labels);
    sdk::Values values;
    values.set("node-gap", kNodeGap);
    values.set("row-gap", kRowGap);
    const sdk::LayoutGraph graph = composer.graph();
    sdk::Answer<sdk::LayoutGraph> placed = layout.place(graph, values, job);
    if (!placed.content) return {placed.ending, std::nullopt, placed.problems};
    if (placed.content->nodes.size() != graph.nodes.size() ||
        placed.content->edges.size() != graph.edges.size()) {
        project::Problem problem;
        problem.what = "the layout plug-in answered for another graph than it was given";
        problem.remedy = "use another layout plug-in";
        return sdk::Answer<Page>::failed({problem});
    }
    return sdk::Answer<Page>::of(composer.finish(*placed.content));
}

} // namespace cutwater::editor
