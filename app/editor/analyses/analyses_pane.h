// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/editor/selection/selection.h"
#include "plugins/sdk/host.h"

#include <QWidget>

#include <map>
#include <memory>

class QAction;
class QLabel;
class QTabWidget;

namespace cutwater::editor {

class AnalysisPage;
struct SentResult;

// The analyses that were opened, a tab each. Every analysis that the host has found can be.
class AnalysesPane : public QWidget {
    Q_OBJECT

public:
    // `host` lives longer.
    AnalysesPane(sdk::Host& host, Selection* selection, QWidget* parent = nullptr);
    ~AnalysesPane() override;

    void setProject(std::shared_ptr<const project::Project> project);
    // One action for each analysis, in the order of their titles, for a menu and a palette; they
    // belong to the pane.
    const std::vector<QAction*>& actions() const { return m_actions; }
    // The page of an analysis, opened where it is not yet; null where there is none of that id.
    AnalysisPage* open(const std::string& id);
    void close(int tab);
    // The newest result of each open page, for a report.
    std::vector<std::shared_ptr<const sdk::Result>> results() const;
    QTabWidget* tabs() const { return m_tabs; }

    // Sentences about plug-ins that failed while the program ran, by file.
    const std::map<std::string, QString>& failures() const { return m_failures; }
    void showPlugins(); // the dialog of all plug-ins

signals:
    void sentToReport(const cutwater::editor::SentResult& result);
    void opened(); // a page was asked for: whoever holds the pane shows it

protected:
    void showEvent(QShowEvent* event) override;

private:
    void showEmpty();
    void refresh();

    sdk::Host& m_host;
    Selection* m_selection;
    std::shared_ptr<const project::Project> m_project;
    std::vector<QAction*> m_actions;
    QTabWidget* m_tabs;
    QLabel* m_empty;
    std::map<std::string, QString> m_failures;
};

} // namespace cutwater::editor
