// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: edits of the tree. The session makes them; the picture follows.
#include "app/editor/diagram/panel.h"
#include "app/editor/diagram/rename_field.h"
#include "app/editor/outline/clipboard.h"

#include "models/project/edits/add.h"
#include "models/project/edits/arrange.h"
#include "models/project/edits/facts.h"
#include "models/project/edits/fragment.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QMimeData>

#include <algorithm>

namespace cutwater::editor {

namespace edits = project::edits;
using project::Project;

const PageBox* DiagramPanel::currentBox() const {
    const std::size_t current = m_scene->current();
    return m_scene->page() && current != kNoBox ? &m_scene->page()->boxes[current] : nullptr;
}

edits::Use DiagramPanel::useNow(const PageBox& box) const {
    edits::Use use = useOf(*m_answer->tree, box);
    if (box.parent.empty() || box.beside) return use;
    // The picture may be an edit behind: rows are those of the latest snapshot.
    for (const project::Gate& gate : m_session.project()->gates) {
        if (gate.id != box.parent) continue;
        const bool same = use.row < gate.inputs.size() && gate.inputs[use.row].id == box.node;
        for (std::size_t row = 0; !same && row < gate.inputs.size(); ++row)
            if (gate.inputs[row].id == box.node) {
                use.row = row;
                break;
            }
    }
    return use;
}

std::vector<edits::Use> DiagramPanel::selectedUses() const {
    std::vector<edits::Use> uses;
    if (!m_scene->page() || !m_answer || !m_answer->tree) return uses;
    for (const Spot& spot : m_selection.spots()) {
        const std::size_t box = m_scene->boxOf(spot.node, spot.parent);
        if (box == kNoBox) continue;
        const edits::Use use = useNow(m_scene->page()->boxes[box]);
        if (std::find(uses.begin(), uses.end(), use) == uses.end()) uses.push_back(use);
    }
    return uses;
}

bool DiagramPanel::apply(const Edit& edit) {
    m_touched.clear();
    return m_session.apply(edit);
}

void DiagramPanel::addInput() {
    const PageBox* box = currentBox();
    if (!box) return;
    const edits::Place place{box->node, edits::kLast};
    const std::string name = tr("New event").toStdString();
    if (m_kind == ViewKind::tree) m_folds[m_shownTop].erase(box->node);
    if (!apply([=](const Project& project) { return edits::addEvent(project, place, name); }))
        return;
    if (m_touched.empty()) return;
    m_selection.selectSpots({Spot{m_touched.back(), place.parent}});
    rename(m_touched.back());
}

void DiagramPanel::addSibling() {
    const PageBox* box = currentBox();
    if (!box || box->parent.empty() || box->beside) return;
    if (!m_answer || !m_answer->tree) return;
    const edits::Place place{box->parent, useNow(*box).row + 1};
    const std::string name = tr("New event").toStdString();
    if (!apply([=](const Project& project) { return edits::addEvent(project, place, name); }))
        return;
    if (m_touched.empty()) return;
    m_selection.selectSpots({Spot{m_touched.back(), place.parent}});
    rename(m_touched.back());
}

// The neighbour to the right, else to the left, else the gate above: a second Delete must not take
// more than a neighbour.
Spot DiagramPanel::afterRemoval() const {
    const PageBox* box = currentBox();
    if (!box || box->owner == kNoBox) return {};
    const Page& page = *m_scene->page();
    const PageBox& above = page.boxes[box->owner];
    const auto stays = [&](std::size_t b) {
        const auto& spots = m_selection.spots();
        return std::find(spots.begin(), spots.end(), Spot{page.boxes[b].node, above.node}) ==
               spots.end();
    };
    const auto here = std::find(above.inputs.begin(), above.inputs.end(), m_scene->current());
    for (auto right = here; right != above.inputs.end(); ++right)
        if (stays(*right)) return {page.boxes[*right].node, above.node};
    for (auto left = here; left != above.inputs.begin();)
        if (stays(*--left)) return {page.boxes[*left].node, above.node};
    return {above.node, above.parent};
}

void DiagramPanel::removeSelected() {
    const std::vector<edits::Use> uses = selectedUses();
    if (uses.empty()) return;
    const Spot next = afterRemoval();
    if (!apply([=](const Project& project) { return edits::removeUses(project, uses); })) return;
    m_selection.selectSpots(next.node.empty() ? std::vector<Spot>{} : std::vector<Spot>{next});
}

void DiagramPanel::insertGate(project::GateKind kind) {
    const std::vector<edits::Use> uses = selectedUses();
    if (uses.empty()) return;
    const std::string name = tr("New gate").toStdString();
    if (!apply([=](const Project& project) {
            return edits::insertGateAbove(project, uses, kind, name);
        }))
        return;
    if (m_touched.empty()) return;
    m_selection.selectSpots({Spot{m_touched.front(), uses.front().parent}});
    rename(m_touched.front());
}

void DiagramPanel::dissolve() {
    const PageBox* box = currentBox();
    if (!box || !box->isGate) return;
    const project::Id gate = box->node, parent = box->parent;
    const project::Id first =
        box->inputs.empty() ? project::Id() : m_scene->page()->boxes[box->inputs.front()].node;
    if (!apply([=](const Project& project) { return edits::dissolveGate(project, gate); })) return;
    if (!first.empty()) m_selection.selectSpots({Spot{first, parent}});
}

void DiagramPanel::setGateKind(project::GateKind kind) {
    const PageBox* box = currentBox();
    if (!box) return;
    const project::Id node = box->node;
    apply([=](const Project& project) { return edits::setGateKind(project, node, kind); });
}

void DiagramPanel::setEventKind(project::EventKind kind) {
    const PageBox* box = currentBox();
    if (!box) return;
    const project::Id node = box->node;
    apply([=](const Project& project) { return edits::setEventKind(project, node, kind); });
}

void DiagramPanel::copySelected() {
    std::vector<project::Id> nodes;
    for (const edits::Use& use : selectedUses())
        nodes.push_back(use.node);
    if (auto mime = toMime(*m_session.project(), nodes))
        QGuiApplication::clipboard()->setMimeData(mime.release());
}

void DiagramPanel::pasteBelow() {
    const PageBox* box = currentBox();
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    const std::optional<Project> fragment = mime ? fromMime(*mime) : std::nullopt;
    if (!box || !fragment) {
        emit said(tr("The clipboard holds nothing that can be pasted into a tree."));
        return;
    }
    const edits::Place place{box->node, edits::kLast};
    if (m_kind == ViewKind::tree) m_folds[m_shownTop].erase(box->node);
    if (!apply([&](const Project& project) { return edits::paste(project, *fragment, place); }))
        return;
    if (!m_touched.empty()) m_selection.selectSpots({Spot{m_touched.front(), place.parent}});
}

void DiagramPanel::separateSelected() {
    const std::vector<edits::Use> uses = selectedUses();
    if (uses.empty()) return;
    const edits::Use use = uses.back();
    apply([=](const Project& project) { return edits::separate(project, use); });
}

void DiagramPanel::reorderCurrent(int steps) {
    const PageBox* box = currentBox();
    if (!box || box->parent.empty() || box->beside || !m_answer || !m_answer->tree) return;
    const edits::Use use = useNow(*box);
    const Spot spot{box->node, box->parent};
    apply([=](const Project& project) { return edits::reorder(project, use, steps); });
    m_selection.selectSpots({spot});
}

void DiagramPanel::rename(const project::Id& node) {
    m_renameLater = node;
    if (m_answer && m_answer->tree && m_answer->tree->project == m_session.project() &&
        m_scene->boxOf(node, {}) != kNoBox)
        startRename();
}

void DiagramPanel::startRename() {
    const project::Id node = m_renameLater;
    m_renameLater.clear();
    m_scene->finishMotion();
    const Spot current = m_selection.current();
    const std::size_t box =
        m_scene->boxOf(node, current.node == node ? current.parent : project::Id());
    if (box == kNoBox || !m_answer || !m_answer->tree) return;
    m_view->showBox(box);
    const project::Gate* gate = m_answer->tree->index.gate(node);
    const project::Event* event = m_answer->tree->index.event(node);
    const std::string name = gate ? gate->name : event ? event->name : std::string();
    m_rename->start(node, QString::fromStdString(name), m_view->boxOnScreen(box));
}

} // namespace cutwater::editor
