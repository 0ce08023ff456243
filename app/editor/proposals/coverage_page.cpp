// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/proposals/coverage_page.h"

#include "app/editor/plant/plant_words.h"
#include "models/project/index.h"

#include <QHeaderView>
#include <QLabel>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace {

enum Go { goNowhere, goMode, goNode, goTop, goEffect };
constexpr int kGoRole = Qt::UserRole, kIdRole = Qt::UserRole + 1;

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

QString figure(const std::optional<double>& value) {
    return value ? QString::number(*value, 'g', 3) : QString();
}

} // namespace

CoveragePage::CoveragePage(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection), m_words(new QLabel(this)),
      m_list(new QTreeWidget(this)) {
    setObjectName("coveragePage");
    m_words->setWordWrap(true);
    m_list->setObjectName("coverage");
    m_list->setAccessibleName(tr("Where worksheet and trees meet, and where not"));
    m_list->setHeaderLabels(
        {tr("What"), tr("Severity"), tr("Probability"), tr("Per year"), tr("Remark")});
    m_list->setUniformRowHeights(true);
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_list->header()->setSectionResizeMode(4, QHeaderView::Stretch);
    const int letter = fontMetrics().averageCharWidth();
    m_list->header()->resizeSection(1, letter * 14);
    m_list->header()->resizeSection(2, letter * 13);
    m_list->header()->resizeSection(3, letter * 11);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_words);
    layout->addWidget(m_list, 1);
    connect(m_list, &QTreeWidget::itemActivated, this, &CoveragePage::go);
    connect(m_list, &QTreeWidget::itemClicked, this, &CoveragePage::go);
    fill();
}

void CoveragePage::show(std::shared_ptr<const Findings> findings) {
    if (findings == m_findings) return;
    m_findings = std::move(findings);
    fill();
}

void CoveragePage::fill() {
    std::vector<bool> open;
    for (int i = 0; i < m_list->topLevelItemCount(); ++i)
        open.push_back(m_list->topLevelItem(i)->isExpanded());
    m_list->clear();
    if (!m_findings) return m_words->setText(tr("Worksheet and trees are being compared."));
    m_words->setText(
        tr("A click goes there: to the plant, to the tree, or to a proposal for a tree. "
           "Common causes are counted."));
    const project::Project& project = *m_findings->project;
    const project::Index index(project);
    const worksheet::Coverage& coverage = m_findings->coverage;
    const auto group = [&](const QString& words, std::size_t count) {
        auto* item = new QTreeWidgetItem(m_list, {QStringLiteral("%1: %2").arg(words).arg(count)});
        QFont font = item->font(0);
        font.setBold(true);
        item->setFont(0, font);
        item->setFirstColumnSpanned(true);
        return item;
    };
    const auto put = [](QTreeWidgetItem* above, const QStringList& words, Go go,
                        const project::Id& id) {
        auto* item = new QTreeWidgetItem(above, words);
        item->setData(0, kGoRole, go);
        item->setData(0, kIdRole, text(id));
        item->setToolTip(0, item->text(0));
        item->setToolTip(4, item->text(4));
    };
    auto* without = group(tr("End effects without a tree"), 0);
    auto* with = group(tr("End effects with a tree"), 0);
    for (const worksheet::EndEffect& each : coverage.effects) {
        const QString modes = tr("failure modes: %1").arg(each.modes.size());
        if (each.answeredBy.empty()) {
            QStringList also;
            for (const std::size_t top : each.foundIn)
                also << text(project.tops[top].id);
            put(without,
                {text(each.text),
                 text(each.severity),
                 {},
                 {},
                 also.isEmpty()
                     ? modes
                     : tr("%1; some stand in %2").arg(modes, also.join(QStringLiteral(", ")))},
                goEffect, each.text);
        }
        for (const std::size_t top : each.answeredBy) {
            const auto found = m_findings->figures.find(top);
            const worksheet::TopFigures figures =
                found == m_findings->figures.end() ? worksheet::TopFigures() : found->second;
            put(with,
                {text(each.text), text(each.severity), figure(figures.probability),
                 figure(figures.perYear),
                 tr("%1; %2").arg(wordsOf(project.tops[top]),
                                  figures.perYear ? modes : text(figures.how))},
                goTop, project.tops[top].id);
        }
    }
    for (auto* each : {without, with})
        each->setText(0, each->text(0).section(QStringLiteral(": 0"), 0, 0) +
                             QStringLiteral(": %1").arg(each->childCount()));
    auto* modes = group(tr("Failure modes in no tree"), coverage.modesInNoTree.size());
    for (const std::size_t position : coverage.modesInNoTree) {
        const project::FailureMode& mode = project.modes[position];
        const project::Component* part = index.component(mode.component);
        put(modes,
            {part ? QStringLiteral("%1: %2").arg(wordsOf(*part), wordsOf(mode)) : wordsOf(mode),
             text(mode.severity),
             {},
             {},
             text(mode.endEffect)},
            goMode, mode.id);
    }
    auto* events = group(tr("Events in no row of the worksheet"), coverage.eventsInNoRow.size());
    for (const std::size_t position : coverage.eventsInNoRow) {
        const project::Event& event = project.events[position];
        put(events,
            {text(event.name.empty() ? event.id : event.name), {}, {}, {}, text(event.remark)},
            goNode, event.id);
    }
    auto* unknown = group(tr("End effects that a top event names and no row has"),
                          coverage.unknownEffects.size());
    for (const auto& [top, effect] : coverage.unknownEffects)
        put(unknown, {text(effect), {}, {}, {}, wordsOf(project.tops[top])}, goTop,
            project.tops[top].id);
    for (int i = 0; i < m_list->topLevelItemCount(); ++i) {
        QTreeWidgetItem* item = m_list->topLevelItem(i);
        item->setExpanded(static_cast<std::size_t>(i) < open.size()
                              ? open[static_cast<std::size_t>(i)]
                              : i < 2 && item->childCount() > 0);
    }
}

void CoveragePage::go(const QTreeWidgetItem* item) {
    if (!item || !item->parent()) return;
    const project::Id id = item->data(0, kIdRole).toString().toStdString();
    switch (static_cast<Go>(item->data(0, kGoRole).toInt())) {
    case goMode: return emit modeWished(id);
    case goNode: return m_selection.select({id});
    case goEffect: return emit treeWished(text(id));
    case goTop:
        for (const project::TopEvent& top : m_session.project()->tops)
            if (top.id == id) {
                m_selection.showTop(id);
                m_selection.select({top.node.id});
            }
        return;
    case goNowhere: return;
    }
}

} // namespace cutwater::editor
