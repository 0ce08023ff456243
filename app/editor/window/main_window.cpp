// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/main_window.h"

#include "app/editor/details/details_form.h"
#include "app/editor/diagram/panel.h"
#include "app/editor/library/library_page.h"
#include "app/editor/outline/outline_view.h"
#include "app/editor/plant/plant_page.h"
#include "app/editor/proposals/proposals_page.h"
#include "app/editor/report/report_page.h"
#include "app/editor/risk/risk_page.h"
#include "app/editor/window/analyses_place.h"
#include "app/editor/window/answers_dock.h"
#include "app/editor/window/diagram_page.h"
#include "app/editor/window/finder.h"
#include "app/editor/window/library_place.h"
#include "app/editor/window/plant_place.h"
#include "app/editor/window/problems_dock.h"
#include "app/editor/window/problems_list.h"
#include "app/editor/window/proposals_place.h"
#include "app/editor/window/report_place.h"
#include "app/editor/window/risk_place.h"
#include "app/editor/window/welcome_page.h"
#include "app/editor/window/worksheet_place.h"
#include "app/editor/worksheet/worksheet_page.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDockWidget>
#include <QFileInfo>
#include <QMimeData>
#include <QStackedWidget>
#include <QStatusBar>
#include <QStyle>
#include <QTabWidget>
#include <QUrl>
#include <QVBoxLayout>

// Outside any namespace: it names a function of the library's resources.
static void initResources() {
    Q_INIT_RESOURCE(editor);
}

namespace cutwater::editor {

MainWindow::MainWindow(sdk::Host& host, QWidget* parent, const QString& recoveryFolder)
    : QMainWindow(parent), m_host(host), m_desktopPalette(QApplication::palette()),
      m_desktopStyle(QApplication::style()->objectName()) {
    initResources();
    setObjectName("mainWindow");
    setAcceptDrops(true);
    setDockNestingEnabled(true);
    m_bar = new MessageBar(this);
    m_desk =
        new FileDesk(m_session, *m_bar, m_settings,
                     recoveryFolder.isEmpty() ? Recovery::standardFolder() : recoveryFolder, this);
    makeViews();
    makeActions();
    makeStatusBar();
    connect(&m_session, &Session::pathChanged, this, &MainWindow::showTitle);
    connect(&m_session, &Session::projectChanged, this, &MainWindow::showTitle);
    connect(&m_session, &Session::projectChanged, this, &MainWindow::showPage);
    connect(&m_session, &Session::dirtyChanged, this, &MainWindow::setWindowModified);
    connect(&m_session, &Session::replaced, this, [this] {
        const Snapshot snapshot = m_session.project();
        m_selection.selectSpots({});
        m_selection.clearMarks();
        m_selection.showTop(snapshot->tops.empty() ? project::Id() : snapshot->tops.front().id);
    });
    showTitle();
    showPage();
    resize(1360, 860);
    restore();
}

MainWindow::~MainWindow() {
    // The views first: they look into the session, which is a member.
    qDeleteAll(findChildren<QWidget*>(Qt::FindDirectChildrenOnly));
    delete m_desk;
}

void MainWindow::makeViews() {
    m_pages = new QTabWidget(this);
    m_pages->setObjectName("pages");
    m_pages->setDocumentMode(true);
    m_diagram = addDiagram(*m_pages, m_session, m_selection, m_host);
    connect(m_diagram, &DiagramPanel::said, this,
            [this](const QString& text) { statusBar()->showMessage(text, 10000); });
    connect(m_diagram, &DiagramPanel::exported, this,
            [this](bool, const QString& text) { statusBar()->showMessage(text, 10000); });
    m_plant = addPlant(*m_pages, m_session, m_selection);
    const auto say = [this](const QString& text) { statusBar()->showMessage(text, 10000); };
    connect(m_plant, &PlantPage::sentence, this, say);
    connect(addLibrary(*m_pages, m_session, *m_plant), &LibraryPage::sentence, this, say);
    connect(addRisks(*m_pages, m_session, m_selection), &RiskPage::sentence, this, say);
    connect(addProposals(*m_pages, m_session, m_selection, *m_plant), &ProposalsPage::sentence,
            this, say);
    auto* welcome = new WelcomePage(*m_desk, this);
    m_middle = new QStackedWidget(this);
    m_middle->setObjectName("middle");
    m_middle->addWidget(welcome);
    m_middle->addWidget(m_pages);
    auto* middle = new QWidget(this);
    auto* layout = new QVBoxLayout(middle);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_bar);
    layout->addWidget(m_middle, 1);
    setCentralWidget(middle);

