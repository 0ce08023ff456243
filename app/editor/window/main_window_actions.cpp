// SPDX-License-Identifier: GPL-3.0-or-later
// MainWindow: menus, tool bar, status bar. Every action is a command: the finder knows it, and its
// keys can be changed.
#include "app/editor/analyses/analyses_pane.h"
#include "app/editor/details/facts_dialogs.h"
#include "app/editor/diagram/panel.h"
#include "app/editor/outline/outline_commands.h"
#include "app/editor/report/report_page.h"
#include "app/editor/window/analyses_place.h"
#include "app/editor/window/clear_style.h"
#include "app/editor/window/diagram_page.h"
#include "app/editor/window/exchange_place.h"
#include "app/editor/window/finder.h"
#include "app/editor/window/help_window.h"
#include "app/editor/window/language.h"
#include "app/editor/window/main_window.h"
#include "app/editor/window/plant_place.h"
#include "app/editor/window/problems_dock.h"
#include "app/editor/window/shortcuts_dialog.h"
#include "app/editor/window/worksheet_place.h"
#include "app/editor/worksheet/worksheet_page.h"

#include <QActionGroup>
#include <QApplication>
#include <QDockWidget>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QMenuBar>
#include <QMessageBox>
#include <QProgressBar>
#include <QPushButton>
#include <QStatusBar>
#include <QStyle>
#include <QStyleFactory>
#include <QTabWidget>
#include <QTimer>
#include <QToolBar>
#include <QToolButton>

namespace cutwater::editor {

namespace {

QIcon icon(const char* name) {
    return QIcon(QStringLiteral(":/icons/%1.svg").arg(QLatin1String(name)));
}

} // namespace

QAction* MainWindow::make(QMenu* menu, const char* name, const QString& text,
                          const QKeySequence& keys, const std::function<void()>& act,
                          const char* iconName) {
    auto* action = new QAction(text, this);
    action->setObjectName(QLatin1String(name));
    action->setShortcut(keys);
    if (iconName) action->setIcon(icon(iconName));
    connect(action, &QAction::triggered, this, act);
    menu->addAction(action);
    addAction(action);
    m_commands.add(action, menu->title().remove('&'));
    return action;
}

void MainWindow::makeActions() {
    makeFileMenu();
    makeEditMenus();
    QMenu* diagram = menuBar()->addMenu(tr("&Diagram"));
    fillDiagramMenu(*diagram, *m_diagram);
    for (QAction* action : m_diagram->allActions())
        m_commands.add(action, tr("Diagram"));
    QMenu* worksheet = addWorksheetMenu(*this, *m_pages, *findChild<WorksheetPage*>());
    for (QAction* action : worksheet->actions())
        if (!action->objectName().isEmpty()) m_commands.add(action, tr("Worksheet"));
    QMenu* plant = menuBar()->addMenu(tr("P&lant"));
    fillPlantMenu(*plant, *m_plant);
    for (QAction* action : plant->actions())
        if (!action->objectName().isEmpty()) m_commands.add(action, tr("Plant"));
    QMenu* analyses = addAnalysesMenu(*this, *findChild<AnalysesPane*>());
    for (QAction* action : analyses->actions())
        if (!action->objectName().isEmpty()) m_commands.add(action, tr("Analyses"));
    makeViewMenu();
    makeHelpMenu();
    makeToolBar();
    m_finder = new Finder(m_commands, m_session, m_selection, this);
}

void MainWindow::makeFileMenu() {
    QMenu* file = menuBar()->addMenu(tr("&File"));
    make(
        file, "file.new", tr("&New"), QKeySequence::New, [this] { m_desk->startEmpty(); }, "new");
    QMenu* templates = file->addMenu(tr("New from a &template"));
    int number = 0;
    for (const auto& [text, path] : FileDesk::templates())
        make(templates, QByteArray("file.template-" + QByteArray::number(++number)).constData(),
             text, {}, [this, path = path] { m_desk->startFrom(path); });
    make(
        file, "file.open", tr("&Open ..."), QKeySequence::Open, [this] { m_desk->ask(); }, "open");
    QMenu* recent = file->addMenu(tr("Opened &lately"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] {
        recent->clear();
        for (const QString& path : m_desk->recent())
            recent->addAction(path, this, [this, path] { m_desk->open(path); });
        if (recent->isEmpty()) recent->addAction(tr("None yet"))->setEnabled(false);
    });
    file->addSeparator();
    make(
        file, "file.save", tr("&Save"), QKeySequence::Save, [this] { m_desk->save(); }, "save");
    make(file, "file.save-as", tr("Save &as ..."), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_S),
         [this] { m_desk->saveAs(); });
    file->addSeparator();
    addExchange(*this, *file, m_session, *m_desk, *m_bar, m_commands, m_host);
    make(file, "file.report", tr("&Report"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_R),
         [this] { m_pages->setCurrentWidget(m_report); });
    make(file, "file.facts", tr("About the &project ..."), QKeySequence(Qt::ALT | Qt::Key_Return),
         [this] { ProjectFactsDialog(m_session, this).exec(); });
    file->addSeparator();
    make(file, "file.demo", tr("Open the &demo"), {}, [this] { m_desk->openDemo(); });
    file->addSeparator();
    make(file, "file.quit", tr("&Quit"), QKeySequence(Qt::CTRL | Qt::Key_Q), [this] { close(); });
}

