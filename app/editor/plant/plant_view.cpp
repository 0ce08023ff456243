// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/plant_view.h"

#include "app/editor/outline/node_delegate.h"
#include "app/editor/outline/typing_tree.h"
#include "app/editor/plant/plant_words.h"

#include <QHeaderView>
#include <QMessageBox>
#include <QPainter>
#include <QScopedValueRollback>

#include <algorithm>

namespace cutwater::editor {

using Kind = PlantModel::Kind;

namespace {

// Calls goOn(row) for the rows at the top and for those below each row of which it says yes.
template <typename GoOn>
void walkRows(const QAbstractItemModel& model, GoOn goOn) {
    std::vector<QModelIndex> left{QModelIndex()};
    while (!left.empty()) {
        const QModelIndex above = left.back();
        left.pop_back();
        for (int row = 0; row < model.rowCount(above); ++row) {
            const QModelIndex index = model.index(row, 0, above);
            if (goOn(index)) left.push_back(index);
        }
    }
}

// The line of the outline, with words for the plant.
class PartDelegate : public NodeDelegate {
public:
    PartDelegate(PlantModel& model, QObject* parent) : NodeDelegate(parent), m_model(model) {}
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                          const QModelIndex& index) const override {
        QWidget* made = NodeDelegate::createEditor(parent, option, index);
        auto* edit = qobject_cast<QLineEdit*>(made);
        if (edit && m_model.isDraft(index))
            edit->setPlaceholderText(
                m_model.kindAt(index) == Kind::mode
                    ? PlantView::tr("how does it fail? (Enter: next, Esc: done)")
                    : PlantView::tr("tag and name: FP-1 fuel pump (Enter: next, Tab: below)"));
        return made;
    }

private:
    PlantModel& m_model;
};

} // namespace

PlantView::PlantView(Session& session, Selection& selection, QWidget* parent)
    : QTreeView(parent), m_session(session), m_selection(selection),
      m_model(new PlantModel(session, this)) {
    setObjectName("plant");
    setAccessibleName(tr("The plant and how its parts fail"));
    ask = [this](const QString& question) {
        return QMessageBox::question(this, tr("Delete"), question,
                                     QMessageBox::Yes | QMessageBox::Cancel,
                                     QMessageBox::Cancel) == QMessageBox::Yes;
    };
    setModel(m_model);
    auto* delegate = new PartDelegate(*m_model, this);
    setItemDelegate(delegate);
    setUpTypingTree(*this, PlantModel::textColumn);
    setIndentation(16);
    setIconSize({16, 16});
    const int letter = fontMetrics().averageCharWidth();
    header()->resizeSection(PlantModel::typeColumn, letter * 20);
    header()->resizeSection(PlantModel::locationColumn, letter * 22);
    header()->resizeSection(PlantModel::treesColumn, letter * 20);
    // The words need the room; type and location stand in the form, and here on wish.
    hideColumn(PlantModel::typeColumn);
    hideColumn(PlantModel::locationColumn);
    expandToDepth(0);

    connect(delegate, &NodeDelegate::typed, this,
            [this](const QModelIndex& index, const QString& text, const Reuse&, Next next) {
                typed(index, text, next);
            });
    connect(delegate, &NodeDelegate::givenUp, this, [this](const QModelIndex& index) {
        if (m_model->isDraft(index)) m_model->dropDraft();
        setFocus();
    });
    connect(this, &QTreeView::doubleClicked, this, [this] { editText(); });
    connect(m_model, &PlantModel::aboutToRebuild, this, &PlantView::remember);
    connect(m_model, &PlantModel::rebuilt, this, &PlantView::restore);
    connect(m_model, &PlantModel::dataChanged, this, &PlantView::currentChangedTo);
    connect(&m_selection, &Selection::selectionChanged, this, &PlantView::follow);
    connect(&m_session, &Session::replaced, this, [this] {
        m_open.clear();
        collapseAll();
        expandToDepth(0);
        emit currentChangedTo();
    });
}

std::vector<project::Id> PlantView::chosen() const {
    std::vector<project::Id> ids;
    for (const QModelIndex& row : outermostRows(*this))
        if (!m_model->isDraft(row)) ids.push_back(m_model->idAt(row));
    return ids;
}

