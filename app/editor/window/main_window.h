// SPDX-License-Identifier: GPL-3.0-or-later
// MainWindow: puts the views of one session side by side.
#pragma once

#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"
#include "plugins/sdk/host.h"

#include <QMainWindow>

namespace cutwater::editor {

class MainWindow : public QMainWindow {
    Q_OBJECT
public:
    // `host` lives longer than the window.
    explicit MainWindow(sdk::Host& host, QWidget* parent = nullptr);

    Session& session() { return m_session; }
    Selection& selection() { return m_selection; }

    void openFile(const QString& path);

private:
    void makeViews(); // each view is made and docked here
    void makeActions();
    void showTitle();

    sdk::Host& m_host;
    Session m_session;
    Selection m_selection;
};

} // namespace cutwater::editor
