// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/plant_page.h"

#include "app/editor/plant/mode_form.h"
#include "app/editor/plant/part_form.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QScrollArea>
#include <QShortcut>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QVBoxLayout>

namespace cutwater::editor {

using Kind = PlantModel::Kind;

namespace {

constexpr int kNarrow = 120; // letters

QScrollArea* scrolled(QWidget* widget) {
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFrameShape(QFrame::NoFrame);
    area->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    area->setFocusPolicy(Qt::NoFocus);
    area->setWidget(widget);
    return area;
}

} // namespace

PlantPage::PlantPage(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection),
      m_view(new PlantView(session, selection, this)), m_filter(new QLineEdit(this)),
      m_found(new QLabel(this)), m_forms(new QStackedWidget(this)), m_part(new PartForm(session)),
      m_mode(new ModeForm(session)) {
    setObjectName("plantPage");
    m_filter->setObjectName("plantFilter");
    m_filter->setAccessibleName(tr("Find in the plant"));
    m_filter->setPlaceholderText(tr("find: tag, name, type, location, failure mode"));
    m_filter->setClearButtonEnabled(true);
    auto* empty = new QLabel(tr("Choose a part or a failure mode to see all about it."));
    empty->setAlignment(Qt::AlignTop | Qt::AlignHCenter);
    empty->setWordWrap(true);
    empty->setMargin(16);
    m_forms->addWidget(empty);
    m_forms->addWidget(scrolled(m_part));
    m_forms->addWidget(scrolled(m_mode));

    auto* left = new QWidget(this);
    auto* line = new QHBoxLayout;
    line->addWidget(m_filter, 1);
    line->addWidget(m_found);
    auto* tree = new QVBoxLayout(left);
    tree->setContentsMargins(0, 4, 0, 0);
    tree->addLayout(line);
    tree->addWidget(m_view, 1);
    m_split = new QSplitter(this);
    m_split->setObjectName("plantSplit");
    m_split->addWidget(left);
    m_split->addWidget(m_forms);
    m_split->setStretchFactor(0, 1);
    m_split->setStretchFactor(1, 1);
    m_split->setChildrenCollapsible(false);
    m_split->setSizes({500, 500});
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_split);
    makeCommands();

    auto* timer = new QTimer(this); // the next letter may come at once
    timer->setSingleShot(true);
    timer->setInterval(120);
    connect(m_filter, &QLineEdit::textChanged, timer, [timer] { timer->start(); });
    connect(timer, &QTimer::timeout, this, [this] {
        m_view->rows().setFilter(m_filter->text().trimmed());
        showFound();
    });
    connect(m_filter, &QLineEdit::returnPressed, this, [this, timer] {
        timer->stop();
        m_view->rows().setFilter(m_filter->text().trimmed());
        m_view->setFocus();
        if (!m_view->currentIndex().isValid()) m_view->setCurrentIndex(m_view->rows().index(0, 0));
    });
    connect(&m_view->rows(), &PlantModel::rebuilt, this, [this] {
        if (m_view->rows().filter().isEmpty() && !m_filter->hasFocus()) m_filter->clear();
        showFound();
    });
    connect(m_view, &PlantView::sentence, this, &PlantPage::sentence);
    connect(m_view, &PlantView::currentChangedTo, this, &PlantPage::showForm);
    const auto go = [this](const project::Id& id) { m_view->reveal(Kind::component, id); };
    connect(m_part, &PartForm::componentWished, this, go);
    connect(m_mode, &ModeForm::componentWished, this, go);
    connect(m_part, &PartForm::modeWished, this,
            [this](const project::Id& id) { m_view->reveal(Kind::mode, id); });
    connect(m_part, &PartForm::idChanged, this,
            [this](const project::Id& id) { m_view->followId(Kind::component, id); });
    connect(m_mode, &ModeForm::idChanged, this,
            [this](const project::Id& id) { m_view->followId(Kind::mode, id); });
    connect(m_mode, &ModeForm::topWished, this, [this](const project::Id& top) {
        m_selection.showTop(top);
        const project::FailureMode* mode = m_view->rows().modeAt(m_view->currentRow());
        if (mode) m_selection.select(m_view->rows().places().eventsOf(mode->id));
    });
    showForm();
    showFound();
}

void PlantPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    // Side by side where both have room, else one above the other.
    const bool narrow = width() < fontMetrics().averageCharWidth() * kNarrow;
    m_split->setOrientation(narrow ? Qt::Vertical : Qt::Horizontal);
}

project::Id PlantPage::component() const {
    const QModelIndex row = m_view->currentRow();
    const PlantModel& rows = m_view->rows();
    if (const auto* mode = rows.modeAt(row)) return mode->component;
    const auto* part = rows.componentAt(row);
    return part ? part->id : project::Id();
}

void PlantPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    showForm();
}

void PlantPage::showForm() {
    if (!isVisible()) return; // it is caught up on when the page is shown
    const QModelIndex row = m_view->currentRow();
    const PlantModel& rows = m_view->rows();
    if (const auto* part = rows.componentAt(row)) {
        m_part->show(part->id);
        m_forms->setCurrentIndex(1);
    } else if (const auto* mode = rows.modeAt(row)) {
        m_mode->show(mode->id, rows.places());
        m_forms->setCurrentIndex(2);
    } else {
        m_forms->setCurrentIndex(0);
    }
}

void PlantPage::showFound() {
    const PlantModel& rows = m_view->rows();
    m_found->setVisible(!rows.filter().isEmpty());
    m_found->setText(tr("found: %1").arg(rows.found()));
}

void PlantPage::makeCommands() {
    PlantView* v = m_view;
    const auto add = [&](const char* name, const QString& text, const QKeySequence& keys,
                         auto act) {
        auto* action = new QAction(text, m_view);
        action->setObjectName(QStringLiteral("plant.") + QLatin1String(name));
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetShortcut);
        connect(action, &QAction::triggered, m_view, act);
        m_view->addAction(action);
        m_commands << action;
    };
    const auto gap = [&] {
        auto* line = new QAction(m_view);
        line->setSeparator(true);
        m_view->addAction(line);
        m_commands << nullptr;
    };
    add("add-beside", tr("Add beside"), QKeySequence(Qt::Key_Return), [v] { v->addBeside(); });
    add("add-below", tr("Add a part"), QKeySequence(Qt::Key_Tab), [v] { v->addBelow(); });
    add("add-mode", tr("Add a failure mode"), QKeySequence(Qt::Key_M), [v] { v->addMode(); });
    add("rename", tr("Change the text"), QKeySequence(Qt::Key_F2), [v] { v->editText(); });
    gap();
    add("cut", tr("Cut"), QKeySequence::Cut, [v] { v->cut(); });
    add("copy", tr("Copy"), QKeySequence::Copy, [v] { v->copy(); });
    add("paste", tr("Paste below"), QKeySequence::Paste, [v] { v->paste(); });
    add("delete", tr("Delete"), QKeySequence(Qt::Key_Delete), [v] { v->removeChosen(); });
    gap();
    add("move-up", tr("Move up"), QKeySequence(Qt::ALT | Qt::Key_Up), [v] { v->moveChosen(-1); });
    add("move-down", tr("Move down"), QKeySequence(Qt::ALT | Qt::Key_Down),
        [v] { v->moveChosen(1); });
    add("indent", tr("Make it a part of the one above"), QKeySequence(Qt::ALT | Qt::Key_Right),
        [v] { v->indent(); });
    add("outdent", tr("Move it one level up"), QKeySequence(Qt::ALT | Qt::Key_Left),
        [v] { v->outdent(); });
    gap();
    add("unfold-all", tr("Unfold all"), QKeySequence(Qt::Key_Asterisk), [v] { v->expandAll(); });
    add("fold-all", tr("Fold all"), QKeySequence(Qt::Key_Slash), [v] { v->collapseAll(); });
    add("find", tr("Find in the plant"), QKeySequence::Find, [this] {
        m_filter->setFocus();
        m_filter->selectAll();
    });
    m_view->setContextMenuPolicy(Qt::ActionsContextMenu);
}

} // namespace cutwater::editor
