// SPDX-License-Identifier: GPL-3.0-or-later
// PlantView: dragging. Within the view: move, with Ctrl: copy. A failure mode dragged into a tree
// becomes the event that it is.
#include "app/editor/plant/plant_view.h"
#include "app/editor/plant/plant_words.h"
#include "models/project/edits/plant_copy.h"

#include <QDrag>
#include <QDragMoveEvent>
#include <QDropEvent>

namespace cutwater::editor {

namespace edits = project::edits;
using Kind = PlantModel::Kind;
using project::Project;

void PlantView::startDrag(Qt::DropActions supported) {
    const auto ids = chosen();
    auto mime = partsToMime(m_model->project(), ids);
    if (!mime) return;
    auto* drag = new QDrag(this);
    drag->setMimeData(mime.release());
    m_dragged = ids;
    drag->exec(supported, Qt::MoveAction);
    m_dragged.clear();
}

void PlantView::dragEnterEvent(QDragEnterEvent* event) {
    const QMimeData* mime = event->mimeData();
    if (mime->hasUrls() || (!mime->hasFormat(kPlantType) && !mime->hasText()))
        return event->ignore();
    setState(DraggingState);
    event->acceptProposedAction();
}

void PlantView::dragMoveEvent(QDragMoveEvent* event) {
    QTreeView::dragMoveEvent(event); // indicator, scrolling, unfolding
    if (!event->mimeData()->hasUrls()) event->acceptProposedAction();
}

edits::PartPlace PlantView::dropPlace(const QPoint& at, Kind kind) const {
    const QModelIndex index = indexAt(at).siblingAtColumn(0);
    if (!index.isValid()) return {};
    const QModelIndex owner = m_model->kindAt(index) == Kind::mode ? index.parent() : index;
    if (kind == Kind::mode || owner != index) {
        const int row = owner == index ? m_model->rowCount(owner) : index.row();
        return m_model->placeAt(owner, row, kind);
    }
    // The upper and lower quarter of a row stand for the gap beside it.
    const QRect rect = visualRect(index);
    const int gap = rect.height() / 4;
    if (at.y() < rect.top() + gap) return m_model->placeAt(index.parent(), index.row(), kind);
    const bool unfolded = isExpanded(index) && m_model->rowCount(index) > 0;
    if (at.y() > rect.bottom() - gap && !unfolded)
        return m_model->placeAt(index.parent(), index.row() + 1, kind);
    return {m_model->idAt(index), {}};
}

void PlantView::dropEvent(QDropEvent* event) {
    const QMimeData* mime = event->mimeData();
    const auto pasted = partsFromMime(*mime);
    setState(NoState);
    viewport()->update();
    if (!pasted) return event->ignore();
    const Kind kind = pasted->modesOnly ? Kind::mode : Kind::component;
    const auto place = dropPlace(event->position().toPoint(), kind);
    const auto dragged = m_dragged;
    const bool copying = event->modifiers() & Qt::ControlModifier;
    bool done = false;
    if (!dragged.empty() && !copying) {
        done =
            m_session.apply([&](const Project& p) { return edits::moveParts(p, dragged, place); });
        if (done) reveal(kind, dragged.back());
        event->setDropAction(Qt::MoveAction);
    } else {
        done = applyAndShow([&](const Project& p) {
            return edits::pasteParts(p, pasted->fragment, place, pasted->modesOnly);
        });
        event->setDropAction(Qt::CopyAction);
    }
    done ? event->accept() : event->ignore();
}

} // namespace cutwater::editor