void MainWindow::makeEditMenus() {
    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = m_session.undoStack()->createUndoAction(this, tr("Undo"));
    undo->setObjectName("edit.undo");
    undo->setShortcut(QKeySequence::Undo);
    undo->setIcon(icon("undo"));
    QAction* redo = m_session.undoStack()->createRedoAction(this, tr("Redo"));
    redo->setObjectName("edit.redo");
    redo->setShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_Z));
    redo->setIcon(icon("redo"));
    edit->addActions({undo, redo});
    edit->addSeparator();
    m_commands.add(undo, tr("Edit"));
    m_commands.add(redo, tr("Edit"));
    bool first = true;
    for (const CommandGroup& group : makeOutlineCommands(*m_outline)) {
        QMenu* menu = first ? edit : menuBar()->addMenu(group.title);
        first = false;
        for (QAction* action : group.actions) {
            if (!action) {
                menu->addSeparator();
                continue;
            }
            menu->addAction(action);
            m_commands.add(action, group.title);
        }
    }
    edit->addSeparator();
    make(edit, "edit.top-facts", tr("About the &top event ..."), QKeySequence(Qt::CTRL | Qt::Key_T),
         [this] { editTopFacts(); });
    make(
        edit, "edit.find", tr("&Find commands and items ..."), QKeySequence(Qt::CTRL | Qt::Key_K),
        [this] { m_finder->begin(); }, "find");
    make(edit, "edit.keys", tr("&Keys ..."), {}, [this] {
        ShortcutsDialog dialog(m_commands, this);
        dialog.exec();
    });
}

void MainWindow::editTopFacts() {
    const Snapshot project = m_session.project();
    if (project->tops.empty()) {
        statusBar()->showMessage(tr("There is no top event yet."), 10000);
        return;
    }
    project::Id top = project->tops.front().id;
    for (const project::TopEvent& one : project->tops)
        if (one.id == m_selection.top()) top = one.id;
    TopFactsDialog(m_session, top, this).exec();
}

void MainWindow::makeViewMenu() {
    QMenu* view = menuBar()->addMenu(tr("&View"));
    make(view, "view.next", tr("&Next view"), QKeySequence(Qt::Key_F6), [this] { nextView(); });
    for (QDockWidget* dock : findChildren<QDockWidget*>()) {
        QAction* action = dock->toggleViewAction();
        action->setObjectName(QStringLiteral("view.") + dock->objectName());
        view->addAction(action);
        m_commands.add(action, tr("View"));
    }
    view->addSeparator();
    auto* looks = new QActionGroup(this);
    const std::pair<Theme, QString> all[] = {{Theme::desktop, tr("As the &desktop")},
                                             {Theme::light, tr("&Light")},
                                             {Theme::dark, tr("D&ark")}};
    const int now = m_settings.value("window/look", 0).toInt();
    for (const auto& [look, text] : all) {
        QAction* action = make(
            view, QByteArray("view.look-" + QByteArray::number(static_cast<int>(look))).constData(),
            text, {}, [this, look = look] { setLook(look); });
        action->setCheckable(true);
        action->setChecked(static_cast<int>(look) == now);
        looks->addAction(action);
    }
    view->addSeparator();
    makeLanguageMenu(view);
}

void MainWindow::makeLanguageMenu(QMenu* view) {
    QMenu* menu = view->addMenu(tr("Lan&guage"));
    auto* all = new QActionGroup(this);
    QList<QPair<QString, QString>> offers{{QString(), tr("As the &system")}};
    offers += languages();
    for (const auto& [code, name] : offers) {
        QAction* action =
            make(menu, QByteArray("view.language-" + code.toLatin1()).constData(), name, {},
                 [this, code = code] {
                     chooseLanguage(m_settings, code);
                     m_bar->tell(tr("The language changes when the editor is started again."));
                 });
        action->setCheckable(true);
        action->setChecked(code == chosenLanguage(m_settings));
        all->addAction(action);
    }
}

void MainWindow::makeHelpMenu() {
    QMenu* help = menuBar()->addMenu(tr("&Help"));
    const auto show = [this](const QString& page, const QString& heading) {
        if (!m_help) m_help = new HelpWindow(this);
        m_help->open(page, heading);
    };
    make(
        help, "help.here", tr("Help on &this"), QKeySequence::HelpContents,
        [show] {
            const auto [page, heading] = helpFor(QApplication::focusWidget());
            show(page, heading);
        },
        "help");
    make(help, "help.guide", tr("&Guide"), {}, [show] { show("editor", {}); });
    make(help, "help.demo", tr("About the &demo plant"), {}, [show] { show("demo", {}); });
    make(help, "help.cautions", tr("&Cautions"), {},
         [show] { show("editor", QStringLiteral("Cautions")); });
    make(help, "help.about", tr("&About"), {}, [this] {
        QMessageBox::about(
            this, tr("About Cutwater"),
            tr("<b>Cutwater %1</b><p>Fault trees and FMEA for people who run "
               "machinery. It replaces no maker's manual, class or flag rule, permit, "
               "or competent person.<p>GPL-3.0-or-later")
                .arg(QApplication::applicationVersion()));
    });
}

