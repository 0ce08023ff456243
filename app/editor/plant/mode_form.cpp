// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/mode_form.h"

#include "app/editor/details/model_form.h"
#include "app/editor/details/model_problems.h"
#include "app/editor/plant/plant_words.h"
#include "models/project/edits/plant.h"
#include "models/project/index.h"

#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace edits = project::edits;

namespace {

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

} // namespace

ModeForm::ModeForm(Session& session, QWidget* parent)
    : QWidget(parent), m_session(session), m_component(new QLabel), m_name(new QLineEdit),
      m_id(new QLineEdit), m_places(new QLabel), m_facts(new QLabel), m_model(new ModelForm) {
    setObjectName("modeForm");
    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);
    const auto field = [&](QWidget* widget, const char* name, const QString& label,
                           const QString& accessible) {
        widget->setObjectName(QLatin1String(name));
        widget->setAccessibleName(accessible);
        form->addRow(label, widget);
    };
    field(m_name, "modeName", tr("How it &fails"), tr("How it fails"));
    field(m_component, "component", tr("Component"), tr("Component that fails"));
    field(m_places, "places", tr("Stands in"), tr("Where it stands"));
    field(m_facts, "facts", tr("Worksheet"), tr("What the worksheet says"));
    field(m_id, "modeId", tr("&Id"), tr("Id"));
    m_id->setToolTip(
        tr("The id stands in the file and in references; all of them follow a change."));
    for (QLabel* label : {m_component, m_places, m_facts}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextBrowserInteraction);
        connect(label, &QLabel::linkActivated, this, [this](const QString& href) {
            const project::Id id = href.section(':', 1).toStdString();
            if (href.startsWith(QStringLiteral("top:")))
                emit topWished(id);
            else
                emit componentWished(id);
        });
    }
    auto* box = new QGroupBox(tr("Failure model"));
    (new QVBoxLayout(box))->addWidget(m_model);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addWidget(box);
    layout->addStretch();
    connect(m_name, &QLineEdit::editingFinished, this, [this] {
        if (m_busy || !m_name->isModified()) return;
        m_name->setModified(false);
        const std::string name = m_name->text().toStdString();
        m_session.apply(
            [&](const project::Project& p) { return edits::renameMode(p, m_mode, name); });
        const project::Index index(*m_session.project());
        if (const auto* mode = index.mode(m_mode)) m_name->setText(text(mode->name));
    });
    connect(m_id, &QLineEdit::editingFinished, this, &ModeForm::changeId);
    connect(m_model, &ModelForm::edited, this, [this](const project::FailureModel& model) {
        m_session.apply(
            [&](const project::Project& p) { return edits::setModeModel(p, m_mode, model); });
    });
}

void ModeForm::changeId() {
    if (m_busy || !m_id->isModified()) return;
    m_id->setModified(false);
    const project::Id id = m_id->text().trimmed().toStdString(), old = m_mode;
    if (id == old) return;
    m_mode = id; // the page follows before apply() returns
    emit idChanged(id);
    if (m_session.apply([&](const project::Project& p) { return edits::renameModeId(p, old, id); }))
        return;
    m_mode = old;
    emit idChanged(old);
    m_id->setText(text(old));
}

void ModeForm::show(const project::Id& id, const TreePlaces& places) {
    const QScopedValueRollback busy(m_busy, true);
    const Snapshot snapshot = m_session.project();
    const project::Index index(*snapshot);
    const project::FailureMode* mode = index.mode(id);
    if (!mode) return;
    m_mode = id;
    if (m_name->text() != text(mode->name)) m_name->setText(text(mode->name));
    if (m_id->text() != text(id)) m_id->setText(text(id));
    const project::Component* part = index.component(mode->component);
    m_component->setText(part ? QStringLiteral("<a href=\"part:%1\">%2</a>")
                                    .arg(text(part->id), wordsOf(*part).toHtmlEscaped())
                              : tr("none of the plant"));
    m_places->setText(placesOf(*mode, places));
    m_facts->setText(factsOf(*mode));
    m_model->show(mode->model, snapshot->parameters);
    m_model->setProblems(problemsOf(mode->model, snapshot->parameters));
}

QString ModeForm::placesOf(const project::FailureMode& mode, const TreePlaces& places) const {
    const Snapshot snapshot = m_session.project();
    QStringList lines;
    for (const std::size_t top : places.topsOf(mode.id)) {
        const project::TopEvent& each = snapshot->tops[top];
        lines << tr("tree %1").arg(QStringLiteral("<a href=\"top:%1\">%2</a>")
                                       .arg(text(each.id), wordsOf(each).toHtmlEscaped()));
    }
    if (lines.isEmpty())
        lines << (places.eventsOf(mode.id).empty()
                      ? tr("no tree: copy it here and paste it into the outline, or drag it there")
                      : tr("no tree: its event is used nowhere"));
    const auto row = &mode - snapshot->modes.data();
    lines << tr("row %1 of %2 of the worksheet").arg(row + 1).arg(snapshot->modes.size());
    return lines.join(QStringLiteral("<br>"));
}

QString ModeForm::factsOf(const project::FailureMode& mode) const {
    QStringList facts;
    const auto add = [&](const QString& what, const std::string& words) {
        if (!words.empty())
            facts << QStringLiteral("<b>%1</b> %2").arg(what, text(words).toHtmlEscaped());
    };
    for (const std::string& cause : mode.causes)
        add(tr("Cause:"), cause);
    add(tr("Effect:"), mode.localEffect);
    add(tr("On the plant:"), mode.endEffect);
    add(tr("Severity:"), mode.severity);
    add(tr("Noticed by:"), mode.detection);
    add(tr("Made up for by:"), mode.compensation);
    add(tr("Proved by:"), mode.provedBy);
    if (mode.dormant) facts << tr("<b>Dormant:</b> nobody sees it until a test or a demand");
    if (!mode.model.lastTest.empty()) add(tr("Last tested on:"), mode.model.lastTest);
    for (const project::Check& check : mode.checks) {
        const QString look = text(check.look).toHtmlEscaped();
        const QString tells = text(check.tells).toHtmlEscaped();
        facts << (check.minutes ? tr("<b>Look at:</b> %1 (%2 min); it tells: %3")
                                      .arg(look)
                                      .arg(*check.minutes)
                                      .arg(tells)
                                : tr("<b>Look at:</b> %1; it tells: %2").arg(look, tells));
    }
    add(tr("Remark:"), mode.remark);
    return facts.isEmpty() ? tr("nothing yet: effects and detection are typed in the worksheet")
                           : facts.join(QStringLiteral("<br>"));
}

} // namespace cutwater::editor
