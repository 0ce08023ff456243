// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/details/details_form.h"

#include "app/editor/details/model_problems.h"
#include "app/editor/outline/node_words.h"
#include "models/project/edits/facts.h"
#include "models/project/index.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QScopedValueRollback>
#include <QSpinBox>
#include <QStackedWidget>

namespace cutwater::editor {

namespace edits = project::edits;
using project::Project;

namespace {

constexpr std::size_t kMostPlaces = 8; // listed by name

// Whether a row with this label belongs to what is shown.
void showRow(QFormLayout* form, QWidget* field, bool shown) {
    field->setVisible(shown);
    if (QWidget* label = form->labelForField(field)) label->setVisible(shown);
}

} // namespace

DetailsForm::DetailsForm(Session& session, Selection& selection, QWidget* parent)
    : QScrollArea(parent), m_session(session), m_selection(selection) {
    setObjectName("details");
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    makeFields();
    connectFields();
    connect(&m_selection, &Selection::selectionChanged, this, &DetailsForm::follow);
    connect(&m_session, &Session::projectChanged, this, &DetailsForm::follow);
    follow();
}

bool DetailsForm::apply(const Edit& edit) {
    const bool made = m_session.apply(edit);
    if (!made) follow(); // back to what is
    return made;
}

void DetailsForm::follow() {
    const QScopedValueRollback busy(m_busy, true);
    m_node = m_selection.current().node;
    const Snapshot project = m_session.project();
    const project::Index index(*project);
    const project::Gate* gate = index.gate(m_node);
    const project::Event* event = gate ? nullptr : index.event(m_node);
    m_pages->setCurrentIndex(gate || event ? 1 : 0);
    if (!gate && !event) return;
    const QString name = QString::fromStdString(gate ? gate->name : event->name);
    if (m_text->text() != name) m_text->setText(name);
    m_id->setText(QString::fromStdString(m_node));
    const QString remark = QString::fromStdString(gate ? gate->remark : event->remark);
    if (m_remark->toPlainText() != remark) m_remark->setPlainText(remark);
    showRow(m_form, m_k, gate && gate->kind == project::GateKind::vote);
    showRow(m_form, m_state, event && event->kind == project::EventKind::house);
    const bool fails = event && event->kind != project::EventKind::house;
    showRow(m_form, m_mode, fails);
    showRow(m_form, m_modeFacts, fails && !event->mode.empty());
    m_modelBox->setVisible(fails);
    if (gate)
        showGate(*gate);
    else
        showEvent(*event, index.mode(event->mode));
    showPlaces();
}

void DetailsForm::showGate(const project::Gate& gate) {
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(gate.kind)));
    m_meaning->setText(meaning(gate.kind));
    m_k->setRange(1, qMax(1, static_cast<int>(gate.inputs.size())));
    m_k->setSuffix(tr(" of %1").arg(gate.inputs.size()));
    if (gate.k) m_k->setValue(*gate.k);
}

void DetailsForm::showEvent(const project::Event& event, const project::FailureMode* mode) {
    m_kind->setCurrentIndex(m_kind->findData(100 + static_cast<int>(event.kind)));
    m_meaning->setText(meaning(event.kind));
    m_state->setChecked(event.state);
    showModes(event.mode);
    if (mode) {
        QStringList facts;
        const auto add = [&](const QString& what, const std::string& text) {
            if (!text.empty())
                facts << QStringLiteral("<b>%1</b> %2")
                             .arg(what, QString::fromStdString(text).toHtmlEscaped());
        };
        add(tr("Noticed by:"), mode->detection);
        add(tr("Effect:"), mode->localEffect);
        add(tr("On the plant:"), mode->endEffect);
        add(tr("Made up for by:"), mode->compensation);
        m_modeFacts->setText(facts.join(QStringLiteral("<br>")));
    }
    const auto& model = mode ? mode->model : event.model;
    m_modelBox->setTitle(mode ? tr("Failure model of the failure mode") : tr("Failure model"));
    m_model->show(model, m_session.project()->parameters);
    m_model->setProblems(problemsOf(model, m_session.project()->parameters));
}

void DetailsForm::showModes(const project::Id& current) {
    const Snapshot project = m_session.project();
    if (m_modesRevision != m_session.revision()) {
        m_modesRevision = m_session.revision();
        m_mode->clear();
        m_mode->addItem(tr("none: it stands alone"), QString());
        const project::Index index(*project);
        for (const auto& mode : project->modes) {
            const project::Component* part = index.component(mode.component);
            m_mode->addItem(QStringLiteral("%1: %2").arg(
                                QString::fromStdString(part ? part->tag : mode.component),
                                QString::fromStdString(mode.name)),
                            QString::fromStdString(mode.id));
        }
    }
    m_mode->setCurrentIndex(qMax(0, m_mode->findData(QString::fromStdString(current))));
}

void DetailsForm::showPlaces() {
    const Snapshot project = m_session.project();
    QStringList places;
    std::size_t count = 0;
    for (const auto& top : project->tops)
        if (top.node.id == m_node) places << tr("top event %1").arg(QString::fromStdString(top.id));
    for (const auto& gate : project->gates) {
        bool uses = gate.condition.id == m_node;
        for (const auto& input : gate.inputs)
            uses = uses || input.id == m_node;
        if (!uses || ++count > kMostPlaces) continue;
        places << QStringLiteral("<a href=\"%1\">%2</a>")
                      .arg(QString::fromStdString(gate.id), nameOf(gate).toHtmlEscaped());
    }
    if (count > kMostPlaces) places << tr("and %1 more").arg(count - kMostPlaces);
    m_places->setText(places.isEmpty() ? tr("nothing: it is in no tree")
                                       : places.join(QStringLiteral("<br>")));
}

} // namespace cutwater::editor
