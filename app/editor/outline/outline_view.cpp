// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/outline_view.h"

#include "app/editor/outline/node_delegate.h"
#include "app/editor/outline/typing_tree.h"
#include "models/project/edits/add.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QPainter>
#include <QScopedValueRollback>

namespace cutwater::editor {

OutlineView::OutlineView(Session& session, Selection& selection, QWidget* parent)
    : QTreeView(parent), m_session(session), m_selection(selection),
      m_model(new OutlineModel(session, this)) {
    setObjectName("outline");
    setAccessibleName(tr("Outline of the trees"));
    setModel(m_model);
    auto* delegate = new NodeDelegate(this);
    setItemDelegate(delegate);
    setUpTypingTree(*this, OutlineModel::textColumn);
    // The words need the room; the failure model stands in the details, and here on wish.
    setIndentation(14);
    header()->resizeSection(OutlineModel::kindColumn, fontMetrics().averageCharWidth() * 16);
    header()->resizeSection(OutlineModel::usesColumn, fontMetrics().averageCharWidth() * 10);
    header()->resizeSection(OutlineModel::modelColumn, fontMetrics().averageCharWidth() * 22);
    hideColumn(OutlineModel::modelColumn);
    showInk();
    expandToDepth(0);

    connect(delegate, &NodeDelegate::typed, this, &OutlineView::typed);
    connect(delegate, &NodeDelegate::givenUp, this, [this](const QModelIndex& index) {
        if (m_model->isDraft(index)) m_model->dropDraft();
        setFocus();
    });
    connect(this, &QTreeView::doubleClicked, this, [this] { editText(); });
    connect(&m_selection, &Selection::selectionChanged, this, &OutlineView::follow);
    connect(&m_session, &Session::edited, this, &OutlineView::showTouched);
    connect(&m_session, &Session::replaced, this, [this] { expandToDepth(0); });
}

std::vector<project::edits::Use> OutlineView::chosen() const {
    std::vector<project::edits::Use> uses;
    for (const QModelIndex& row : outermostRows(*this))
        if (!m_model->isDraft(row)) uses.push_back(m_model->useAt(row));
    return uses;
}

void OutlineView::follow() {
    if (m_following) return;
    const QScopedValueRollback guard(m_following, true);
    QItemSelection rows;
    QModelIndex current;
    for (const Spot& spot : m_selection.spots()) {
        const QModelIndex index = m_model->reveal(spot);
        if (!index.isValid()) continue;
        rows.select(index, index.siblingAtColumn(OutlineModel::columnCount_ - 1));
        current = index;
    }
    if (current.isValid()) {
        unfoldAbove(*this, current);
        selectionModel()->setCurrentIndex(current, QItemSelectionModel::NoUpdate);
        scrollTo(current);
    }
    selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect);
}

void OutlineView::selectionChanged(const QItemSelection& selected,
                                   const QItemSelection& deselected) {
    QTreeView::selectionChanged(selected, deselected);
    if (!m_following) tellSelection();
}

void OutlineView::tellSelection() {
    const QScopedValueRollback guard(m_following, true);
    std::vector<Spot> spots;
    QModelIndex last;
    const QModelIndexList rows = selectionModel()->selectedRows();
    for (const QModelIndex& row : rows)
        if (row != currentRow() && !m_model->isDraft(row)) spots.push_back(m_model->spotAt(row));
    if (rows.contains(currentRow()) && !m_model->isDraft(currentRow()))
        last = currentRow();
    else if (!rows.isEmpty() && !m_model->isDraft(rows.back()))
        last = rows.back();
    if (last.isValid()) {
        if (last == currentRow()) spots.push_back(m_model->spotAt(last));
        // The tree that it stands in is the one that is looked at.
        QModelIndex top = last;
        while (top.parent().isValid())
            top = top.parent();
        const project::edits::Use use = m_model->useAt(top);
        if (use.row < m_model->project().tops.size())
            m_selection.showTop(m_model->project().tops[use.row].id);
    }
    m_selection.selectSpots(std::move(spots));
}

