// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/details/facts_dialogs.h"

#include "models/project/edits/facts.h"
#include "models/project/index.h"

#include <QComboBox>
#include <QDate>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <set>

namespace cutwater::editor {

namespace edits = project::edits;

namespace {

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

} // namespace

FactsDialog::FactsDialog(Session& session, const char* name, const QString& title, QWidget* parent)
    : QDialog(parent), m_session(session), m_form(new QFormLayout), m_sentence(new QLabel(this)) {
    setObjectName(QLatin1String(name));
    setWindowTitle(title);
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    m_sentence->setWordWrap(true);
    m_sentence->setObjectName(QStringLiteral("factsSentence"));
    m_sentence->hide();
    auto* const column = new QVBoxLayout(this);
    column->addLayout(m_form, 1);
    column->addWidget(m_sentence);
}

QLineEdit* FactsDialog::line(const char* name, const QString& label, const std::string& words,
                             const QString& tip) {
    auto* const field = new QLineEdit(text(words), this);
    field->setObjectName(QLatin1String(name));
    field->setToolTip(tip);
    field->setPlaceholderText(tip);
    m_form->addRow(label, field);
    return field;
}

QPlainTextEdit* FactsDialog::lines(const char* name, const QString& label, const std::string& words,
                                   const QString& tip) {
    auto* const field = new QPlainTextEdit(text(words), this);
    field->setObjectName(QLatin1String(name));
    field->setTabChangesFocus(true);
    field->setToolTip(tip);
    field->setPlaceholderText(tip);
    field->setFixedHeight(fontMetrics().height() * 4);
    m_form->addRow(label, field);
    return field;
}

std::string FactsDialog::textOf(const QLineEdit* field) {
    return field->text().trimmed().toStdString();
}

std::vector<std::string> FactsDialog::linesOf(const QPlainTextEdit* field) {
    std::vector<std::string> found;
    for (const QString& line : field->toPlainText().split('\n'))
        if (!line.trimmed().isEmpty()) found.push_back(line.trimmed().toStdString());
    return found;
}

std::string FactsDialog::joined(const std::vector<std::string>& all) {
    std::string words;
    for (const std::string& one : all)
        words += (words.empty() ? "" : "\n") + one;
    return words;
}

void FactsDialog::finishForm() {
    auto* const buttons =
        new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    buttons->button(QDialogButtonBox::Ok)->setText(tr("Take over"));
    buttons->button(QDialogButtonBox::Cancel)->setText(tr("Cancel"));
    connect(buttons, &QDialogButtonBox::accepted, this, [this] {
        if (take()) accept();
    });
    connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
    layout()->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 112, sizeHint().height());
}

bool FactsDialog::apply(const Edit& edit) {
    QString why;
    const auto listening = connect(&m_session, &Session::refused, this,
                                   [&why](const QString& sentence) { why = sentence; });
    const bool done = m_session.apply(edit);
    disconnect(listening);
    m_sentence->setText(why);
    m_sentence->setVisible(!done);
    return done;
}

TopFactsDialog::TopFactsDialog(Session& session, const project::Id& top, QWidget* parent)
    : FactsDialog(session, "topFacts", tr("Top event %1").arg(text(top)), parent) {
    const Snapshot project = session.project();
    const project::Index index(*project);
    if (const project::TopEvent* const found = index.top(top)) m_facts = *found;
    m_name = line("topName", tr("&What must not happen"), m_facts.name);
    m_mode = line("topMode", tr("&State of the plant"), m_facts.operatingMode,
                  tr("in which it is asked: at sea, at start, in port"));
    m_severity = new QComboBox(this);
    m_severity->setObjectName(QStringLiteral("topSeverity"));
    m_severity->setEditable(true);
    std::set<std::string> words; // those that the project uses already
    for (const project::TopEvent& one : project->tops)
        words.insert(one.severity);
    for (const project::RiskLevel& level : project->worksheet.matrix.severities)
        words.insert(level.word);
    words.insert(m_facts.severity);
    for (const std::string& word : words)
        if (!word.empty()) m_severity->addItem(text(word));
    m_severity->setCurrentText(text(m_facts.severity));
    m_form->addRow(tr("How &bad it is"), m_severity);
    m_asked = new QuantityRow(project::Role::frequency, false, this);
    m_asked->show(m_facts.asked ? &*m_facts.asked : nullptr, project->parameters);
    m_form->addRow(tr("How &often asked"), m_asked);
    m_effects = lines("topEffects", tr("&End effects"), joined(m_facts.endEffects),
                      tr("of the worksheet that this tree answers for, one a line"));
    m_remark = lines("topRemark", tr("&Remark"), m_facts.remark);
    finishForm();
}

