// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/analysis_page.h"

#include "app/editor/analyses/parameter_form.h"
#include "app/editor/analyses/result_view.h"
#include "app/editor/answers/answer_delegate.h"
#include "app/editor/answers/answer_model.h"
#include "app/editor/answers/own_words.h"
#include "app/editor/answers/tree_part.h"
#include "app/paper/report_content.h"
#include "plugins/sdk/guard.h"

#include <QComboBox>
#include <QLabel>
#include <QListView>
#include <QProgressBar>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace cutwater::editor {
namespace {

constexpr std::size_t kMostProblems = 50;

QString text(const std::string& utf8) {
    return QString::fromStdString(utf8);
}

QLabel* label(QWidget* parent, const char* name, const QString& words = {}) {
    auto* const made = new QLabel(words, parent);
    made->setObjectName(QLatin1String(name));
    made->setWordWrap(true);
    made->setTextFormat(Qt::PlainText);
    return made;
}

} // namespace

AnalysisPage::AnalysisPage(sdk::Host& host, const sdk::PluginFacts& facts, Selection* selection,
                           QWidget* parent)
    : QWidget(parent), m_host(host), m_facts(facts), m_selection(selection),
      m_form(new ParameterForm), m_runButton(new QPushButton(tr("&Run"))),
      m_cancelButton(new QPushButton(tr("Cancel"))),
      m_keepButton(new QPushButton(tr("&Keep this result"))), m_progress(new QProgressBar),
      m_doing(label(nullptr, "doing")), m_state(label(nullptr, "state")), m_problems(new QListView),
      m_problemLines(new AnswerModel(this)), m_results(new QSplitter(Qt::Horizontal)),
      m_empty(label(nullptr, "empty")) {
    auto* const splitter = new QSplitter(Qt::Horizontal, this);
    splitter->addWidget(makeLeft());
    splitter->addWidget(makeRight());
    splitter->setStretchFactor(1, 1);
    splitter->setCollapsible(0, false);
    splitter->setSizes({300, 700});
    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(6, 6, 6, 6);
    layout->addWidget(splitter);

    connect(m_runButton, &QPushButton::clicked, this, &AnalysisPage::run);
    connect(m_form, &ParameterForm::submitted, this, &AnalysisPage::run);
    connect(m_cancelButton, &QPushButton::clicked, this, &AnalysisPage::cancel);
    connect(m_keepButton, &QPushButton::clicked, this, &AnalysisPage::keep);
    connect(&m_runner, &AnalysisRunner::finished, this, &AnalysisPage::take);
    connect(&m_runner, &AnalysisRunner::progressed, this,
            [this](double share, const QString& what) {
                m_progress->setRange(0, 1000);
                m_progress->setValue(static_cast<int>(1000 * std::clamp(share, 0.0, 1.0)));
                m_doing->setText(what);
            });
    showRunning(false);
    if (load()) showState(tr("\u2013 Nothing computed yet"));
}

AnalysisPage::~AnalysisPage() = default;

QWidget* AnalysisPage::makeLeft() {
    auto* const inside = new QWidget;
    auto* const title = label(inside, "pageTitle", inOwnWords(m_facts.title));
    QFont bold = title->font();
    bold.setBold(true);
    bold.setPointSizeF(bold.pointSizeF() * 1.2);
    title->setFont(bold);
    m_runButton->setObjectName("run");
    m_runButton->setDefault(true);
    m_runButton->setToolTip(tr("Computes the answer with these values"));
    m_cancelButton->setObjectName("cancel");
    m_keepButton->setObjectName("keep");
    m_keepButton->setToolTip(
        tr("Keeps this result in sight, beside the next one, to compare the two"));
    m_progress->setObjectName("progress");
    m_progress->setTextVisible(false);
    m_progress->setMaximumHeight(8);
    m_progress->setAccessibleName(tr("Progress of the analysis"));
    auto* const buttons = new QHBoxLayout;
    buttons->addWidget(m_runButton);
    buttons->addWidget(m_cancelButton);
    buttons->addStretch(1);
    auto* const layout = new QVBoxLayout(inside);
    layout->setContentsMargins(0, 0, 6, 0);
    layout->addWidget(title);
    layout->addWidget(label(inside, "summary", inOwnWords(m_facts.summary)));
    layout->addSpacing(6);
    layout->addWidget(m_form);
    layout->addSpacing(6);
    layout->addLayout(buttons);
    layout->addWidget(m_progress);
    layout->addWidget(m_doing);
    layout->addWidget(m_keepButton);
    layout->addStretch(1);
    auto* const scroll = new QScrollArea;
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    scroll->setWidgetResizable(true);
    scroll->setWidget(inside);
    scroll->setMinimumWidth(270);
    inside->setMinimumWidth(0);
    scroll->setFocusPolicy(Qt::NoFocus);
    return scroll;
}

