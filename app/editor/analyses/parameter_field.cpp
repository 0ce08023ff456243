// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/parameter_field.h"

#include "app/editor/answers/own_words.h"

#include <QCheckBox>
#include <QComboBox>
#include <QCompleter>
#include <QLabel>
#include <QLineEdit>

#include <fmt/format.h>

namespace cutwater::editor {
namespace {

using sdk::ParameterType;

// "max-order" as people read it, with its unit: "Max order [h]".
QString titleOf(const sdk::Parameter& parameter) {
    QString title = inOwnWords(parameter.name).replace('-', ' ');
    if (!title.isEmpty()) title[0] = title[0].toUpper();
    if (!parameter.unit.empty()) title += " [" + QString::fromStdString(parameter.unit) + ']';
    return title;
}

QString textOf(const sdk::Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) return QString::fromStdString(*text);
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return QString::number(*whole);
    if (const auto* real = std::get_if<double>(&value))
        return QString::fromStdString(fmt::format("{}", *real));
    return std::get<bool>(value) ? "yes" : "no";
}

// The sentence, and what may be given.
QString tipOf(const sdk::Parameter& parameter) {
    QString tip = inOwnWords(parameter.sentence);
    if (!tip.isEmpty()) tip[0] = tip[0].toUpper();
    const QString unit = QString::fromStdString(parameter.unit);
    const auto with = [&](double value) {
        return QString::fromStdString(fmt::format("{}", value)) +
               (unit.isEmpty() ? "" : ' ' + unit);
    };
    QString range;
    if (parameter.minimum && parameter.maximum)
        range = ParameterField::tr("from %1 to %2")
                    .arg(with(*parameter.minimum), with(*parameter.maximum));
    else if (parameter.minimum)
        range = ParameterField::tr("at least %1").arg(with(*parameter.minimum));
    else if (parameter.maximum)
        range = ParameterField::tr("at most %1").arg(with(*parameter.maximum));
    return range.isEmpty() ? tip + '.' : tip + " (" + range + ").";
}

} // namespace

ParameterField::ParameterField(const sdk::Parameter& parameter, const project::Project* project,
                               QWidget* form)
    : QObject(form), m_parameter(parameter), m_label(new QLabel(titleOf(parameter), form)),
      m_complaint(new QLabel(form)) {
    switch (parameter.type) {
    case ParameterType::flag:
        m_editor = m_check = new QCheckBox(tr("yes"), form);
        if (parameter.standard) m_check->setChecked(std::get<bool>(*parameter.standard));
        connect(m_check, &QCheckBox::toggled, this, &ParameterField::changed);
        break;
    case ParameterType::choice: makeChoice(); break;
    case ParameterType::topEvent: makeTop(project); break;
    case ParameterType::text:
    case ParameterType::integer:
    case ParameterType::number:
        m_editor = m_line = new QLineEdit(form);
        if (parameter.standard) m_line->setText(textOf(*parameter.standard));
        m_line->setPlaceholderText(tr("not given"));
        connect(m_line, &QLineEdit::textChanged, this, &ParameterField::changed);
    }
    if (m_box) connect(m_box, &QComboBox::currentTextChanged, this, &ParameterField::changed);
    connect(this, &ParameterField::changed, this, [this] { complain({}); });
    m_editor->setObjectName(QString::fromStdString(parameter.name));
    m_editor->setToolTip(tipOf(parameter));
    m_editor->setAccessibleName(titleOf(parameter));
    m_editor->setAccessibleDescription(tipOf(parameter));
    m_label->setToolTip(tipOf(parameter));
    m_label->setBuddy(m_editor);
    m_complaint->setObjectName("complaint-" + QString::fromStdString(parameter.name));
    m_complaint->setWordWrap(true);
    m_complaint->setTextFormat(Qt::PlainText);
    m_complaint->hide();
}

void ParameterField::makeChoice() {
    m_editor = m_box = new QComboBox(m_label->parentWidget());
    if (!m_parameter.standard) m_box->addItem(tr("(not given)"), QString());
    for (const std::string& choice : m_parameter.choices) {
        const QString text = QString::fromStdString(choice);
        m_box->addItem(text, text);
    }
    if (m_parameter.standard)
        m_box->setCurrentIndex(m_box->findData(textOf(*m_parameter.standard)));
}

void ParameterField::makeTop(const project::Project* project) {
    m_editor = m_box = new QComboBox(m_label->parentWidget());
    m_box->setEditable(true); // the id of any gate or event may be typed
    m_box->setInsertPolicy(QComboBox::NoInsert);
    m_box->completer()->setCompletionMode(QCompleter::PopupCompletion);
    m_box->completer()->setFilterMode(Qt::MatchContains);
    if (!m_parameter.standard) m_box->addItem(tr("(not given)"), QString());
    for (const std::string& choice : m_parameter.choices) {
        QString text = QString::fromStdString(choice);
        if (project)
            for (const project::TopEvent& top : project->tops)
                if (top.id == choice && !top.name.empty())
                    text += "  " + QString::fromStdString(top.name);
        m_box->addItem(text, QString::fromStdString(choice));
    }
    if (m_parameter.standard) type(textOf(*m_parameter.standard));
    m_box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
    m_box->setMinimumContentsLength(10);
    // The id comes first: it must not be scrolled out of sight.
    connect(m_box, &QComboBox::currentIndexChanged, m_box,
            [box = m_box] { box->lineEdit()->setCursorPosition(0); });
    m_box->lineEdit()->setCursorPosition(0);
}

QString ParameterField::typed() const {
    if (m_check) return m_check->isChecked() ? "yes" : "no";
    if (m_line) return m_line->text();
    const int item = m_box->findText(m_box->currentText());
    return item >= 0 ? m_box->itemData(item).toString() : m_box->currentText();
}

QString ParameterField::standard() const {
    if (m_parameter.standard) return textOf(*m_parameter.standard);
    return m_check ? QStringLiteral("no") : QString();
}

void ParameterField::type(const QString& text) {
    if (m_check) {
        m_check->setChecked(text == "yes");
    } else if (m_line) {
        m_line->setText(text);
    } else if (const int item = m_box->findData(text); item >= 0) {
        m_box->setCurrentIndex(item);
    } else if (m_box->isEditable()) {
        m_box->setEditText(text);
    }
}

project::Outcome<std::optional<sdk::Value>> ParameterField::read() {
    const QString text = typed();
    complain({});
    if (text.trimmed().isEmpty()) return std::optional<sdk::Value>();
    auto value = sdk::parseValue(m_parameter, text.toStdString());
    if (value) return std::optional<sdk::Value>(std::move(*value));
    const project::Problem& problem = value.problems().front();
    complain(QString::fromStdString(problem.what + "; " + problem.remedy + "."));
    return value.problems();
}

void ParameterField::complain(const QString& sentence) {
    m_complaint->setText(sentence.isEmpty() ? QString() : QStringLiteral("\u2716 ") + sentence);
    m_complaint->setVisible(!sentence.isEmpty());
    m_editor->setAccessibleDescription(sentence.isEmpty() ? tipOf(m_parameter)
                                                          : sentence + ' ' + tipOf(m_parameter));
}

} // namespace cutwater::editor
