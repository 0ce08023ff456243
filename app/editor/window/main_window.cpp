// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/main_window.h"

#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/diagram/panel.h"
#include "app/editor/outline/outline_commands.h"
#include "app/editor/window/analyses_place.h"
#include "app/editor/window/answers_dock.h"
#include "app/editor/window/diagram_page.h"

#include <QAction>
#include <QDockWidget>
#include <QFileInfo>
#include <QMenuBar>
#include <QStatusBar>
#include <QTabWidget>

namespace cutwater::editor {

MainWindow::MainWindow(sdk::Host& host, QWidget* parent) : QMainWindow(parent), m_host(host) {
    setObjectName("mainWindow");
    makeViews();
    makeActions();
    connect(&m_session, &Session::pathChanged, this, &MainWindow::showTitle);
    connect(&m_session, &Session::dirtyChanged, this, &MainWindow::setWindowModified);
    connect(&m_session, &Session::refused, this,
            [this](const QString& sentence) { statusBar()->showMessage(sentence, 10000); });
    connect(&m_session, &Session::openFailed, this,
            [this](const QString&, const project::Problems& problems) {
                statusBar()->showMessage(sentence(problems.front()));
            });
    connect(&m_session, &Session::replaced, this, [this] {
        const Snapshot snapshot = m_session.project();
        m_selection.selectSpots({});
        m_selection.clearMarks();
        m_selection.showTop(snapshot->tops.empty() ? project::Id() : snapshot->tops.front().id);
    });
    showTitle();
    resize(1200, 800);
}

void MainWindow::openFile(const QString& path) {
    m_session.open(path);
}

void MainWindow::makeViews() {
    m_pages = new QTabWidget(this);
    m_pages->setObjectName("pages");
    m_pages->setDocumentMode(true);
    setCentralWidget(m_pages);
    m_diagram = addDiagram(*m_pages, m_session, m_selection, m_host);
    connect(m_diagram, &DiagramPanel::said, this,
            [this](const QString& text) { statusBar()->showMessage(text, 10000); });
    connect(m_diagram, &DiagramPanel::exported, this,
            [this](bool, const QString& text) { statusBar()->showMessage(text, 10000); });

    auto* dock = new QDockWidget(tr("Outline"), this);
    dock->setObjectName("outlineDock");
    m_outline = new OutlineView(m_session, m_selection, dock);
    connect(m_outline, &OutlineView::sentence, this,
            [this](const QString& text) { statusBar()->showMessage(text, 10000); });
    dock->setWidget(m_outline);
    addDockWidget(Qt::LeftDockWidgetArea, dock);
    addAnswers(*this, m_session, m_selection);
    addAnalyses(*m_pages, m_session, m_selection, m_host);
}

void MainWindow::makeActions() {
    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = m_session.undoStack()->createUndoAction(this, tr("Undo"));
    undo->setShortcuts(QKeySequence::Undo);
    QAction* redo = m_session.undoStack()->createRedoAction(this, tr("Redo"));
    redo->setShortcuts(QKeySequence::Redo);
    edit->addActions({undo, redo});
    for (const CommandGroup& group : makeOutlineCommands(*m_outline)) {
        QMenu* menu = menuBar()->addMenu(group.title);
        for (QAction* action : group.actions)
            if (action)
                menu->addAction(action);
            else
                menu->addSeparator();
    }
    fillDiagramMenu(*menuBar()->addMenu(tr("&Diagram")), *m_diagram);
    addAnalysesMenu(*this, *findChild<AnalysesPane*>());
}

void MainWindow::showTitle() {
    const QString name =
        m_session.path().isEmpty() ? tr("New project") : QFileInfo(m_session.path()).fileName();
    setWindowTitle(tr("%1[*] - Cutwater").arg(name));
}

} // namespace cutwater::editor