QWidget* AnalysisPage::makeRight() {
    auto* const right = new QWidget;
    m_state->setFrameShape(QFrame::StyledPanel);
    m_state->setMargin(3);
    m_state->setAccessibleName(tr("State of the result"));
    m_problems->setObjectName("problems");
    m_problems->setAccessibleName(tr("Why there is no result"));
    m_problems->setModel(m_problemLines);
    m_problems->setItemDelegate(new AnswerDelegate(m_problems));
    m_problems->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    m_problems->setVisible(false);
    const auto jump = [this](const QModelIndex& index) {
        if (!index.isValid()) return;
        const AnswerLine line = m_problemLines->line(index.row());
        if (line.nodes.empty()) return;
        m_selection->mark({line.nodes.begin(), line.nodes.end()}, line.reason);
        m_selection->select(line.nodes);
    };
    connect(m_problems, &QListView::clicked, this, jump);
    connect(m_problems, &QListView::activated, this, jump);
    m_empty->setText(tr("Set the values on the left and press Run: the answer appears here."));
    m_empty->setAlignment(Qt::AlignCenter);
    m_results->addWidget(m_empty);
    auto* const layout = new QVBoxLayout(right);
    layout->setContentsMargins(6, 0, 0, 0);
    layout->addWidget(m_state);
    layout->addWidget(m_problems, 1);
    layout->addWidget(m_results, 3);
    return right;
}

bool AnalysisPage::load() {
    m_analysis = m_host.analysis(m_facts.id);
    project::Problems problems;
    if (m_analysis) {
        auto parameters = sdk::parametersOf(*m_analysis, m_facts, m_project.get());
        if (parameters) {
            m_form->show(std::move(*parameters), m_project);
            m_runButton->setEnabled(true);
            return true;
        }
        problems = parameters.problems();
    } else {
        std::string sentence = "the plug-in cannot be loaded";
        for (const sdk::Rejected& rejected : m_host.rejected())
            if (rejected.file == m_facts.file) sentence = rejected.sentence;
        problems.push_back({project::Severity::error, sentence, "", "", 0});
    }
    m_runButton->setEnabled(false);
    showProblems(problems);
    showState(tr("\u2716 This plug-in cannot be used"));
    emit pluginFailed(text(problems.front().what));
    return false;
}

void AnalysisPage::setProject(std::shared_ptr<const project::Project> project) {
    const bool first = !m_project;
    m_project = std::move(project);
    m_index.reset();
    if (!load() || first) return;
    if (m_newest && m_computed != m_project && !m_runner.isRunning())
        showState(tr("\u27F3 Stale: the project has changed since. Run it again."));
}

void AnalysisPage::run() {
    if (!m_analysis || !m_project || m_runner.isRunning()) return;
    const auto values = m_form->read();
    if (!values) {
        showState(tr("\u2716 Not run: see the fields on the left"));
        return;
    }
    m_caption = m_form->summary();
    m_computed = m_project;
    m_parameters = paper::shownValues(m_form->parameters(), *values);
    showProblems({});
    showRunning(true);
    showState(m_newest ? tr("\u27F3 Stale: being computed anew") : tr("\u27F3 Being computed"));
    m_runner.run(*m_analysis, m_facts, m_project, *values);
}

void AnalysisPage::cancel() {
    m_runner.cancel();
}

void AnalysisPage::showRunning(bool running) {
    m_runButton->setEnabled(!running && m_analysis);
    m_cancelButton->setEnabled(running);
    m_progress->setRange(0, running ? 0 : 1);
    m_progress->setVisible(running);
    m_doing->clear();
    m_doing->setVisible(running);
    updateKeep();
}

void AnalysisPage::updateKeep() {
    m_keepButton->setEnabled(m_newest && !m_runner.isRunning());
}