bool TopFactsDialog::take() {
    if (!m_asked->isReadable()) {
        m_sentence->setText(tr("How often it is asked is no number: type 12 or 1e-3, or nothing."));
        m_sentence->show();
        return false;
    }
    project::TopEvent facts = m_facts;
    facts.name = textOf(m_name);
    facts.operatingMode = textOf(m_mode);
    facts.severity = m_severity->currentText().trimmed().toStdString();
    facts.endEffects = linesOf(m_effects);
    facts.remark = m_remark->toPlainText().trimmed().toStdString();
    facts.asked = m_asked->quantity();
    return apply(
        [&](const project::Project& project) { return edits::setTopFacts(project, facts); });
}

ProjectFactsDialog::ProjectFactsDialog(Session& session, QWidget* parent)
    : FactsDialog(session, "projectFacts", tr("About the project"), parent) {
    const Snapshot project = session.project();
    m_name = line("projectName", tr("&Title"), project->name);
    m_plant = line("projectPlant", tr("&Plant"), project->plant, tr("the ship or installation"));
    m_description = lines("projectDescription", tr("W&hat it is about"), project->description);
    m_mode = line("projectMode", tr("&State of the plant"), project->operatingMode);
    m_revision = line("projectRevision", tr("Re&vision"), project->revision);
    m_date = line("projectDate", tr("&Date"), project->date, tr("year-month-day: 2026-03-02"));
    m_prepared = line("projectPrepared", tr("Prepared &by"), project->preparedBy);
    m_checked = line("projectChecked", tr("&Checked by"), project->checkedBy);
    m_rules = lines("projectRules", tr("&Worked to"), joined(project->rules),
                    tr("rules and their editions, in your words, one a line"));
    m_assumptions = lines("projectAssumptions", tr("&Assumptions"), joined(project->assumptions),
                          tr("one a line; they stand in every result"));
    m_cautions = lines("projectCautions", tr("Cautions of your &own"), joined(project->cautions),
                       tr("one a line; they stand beside the standing ones"));
    finishForm();
}

bool ProjectFactsDialog::take() {
    if (!m_date->text().trimmed().isEmpty() &&
        !QDate::fromString(m_date->text().trimmed(), Qt::ISODate).isValid()) {
        m_sentence->setText(tr("The date is no date: type it as 2026-03-02, or leave it empty."));
        m_sentence->show();
        m_date->setFocus();
        return false;
    }
    project::Project facts;
    facts.name = textOf(m_name);
    facts.plant = textOf(m_plant);
    facts.description = m_description->toPlainText().trimmed().toStdString();
    facts.operatingMode = textOf(m_mode);
    facts.revision = textOf(m_revision);
    facts.date = textOf(m_date);
    facts.preparedBy = textOf(m_prepared);
    facts.checkedBy = textOf(m_checked);
    facts.rules = linesOf(m_rules);
    facts.assumptions = linesOf(m_assumptions);
    facts.cautions = linesOf(m_cautions);
    return apply(
        [&](const project::Project& project) { return edits::setProjectFacts(project, facts); });
}

} // namespace cutwater::editor