    const auto dock = [this](const char* name, const QString& title, QWidget* widget,
                             Qt::DockWidgetArea area) {
        auto* made = new QDockWidget(title, this);
        made->setObjectName(QLatin1String(name));
        made->setWidget(widget);
        addDockWidget(area, made);
        return made;
    };
    m_outline = new OutlineView(m_session, m_selection);
    auto* outline = dock("outlineDock", tr("Outline"), m_outline, Qt::LeftDockWidgetArea);
    auto* details = dock("detailsDock", tr("Details"), new DetailsForm(m_session, m_selection),
                         Qt::LeftDockWidgetArea);
    m_problems = new ProblemsList(m_session, m_selection);
    m_problemsDock = new ProblemsDock(m_problems, m_settings, this);
    addDockWidget(Qt::BottomDockWidgetArea, m_problemsDock);
    splitDockWidget(outline, details, Qt::Vertical);
    resizeDocks({outline, details}, {520, 340}, Qt::Vertical);
    resizeDocks({m_problemsDock}, {170}, Qt::Vertical);
    QDockWidget* answers = addAnswers(*this, m_session, m_selection);
    resizeDocks({outline, answers}, {400, 270}, Qt::Horizontal);
    auto* worksheet = addWorksheet(*m_pages, m_session, m_selection, m_host);
    connect(worksheet, &WorksheetPage::said, this,
            [this](const QString& text) { statusBar()->showMessage(text, 10000); });
    AnalysesPane* analyses = addAnalyses(*m_pages, m_session, m_selection, m_host);
    m_report = addReport(*m_pages, m_session, *m_desk, *analyses, m_host);
    connect(m_report, &ReportPage::finished, this,
            [this](bool, const QString& text) { statusBar()->showMessage(text, 10000); });

    // A page that is not looked at must not squeeze the outline and the answers, and one that is
    // makes do with what they leave.
    for (int i = 0; i < m_pages->count(); ++i)
        m_pages->widget(i)->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    m_pages->setMinimumWidth(fontMetrics().averageCharWidth() * 70);

    connect(welcome, &WelcomePage::typingWished, this, [this] {
        m_outline->setFocus();
        m_outline->addBeside();
    });
    connect(m_outline, &OutlineView::sentence, this,
            [this](const QString& text) { statusBar()->showMessage(text, 10000); });
    connect(m_desk, &FileDesk::fileProblems, m_problems, &ProblemsList::showFile);
    connect(m_desk, &FileDesk::showProblems, m_problemsDock, &ProblemsDock::look);
}

void MainWindow::showTitle() {
    setWindowTitle(QStringLiteral("%1[*]").arg(m_desk->name()));
    setWindowFilePath(m_session.path());
}

void MainWindow::showPage() {
    const Snapshot project = m_session.project();
    const bool nothing = project->tops.empty() && project->gates.empty() &&
                         project->events.empty() && project->modes.empty() &&
                         m_session.path().isEmpty();
    m_middle->setCurrentIndex(nothing || m_pages->count() == 0 ? 0 : 1);
    if (!nothing && m_pages->count() == 0) m_middle->setCurrentIndex(1);
}

void MainWindow::begin() {
    if (m_desk->offerLeftovers()) return;
    if (m_settings.value("window/begun").toBool()) return;
    m_settings.setValue("window/begun", true);
    m_desk->openDemo();
    m_bar->tell(tr("This is the demo: the boilers of an invented ship, as a copy. Walk through the "
                   "outline with the arrows, change anything, and watch the answers. Ctrl+K finds "
                   "everything, F1 explains."),
                {{tr("Start with an empty page"), [this] { m_desk->startEmpty(); }}});
}

void MainWindow::restore() {
    restoreGeometry(m_settings.value("window/geometry").toByteArray());
    restoreState(m_settings.value("window/state").toByteArray());
    m_problemsDock->settle();
    const QVariant habits = m_settings.value("window/diagram");
    if (habits.isValid()) m_diagram->setHabits(habits.toMap());
    setLook(static_cast<Theme>(m_settings.value("window/look", 0).toInt()));
}

void MainWindow::closeEvent(QCloseEvent* event) {
    if (!m_desk->mayLeave()) return event->ignore();
    m_settings.setValue("window/geometry", saveGeometry());
    m_settings.setValue("window/state", saveState());
    m_settings.setValue("window/diagram", m_diagram->habits());
    event->accept();
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::ActivationChange && isActiveWindow() && m_desk)
        m_desk->lookAgain();
}

namespace {

// The one project file among what is dragged, or empty.
QString projectFileIn(const QMimeData* data) {
    if (!data->hasUrls() || data->urls().size() != 1) return {};
    const QString path = data->urls().constFirst().toLocalFile();
    return QFileInfo(path).isFile() ? path : QString();
}

} // namespace

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    if (!projectFileIn(event->mimeData()).isEmpty()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    const QString path = projectFileIn(event->mimeData());
    if (path.isEmpty()) return;
    event->acceptProposedAction();
    m_desk->open(path);
}

} // namespace cutwater::editor
