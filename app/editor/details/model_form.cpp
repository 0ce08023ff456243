// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/details/model_form.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QFormLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

namespace cutwater::editor {

ModelForm::ModelForm(QWidget* parent)
    : QWidget(parent), m_kind(new QComboBox(this)), m_clock(new QComboBox(this)),
      m_clockLine(m_clock), m_rowsLayout(new QVBoxLayout), m_problems(new QLabel(this)) {
    m_kind->setObjectName("modelKind");
    m_kind->setAccessibleName(tr("Failure model"));
    for (const auto& model : project::allModels()) {
        m_kind->addItem(words(model.kind), static_cast<int>(model.kind));
        m_kind->setItemData(
            m_kind->count() - 1,
            QCoreApplication::translate("Models", std::string(model.sentence).c_str()),
            Qt::ToolTipRole);
    }
    m_clock->setObjectName("modelClock");
    m_clock->setAccessibleName(tr("It ages with"));
    for (const auto& clock : project::allClocks())
        m_clock->addItem(words(clock.clock), static_cast<int>(clock.clock));
    for (QComboBox* box : {m_kind, m_clock}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(16);
    }
    m_problems->setObjectName("modelProblems");
    m_problems->setWordWrap(true);
    m_problems->hide();

    auto* form = new QFormLayout;
    form->setRowWrapPolicy(QFormLayout::WrapLongRows);
    form->addRow(tr("Failure &model"), m_kind);
    form->addRow(tr("It ages &with"), m_clock);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addLayout(form);
    layout->addLayout(m_rowsLayout);
    layout->addWidget(m_problems);
    connect(m_kind, qOverload<int>(&QComboBox::activated), this, &ModelForm::gather);
    connect(m_clock, qOverload<int>(&QComboBox::activated), this, &ModelForm::gather);
}

void ModelForm::makeRows(project::ModelKind kind) {
    if (kind == m_rowsOf) return;
    m_rowsOf = kind;
    for (QuantityRow* row : m_rows) {
        m_rowsLayout->removeWidget(row);
        row->hide();
        row->deleteLater(); // it may be the one that is talking
    }
    m_rows.clear();
    const auto add = [&](project::Role role, bool required) {
        auto* row = new QuantityRow(role, required, this);
        connect(row, &QuantityRow::edited, this, &ModelForm::gather);
        m_rowsLayout->addWidget(row);
        row->setVisible(true); // now, and not when the layout gets round to it
        m_rows.push_back(row);
    };
    const auto& facts = project::facts(kind);
    for (const auto role : facts.required)
        add(role, true);
    for (const auto role : facts.optional)
        add(role, false);
}

void ModelForm::show(const project::FailureModel& model,
                     const std::vector<project::Parameter>& parameters) {
    m_shown = model;
    m_parameters = parameters;
    m_kind->setCurrentIndex(m_kind->findData(static_cast<int>(model.kind)));
    m_clock->setCurrentIndex(m_clock->findData(static_cast<int>(model.clock)));
    m_clock->setEnabled(model.kind != project::ModelKind::none);
    makeRows(model.kind);
    for (QuantityRow* row : m_rows)
        row->show(model.find(row->role()), parameters);
}

void ModelForm::setProblems(const QString& sentences) {
    m_problems->setText(sentences);
    m_problems->setVisible(!sentences.isEmpty());
}

void ModelForm::gather() {
    const auto kind = static_cast<project::ModelKind>(m_kind->currentData().toInt());
    project::FailureModel made = m_shown;
    made.kind = kind;
    made.clock = static_cast<project::Clock>(m_clock->currentData().toInt());
    if (kind == project::ModelKind::none) made.clock = project::Clock::unstated;
    if (kind != project::ModelKind::tested) made.lastTest.clear();
    const auto& facts = project::facts(kind);
    const auto hasPlace = [&](project::Role role) {
        const auto in = [&](const std::vector<project::Role>& roles) {
            return std::find(roles.begin(), roles.end(), role) != roles.end();
        };
        return in(facts.required) || in(facts.optional);
    };
    std::erase_if(made.numbers,
                  [&](const project::Assignment& each) { return !hasPlace(each.role); });
    for (const QuantityRow* row : m_rows) {
        if (!row->isReadable()) return; // the row says so; nothing is changed meanwhile
        if (!hasPlace(row->role())) continue;
        if (const auto quantity = row->quantity())
            made.set(row->role(), *quantity);
        else
            std::erase_if(made.numbers, [&](const project::Assignment& each) {
                return each.role == row->role();
            });
    }
    if (made != m_shown) emit edited(made);
}

} // namespace cutwater::editor
