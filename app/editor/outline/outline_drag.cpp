// SPDX-License-Identifier: GPL-3.0-or-later
// OutlineView: dragging. Plain: move. With Ctrl: use at one more place. From elsewhere: paste.
#include "app/editor/outline/clipboard.h"
#include "app/editor/outline/outline_view.h"
#include "models/project/edits/fragment.h"

#include <QDrag>
#include <QDragMoveEvent>
#include <QDropEvent>

namespace cutwater::editor {

using project::Project;
using project::edits::kLast;
using project::edits::Place;

void OutlineView::startDrag(Qt::DropActions supported) {
    const auto uses = chosen();
    if (uses.empty()) return;
    auto mime = dragMime(m_session, uses);
    auto* drag = new QDrag(this);
    drag->setMimeData(mime.release());
    setDragged(uses);
    drag->exec(supported, Qt::MoveAction);
    setDragged({});
}

void OutlineView::dragEnterEvent(QDragEnterEvent* event) {
    const QMimeData* mime = event->mimeData();
    if (!mime->hasFormat(kUsesType) && !mime->hasFormat(kFragmentType) && !mime->hasText())
        return event->ignore();
    if (mime->hasUrls()) return event->ignore(); // a file: the window opens it
    setState(DraggingState);
    event->acceptProposedAction();
}

void OutlineView::dragMoveEvent(QDragMoveEvent* event) {
    QTreeView::dragMoveEvent(event); // indicator, scrolling, unfolding
    if (!event->mimeData()->hasUrls()) event->acceptProposedAction();
}

Place OutlineView::dropPlace(const QPoint& at) const {
    const QModelIndex index = indexAt(at).siblingAtColumn(0);
    if (!index.isValid()) return {};
    // The upper and lower quarter of a row stand for the gap beside it.
    const QRect rect = visualRect(index);
    const int gap = rect.height() / 4;
    const bool loose = m_model->useAt(index).row == project::edits::kLoose;
    if (at.y() < rect.top() + gap && !loose)
        return m_model->placeBelow(index.parent(), static_cast<std::size_t>(index.row()));
    const bool unfolded = isExpanded(index) && m_model->rowCount(index) > 0;
    if (at.y() > rect.bottom() - gap && !unfolded && !loose)
        return m_model->placeBelow(index.parent(), static_cast<std::size_t>(index.row()) + 1);
    if (at.y() > rect.bottom() - gap && unfolded) return m_model->placeBelow(index, 0);
    return {m_model->useAt(index).node, kLast};
}

void OutlineView::dropEvent(QDropEvent* event) {
    const Place place = dropPlace(event->position().toPoint());
    const QMimeData* mime = event->mimeData();
    const bool share = event->modifiers() & Qt::ControlModifier;
    setState(NoState);
    viewport()->update();
    // From here, or from the diagram beside.
    auto uses = usesOf(m_session, *mime);
    if (uses.empty() && mime->hasFormat(kUsesType) &&
        usesFromBytes(mime->data(kUsesType)) == m_dragged)
        uses = m_dragged;
    if (!uses.empty()) {
        const bool done =
            apply([&](const Project& project) { return putUses(project, uses, place, share); },
                  place.parent);
        event->setDropAction(done && share ? Qt::CopyAction : Qt::MoveAction);
        return done ? event->accept() : event->ignore();
    }
    const auto fragment = fromMime(*mime);
    if (!fragment) return event->ignore();
    const bool done = apply(
        [&](const Project& project) { return project::edits::paste(project, *fragment, place); },
        place.parent);
    event->setDropAction(Qt::CopyAction);
    done ? event->accept() : event->ignore();
}

} // namespace cutwater::editor
