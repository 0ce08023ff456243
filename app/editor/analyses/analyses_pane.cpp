// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/analyses_pane.h"

#include "app/editor/answers/own_words.h"

#include "app/editor/analyses/analysis_page.h"
#include "app/editor/analyses/plugins_dialog.h"
#include "app/editor/analyses/result_view.h"

#include <QAction>
#include <QLabel>
#include <QShortcut>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace cutwater::editor {

AnalysesPane::AnalysesPane(sdk::Host& host, Selection* selection, QWidget* parent)
    : QWidget(parent), m_host(host), m_selection(selection), m_tabs(new QTabWidget(this)),
      m_empty(new QLabel(this)) {
    m_tabs->setTabsClosable(true);
    m_tabs->setMovable(true);
    m_tabs->setDocumentMode(true);
    m_tabs->setAccessibleName(tr("Open analyses"));
    m_tabs->setUsesScrollButtons(true);
    connect(m_tabs, &QTabWidget::tabCloseRequested, this, &AnalysesPane::close);
    connect(m_tabs, &QTabWidget::currentChanged, this, &AnalysesPane::refresh);
    auto* const closing = new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_F4), this);
    closing->setContext(Qt::WidgetWithChildrenShortcut);
    connect(closing, &QShortcut::activated, this, [this] { close(m_tabs->currentIndex()); });
    m_empty->setAlignment(Qt::AlignCenter);
    m_empty->setWordWrap(true);
    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_empty, 1);
    layout->addWidget(m_tabs, 1);

    std::vector<const sdk::PluginFacts*> found;
    for (const sdk::PluginFacts& facts : host.plugins())
        if (facts.kind == sdk::PluginKind::analysis) found.push_back(&facts);
    std::stable_sort(found.begin(), found.end(), [](const auto* a, const auto* b) {
        return inOwnWords(a->title).localeAwareCompare(inOwnWords(b->title)) < 0;
    });
    for (const sdk::PluginFacts* facts : found) {
        auto* const action = new QAction(inOwnWords(facts->title), this);
        action->setObjectName("analysis-" + QString::fromStdString(facts->id));
        const QString summary = inOwnWords(facts->summary);
        action->setStatusTip(summary);
        action->setToolTip(summary);
        connect(action, &QAction::triggered, this, [this, id = facts->id] { open(id); });
        m_actions.push_back(action);
    }
    showEmpty();
}

AnalysesPane::~AnalysesPane() = default;

void AnalysesPane::setProject(std::shared_ptr<const project::Project> project) {
    m_project = std::move(project);
    refresh();
}

// Twelve open pages would make every edit slow: those out of sight follow when they are looked at.
void AnalysesPane::refresh() {
    auto* const page = static_cast<AnalysisPage*>(m_tabs->currentWidget());
    if (page && isVisible() && page->project() != m_project) page->setProject(m_project);
}

void AnalysesPane::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

std::vector<std::shared_ptr<const sdk::Result>> AnalysesPane::results() const {
    std::vector<std::shared_ptr<const sdk::Result>> results;
    for (int tab = 0; tab < m_tabs->count(); ++tab)
        if (const auto* const page = static_cast<AnalysisPage*>(m_tabs->widget(tab));
            page->newest())
            results.push_back(page->newest()->result());
    return results;
}

AnalysisPage* AnalysesPane::open(const std::string& id) {
    const sdk::PluginFacts* const facts = m_host.find(sdk::PluginKind::analysis, id);
    if (!facts) return nullptr;
    AnalysisPage* page = nullptr;
    for (int tab = 0; tab < m_tabs->count() && !page; ++tab)
        if (auto* const one = static_cast<AnalysisPage*>(m_tabs->widget(tab));
            one->facts().id == id)
            page = one;
    if (!page) {
        page = new AnalysisPage(m_host, *facts, m_selection, m_tabs);
        const std::string file = facts->file;
        connect(page, &AnalysisPage::sentToReport, this, &AnalysesPane::sentToReport);
        connect(page, &AnalysisPage::pluginFailed, this,
                [this, file](const QString& sentence) { m_failures[file] = sentence; });
        page->setProject(m_project);
        const int tab = m_tabs->addTab(page, inOwnWords(facts->title));
        m_tabs->setTabToolTip(tab, inOwnWords(facts->summary));
    }
    m_tabs->setCurrentWidget(page);
    showEmpty();
    emit opened();
    return page;
}

void AnalysesPane::close(int tab) {
    auto* const page = static_cast<AnalysisPage*>(m_tabs->widget(tab));
    if (!page) return;
    m_tabs->removeTab(tab);
    page->hide();
    showEmpty();
    page->cancel();
    // Its thread ends first, so that nobody waits for a plug-in that is slow to notice.
    if (page->runner().isBusy())
        connect(&page->runner(), &AnalysisRunner::idle, page, &QObject::deleteLater);
    else
        page->deleteLater();
}

void AnalysesPane::showEmpty() {
    const bool empty = m_tabs->count() == 0;
    m_tabs->setVisible(!empty);
    m_empty->setVisible(empty);
    m_empty->setText(m_actions.empty()
                         ? tr("No analysis was found. The dialog Plug-ins says where they were "
                              "looked for and what was left out.")
                         : tr("Choose an analysis from the menu: its form and its answer open "
                              "here."));
}

void AnalysesPane::showPlugins() {
    PluginsDialog dialog(m_host, m_failures, this);
    dialog.exec();
}

} // namespace cutwater::editor
