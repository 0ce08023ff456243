// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: what it is made of.
#include "app/editor/diagram/panel.h"

#include "app/editor/diagram/export.h"
#include "app/editor/diagram/find_bar.h"
#include "app/editor/diagram/icons.h"
#include "app/editor/diagram/overview.h"
#include "app/editor/diagram/rename_field.h"

#include "models/project/edits/facts.h"

#include <QAction>
#include <QComboBox>
#include <QEvent>
#include <QLabel>
#include <QStyle>
#include <QToolBar>
#include <QVBoxLayout>

#include <algorithm>
#include <cmath>

namespace cutwater::editor {

DiagramPanel::DiagramPanel(Session& session, Selection& selection, const sdk::Layout* layout,
                           QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection),
      m_layout(layout ? std::make_shared<SerialLayout>(*layout) : nullptr),
      m_worker(new LayoutWorker(m_layout, this)), m_scene(new DiagramScene(this)),
      m_view(new DiagramView(m_scene)), m_overview(new Overview(m_scene, m_view)),
      m_rename(new RenameField(m_view->viewport())), m_find(new FindBar), m_message(new QLabel),
      m_busy(new QLabel(tr("Drawing..."), m_view->viewport())), m_sheetList(new QComboBox),
      m_captionList(new QComboBox), m_zoomLabel(new QLabel) {
    setObjectName(QStringLiteral("diagramPanel"));
    m_view->setAccessibleName(tr("Diagram of the fault tree"));
    setFocusProxy(m_view);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    makeActions();
    makeEditActions();
    auto* bar = new QToolBar;
    makeBar(bar);
    column->addWidget(bar);
    m_message->setObjectName(QStringLiteral("diagramMessage"));
    m_message->setWordWrap(true);
    m_message->setMargin(5);
    m_message->setAutoFillBackground(true);
    m_message->setBackgroundRole(QPalette::AlternateBase);
    m_message->setForegroundRole(QPalette::Text);
    m_message->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_message->hide();
    column->addWidget(m_message);
    column->addWidget(m_view, 1);
    m_busy->setMargin(5);
    m_busy->setAutoFillBackground(true);
    m_busy->move(8, 8);
    m_busy->hide();
    m_busyTimer.setSingleShot(true);
    m_busyTimer.setInterval(300);
    connect(&m_busyTimer, &QTimer::timeout, m_busy, [this] {
        m_busy->adjustSize();
        m_busy->show();
        m_busy->raise();
    });

    setAnimated(style()->styleHint(QStyle::SH_Widget_Animation_Duration, nullptr, this) != 0);
    connectView();
    connect(m_worker, &LayoutWorker::answered, this, &DiagramPanel::take);
    connect(&m_session, &Session::projectChanged, this, [this] { refresh(); });
    connect(&m_session, &Session::replaced, this, [this] {
        m_folds.clear();
        m_shownTop.clear();
        m_bringLater.reset();
        m_renameLater.clear();
        m_rename->cancel();
        refresh();
    });
    connect(&m_session, &Session::edited, this,
            [this](const std::vector<project::Id>& touched) { m_touched = touched; });
    connect(&m_selection, &Selection::topChanged, this, [this] { refresh(); });
    connect(&m_selection, &Selection::selectionChanged, this, [this] {
        if (!m_selecting) followSelection(true);
    });
    connect(&m_selection, &Selection::marksChanged, this, [this] { followMarks(true); });
    if (!m_scene->problems().empty())
        m_drawingProblem = QString::fromStdString(project::toSentence(m_scene->problems().front()));
    refresh();
    enableActions();
}

DiagramPanel::~DiagramPanel() {
    // Signals of children that go must not find half a panel.
    m_scene->disconnect(this);
    m_view->disconnect(this);
    m_rename->disconnect(this);
    m_export.reset();
    delete m_worker;
}

void DiagramPanel::connectView() {
    connect(m_view, &DiagramView::pressed, this, &DiagramPanel::press);
    connect(m_view, &DiagramView::clicked, this,
            [this](std::size_t box, Qt::KeyboardModifiers modifiers) {
                if (modifiers != Qt::NoModifier || m_selection.spots().size() < 2) return;
                const PageBox& clicked = m_scene->page()->boxes[box];
                m_selection.selectSpots({Spot{clicked.node, clicked.parent}});
            });
    connect(m_view, &DiagramView::groundClicked, this, [this] { m_selection.selectSpots({}); });
    connect(m_view, &DiagramView::handlePressed, this,
            [this](std::size_t box, Qt::KeyboardModifiers modifiers) {
                const PageBox& pressed = m_scene->page()->boxes[box];
                fold(pressed.node, !pressed.folded, modifiers.testFlag(Qt::ShiftModifier));
            });
    connect(m_view, &DiagramView::doubleClicked, this, &DiagramPanel::open);
    connect(m_view, &DiagramView::menuAsked, this, &DiagramPanel::showMenu);
    connect(m_view, &DiagramView::dragMoved, this, &DiagramPanel::dragTo);
    connect(m_view, &DiagramView::dropped, this, &DiagramPanel::dropOn);
    connect(m_view, &DiagramView::dragEnded, this,
            [this] { m_scene->setDrop(kNoBox, BoxState::Drop::none); });
    connect(m_view, &DiagramView::draggedOut, this, &DiagramPanel::dragOut);
    m_view->setOutside([this](const QMimeData& mime, std::size_t target, bool right, bool share,
                              bool drop) { return outside(mime, target, right, share, drop); });
    connect(m_view, &DiagramView::banded, this, &DiagramPanel::selectBand);
    connect(m_view, &DiagramView::lookedElsewhere, this, [this] {
        m_zoomLabel->setText(tr("%1 %").arg(static_cast<int>(std::lround(m_view->zoom() * 100))));
    });
    connect(m_rename, &RenameField::renamed, this,
            [this](const project::Id& node, const QString& name) {
                const std::string text = name.toStdString();
                apply([=](const project::Project& project) {
                    return project::edits::rename(project, node, text);
                });
            });
    connect(m_find, &FindBar::textChanged, this, [this] { search(true); });
    connect(m_find, &FindBar::nextAsked, this, [this] { nextHit(1); });
    connect(m_find, &FindBar::previousAsked, this, [this] { nextHit(-1); });
    connect(m_find, &FindBar::left, this, [this] { m_view->setFocus(); });
}

void DiagramPanel::makeBar(QToolBar* bar) {
    bar->setObjectName(QStringLiteral("diagramBar"));
    bar->setIconSize(QSize(20, 20));
    bar->addAction(action("showTree"));
    bar->addAction(action("showSheets"));
    bar->addSeparator();
    bar->addAction(action("previousSheet"));
    m_sheetList->setAccessibleName(tr("Sheet"));
    m_sheetList->setMinimumContentsLength(18);
    m_sheetList->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    QAction* list = bar->addWidget(m_sheetList);
    bar->addAction(action("nextSheet"));
    connect(this, &DiagramPanel::pageShown, list, [this, list] {
        list->setVisible(m_kind == ViewKind::sheets);
        action("previousSheet")->setVisible(m_kind == ViewKind::sheets);
        action("nextSheet")->setVisible(m_kind == ViewKind::sheets);
    });
    list->setVisible(false);
    action("previousSheet")->setVisible(false);
    action("nextSheet")->setVisible(false);
    connect(m_sheetList, &QComboBox::activated, this, &DiagramPanel::showSheet);
    bar->addAction(action("unfoldAll"));
    bar->addAction(action("foldAll"));
    bar->addSeparator();
    bar->addAction(action("zoomOut"));
    m_zoomLabel->setObjectName(QStringLiteral("zoomLabel"));
    m_zoomLabel->setMinimumWidth(
        m_zoomLabel->fontMetrics().horizontalAdvance(tr("%1 %").arg(8888)));
    m_zoomLabel->setAlignment(Qt::AlignCenter);
    bar->addWidget(m_zoomLabel);
    bar->addAction(action("zoomIn"));
    bar->addAction(action("fit"));
    bar->addSeparator();
    m_captionList->setAccessibleName(tr("Under the events"));
    m_captionList->setToolTip(tr("What stands under the events"));
    m_captionList->addItems(
        {tr("No captions"), tr("Tags"), tr("Probabilities"), tr("Probabilities, gates too")});
    bar->addWidget(m_captionList);
    connect(m_captionList, &QComboBox::activated, this,
            [this](int index) { setCaptions(static_cast<CaptionKind>(index)); });
    bar->addSeparator();
    auto* gap = new QWidget;
    gap->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
    bar->addWidget(gap);
    bar->addWidget(m_find);
}

void DiagramPanel::setAnimated(bool animated) {
    m_scene->setAnimated(animated);
    action("animate")->setChecked(animated);
}

QVariantMap DiagramPanel::habits() const {
    return {{QStringLiteral("animate"), action("animate")->isChecked()},
            {QStringLiteral("overview"), m_overview->isWanted()},
            {QStringLiteral("captions"), static_cast<int>(m_captions)},
            {QStringLiteral("paper"), static_cast<int>(m_paper)}};
}

void DiagramPanel::setHabits(const QVariantMap& habits) {
    const auto value = [&](const char* name, const QVariant& standard) {
        return habits.value(QLatin1String(name), standard);
    };
    setAnimated(value("animate", true).toBool());
    m_overview->setWanted(value("overview", true).toBool());
    action("overview")->setChecked(m_overview->isWanted());
    setCaptions(static_cast<CaptionKind>(std::clamp(value("captions", 0).toInt(), 0, 3)));
    setPaper(value("paper", 0).toInt() == 1 ? drawing::Paper::a3 : drawing::Paper::a4,
             m_orientation);
}

void DiagramPanel::setKind(ViewKind kind) {
    if (kind == m_kind) return;
    m_kind = kind;
    m_firstLook = true;
    m_sheet = 0;
    if (!m_selection.current().node.empty()) m_bringLater = m_selection.current();
    action(kind == ViewKind::tree ? "showTree" : "showSheets")->setChecked(true);
    refresh();
}

void DiagramPanel::setCaptions(CaptionKind kind) {
    m_captionList->setCurrentIndex(static_cast<int>(kind));
    if (kind == m_captions) return;
    m_captions = kind;
    refresh();
}

void DiagramPanel::setPaper(drawing::Paper paper, drawing::Orientation orientation) {
    if (paper == m_paper && orientation == m_orientation) return;
    m_paper = paper;
    m_orientation = orientation;
    if (m_kind != ViewKind::sheets) return;
    m_firstLook = true;
    refresh();
}

QAction* DiagramPanel::action(const char* name) const {
    for (QAction* one : m_all)
        if (one->objectName() == QLatin1String(name)) return one;
    return nullptr;
}

void DiagramPanel::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::PaletteChange)
        for (QAction* one : m_all)
            if (!one->icon().isNull()) one->setIcon(iconFor(one->objectName(), palette()));
}

} // namespace cutwater::editor
