// SPDX-License-Identifier: GPL-3.0-or-later
// DetailsForm: its fields, and the edit that each of them makes.
#include "app/editor/details/details_form.h"

#include "app/editor/details/left_edit.h"
#include "app/editor/outline/node_words.h"
#include "models/project/edits/facts.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace cutwater::editor {

namespace edits = project::edits;
using project::Project;

namespace {

constexpr int kEventKinds = 100; // offset of event kinds in the list of kinds

} // namespace

void DetailsForm::makeFields() {
    auto* empty = new QLabel(tr("Choose an event or a gate to see all about it."));
    empty->setAlignment(Qt::AlignTop | Qt::AlignHCenter);
    empty->setWordWrap(true);
    empty->setMargin(16);
    auto* page = new QWidget;
    m_form = new QFormLayout;
    m_form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    m_form->setFieldGrowthPolicy(QFormLayout::AllNonFixedFieldsGrow);

    const auto field = [&](auto* widget, const char* name, const QString& label,
                           const QString& accessible) {
        widget->setObjectName(QLatin1String(name));
        widget->setAccessibleName(accessible);
        m_form->addRow(label, widget);
        return widget;
    };
    m_text = field(new QLineEdit, "text", tr("&Text"), tr("Text"));
    m_id = field(new QLabel, "id", tr("Id"), tr("Id"));
    m_id->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    m_kind = field(new QComboBox, "kind", tr("&Kind"), tr("Kind"));
    for (int kind = 0; kind <= static_cast<int>(project::GateKind::priorityAnd); ++kind)
        m_kind->addItem(tr("%1 gate").arg(words(static_cast<project::GateKind>(kind))), kind);
    for (int kind = 0; kind <= static_cast<int>(project::EventKind::conditioning); ++kind)
        m_kind->addItem(tr("%1 event").arg(words(static_cast<project::EventKind>(kind))),
                        kEventKinds + kind);
    m_meaning = field(new QLabel, "meaning", QString(), tr("What the kind means"));
    m_meaning->setWordWrap(true);
    m_k = field(new QSpinBox, "k", tr("&Needs"), tr("How many inputs it needs"));
    m_state = field(new QCheckBox(tr("it is so (true)")), "state", tr("&State"), tr("State"));
    m_places = field(new QLabel, "places", tr("Stands below"), tr("Stands below"));
    m_places->setWordWrap(true);
    m_places->setTextInteractionFlags(Qt::TextBrowserInteraction);
    m_mode = field(new QComboBox, "mode", tr("&Failure mode"), tr("Failure mode of the plant"));
    m_mode->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_mode->setMinimumContentsLength(16);
    m_modeFacts = field(new QLabel, "modeFacts", QString(), tr("From the worksheet"));
    m_modeFacts->setWordWrap(true);
    m_modelBox = new QGroupBox;
    m_model = new ModelForm;
    (new QVBoxLayout(m_modelBox))->addWidget(m_model);
    m_remark = new LeftEdit(page, [this] {
        const std::string text = m_remark->toPlainText().toStdString();
        if (!m_busy && m_remark->document()->isModified() && !m_node.empty())
            apply([&](const Project& p) { return edits::setRemark(p, m_node, text); });
    });
    m_remark->setObjectName("remark");
    m_remark->setAccessibleName(tr("Remark"));
    auto* remarkLabel = new QLabel(tr("&Remark"));
    remarkLabel->setBuddy(m_remark);

    auto* layout = new QVBoxLayout(page);
    layout->addLayout(m_form);
    layout->addWidget(m_modelBox);
    layout->addWidget(remarkLabel);
    layout->addWidget(m_remark);
    layout->addStretch();
    m_pages = new QStackedWidget;
    m_pages->addWidget(empty);
    m_pages->addWidget(page);
    setWidget(m_pages);
}

void DetailsForm::connectFields() {
    connect(m_text, &QLineEdit::editingFinished, this, [this] {
        if (m_busy || !m_text->isModified()) return;
        m_text->setModified(false);
        const std::string text = m_text->text().trimmed().toStdString();
        apply([&](const Project& p) { return edits::rename(p, m_node, text); });
    });
    connect(m_kind, qOverload<int>(&QComboBox::activated), this, [this] {
        const int kind = m_kind->currentData().toInt();
        apply([&](const Project& p) {
            return kind < kEventKinds
                       ? edits::setGateKind(p, m_node, static_cast<project::GateKind>(kind))
                       : edits::setEventKind(p, m_node,
                                             static_cast<project::EventKind>(kind - kEventKinds));
        });
    });
    connect(m_k, qOverload<int>(&QSpinBox::valueChanged), this, [this](int k) {
        if (!m_busy) apply([&](const Project& p) { return edits::setK(p, m_node, k); });
    });
    connect(m_state, &QCheckBox::toggled, this, [this](bool state) {
        if (!m_busy) apply([&](const Project& p) { return edits::setState(p, m_node, state); });
    });
    connect(m_mode, qOverload<int>(&QComboBox::activated), this, [this] {
        const std::string mode = m_mode->currentData().toString().toStdString();
        apply([&](const Project& p) { return edits::setMode(p, m_node, mode); });
    });
    connect(m_model, &ModelForm::edited, this, [this](const project::FailureModel& model) {
        apply([&](const Project& p) { return edits::setModel(p, m_node, model); });
    });
    connect(m_places, &QLabel::linkActivated, this,
            [this](const QString& gate) { m_selection.select({gate.toStdString()}); });
}

} // namespace cutwater::editor
