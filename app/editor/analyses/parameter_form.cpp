// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/parameter_form.h"

#include "app/editor/analyses/parameter_field.h"

#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QVBoxLayout>

#include <map>

namespace cutwater::editor {
namespace {

bool same(const sdk::Parameter& a, const sdk::Parameter& b) {
    return a.name == b.name && a.type == b.type && a.unit == b.unit && a.minimum == b.minimum &&
           a.maximum == b.maximum && a.choices == b.choices && a.standard == b.standard &&
           a.sentence == b.sentence;
}

// The names of the top events stand in the form, too.
bool sameTops(const project::Project* a, const project::Project* b) {
    if (!a || !b) return a == b;
    return std::equal(
        a->tops.begin(), a->tops.end(), b->tops.begin(), b->tops.end(),
        [](const auto& x, const auto& y) { return x.id == y.id && x.name == y.name; });
}

} // namespace

ParameterForm::ParameterForm(QWidget* parent) : QWidget(parent), m_help(new QLabel(this)) {
    m_help->setObjectName("formHelp");
    m_help->setWordWrap(true);
    m_help->setTextFormat(Qt::PlainText);
    auto* const layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_help);
}

ParameterForm::~ParameterForm() = default;

void ParameterForm::show(std::vector<sdk::Parameter> parameters,
                         std::shared_ptr<const project::Project> project) {
    const bool unchanged = m_body &&
                           std::equal(parameters.begin(), parameters.end(), m_parameters.begin(),
                                      m_parameters.end(), same) &&
                           sameTops(m_project.get(), project.get());
    m_project = std::move(project);
    m_index.reset(); // made when it is asked
    if (unchanged) return;

    std::map<std::string, QString> typed;
    for (const ParameterField* field : m_fields)
        typed[field->parameter().name] = field->typed();
    m_fields.clear();
    delete m_body;
    m_parameters = std::move(parameters);
    m_body = new QWidget(this);
    auto* const grid = new QGridLayout(m_body);
    grid->setContentsMargins(0, 0, 0, 0);
    int row = 0;
    for (const sdk::Parameter& parameter : m_parameters) {
        auto* const field = new ParameterField(parameter, m_project.get(), m_body);
        if (const auto before = typed.find(parameter.name); before != typed.end())
            field->type(before->second);
        grid->addWidget(field->label(), row, 0, Qt::AlignRight | Qt::AlignVCenter);
        grid->addWidget(field->editor(), row, 1);
        grid->addWidget(field->complaint(), row + 1, 1);
        row += 2;
        connect(field, &ParameterField::changed, this, &ParameterForm::changed);
        field->editor()->installEventFilter(this);
        m_fields.push_back(field);
    }
    if (m_fields.empty())
        grid->addWidget(new QLabel(tr("This analysis asks for nothing."), m_body), 0, 0, 1, 2);
    grid->setColumnStretch(1, 1);
    static_cast<QVBoxLayout*>(layout())->insertWidget(0, m_body);
    m_help->setText(m_fields.empty() ? QString() : m_fields.front()->editor()->toolTip());
    m_body->show();
}

bool ParameterForm::exists(const std::string& id) {
    if (!m_project) return true;
    if (!m_index) m_index = std::make_unique<project::Index>(*m_project);
    return m_index->top(id) || m_index->gate(id) || m_index->event(id);
}

project::Outcome<sdk::Values> ParameterForm::read() {
    sdk::Values given;
    project::Problems problems;
    ParameterField* first = nullptr;
    for (ParameterField* field : m_fields) {
        auto value = field->read();
        if (value && *value && field->parameter().type == sdk::ParameterType::topEvent &&
            !exists(std::get<std::string>(**value))) {
            const std::string& id = std::get<std::string>(**value);
            const project::Problem problem{project::Severity::error,
                                           "there is no top event, gate or event '" + id + "'",
                                           "choose one of the list", field->parameter().name, 0};
            field->complain(QString::fromStdString(problem.what + "; " + problem.remedy + "."));
            value = problem;
        }
        if (!value) {
            problems.insert(problems.end(), value.problems().begin(), value.problems().end());
            if (!first) first = field;
        } else if (*value) {
            given.set(field->parameter().name, **value);
        }
    }
    if (!problems.empty()) {
        first->editor()->setFocus();
        return problems;
    }
    return sdk::complete(m_parameters, given);
}

ParameterField* ParameterForm::field(const std::string& name) const {
    for (ParameterField* field : m_fields)
        if (field->parameter().name == name) return field;
    return nullptr;
}

QString ParameterForm::summary() const {
    QStringList parts;
    for (ParameterField* const field : m_fields) {
        const QString text = field->typed().trimmed();
        if (text.isEmpty() || text == field->standard()) continue;
        QString part = QString::fromStdString(field->parameter().name) + ' ' + text;
        if (!field->parameter().unit.empty() && !text.contains(' '))
            part += ' ' + QString::fromStdString(field->parameter().unit);
        parts.push_back(part);
    }
    return parts.isEmpty() ? tr("with the standards") : parts.join(", ");
}

bool ParameterForm::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusIn) {
        if (const auto* widget = qobject_cast<QWidget*>(watched))
            m_help->setText(widget->toolTip());
    } else if (event->type() == QEvent::KeyPress) {
        const auto* const key = static_cast<QKeyEvent*>(event);
        if (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) {
            emit submitted();
            return true;
        }
    }
    return QWidget::eventFilter(watched, event);
}

} // namespace cutwater::editor