void MainWindow::makeToolBar() {
    QToolBar* bar = addToolBar(tr("Tools"));
    bar->setObjectName("tools");
    bar->setToolButtonStyle(Qt::ToolButtonTextUnderIcon);
    bar->setMovable(false);
    const auto put = [&](const char* name, const char* iconName, const QString& text) {
        const Command* command = m_commands.find(QLatin1String(name));
        if (!command) return;
        if (iconName) command->action->setIcon(icon(iconName));
        command->action->setIconText(text);
        bar->addAction(command->action);
    };
    put("file.open", nullptr, tr("Open"));
    put("file.save", nullptr, tr("Save"));
    bar->addSeparator();
    put("edit.undo", nullptr, tr("Undo"));
    put("edit.redo", nullptr, tr("Redo"));
    bar->addSeparator();
    put("outline.add-beside", "add-beside", tr("Beside"));
    put("outline.add-below", "add-below", tr("Below"));
    put("outline.insert-gate", "gate-above", tr("Gate above"));
    put("outline.delete", "delete", tr("Delete"));
    bar->addSeparator();
    put("edit.find", nullptr, tr("Find"));
    put("help.here", nullptr, tr("Help"));
}

void MainWindow::makeStatusBar() {
    connect(&m_session, &Session::refused, this,
            [this](const QString& text) { statusBar()->showMessage(text, 15000); });
    connect(&m_session, &Session::saved, this, [this](const QString& path) {
        statusBar()->showMessage(tr("%1 is saved.").arg(QFileInfo(path).fileName()), 5000);
    });
    auto* busy = new QWidget(this);
    auto* layout = new QHBoxLayout(busy);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* progress = new QProgressBar(busy);
    progress->setRange(0, 0);
    progress->setMaximumWidth(120);
    auto* words = new QLabel(busy);
    auto* stop = new QPushButton(tr("Stop"), busy);
    layout->addWidget(words);
    layout->addWidget(progress);
    layout->addWidget(stop);
    busy->hide();
    statusBar()->addPermanentWidget(busy);
    statusBar()->addPermanentWidget(m_problemsDock->counter());
    auto* patience = new QTimer(this); // what is done at once shows no bar
    patience->setSingleShot(true);
    patience->setInterval(400);
    connect(patience, &QTimer::timeout, busy, &QWidget::show);
    connect(stop, &QPushButton::clicked, this, [this] { m_session.stopReading(); });
    const auto follow = [this, patience, busy, progress, words, stop] {
        const bool reading = m_session.isReading();
        if (!reading && !m_session.isSaving()) {
            patience->stop();
            busy->hide();
            return;
        }
        words->setText(reading ? tr("Reading ...") : tr("Writing ..."));
        progress->setAccessibleName(words->text());
        stop->setVisible(reading); // half a file helps nobody
        if (!busy->isVisible()) patience->start();
    };
    connect(&m_session, &Session::readingChanged, this, follow);
    connect(&m_session, &Session::savingChanged, this, follow);
}

void MainWindow::nextView() {
    QList<QWidget*> views{findChild<QWidget*>("outline")};
    if (QWidget* page = m_pages->currentWidget()) views << page;
    for (QDockWidget* dock : findChildren<QDockWidget*>())
        if (dock->isVisible() && dock->objectName() != "outlineDock") views << dock->widget();
    qsizetype at = -1;
    for (qsizetype i = 0; i < views.size(); ++i)
        if (views[i]->isAncestorOf(QApplication::focusWidget()) ||
            views[i] == QApplication::focusWidget())
            at = i;
    for (qsizetype step = 1; step <= views.size(); ++step) {
        QWidget* view = views[(at + step) % views.size()];
        // The view itself, or the first thing in it that takes the keyboard.
        QWidget* target = view->focusPolicy() & Qt::TabFocus ? view : nullptr;
        for (QWidget* child : view->findChildren<QWidget*>())
            if (!target && child->isVisible() && child->isEnabled() &&
                (child->focusPolicy() & Qt::TabFocus))
                target = child;
        if (!target || !view->isVisible()) continue;
        target->setFocus(Qt::ShortcutFocusReason);
        return;
    }
}

void MainWindow::setLook(Theme look) {
    m_settings.setValue("window/look", static_cast<int>(look));
    const bool fusion = m_desktopStyle.compare("fusion", Qt::CaseInsensitive) == 0;
    if (look == Theme::desktop && QApplication::palette() == m_desktopPalette && !fusion) return;
    // The palettes are made for a style that follows them.
    QApplication::setStyle(look == Theme::desktop && !fusion ? QStyleFactory::create(m_desktopStyle)
                                                             : new ClearStyle);
    QApplication::setPalette(paletteOf(look, m_desktopPalette));
}

} // namespace cutwater::editor
