// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/proposals/proposals_page.h"

#include "app/editor/proposals/causes_page.h"
#include "app/editor/proposals/coverage_page.h"
#include "app/editor/proposals/skeleton_page.h"

#include <QLabel>
#include <QTabWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

ProposalsPage::ProposalsPage(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_findings(new Background(session, findingsTask({}), this)),
      m_tabs(new QTabWidget(this)), m_state(new QLabel(this)),
      m_coverage(new CoveragePage(session, selection, this)),
      m_skeleton(new SkeletonPage(session, selection, this)),
      m_causes(new CausesPage(session, selection, this)) {
    setObjectName("proposalsPage");
    m_tabs->setObjectName("proposalsTabs");
    m_tabs->setDocumentMode(true);
    m_tabs->addTab(m_coverage, tr("Coverage"));
    m_tabs->addTab(m_skeleton, tr("Trees"));
    m_tabs->addTab(m_causes, tr("Common causes"));
    m_state->setObjectName("findingsState");
    m_state->setMargin(4);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_tabs, 1);
    layout->addWidget(m_state);
    connect(m_findings, &Background::changed, this, &ProposalsPage::showFindings);
    connect(m_skeleton, &SkeletonPage::effectWished, this,
            [this](const QString& effect) { m_findings->ask(findingsTask(effect.toStdString())); });
    connect(m_coverage, &CoveragePage::treeWished, this, [this](const QString& effect) {
        m_tabs->setCurrentWidget(m_skeleton);
        m_skeleton->choose(effect);
    });
    connect(m_coverage, &CoveragePage::modeWished, this, &ProposalsPage::modeWished);
    connect(m_skeleton, &SkeletonPage::sentence, this, &ProposalsPage::sentence);
    connect(m_causes, &CausesPage::sentence, this, &ProposalsPage::sentence);
    showFindings();
}

void ProposalsPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    m_findings->setWatched(true);
}

void ProposalsPage::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    m_findings->setWatched(false);
}

void ProposalsPage::showFindings() {
    const auto findings = m_findings->answer<Findings>();
    m_coverage->show(findings);
    m_skeleton->show(findings);
    m_causes->show(findings);
    if (!m_findings->isStale())
        m_state->setText(tr("Current."));
    else if (m_findings->isComputing())
        m_state->setText(tr("Stale: being computed again. %1").arg(m_findings->doing()));
    else
        m_state->setText(tr("Stale: the project has changed."));
}

} // namespace cutwater::editor
