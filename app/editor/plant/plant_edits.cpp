// SPDX-License-Identifier: GPL-3.0-or-later
// PlantView: what its commands do. Each is one edit and one step of undo.
#include "app/editor/plant/plant_view.h"
#include "app/editor/plant/plant_words.h"
#include "models/project/edits/plant_copy.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QScopedValueRollback>

#include <set>

namespace cutwater::editor {

namespace edits = project::edits;
using Kind = PlantModel::Kind;
using project::Project;

void PlantView::startTyping(const QModelIndex& parent, int row, Kind kind) {
    if (!m_model->filter().isEmpty()) {
        const project::Id id = m_model->idAt(parent);
        m_model->setFilter({});
        const QModelIndex again = m_model->find(Kind::component, id);
        return startTyping(again, m_model->rowCount(again), kind);
    }
    if (parent.isValid()) expand(parent);
    const QModelIndex draft = m_model->startDraft(parent, row, kind);
    if (parent.isValid()) expand(draft.parent());
    {
        const QScopedValueRollback guard(m_following, true);
        selectionModel()->setCurrentIndex(draft, QItemSelectionModel::ClearAndSelect |
                                                     QItemSelectionModel::Rows);
    }
    scrollTo(draft);
    edit(draft);
}

void PlantView::addBeside() {
    const QModelIndex current = currentRow();
    const Kind kind = current.isValid() ? m_model->kindAt(current) : Kind::component;
    startTyping(current.parent(), current.isValid() ? current.row() + 1 : m_model->rowCount(),
                kind);
}

void PlantView::addBelow() {
    const QModelIndex current = currentRow();
    if (!current.isValid()) return addBeside();
    if (m_model->kindAt(current) == Kind::mode)
        return emit sentence(tr("A failure mode has no parts: choose a component."));
    startTyping(current, m_model->rowCount(current), Kind::component);
}

void PlantView::addMode() {
    QModelIndex current = currentRow();
    if (!current.isValid()) return emit sentence(tr("Choose the component that fails."));
    if (m_model->kindAt(current) == Kind::mode) return addBeside();
    int row = 0; // behind the modes that it has
    while (row < m_model->rowCount(current) &&
           m_model->kindAt(m_model->index(row, 0, current)) == Kind::mode)
        ++row;
    startTyping(current, row, Kind::mode);
}

void PlantView::editText() {
    if (currentRow().isValid()) edit(currentRow());
}

void PlantView::typed(const QModelIndex& index, const QString& text, Next next) {
    setFocus();
    if (!index.isValid()) return;
    const std::string words = text.toStdString();
    if (!m_model->isDraft(index)) {
        const Kind kind = m_model->kindAt(index);
        const project::Id id = m_model->idAt(index);
        if (!text.isEmpty() && text != index.data(Qt::EditRole).toString())
            m_session.apply([&](const Project& p) {
                return kind == Kind::mode ? edits::renameMode(p, id, words)
                                          : edits::setPartWords(p, id, words);
            });
        return;
    }
    const Kind kind = m_model->kindAt(index);
    const edits::PartPlace place = m_model->draftPlace();
    const QPersistentModelIndex parent = index.parent();
    const int row = index.row();
    m_model->dropDraft();
    if (text.isEmpty()) {
        // One level up, as in the outline, or back to where the typing began.
        if (next == Next::above && parent.isValid())
            return startTyping(parent.parent(), parent.row() + 1, Kind::component);
        const QModelIndex back = row > 0 ? m_model->index(row - 1, 0, parent) : QModelIndex(parent);
        if (back.isValid()) setCurrentIndex(back);
        return;
    }
    const bool made = applyAndShow([&](const Project& p) {
        return kind == Kind::mode ? edits::addMode(p, place, words)
                                  : edits::addPart(p, place, words);
    });
    if (!made) return;
    switch (next) {
    case Next::nowhere: return;
    case Next::beside: return addBeside();
    case Next::below: return kind == Kind::mode ? addBeside() : addBelow();
    case Next::above:
        if (currentRow().parent().isValid())
            startTyping(currentRow().parent().parent(), currentRow().parent().row() + 1,
                        Kind::component);
    }
}

// Makes the edit and goes to what is new in the plant.
bool PlantView::applyAndShow(const Edit& edit) {
    const Snapshot before = m_session.project();
    if (!m_session.apply(edit)) return false;
    std::set<std::string_view> known;
    for (const auto& each : before->components)
        known.insert(each.id);
    for (const auto& each : m_model->project().components)
        if (!known.contains(each.id)) return reveal(Kind::component, each.id);
    known.clear();
    for (const auto& each : before->modes)
        known.insert(each.id);
    for (const auto& each : m_model->project().modes)
        if (!known.contains(each.id)) return reveal(Kind::mode, each.id);
    return true;
}

void PlantView::removeChosen() {
    const auto ids = chosen();
    if (ids.empty()) return;
    const QString question = lossQuestion(edits::lossOf(m_model->project(), ids));
    if (!question.isEmpty() && !ask(question)) return;
    const QModelIndex above = currentRow().row() > 0
                                  ? currentRow().siblingAtRow(currentRow().row() - 1)
                                  : currentRow().parent();
    const Kind kind = m_model->kindAt(above);
    const project::Id next = m_model->idAt(above);
    if (m_session.apply([&](const Project& p) { return edits::removeParts(p, ids); }))
        reveal(kind, next);
}

void PlantView::moveChosen(int steps) {
    const QModelIndex row = currentRow();
    if (!row.isValid() || chosen().size() != 1)
        return emit sentence(tr("Choose one row to move it up or down."));
    const Kind kind = m_model->kindAt(row);
    const QModelIndex other = row.siblingAtRow(row.row() + steps);
    if (!other.isValid() || m_model->kindAt(other) != kind)
        return emit sentence(tr("It stands at the end already."));
    const auto place =
        m_model->placeAt(row.parent(), steps < 0 ? other.row() : other.row() + 1, kind);
    const project::Id id = m_model->idAt(row);
    m_session.apply([&](const Project& p) { return edits::moveParts(p, {id}, place); });
}

void PlantView::indent() {
    const QModelIndex row = currentRow();
    if (!m_model->componentAt(row)) return;
    const QModelIndex above = row.siblingAtRow(row.row() - 1);
    if (!m_model->componentAt(above))
        return emit sentence(tr("There is no component above it to become a part of."));
    const project::Id id = m_model->idAt(row), parent = m_model->idAt(above);
    if (m_session.apply([&](const Project& p) { return edits::moveParts(p, {id}, {parent, {}}); }))
        reveal(Kind::component, id);
}

void PlantView::outdent() {
    const QModelIndex row = currentRow();
    if (!m_model->componentAt(row)) return;
    if (!row.parent().isValid()) return emit sentence(tr("It stands at the top already."));
    const project::Id id = m_model->idAt(row);
    const auto place =
        m_model->placeAt(row.parent().parent(), row.parent().row() + 1, Kind::component);
    if (m_session.apply([&](const Project& p) { return edits::moveParts(p, {id}, place); }))
        reveal(Kind::component, id);
}

void PlantView::copy() {
    if (auto mime = partsToMime(m_model->project(), chosen()))
        QGuiApplication::clipboard()->setMimeData(mime.release());
}

void PlantView::cut() {
    copy();
    removeChosen();
}

void PlantView::paste() {
    const QMimeData* mime = QGuiApplication::clipboard()->mimeData();
    const auto pasted = mime ? partsFromMime(*mime) : std::nullopt;
    if (!pasted)
        return emit sentence(tr("The clipboard holds nothing that can be pasted into the plant."));
    QModelIndex row = currentRow();
    if (row.isValid() && m_model->kindAt(row) == Kind::mode) row = row.parent();
    const project::Id parent = m_model->idAt(row);
    applyAndShow([&](const Project& p) {
        return edits::pasteParts(p, pasted->fragment, {parent, {}}, pasted->modesOnly);
    });
}

} // namespace cutwater::editor