void AnalysisPage::take(const AnalysisRunner::Answer& answer) {
    if (answer->ending == sdk::Ending::finished) {
        const std::shared_ptr<const sdk::Result> result(answer, &*answer->content);
        std::erase_if(m_sendable, [this](const auto& each) {
            return !m_kept || m_kept->result().get() != each.first;
        });
        m_sendable[result.get()] = {result, m_facts, m_parameters, m_computed};
        auto* const view = new ResultView(result, m_caption);
        connectView(view);
        if (m_newest) {
            // The same table or plot as before, where there is one.
            const int same = view->chooser()->findText(m_newest->chooser()->currentText());
            if (same > 0) view->chooser()->setCurrentIndex(same);
            m_results->replaceWidget(m_results->indexOf(m_newest), view);
            m_newest->deleteLater();
        } else {
            m_results->insertWidget(0, view);
        }
        m_newest = view;
        view->show();
        m_empty->hide();
        showState(m_computed == m_project
                      ? tr("\u2714 Current")
                      : tr("\u27F3 Stale: the project has changed since. Run it again."));
        showProblems({});
    } else {
        showProblems(answer->problems);
        for (const project::Problem& problem : answer->problems)
            if (problem.where == "plug-in " + m_facts.id) emit pluginFailed(text(problem.what));
        const QString before =
            m_newest ? tr(" What is shown below is an older result.") : QString();
        switch (answer->ending) {
        case sdk::Ending::cancelled: showState(tr("\u26A0 Cancelled.") + before); break;
        case sdk::Ending::overLimit:
            showState(tr("\u26A0 Stopped: it does not fit into the memory.") + before);
            break;
        default: showState(tr("\u2716 No answer.") + before);
        }
    }
    showRunning(false);
}

void AnalysisPage::showProblems(const project::Problems& problems) {
    std::vector<AnswerLine> lines;
    if (!problems.empty()) {
        const project::Project none;
        const project::Project& project = m_computed ? *m_computed : none;
        const project::Index index(project);
        for (const project::Problem& problem : problems) {
            if (lines.size() == kMostProblems) {
                lines.push_back({LineKind::remark,
                                 tr("And %1 more.").arg(problems.size() - kMostProblems),
                                 {},
                                 {}});
                break;
            }
            std::string sentence = problem.what;
            if (!problem.remedy.empty()) sentence += "; " + problem.remedy;
            if (!sentence.empty() && sentence.back() != '.') sentence += '.';
            lines.push_back({LineKind::error, text(sentence), text(problem.what),
                             nodesOf(problem, project, index)});
        }
    }
    m_problems->setVisible(!lines.empty());
    m_problemLines->show(std::move(lines));
}

void AnalysisPage::showState(const QString& words) {
    m_state->setText(words);
}

void AnalysisPage::connectView(ResultView* view) {
    connect(view, &ResultView::nodesChosen, this, &AnalysisPage::choose);
    connect(view, &ResultView::reportWished, this, [this, view] {
        const auto found = m_sendable.find(view->result().get());
        if (found != m_sendable.end()) emit sentToReport(found->second);
    });
}

void AnalysisPage::choose(const std::vector<std::string>& ids, const QString& reason) {
    if (!m_project) return;
    if (!m_index) m_index = std::make_unique<project::Index>(*m_project);
    const project::Index& index = *m_index;
    std::set<project::Id> nodes;
    for (const std::string& id : ids) {
        if (index.gate(id) || index.event(id)) nodes.insert(id);
        // A row that is about a whole tree shows that tree.
        else if (const project::TopEvent* top = index.top(id)) {
            m_selection->showTop(top->id);
            nodes.insert(top->node.id);
        }
    }
    if (!nodes.empty()) m_selection->mark(std::move(nodes), reason);
}

void AnalysisPage::keep() {
    if (!m_newest) return;
    auto* const view = new ResultView(m_newest->result(), tr("Kept: %1").arg(m_newest->caption()));
    connectView(view);
    view->chooser()->setCurrentIndex(m_newest->chooser()->currentIndex());
    auto* const close = new QPushButton(tr("Close the kept result"), view);
    close->setObjectName("closeKept");
    static_cast<QVBoxLayout*>(view->layout())->addWidget(close);
    connect(close, &QPushButton::clicked, this, [this] {
        m_kept->deleteLater();
        m_kept = nullptr;
    });
    if (m_kept) {
        m_results->replaceWidget(m_results->indexOf(m_kept), view);
        m_kept->deleteLater();
    } else {
        m_results->addWidget(view);
    }
    m_kept = view;
    view->show();
    const int half = m_results->width() / 2;
    m_results->setSizes({half, 0, half}); // newest, the empty words, kept
}

} // namespace cutwater::editor
