// SPDX-License-Identifier: GPL-3.0-or-later
// OutlineView: what its commands do. Each is one edit and one step of undo.
#include "app/editor/outline/clipboard.h"
#include "app/editor/outline/outline_view.h"
#include "models/project/edits/add.h"
#include "models/project/edits/arrange.h"
#include "models/project/edits/facts.h"
#include "models/project/edits/fragment.h"

#include <QClipboard>
#include <QGuiApplication>

namespace cutwater::editor {

using project::Project;
using project::edits::Use;

void OutlineView::addBeside() {
    const QModelIndex current = currentRow();
    if (!current.isValid() || current.parent().isValid())
        return startTyping(current.parent(), current.row() + 1);
    // Beside a top event: another tree; those that are in no tree come last.
    const int tops = static_cast<int>(m_model->project().tops.size());
    startTyping({}, std::min(current.row() + 1, tops));
}

void OutlineView::addBelow() {
    const QModelIndex current = currentRow();
    if (!current.isValid()) return addBeside();
    const project::Gate* gate = m_model->lookup().gate(currentSpot().node);
    startTyping(current, gate ? static_cast<int>(gate->inputs.size()) : 0);
}

void OutlineView::editText() {
    if (currentRow().isValid()) edit(currentRow());
}

void OutlineView::removeChosen() {
    const auto uses = chosen();
    if (uses.empty()) return;
    const project::Id parent = uses.front().parent;
    apply([&](const Project& project) { return project::edits::removeUses(project, uses); },
          parent);
}

void OutlineView::moveChosen(int steps) {
    const auto uses = chosen();
    if (uses.size() != 1) return emit sentence(tr("Choose one row to move it up or down."));
    apply(
        [&](const Project& project) {
            return project::edits::reorder(project, uses.front(), steps);
        },
        uses.front().parent);
}

void OutlineView::setKind(project::GateKind kind) {
    const Spot spot = currentSpot();
    if (spot.node.empty()) return;
    apply(
        [&](const Project& project) {
            return project::edits::setGateKind(project, spot.node, kind);
        },
        spot.parent);
}

void OutlineView::setKind(project::EventKind kind) {
    const Spot spot = currentSpot();
    if (spot.node.empty()) return;
    apply(
        [&](const Project& project) {
            return project::edits::setEventKind(project, spot.node, kind);
        },
        spot.parent);
}

void OutlineView::setVotes(int k) {
    const Spot spot = currentSpot();
    if (spot.node.empty()) return;
    apply([&](const Project& project) { return project::edits::setK(project, spot.node, k); },
          spot.parent);
}

void OutlineView::toggleState() {
    const Spot spot = currentSpot();
    const project::Event* event = m_model->lookup().event(spot.node);
    if (!event) return emit sentence(tr("Choose a house event to switch it."));
    const bool state = !event->state;
    apply(
        [&](const Project& project) { return project::edits::setState(project, spot.node, state); },
        spot.parent);
}

void OutlineView::insertGate() {
    const auto uses = chosen();
    if (uses.empty()) return;
    const project::Id parent = uses.front().parent;
    // What differs from the gate above is what is usually meant.
    const project::Gate* above = m_model->lookup().gate(parent);
    const auto kind = above && above->kind == project::GateKind::orGate ? project::GateKind::andGate
                                                                        : project::GateKind::orGate;
    const std::string name = tr("new gate").toStdString();
    const bool made = apply(
        [&](const Project& project) {
            return project::edits::insertGateAbove(project, uses, kind, name);
        },
        parent);
    if (!made) return;
    expand(currentRow());
    editText();
}

void OutlineView::dissolve() {
    const Spot spot = currentSpot();
    if (spot.node.empty()) return;
    apply([&](const Project& project) { return project::edits::dissolveGate(project, spot.node); },
          spot.parent);
}

void OutlineView::makeTop() {
    const Spot spot = currentSpot();
    if (spot.node.empty()) return;
    apply([&](const Project& project) { return project::edits::makeTop(project, spot.node); }, {});
}

void OutlineView::separate() {
    const auto uses = chosen();
    if (uses.size() != 1) return emit sentence(tr("Choose one shared gate to separate it."));
    apply([&](const Project& project) { return project::edits::separate(project, uses.front()); },
          uses.front().parent);
}

void OutlineView::unfoldBelow() {
    // A mesh of shared gates has more places than anybody can look at.
    constexpr std::size_t kMostRows = 4000;
    std::vector<QPersistentModelIndex> level{currentRow()};
    for (std::size_t i = 0; i < level.size() && level.size() < kMostRows; ++i) {
        const QModelIndex row = level[i];
        if (m_model->canFetchMore(row)) m_model->fetchMore(row);
        expand(row);
        for (int child = 0; child < m_model->rowCount(row); ++child)
            level.emplace_back(m_model->index(child, 0, row));
    }
}

void OutlineView::copy() const {
    std::vector<project::Id> nodes;
    for (const Use& use : chosen())
        nodes.push_back(use.node);
    if (auto mime = toMime(m_model->project(), nodes))
        QGuiApplication::clipboard()->setMimeData(mime.release());
}

void OutlineView::cut() {
    copy();
    removeChosen();
}

void OutlineView::paste() {
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    const auto fragment = mime ? fromMime(*mime) : std::nullopt;
    if (!fragment)
        return emit sentence(tr("The clipboard holds nothing that can be pasted into a tree."));
    const project::Id parent = currentSpot().node;
    apply(
        [&](const Project& project) {
            return project::edits::paste(project, *fragment, {parent, project::edits::kLast});
        },
        parent);
}

} // namespace cutwater::editor
