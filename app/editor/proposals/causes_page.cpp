// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/proposals/causes_page.h"

#include "app/editor/details/quantity_row.h"
#include "models/worksheet/accept_cause.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCoreApplication>
#include <QGridLayout>
#include <QHeaderView>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QSignalBlocker>
#include <QTreeWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostNamed = 12; // events in a sentence

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

QString kindWords(worksheet::CauseKind kind) {
    switch (kind) {
    case worksheet::CauseKind::supply: return CausesPage::tr("same supply");
    case worksheet::CauseKind::location: return CausesPage::tr("same location");
    case worksheet::CauseKind::type: return CausesPage::tr("same type");
    case worksheet::CauseKind::fuel: return CausesPage::tr("same fuel");
    case worksheet::CauseKind::maintenance: return CausesPage::tr("same maintenance");
    }
    return {};
}

} // namespace

CausesPage::CausesPage(Session& session, Selection& selection, QWidget* parent)
    : QWidget(parent), m_session(session), m_selection(selection),
      m_fresh(new QCheckBox(tr("Leave out what a common-cause group holds already"), this)),
      m_words(new QLabel(this)), m_list(new QTreeWidget(this)), m_reason(new QLabel(this)),
      m_beta(new QLineEdit(this)), m_source(new QLineEdit(this)), m_tag(new QComboBox(this)),
      m_accept(new QPushButton(tr("Accept: make a common-cause group"), this)) {
    setObjectName("causesPage");
    m_fresh->setObjectName("onlyNew");
    m_fresh->setChecked(true);
    m_words->setWordWrap(true);
    m_list->setObjectName("causes");
    m_list->setAccessibleName(tr("Proposed common causes"));
    m_list->setHeaderLabels({tr("Proposal"), tr("What is shared"), tr("Which"), tr("Events"),
                             tr("In a group already")});
    m_list->setRootIsDecorated(false);
    m_list->setAlternatingRowColors(true);
    m_list->setUniformRowHeights(true);
    m_list->header()->setStretchLastSection(false);
    m_list->header()->setSectionResizeMode(QHeaderView::ResizeToContents);
    m_list->header()->setSectionResizeMode(2, QHeaderView::Stretch);
    m_reason->setObjectName("reason");
    m_reason->setWordWrap(true);
    m_reason->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_beta->setObjectName("beta");
    m_beta->setAccessibleName(tr("Beta factor: the share of the failures that is common"));
    m_beta->setPlaceholderText(tr("for example 0.1"));
    m_source->setObjectName("source");
    m_source->setAccessibleName(tr("Where the beta factor comes from"));
    m_source->setPlaceholderText(tr("document and table, or: our log"));
    m_tag->setObjectName("trust");
    m_tag->setAccessibleName(tr("How far the source can be trusted"));
    m_tag->addItem(tr("trust: not said"), QString());
    for (const auto tag : project::allSourceTags()) {
        const std::string word(tag);
        m_tag->addItem(QCoreApplication::translate("Models", word.c_str()), text(word));
    }
    m_accept->setObjectName("acceptCause");
    auto* form = new QGridLayout;
    const auto label = [&](int column, const QString& words, QWidget* buddy) {
        auto* made = new QLabel(words, this);
        made->setBuddy(buddy);
        form->addWidget(made, 0, column);
        form->addWidget(buddy, 0, column + 1);
    };
    label(0, tr("&Beta"), m_beta);
    label(2, tr("from &where"), m_source);
    form->addWidget(m_tag, 0, 4);
    form->addWidget(m_accept, 0, 5);
    form->setColumnStretch(1, 1);
    form->setColumnStretch(3, 3);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_words);
    layout->addWidget(m_fresh);
    layout->addWidget(m_list, 1);
    layout->addWidget(m_reason);
    layout->addLayout(form);
    connect(m_fresh, &QCheckBox::toggled, this, &CausesPage::fill);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &CausesPage::showCurrent);
    connect(m_accept, &QPushButton::clicked, this, &CausesPage::accept);
    connect(m_source, &QLineEdit::returnPressed, this, &CausesPage::accept);
    fill();
}

void CausesPage::show(std::shared_ptr<const Findings> findings) {
    if (findings == m_findings) return;
    m_findings = std::move(findings);
    fill();
}

