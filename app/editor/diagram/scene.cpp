// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/scene.h"

#include <QEasingCurve>

namespace cutwater::editor {
namespace {

constexpr int kMotion = 220;             // milliseconds
constexpr std::size_t kMostMoving = 600; // more boxes jump: it would jerk

} // namespace

DiagramScene::DiagramScene(QObject* parent) : QGraphicsScene(parent) {
    // The standard index takes gigabytes for long lines in a large scene.
    setItemIndexMethod(NoIndex);
    if (project::Outcome<drawing::Lettering> found = drawing::findLettering())
        m_ink.lettering = std::move(*found);
    else
        m_problems = found.problems();
    m_motion.setDuration(kMotion);
    m_motion.setStartValue(0.0);
    m_motion.setEndValue(1.0);
    m_motion.setEasingCurve(QEasingCurve::InOutCubic);
    connect(&m_motion, &QVariantAnimation::valueChanged, this,
            [this](const QVariant& value) { move(value.toDouble()); });
    connect(&m_motion, &QVariantAnimation::finished, this, [this] { move(1); });
}

DiagramScene::~DiagramScene() {
    m_motion.stop();
}

void DiagramScene::showPage(std::shared_ptr<const Page> page, const std::string& anchor) {
    m_motion.stop();
    if (!m_problems.empty()) page.reset();
    for (LineItem* line : m_lines)
        delete line;
    m_lines.clear();
    delete m_frame;
    m_frame = nullptr;
    // Pages keep the keys' text alive: the old one goes last.
    const std::shared_ptr<const Page> old = m_page;
    std::unordered_map<std::string_view, BoxItem*> before;
    for (BoxItem* item : m_boxes)
        before.emplace(item->box().key, item);
    const bool wasEmpty = m_boxes.empty();
    m_boxes.clear();
    m_byKey.clear();
    m_selectedBoxes.clear();
    m_current = m_dropBox = kNoBox;
    m_page = std::move(page);

    QPointF shift;
    if (m_page) {
        const auto found = before.find(anchor);
        for (std::size_t b = 0; b < m_page->boxes.size(); ++b)
            m_byKey.emplace(m_page->boxes[b].key, b);
        if (const auto now = m_byKey.find(anchor); found != before.end() && now != m_byKey.end()) {
            const drawing::Spot at = m_page->boxes[now->second].at;
            shift = QPointF(at.x, at.y) - found->second->pos();
        }
        for (const PageBox& box : m_page->boxes) {
            BoxItem* item = nullptr;
            if (const auto known = before.find(box.key); known != before.end()) {
                item = known->second;
                before.erase(known); // before its key changes hands
                item->start = item->pos() + shift;
                item->isNew = false;
                item->setBox(box);
            } else {
                item = new BoxItem(box, m_ink);
                // Comes out of the gate above it.
                item->start = box.owner == kNoBox ? item->target() : m_boxes[box.owner]->start;
                item->isNew = true;
                addItem(item);
            }
            m_boxes.push_back(item);
        }
        if (m_page->frame) addItem(m_frame = new FrameItem(*m_page, m_ink));
        std::vector<LineItem*> of(m_page->boxes.size(), nullptr);
        for (const PageLine& line : m_page->lines) {
            LineItem*& all = of[line.upper];
            if (!all) {
                all = new LineItem(m_boxes[line.upper], m_ink);
                m_lines.push_back(all);
                addItem(all);
            }
            all->add({m_boxes[line.lower], line.route});
        }
    }
    for (const auto& [key, item] : before)
        delete item;
    restate();
    const bool moves = m_animated && !wasEmpty && m_boxes.size() <= kMostMoving;
    move(moves ? 0 : 1);
    if (moves) m_motion.start();
    emit pageShown();
}

void DiagramScene::finishMotion() {
    if (!isMoving()) return;
    m_motion.stop();
    move(1);
}

void DiagramScene::move(double share) {
    for (BoxItem* item : m_boxes) {
        item->setPos(share >= 1 ? item->target()
                                : item->start + (item->target() - item->start) * share);
        item->setOpacity(item->isNew ? share : 1);
        if (share >= 1) item->isNew = false;
    }
    for (LineItem* line : m_lines)
        line->follow();
}

void DiagramScene::setLook(const Look& look) {
    if (look == m_ink.look) return;
    m_ink.look = look;
    setBackgroundBrush(look.ground());
    update();
}

std::size_t DiagramScene::boxByKey(const std::string& key) const {
    const auto found = m_byKey.find(key);
    return found == m_byKey.end() ? kNoBox : found->second;
}

std::size_t DiagramScene::boxOf(const project::Id& node, const project::Id& parent) const {
    if (!m_page) return kNoBox;
    std::size_t best = kNoBox;
    int bestRank = 0;
    for (std::size_t b = 0; b < m_page->boxes.size(); ++b) {
        const PageBox& box = m_page->boxes[b];
        if (box.node != node) continue;
        const int rank = !parent.empty() && box.parent == parent ? 3 : box.transfer ? 1 : 2;
        if (rank > bestRank) {
            best = b;
            bestRank = rank;
        }
    }
    return best;
}

std::size_t DiagramScene::boxAt(QPointF place) const {
    for (std::size_t b = m_boxes.size(); b-- > 0;)
        if (m_boxes[b]->frame().translated(m_boxes[b]->pos()).contains(place)) return b;
    return kNoBox;
}

bool DiagramScene::isHandle(std::size_t box, QPointF place) const {
    if (box >= m_boxes.size()) return false;
    const QRectF handle = m_boxes[box]->handle();
    if (handle.isEmpty()) return false;
    const QPointF local = place - m_boxes[box]->pos();
    // The words that say what is hidden fold as well.
    const double tab = m_boxes[box]->box().textHeight + drawing::kStem + drawing::kSymbolHigh;
    return handle.adjusted(-2, -2, 2, 2).contains(local) ||
           (m_boxes[box]->box().folded && local.y() > tab);
}

BoxState DiagramScene::stateOf(std::size_t box) const {
    const project::Id& node = m_page->boxes[box].node;
    BoxState state;
    state.selected = m_selectedBoxes.contains(box) || m_selectedNodes.contains(node);
    state.current = box == m_current;
    state.marked = m_marked.contains(node);
    state.hit = m_hits.contains(node);
    if (box == m_dropBox) state.drop = m_drop;
    return state;
}

void DiagramScene::restate() {
    for (std::size_t b = 0; b < m_boxes.size(); ++b)
        m_boxes[b]->setState(stateOf(b));
}

void DiagramScene::setSelected(const std::vector<std::size_t>& boxes,
                               const std::set<project::Id>& nodes) {
    m_selectedBoxes = {boxes.begin(), boxes.end()};
    m_selectedNodes = nodes;
    m_current = boxes.empty() ? kNoBox : boxes.back();
    restate();
}

void DiagramScene::setMarked(std::set<project::Id> nodes) {
    if (nodes == m_marked) return;
    m_marked = std::move(nodes);
    restate();
    for (LineItem* line : m_lines)
        line->follow();
}

void DiagramScene::setHits(std::set<project::Id> nodes) {
    if (nodes == m_hits) return;
    m_hits = std::move(nodes);
    restate();
}

void DiagramScene::setDrop(std::size_t box, BoxState::Drop drop) {
    if (box == m_dropBox && drop == m_drop) return;
    m_dropBox = box;
    m_drop = drop;
    restate();
}

} // namespace cutwater::editor
