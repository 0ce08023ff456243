// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: what hand and keys mean.
#include "app/editor/diagram/panel.h"
#include "app/editor/diagram/walk.h"
#include "app/editor/outline/clipboard.h"

#include <QKeyEvent>
#include <QMenu>

#include <algorithm>

namespace cutwater::editor {

void DiagramPanel::press(std::size_t box, Qt::KeyboardModifiers modifiers) {
    m_view->setFocus(Qt::MouseFocusReason);
    if (box == kNoBox) return;
    const PageBox& pressed = m_scene->page()->boxes[box];
    const Spot spot{pressed.node, pressed.parent};
    m_selecting = true;
    if (modifiers.testFlag(Qt::ControlModifier) || modifiers.testFlag(Qt::ShiftModifier)) {
        std::vector<Spot> spots = m_selection.spots();
        const auto found = std::find(spots.begin(), spots.end(), spot);
        if (found == spots.end())
            spots.push_back(spot);
        else
            spots.erase(found);
        m_selection.selectSpots(std::move(spots));
    } else {
        // One of several that are selected: perhaps they are about to be dragged together.
        std::vector<Spot> spots = m_selection.spots();
        const auto found = std::find(spots.begin(), spots.end(), spot);
        if (found == spots.end())
            spots = {spot};
        else
            std::rotate(found, found + 1, spots.end());
        m_selection.selectSpots(std::move(spots));
    }
    m_selecting = false;
    followSelection(false);
}

void DiagramPanel::open(std::size_t box) {
    const PageBox& opened = m_scene->page()->boxes[box];
    if (opened.transfer) {
        // To where it is drawn, on whichever sheet and however deep it is folded.
        if (m_answer && m_answer->tree) {
            const std::size_t home = m_answer->tree->homeOf(opened.node);
            Spot spot{opened.node};
            if (home != drawing::kNoItem) {
                const std::size_t above = m_answer->tree->item(home).parent;
                if (above != drawing::kNoItem) spot.parent = m_answer->tree->item(above).node;
            }
            if (m_kind == ViewKind::sheets) {
                // A cut gate stands on two sheets below the same parent: as a triangle and in full.
                if (opened.sheet > 0) showSheet(opened.sheet - 1);
                spot.parent.clear();
            }
            jumpTo(spot);
        }
        return;
    }
    if (opened.foldable)
        fold(opened.node, !opened.folded);
    else
        rename(opened.node);
}

void DiagramPanel::step(Direction direction, bool extend) {
    if (!m_scene->page()) return;
    const std::size_t from = m_scene->current();
    const std::size_t to = from == kNoBox ? 0 : walk(*m_scene->page(), from, direction);
    if (to == kNoBox) return;
    const PageBox& box = m_scene->page()->boxes[to];
    std::vector<Spot> spots;
    if (extend) spots = m_selection.spots();
    const Spot spot{box.node, box.parent};
    spots.erase(std::remove(spots.begin(), spots.end(), spot), spots.end());
    spots.push_back(spot);
    m_selecting = true;
    m_selection.selectSpots(std::move(spots));
    m_selecting = false;
    followSelection(false);
    if (m_scene->current() != kNoBox) m_view->showBox(m_scene->current());
}

void DiagramPanel::keyPressEvent(QKeyEvent* event) {
    const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
    const bool plain = !event->modifiers().testFlag(Qt::ControlModifier) &&
                       !event->modifiers().testFlag(Qt::AltModifier);
    if (!plain) {
        QWidget::keyPressEvent(event);
        return;
    }
    switch (event->key()) {
    case Qt::Key_Up: step(Direction::up, shift); break;
    case Qt::Key_Down: step(Direction::down, shift); break;
    case Qt::Key_Left: step(Direction::left, shift); break;
    case Qt::Key_Right: step(Direction::right, shift); break;
    case Qt::Key_Home:
        if (m_scene->page()) {
            const PageBox& root = m_scene->page()->boxes.front();
            jumpTo({root.node, root.parent});
            m_view->showTop();
        }
        break;
    case Qt::Key_Escape: m_selection.clearMarks(); break;
    default: QWidget::keyPressEvent(event);
    }
}

std::vector<std::size_t> DiagramPanel::heldWith(std::size_t source) const {
    const PageBox& held = m_scene->page()->boxes[source];
    const std::vector<Spot>& spots = m_selection.spots();
    if (std::find(spots.begin(), spots.end(), Spot{held.node, held.parent}) == spots.end())
        return {source};
    std::vector<std::size_t> boxes;
    for (const Spot& spot : spots) {
        const std::size_t box = m_scene->boxOf(spot.node, spot.parent);
        if (box != kNoBox && std::find(boxes.begin(), boxes.end(), box) == boxes.end())
            boxes.push_back(box);
    }
    // As they stand in the picture, not as they were clicked.
    std::sort(boxes.begin(), boxes.end(), [this](std::size_t one, std::size_t other) {
        return m_scene->page()->boxes[one].at.x < m_scene->page()->boxes[other].at.x;
    });
    return boxes;
}

// The plan of the box under the hand, or of the first of the others that cannot go there.
DropPlan DiagramPanel::planFor(std::size_t source, std::size_t target, bool right,
                               bool share) const {
    const std::vector<std::size_t> boxes = heldWith(source);
    const auto plan = [&](std::size_t box) {
        return planDrop(*m_answer->tree, *m_scene->page(), box, target, right, share);
    };
    DropPlan first = plan(source);
    for (const std::size_t box : boxes)
        if (first.allowed) {
            const DropPlan other = plan(box);
            if (!other.allowed) return other;
        }
    if (first.allowed && boxes.size() > 1)
        first.sentence = (share ? tr("Share %1 nodes with %2") : tr("Move %1 nodes to %2"))
                             .arg(boxes.size())
                             .arg(QString::fromStdString(first.place.parent));
    return first;
}

void DiagramPanel::dragTo(std::size_t source, std::size_t target, bool right, bool share) {
    if (!m_answer || !m_answer->tree || !m_scene->page()) return;
    const DropPlan plan = planFor(source, target, right, share);
    using Drop = BoxState::Drop;
    m_scene->setDrop(target, !plan.allowed ? Drop::refused
                             : plan.beside ? (plan.after ? Drop::after : Drop::before)
                                           : Drop::here);
    m_view->setHint(plan.allowed && !share
                        ? plan.sentence + QLatin1Char('\n') + tr("Ctrl: share instead of move")
                        : plan.sentence);
}

void DiagramPanel::dropOn(std::size_t source, std::size_t target, bool right, bool share) {
    m_scene->setDrop(kNoBox, BoxState::Drop::none);
    m_view->setHint({});
    if (!m_answer || !m_answer->tree || !m_scene->page() || target == source) return;
    const DropPlan plan = planFor(source, target, right, share);
    if (!plan.allowed) {
        emit said(plan.sentence);
        return;
    }
    namespace edits = project::edits;
    std::vector<edits::Use> uses;
    std::vector<Spot> spots;
    for (const std::size_t box : heldWith(source)) {
        uses.push_back(useNow(m_scene->page()->boxes[box]));
        spots.push_back({uses.back().node, plan.place.parent});
    }
    // What is dropped into a folded gate would vanish from the eye.
    if (m_kind == ViewKind::tree) m_folds[m_shownTop].erase(plan.place.parent);
    const bool done = apply(
        [&](const project::Project& project) { return putUses(project, uses, plan.place, share); });
    if (done) m_selection.selectSpots(std::move(spots));
}

void DiagramPanel::selectBand(const QRectF& area) {
    if (!m_scene->page()) return;
    std::vector<Spot> spots;
    for (std::size_t b = 0; b < m_scene->page()->boxes.size(); ++b) {
        const BoxItem* item = m_scene->item(b);
        if (!area.intersects(item->frame().translated(item->pos()))) continue;
        const PageBox& box = m_scene->page()->boxes[b];
        spots.push_back({box.node, box.parent});
    }
    m_selecting = true;
    m_selection.selectSpots(std::move(spots));
    m_selecting = false;
    followSelection(false);
}

void DiagramPanel::showMenu(std::size_t box, QPoint global) {
    if (box != kNoBox) {
        const PageBox& shown = m_scene->page()->boxes[box];
        const std::vector<Spot>& spots = m_selection.spots();
        if (std::find(spots.begin(), spots.end(), Spot{shown.node, shown.parent}) == spots.end())
            press(box, Qt::NoModifier);
    }
    auto* menu = new QMenu(this);
    menu->setObjectName(QStringLiteral("diagramMenu"));
    menu->setAttribute(Qt::WA_DeleteOnClose);
    const auto put = [&](std::initializer_list<const char*> names) {
        for (const char* name : names)
            if (QAction* one = action(name)) menu->addAction(one);
        menu->addSeparator();
    };
    if (box != kNoBox) {
        put({"rename", "addInput", "addSibling"});
        QMenu* above = menu->addMenu(tr("Insert gate above"));
        for (const char* name : {"insertOr", "insertAnd", "insertVote"})
            above->addAction(action(name));
        QMenu* kinds = menu->addMenu(tr("Kind of gate"));
        for (const char* name : {"kindAnd", "kindOr", "kindVote", "kindInhibit", "kindExactlyOne",
                                 "kindNot", "kindPriorityAnd"})
            kinds->addAction(action(name));
        QMenu* events = menu->addMenu(tr("Kind of event"));
        for (const char* name : {"kindBasic", "kindUndeveloped", "kindHouse", "kindConditioning"})
            events->addAction(action(name));
        menu->addSeparator();
        put({"cut", "copy", "paste"});
        put({"dissolve", "separate", "moveLeft", "moveRight", "remove"});
        put({"jump", "toggleFold", "foldBelow", "unfoldBelow"});
    }
    put({"fit", "zoomNormal", "zoomIn", "zoomOut"});
    put({"showTree", "showSheets", "overview"});
    put({"export", "print"});
    menu->popup(global);
}

} // namespace cutwater::editor