bool PlantView::reveal(Kind kind, const project::Id& id) {
    QModelIndex row = m_model->find(kind, id);
    if (!row.isValid() && !m_model->filter().isEmpty()) {
        const project::Index& lookup = m_model->lookup();
        const bool exists =
            kind == Kind::mode ? lookup.mode(id) != nullptr : lookup.component(id) != nullptr;
        if (!exists) return false;
        m_model->setFilter({}); // what is looked for counts more than the filter
        row = m_model->find(kind, id);
    }
    if (!row.isValid()) return false;
    unfoldAbove(*this, row);
    setCurrentIndex(row);
    scrollTo(row);
    return true;
}

void PlantView::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTreeView::currentChanged(current, previous);
    if (!m_following) tellSelection();
    emit currentChangedTo();
}

void PlantView::tellSelection() {
    const QScopedValueRollback guard(m_following, true);
    const project::FailureMode* mode = m_model->modeAt(currentRow());
    if (!mode) return;
    const auto& tops = m_model->places().topsOf(mode->id);
    const auto& shown = m_selection.top();
    const bool inShown = std::any_of(tops.begin(), tops.end(), [&](std::size_t top) {
        return m_model->project().tops[top].id == shown;
    });
    if (!tops.empty() && !inShown) m_selection.showTop(m_model->project().tops[tops.front()].id);
    m_selection.select(m_model->places().eventsOf(mode->id));
}

void PlantView::showEvent(QShowEvent* event) {
    QTreeView::showEvent(event);
    follow();
}

void PlantView::follow() {
    // Nobody looks: it is caught up on when it is shown.
    if (m_following || !isVisible()) return;
    const QScopedValueRollback guard(m_following, true);
    const project::Event* event = m_model->lookup().event(m_selection.current().node);
    if (event && !event->mode.empty() && m_model->filter().isEmpty())
        reveal(Kind::mode, event->mode);
}

void PlantView::remember() {
    m_chosenBefore.clear();
    for (const QModelIndex& row : selectionModel()->selectedRows())
        m_chosenBefore.emplace_back(m_model->kindAt(row), m_model->idAt(row));
    if (currentRow().isValid())
        m_chosenBefore.emplace_back(m_model->kindAt(currentRow()), m_model->idAt(currentRow()));
    if (m_filtered) return; // it had unfolded all: what was unfolded before it counts
    m_open.clear();
    walkRows(*m_model, [this](const QModelIndex& row) {
        if (isExpanded(row)) m_open.insert(m_model->idAt(row));
        return isExpanded(row);
    });
}

void PlantView::restore() {
    const QScopedValueRollback guard(m_following, true);
    m_filtered = !m_model->filter().isEmpty();
    if (m_filtered) {
        expandAll();
    } else {
        walkRows(*m_model, [this](const QModelIndex& row) {
            const project::Id id = m_model->idAt(row);
            const bool renamed = !m_becomes.second.empty() && id == m_becomes.second;
            const bool wasOpen = m_open.contains(id) || renamed;
            if (wasOpen) expand(row);
            return wasOpen;
        });
    }
    QItemSelection rows;
    if (!m_becomes.second.empty() && m_model->find(m_becomes.first, m_becomes.second).isValid())
        m_chosenBefore = {m_becomes};
    m_becomes = {};
    for (const auto& [kind, id] : m_chosenBefore) {
        const QModelIndex row = m_model->find(kind, id);
        if (!row.isValid()) continue;
        rows.select(row, row.siblingAtColumn(PlantModel::columnCount_ - 1));
        selectionModel()->setCurrentIndex(row, QItemSelectionModel::NoUpdate);
    }
    selectionModel()->select(rows, QItemSelectionModel::ClearAndSelect);
    if (currentRow().isValid()) scrollTo(currentRow());
    emit currentChangedTo();
}

bool PlantView::focusNextPrevChild(bool next) {
    // Tab types below a row; Shift+Tab and F6 leave the view.
    if (next && currentIndex().isValid()) return false;
    return QTreeView::focusNextPrevChild(next);
}

// Letters are commands here; the field above finds rows.
void PlantView::keyboardSearch(const QString&) {}

void PlantView::paintEvent(QPaintEvent* event) {
    QTreeView::paintEvent(event);
    if (m_model->rowCount() > 0) return;
    QPainter painter(viewport());
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(viewport()->rect().adjusted(24, 24, -24, -24),
                     Qt::AlignCenter | Qt::TextWordWrap,
                     m_model->filter().isEmpty()
                         ? tr("There is no plant yet.\nPress Enter and type a part, tag first, for "
                              "example: B1 boiler. Tab types what it consists of, M how it fails.")
                         : tr("Nothing fits \"%1\".").arg(m_model->filter()));
}

} // namespace cutwater::editor
