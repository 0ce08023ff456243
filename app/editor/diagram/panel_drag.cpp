// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: boxes that are carried to another view, and what comes from there.
#include "app/editor/diagram/panel.h"
#include "app/editor/outline/clipboard.h"

#include "models/project/edits/fragment.h"

#include <QDrag>
#include <QMimeData>

#include <algorithm>

namespace cutwater::editor {

namespace edits = project::edits;

void DiagramPanel::dragOut(std::size_t source) {
    if (!m_answer || !m_answer->tree || !m_scene->page()) return;
    std::vector<edits::Use> uses;
    for (const std::size_t box : heldWith(source))
        uses.push_back(useNow(m_scene->page()->boxes[box]));
    auto carried = dragMime(m_session, uses);
    if (carry) {
        carry(std::move(carried));
        return;
    }
    auto* const drag = new QDrag(m_view);
    drag->setMimeData(carried.release());
    drag->exec(Qt::MoveAction | Qt::CopyAction, Qt::MoveAction);
}

bool DiagramPanel::outside(const QMimeData& mime, std::size_t target, bool right, bool share,
                           bool drop) {
    using Drop = BoxState::Drop;
    if (!m_answer || !m_answer->tree || !m_scene->page()) return false;
    const std::vector<edits::Use> uses = usesOf(m_session, mime);
    DropPlan plan = planPlace(*m_scene->page(), target, right);
    if (plan.allowed)
        for (const edits::Use& use : uses)
            if (use.node == plan.place.parent ||
                m_answer->tree->reaches(use.node, plan.place.parent)) {
                plan.allowed = false;
                plan.sentence =
                    tr("%1 would stand below itself").arg(QString::fromStdString(use.node));
            }
    if (!drop) {
        const QString gate = QString::fromStdString(plan.place.parent);
        if (plan.allowed)
            plan.sentence = uses.empty() ? tr("Paste below %1").arg(gate)
                            : share      ? tr("Share with %1").arg(gate)
                                         : tr("Move to %1").arg(gate);
        m_scene->setDrop(target, !plan.allowed ? Drop::refused
                                 : plan.beside ? (plan.after ? Drop::after : Drop::before)
                                               : Drop::here);
        m_view->setHint(plan.sentence);
        return plan.allowed;
    }
    m_scene->setDrop(kNoBox, Drop::none);
    if (!plan.allowed) {
        emit said(plan.sentence);
        return false;
    }
    if (m_kind == ViewKind::tree) m_folds[m_shownTop].erase(plan.place.parent);
    bool done = false;
    if (!uses.empty()) {
        done = apply([&](const project::Project& project) {
            return putUses(project, uses, plan.place, share);
        });
    } else if (const auto fragment = fromMime(mime)) {
        done = apply([&](const project::Project& project) {
            return edits::paste(project, *fragment, plan.place);
        });
    }
    if (!done) return false;
    std::vector<Spot> spots;
    for (const project::Id& node : m_touched)
        spots.push_back({node, plan.place.parent});
    m_selection.selectSpots(std::move(spots));
    return true;
}

} // namespace cutwater::editor