void OutlineView::showTouched(const std::vector<project::Id>& touched) {
    if (touched.empty()) return;
    std::vector<Spot> spots;
    for (const project::Id& node : touched)
        spots.push_back({node, m_parentOfTouched});
    if (spots == m_selection.spots())
        follow();
    else
        m_selection.selectSpots(std::move(spots));
}

bool OutlineView::apply(const Edit& edit, const project::Id& parentOfTouched) {
    const QScopedValueRollback guard(m_parentOfTouched, parentOfTouched);
    return m_session.apply(edit);
}

void OutlineView::startTyping(const QModelIndex& parent, int row) {
    if (parent.isValid()) expand(parent);
    const QModelIndex draft = m_model->startDraft(parent, row);
    if (parent.isValid()) expand(parent); // an event has something to unfold only now
    {
        const QScopedValueRollback guard(m_following, true);
        selectionModel()->setCurrentIndex(draft, QItemSelectionModel::ClearAndSelect |
                                                     QItemSelectionModel::Rows);
    }
    scrollTo(draft);
    edit(draft);
}

void OutlineView::typed(const QModelIndex& index, const QString& text, const Reuse& reuse,
                        Next next) {
    setFocus();
    if (!index.isValid()) return;
    if (!m_model->isDraft(index)) {
        if (!text.isEmpty() && text != index.data(Qt::EditRole).toString())
            m_model->setData(index, text, Qt::EditRole);
        if (next == Next::below) addBelow();
        return;
    }
    const project::edits::Place place = m_model->draftPlace();
    const QPersistentModelIndex parent = index.parent();
    const int row = index.row();
    m_model->dropDraft();
    if (text.isEmpty() && reuse.what == Reuse::What::nothing) {
        if (next == Next::above && parent.isValid())
            return startTyping(parent.parent(), parent.row() + 1);
        // Back to where the typing began.
        const QModelIndex back = row > 0 ? m_model->index(row - 1, 0, parent) : QModelIndex(parent);
        if (back.isValid()) setCurrentIndex(back);
        return;
    }
    const std::string name = text.toStdString();
    const bool made = apply(
        [&](const project::Project& project) {
            switch (reuse.what) {
            case Reuse::What::node: return project::edits::shareNode(project, place, reuse.id);
            case Reuse::What::mode: return project::edits::useMode(project, place, reuse.id);
            case Reuse::What::nothing: break;
            }
            return project::edits::addEvent(project, place, name);
        },
        place.parent);
    if (made)
        goOn(next);
    else if (parent.isValid())
        setCurrentIndex(parent);
}

void OutlineView::goOn(Next next) {
    switch (next) {
    case Next::nowhere: return;
    case Next::beside: return addBeside();
    case Next::below: return addBelow();
    case Next::above:
        if (currentRow().parent().isValid())
            startTyping(currentRow().parent().parent(), currentRow().parent().row() + 1);
    }
}

bool OutlineView::focusNextPrevChild(bool next) {
    // Tab types below a row; Shift+Tab and F6 leave the outline.
    if (next && currentIndex().isValid()) return false;
    return QTreeView::focusNextPrevChild(next);
}

void OutlineView::keyPressEvent(QKeyEvent* event) {
    const int digit = event->key() - Qt::Key_0;
    if (digit >= 1 && digit <= 9 && !(event->modifiers() & ~Qt::KeypadModifier))
        return setVotes(digit);
    QTreeView::keyPressEvent(event);
}

// Letters are commands here; the palette and the search find rows.
void OutlineView::keyboardSearch(const QString&) {}

void OutlineView::paintEvent(QPaintEvent* event) {
    QTreeView::paintEvent(event);
    if (m_model->rowCount() > 0) return;
    QPainter painter(viewport());
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(viewport()->rect().adjusted(24, 24, -24, -24),
                     Qt::AlignCenter | Qt::TextWordWrap,
                     tr("There is no tree yet.\nPress Enter and type what must not happen, for "
                        "example: no steam from either boiler."));
}

void OutlineView::changeEvent(QEvent* event) {
    QTreeView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) showInk();
}

void OutlineView::showInk() {
    if (m_model) m_model->setInk(palette().color(QPalette::Text));
}

} // namespace cutwater::editor