const worksheet::CauseProposal* CausesPage::current() const {
    const QTreeWidgetItem* item = m_list->currentItem();
    if (!item || !m_findings) return nullptr;
    return &m_findings->causes
                .proposals[static_cast<std::size_t>(item->data(0, Qt::UserRole).toULongLong())];
}

void CausesPage::fill() {
    const QScopedValueRollback filling(m_filling, true);
    const int row = m_list->indexOfTopLevelItem(m_list->currentItem());
    {
        const QSignalBlocker quiet(m_list);
        m_list->clear();
        const auto proposals =
            m_findings ? m_findings->causes.proposals : std::vector<worksheet::CauseProposal>();
        for (std::size_t i = 0; i < proposals.size(); ++i) {
            const auto& each = proposals[i];
            if (m_fresh->isChecked() && !each.groups.empty()) continue;
            QStringList groups;
            for (const project::Id& group : each.groups)
                groups << text(group);
            auto* item = new QTreeWidgetItem(
                m_list, {text(worksheet::causeId(i)), kindWords(each.kind), text(each.shared),
                         QString::number(each.events.size()), groups.join(QStringLiteral(", "))});
            item->setData(0, Qt::UserRole, static_cast<qulonglong>(i));
            item->setToolTip(2, item->text(2));
        }
        if (row >= 0 && m_list->topLevelItemCount() > 0)
            m_list->setCurrentItem(
                m_list->topLevelItem(std::min(row, m_list->topLevelItemCount() - 1)));
    }
    if (!m_findings)
        m_words->setText(tr("The proposals are being looked for."));
    else if (m_list->topLevelItemCount() == 0)
        m_words->setText(tr("Nothing to propose. Proposals come from what the plant knows: "
                            "supplies, locations, types, fuel and tests of parts on which one gate "
                            "counts to fail independently."));
    else
        m_words->setText(tr("Parts on which a gate counts to fail independently, although they "
                            "share something. A proposal is a reason to think and no factor: that "
                            "has to come from a source or from the log."));
    showCurrent();
}

void CausesPage::showCurrent() {
    const worksheet::CauseProposal* proposal = current();
    m_accept->setEnabled(proposal);
    if (!proposal) return m_reason->clear();
    QStringList names;
    std::vector<project::Id> events;
    for (const std::size_t position : proposal->events) {
        const project::Event& event = m_findings->project->events[position];
        events.push_back(event.id);
        if (names.size() < static_cast<qsizetype>(kMostNamed))
            names << text(event.name.empty() ? event.id : event.name);
    }
    QString list = names.join(QStringLiteral("; "));
    if (events.size() > kMostNamed)
        list = tr("%1 and %2 more").arg(list).arg(events.size() - kMostNamed);
    m_reason->setText(tr("%1 Events: %2.").arg(text(proposal->reason), list));
    if (m_filling) return; // an edit is no wish to look elsewhere
    m_selection.mark({events.begin(), events.end()},
                     tr("proposed common cause: %1").arg(text(proposal->shared)));
    m_selection.select(events);
}

void CausesPage::accept() {
    const worksheet::CauseProposal* proposal = current();
    if (!proposal) return;
    if (*m_session.project() != *m_findings->project)
        return emit sentence(tr("The project has changed; the proposals are looked for again."));
    const auto beta = numberFrom(m_beta->text());
    if (!beta) {
        m_beta->setFocus();
        return emit sentence(tr("Type the beta factor first: the share of the failures that is "
                                "common, above 0 and at most 1."));
    }
    worksheet::CauseTerms terms;
    terms.beta.value = *beta;
    terms.beta.unit = project::Unit::number;
    terms.beta.source.document = m_source->text().trimmed().toStdString();
    terms.beta.source.tag = m_tag->currentData().toString().toStdString();
    const worksheet::CauseProposal accepted = *proposal;
    m_session.apply([&](const project::Project& p) -> project::edits::Result {
        auto made = worksheet::acceptCause(p, accepted, terms);
        if (!made) return made.problems();
        return project::edits::Changed{std::move(*made),
                                       QT_TRANSLATE_NOOP("Edits", "Accept the common cause %1"),
                                       accepted.shared,
                                       {}};
    });
}

} // namespace cutwater::editor
