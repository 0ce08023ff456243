// SPDX-License-Identifier: GPL-3.0-or-later
// MainWindow: puts the views of one session side by side.
#pragma once

#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"
#include "plugins/sdk/host.h"

#include <QMainWindow>

class QTabWidget;

namespace cutwater::editor {

class DiagramPanel;
class OutlineView;

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    // `host` lives longer than the window.
    explicit MainWindow(sdk::Host& host, QWidget* parent = nullptr);

    Session& session() { return m_session; }
    Selection& selection() { return m_selection; }

    // Pages in the middle: the diagram first, analyses beside it.
    QTabWidget& pages() { return *m_pages; }

    void openFile(const QString& path);

private:
    void makeViews(); // each view is made and docked here
    void makeActions();
    void showTitle();

    sdk::Host& m_host;
    Session m_session;
    Selection m_selection;
    QTabWidget* m_pages = nullptr;
    OutlineView* m_outline = nullptr;
    DiagramPanel* m_diagram = nullptr;
};

} // namespace cutwater::editor
