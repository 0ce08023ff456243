// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/proposals/skeleton_page.h"

#include "app/editor/outline/node_words.h"
#include "models/project/index.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QVBoxLayout>

#include <map>
#include <set>

namespace cutwater::editor {

namespace {

constexpr int kIdRole = Qt::UserRole;       // of a proposal, "P1"; empty for events
constexpr int kNodeRole = Qt::UserRole + 1; // of an event that there is

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

} // namespace

SkeletonPage::SkeletonPage(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection), m_effects(new QComboBox(this)),
      m_words(new QLabel(this)), m_tree(new QTreeWidget(this)), m_reason(new QLabel(this)),
      m_accept(new QPushButton(this)) {
    setObjectName("skeletonPage");
    m_effects->setObjectName("effects");
    m_effects->setAccessibleName(tr("End effect that the tree is for"));
    m_effects->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_effects->setMinimumContentsLength(30);
    m_words->setObjectName("skeletonWords");
    m_words->setWordWrap(true);
    m_tree->setObjectName("skeleton");
    m_tree->setAccessibleName(tr("Proposed gates and what stands below them"));
    m_tree->setHeaderLabels({tr("Proposed"), tr("Kind"), tr("Reason")});
    m_tree->setUniformRowHeights(true);
    m_tree->header()->setStretchLastSection(false);
    m_tree->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    m_tree->header()->setSectionResizeMode(2, QHeaderView::Stretch);
    m_tree->header()->resizeSection(1, fontMetrics().averageCharWidth() * 16);
    m_reason->setObjectName("skeletonReason");
    m_reason->setWordWrap(true);
    m_accept->setObjectName("acceptSkeleton");
    auto* label = new QLabel(tr("A first tree for the &end effect"), this);
    label->setBuddy(m_effects);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(label);
    layout->addWidget(m_effects);
    layout->addWidget(m_words);
    layout->addWidget(m_tree, 1);
    layout->addWidget(m_reason);
    layout->addWidget(m_accept);
    connect(m_effects, qOverload<int>(&QComboBox::activated), this,
            [this] { emit effectWished(m_effects->currentData().toString()); });
    connect(m_tree, &QTreeWidget::currentItemChanged, this, &SkeletonPage::showCurrent);
    connect(m_tree, &QTreeWidget::itemChanged, this, &SkeletonPage::showAccept);
    connect(m_accept, &QPushButton::clicked, this, &SkeletonPage::accept);
    showEffects();
    showTree();
}

void SkeletonPage::show(std::shared_ptr<const Findings> findings) {
    if (findings == m_findings) return;
    m_findings = std::move(findings);
    showEffects();
    showTree();
}

void SkeletonPage::choose(const QString& effect) {
    const int at = m_effects->findData(effect);
    if (at < 0) return;
    m_effects->setCurrentIndex(at);
    emit effectWished(effect);
}

void SkeletonPage::showEffects() {
    const QSignalBlocker quiet(m_effects);
    const QString chosen = m_effects->currentData().toString();
    m_effects->clear();
    m_effects->addItem(tr("choose an end effect"), QString());
    if (m_findings)
        for (const worksheet::EndEffect& each : m_findings->coverage.effects)
            m_effects->addItem(each.answeredBy.empty() ? tr("%1 (no tree yet; failure modes: %2)")
                                                             .arg(text(each.text))
                                                             .arg(each.modes.size())
                                                       : tr("%1 (has a tree; failure modes: %2)")
                                                             .arg(text(each.text))
                                                             .arg(each.modes.size()),
                               text(each.text));
    const QString wanted =
        m_findings && !m_findings->effect.empty() ? text(m_findings->effect) : chosen;
    m_effects->setCurrentIndex(qMax(0, m_effects->findData(wanted)));
}

void SkeletonPage::showTree() {
    const QScopedValueRollback filling(m_filling, true);
    m_tree->clear();
    m_reason->clear();
    if (!m_findings || m_findings->coverage.effects.empty()) {
        m_words->setText(m_findings ? tr("No failure mode has an end effect yet. Type end effects "
                                         "in the worksheet first.")
                                    : tr("The end effects are being looked for."));
    } else if (!m_findings->skeleton) {
        m_words->setText(m_findings->wrong.isEmpty()
                             ? tr("Choose an end effect: its failure modes are put under gates, "
                                  "grouped by the plant, \"and\" where the supply is redundant.")
                             : m_findings->wrong);
    } else {
        const worksheet::Skeleton& skeleton = *m_findings->skeleton;
        QStringList words{tr("It is a start, not a tree: it cannot know which protection has to "
                             "fail as well. Untick what you do not want; what a gate that is not "
                             "ticked holds goes to the one above it.")};
        for (const std::string& remark : skeleton.remarks)
            words << text(remark);
        m_words->setText(words.join(' '));
        std::map<std::string_view, const worksheet::Proposal*> gates;
        for (const worksheet::Proposal& each : skeleton.proposals)
            gates[each.gate.id] = &each;
        std::map<std::string_view, std::string_view> names;
        for (const project::Event& event : skeleton.events)
            names[event.id] = event.name;
        const project::Index index(*m_findings->project);
        // A gate that is used twice is written out once.
        std::set<std::string_view> shown;
        struct Open {
            QTreeWidgetItem* item;
            const worksheet::Proposal* gate;
        };
        std::vector<Open> left;
        const auto put = [&](QTreeWidgetItem* above, const worksheet::Proposal& each) {
            const QString name = text(each.gate.name.empty() ? each.gate.id : each.gate.name);
            auto* item = new QTreeWidgetItem(
                {QStringLiteral("%1  %2").arg(text(each.id), name), editor::kindWords(each.gate),
                 each.certain ? text(each.reason)
                              : tr("TO BE LOOKED AT. %1").arg(text(each.reason))});
            item->setData(0, kIdRole, text(each.id));
            item->setToolTip(2, item->text(2));
            above ? above->addChild(item) : m_tree->addTopLevelItem(item);
            if (!shown.insert(each.id).second) {
                item->setText(0, tr("the same as %1").arg(item->text(0)));
                return;
            }
            item->setCheckState(0, Qt::Checked);
            left.push_back({item, &each});
        };
        put(nullptr, skeleton.proposals.front());
        for (std::size_t next = 0; next < left.size(); ++next) {
            const Open open = left[next];
            for (const project::Reference& input : open.gate->gate.inputs) {
                if (const auto gate = gates.find(input.id); gate != gates.end()) {
                    put(open.item, *gate->second);
                    continue;
                }
                const auto name = names.find(input.id);
                const project::Event* event = index.event(input.id);
                auto* item = new QTreeWidgetItem(
                    open.item, {name != names.end() ? text(std::string(name->second))
                                : event ? text(event->name.empty() ? event->id : event->name)
                                        : text(input.id),
                                event ? tr("event") : tr("new event")});
                item->setData(0, kNodeRole, event ? text(event->id) : QString());
            }
        }
        m_tree->expandAll();
        m_tree->setCurrentItem(m_tree->topLevelItem(0));
    }
    showCurrent();
    showAccept();
}

namespace {

std::set<std::string> tickedIn(const QTreeWidget& tree) {
    std::set<std::string> ids;
    for (QTreeWidgetItemIterator it(const_cast<QTreeWidget*>(&tree)); *it; ++it)
        if ((*it)->checkState(0) == Qt::Checked && !(*it)->data(0, kIdRole).toString().isEmpty())
            ids.insert((*it)->data(0, kIdRole).toString().toStdString());
    return ids;
}

} // namespace

void SkeletonPage::showAccept() {
    const std::size_t ticked = tickedIn(*m_tree).size();
    m_accept->setText(tr("Accept the ticked gates: %1").arg(ticked));
    m_accept->setEnabled(ticked > 0);
}

void SkeletonPage::showCurrent() {
    const QTreeWidgetItem* item = m_tree->currentItem();
    m_reason->setText(item ? item->text(2) : QString());
    if (m_filling || !item) return;
    const QString node = item->data(0, kNodeRole).toString();
    if (!node.isEmpty()) m_selection.select({node.toStdString()});
}

void SkeletonPage::accept() {
    if (!m_findings || !m_findings->skeleton) return;
    if (*m_session.project() != *m_findings->project)
        return emit sentence(tr("The project has changed; the proposals are looked for again."));
    const auto findings = m_findings;
    const auto accepted = tickedIn(*m_tree);
    const project::Id top = findings->skeleton->top.id;
    const bool made = m_session.apply([&](const project::Project& p) -> project::edits::Result {
        auto result = worksheet::acceptProposals(p, *findings->skeleton, accepted);
        if (!result) return result.problems();
        const project::Id node = result->tops.back().node.id;
        return project::edits::Changed{std::move(*result),
                                       QT_TRANSLATE_NOOP("Edits", "Accept the proposed tree %1"),
                                       findings->skeleton->effect,
                                       {node}};
    });
    if (!made) return;
    m_selection.showTop(top);
    emit sentence(tr("The gates are in the project, under the top event %1. Look at each of them: "
                     "a proposal is a start, not a tree.")
                      .arg(text(top)));
}

} // namespace cutwater::editor
