// SPDX-License-Identifier: GPL-3.0-or-later
// MainWindow: puts the views of one session side by side.
#pragma once

#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"
#include "app/editor/window/commands.h"
#include "app/editor/window/file_desk.h"
#include "app/editor/window/theme.h"
#include "plugins/sdk/host.h"

#include <QMainWindow>
#include <QSettings>

class QStackedWidget;
class QTabWidget;

namespace cutwater::editor {

class DiagramPanel;
class Finder;
class HelpWindow;
class OutlineView;
class ProblemsDock;
class PlantPage;
class ProblemsList;
class ReportPage;

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    // `host` lives longer than the window. `recoveryFolder` empty: the user's own.
    explicit MainWindow(sdk::Host& host, QWidget* parent = nullptr,
                        const QString& recoveryFolder = {});
    ~MainWindow() override;

    Session& session() { return m_session; }
    Selection& selection() { return m_selection; }
    FileDesk& desk() { return *m_desk; }
    Commands& commands() { return m_commands; }
    // Pages in the middle: the diagram first, analyses beside it.
    QTabWidget& pages() { return *m_pages; }

    void openFile(const QString& path) { m_desk->open(path); }
    // Without a file: what a crash left, or the demo where this is the first time.
    void begin();

protected:
    void closeEvent(QCloseEvent* event) override;
    void changeEvent(QEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

private:
    void makeViews(); // each view is made and docked here
    void makeActions();
    void makeFileMenu();
    void makeEditMenus();
    void makeViewMenu();
    void makeLanguageMenu(QMenu* view);
    void makeHelpMenu();
    void makeToolBar();
    void makeStatusBar();
    QAction* make(QMenu* menu, const char* name, const QString& text, const QKeySequence& keys,
                  const std::function<void()>& act, const char* icon = nullptr);
    void showTitle();
    void showPage();
    void setLook(Theme look);
    void nextView();
    void editTopFacts();
    void restore();

    sdk::Host& m_host;
    QSettings m_settings;
    Session m_session;
    Selection m_selection;
    Commands m_commands{m_settings, this};
    QPalette m_desktopPalette;
    QString m_desktopStyle;
    MessageBar* m_bar = nullptr;
    FileDesk* m_desk = nullptr;
    QStackedWidget* m_middle = nullptr; // how to begin, or the pages
    QTabWidget* m_pages = nullptr;
    OutlineView* m_outline = nullptr;
    DiagramPanel* m_diagram = nullptr;
    ReportPage* m_report = nullptr;
    PlantPage* m_plant = nullptr;
    ProblemsList* m_problems = nullptr;
    ProblemsDock* m_problemsDock = nullptr;
    Finder* m_finder = nullptr;
    HelpWindow* m_help = nullptr;
};

} // namespace cutwater::editor
