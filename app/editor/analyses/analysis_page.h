// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/editor/analyses/analysis_runner.h"
#include "app/editor/selection/selection.h"
#include "models/project/index.h"

#include <QTimer>
#include <QWidget>

#include <map>

class QLabel;
class QListView;
class QProgressBar;
class QPushButton;
class QSplitter;

namespace cutwater::editor {

class AnswerModel;
class ParameterForm;
class ResultView;

// A result on its way to the report.
struct SentResult {
    std::shared_ptr<const sdk::Result> result;
    sdk::PluginFacts facts;
    std::vector<std::pair<std::string, std::string>> parameters; // name and value
    std::shared_ptr<const project::Project> of;
};

// One analysis: its form, its run, its result, and a result that was kept to compare with.
class AnalysisPage : public QWidget {
    Q_OBJECT

public:
    // `host` lives longer. Where the plug-in cannot be used the page says why.
    AnalysisPage(sdk::Host& host, const sdk::PluginFacts& facts, Selection* selection,
                 QWidget* parent = nullptr);
    ~AnalysisPage() override;

    const sdk::PluginFacts& facts() const { return m_facts; }
    // A new snapshot. A result that is shown stays, marked as one of before.
    void setProject(std::shared_ptr<const project::Project> project);
    const std::shared_ptr<const project::Project>& project() const { return m_project; }
    void run();
    void cancel();
    // Keeps the newest result in sight, beside the ones to come.
    void keep();

    AnalysisRunner& runner() { return m_runner; }
    ParameterForm* form() const { return m_form; }
    ResultView* newest() const { return m_newest; }
    ResultView* kept() const { return m_kept; }

signals:
    // The plug-in cannot be used, or has thrown: for the list of plug-ins.
    void pluginFailed(const QString& sentence);
    void sentToReport(const cutwater::editor::SentResult& result);

private:
    QWidget* makeLeft();
    QWidget* makeRight();
    bool load();
    void showRunning(bool running);
    void take(const AnalysisRunner::Answer& answer);
    void showProblems(const project::Problems& problems);
    void showState(const QString& words);
    void connectView(ResultView* view);
    void choose(const std::vector<std::string>& ids, const QString& reason);
    void updateKeep();

    sdk::Host& m_host;
    sdk::PluginFacts m_facts;
    sdk::Analysis* m_analysis = nullptr;
    Selection* m_selection;
    std::shared_ptr<const project::Project> m_project, m_computed;
    std::vector<std::pair<std::string, std::string>> m_parameters; // of the run
    std::map<const sdk::Result*, SentResult> m_sendable;           // those in sight
    std::unique_ptr<project::Index> m_index; // of m_project, made when it is asked
    QString m_caption;                       // of the run
    ParameterForm* m_form;
    QPushButton* m_runButton;
    QPushButton* m_cancelButton;
    QPushButton* m_keepButton;
    QProgressBar* m_progress;
    QLabel* m_doing;
    QLabel* m_state;
    QListView* m_problems; // why there is no result, each with a jump
    AnswerModel* m_problemLines;
    QSplitter* m_results;
    QLabel* m_empty;
    ResultView* m_newest = nullptr;
    ResultView* m_kept = nullptr;
    AnalysisRunner m_runner;
};

} // namespace cutwater::editor
