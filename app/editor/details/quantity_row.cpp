// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/details/quantity_row.h"

#include "app/editor/outline/node_words.h"

#include <QComboBox>
#include <QCoreApplication>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>
#include <QLocale>
#include <QSignalBlocker>

#include <algorithm>
#include <cmath>

namespace cutwater::editor {

namespace {

QString utf8(std::string_view text) {
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

void setText(QLineEdit* edit, const QString& text) {
    if (edit->text() == text) return;
    const QSignalBlocker quiet(edit);
    edit->setText(text);
}

QString fromModels(const char* context, std::string_view text) {
    return QCoreApplication::translate(context, std::string(text).c_str());
}

} // namespace

std::optional<double> numberFrom(const QString& text) {
    bool good = false;
    QString plain = text.trimmed();
    plain.replace(',', '.');
    const double value = QLocale::c().toDouble(plain, &good);
    if (!good || !std::isfinite(value)) return std::nullopt;
    return value;
}

QString words(project::Role role) {
    switch (role) {
    case project::Role::probability: return QCoreApplication::translate("Words", "Probability");
    case project::Role::rate: return QCoreApplication::translate("Words", "Failure rate or MTTF");
    case project::Role::mission: return QCoreApplication::translate("Words", "Mission time");
    case project::Role::repair: return QCoreApplication::translate("Words", "Mean time to repair");
    case project::Role::interval: return QCoreApplication::translate("Words", "Test interval");
    case project::Role::firstTest: return QCoreApplication::translate("Words", "First test after");
    case project::Role::testDuration: return QCoreApplication::translate("Words", "Test takes");
    case project::Role::coverage: return QCoreApplication::translate("Words", "Test coverage");
    case project::Role::shape: return QCoreApplication::translate("Words", "Weibull shape");
    case project::Role::scale: return QCoreApplication::translate("Words", "Characteristic life");
    case project::Role::location: return QCoreApplication::translate("Words", "Failure-free time");
    case project::Role::frequency: return QCoreApplication::translate("Words", "Frequency");
    }
    return {};
}

QString words(project::ModelKind kind) {
    switch (kind) {
    case project::ModelKind::none: return QCoreApplication::translate("Words", "not quantified");
    case project::ModelKind::probability:
        return QCoreApplication::translate("Words", "constant probability");
    case project::ModelKind::mission:
        return QCoreApplication::translate("Words", "rate over a mission, no repair");
    case project::ModelKind::repairable:
        return QCoreApplication::translate("Words", "rate, seen at once and repaired");
    case project::ModelKind::tested:
        return QCoreApplication::translate("Words", "rate, found only by a test");
    case project::ModelKind::perDemand:
        return QCoreApplication::translate("Words", "fails when asked");
    case project::ModelKind::weibull:
        return QCoreApplication::translate("Words", "ageing (Weibull)");
    case project::ModelKind::frequency:
        return QCoreApplication::translate("Words", "initiating event, how often");
    }
    return {};
}

QString words(project::Clock clock) {
    switch (clock) {
    case project::Clock::unstated: return QCoreApplication::translate("Words", "not said");
    case project::Clock::calendarHour:
        return QCoreApplication::translate("Words", "every hour on the calendar");
    case project::Clock::firingHour:
        return QCoreApplication::translate("Words", "every hour of firing");
    case project::Clock::start: return QCoreApplication::translate("Words", "every start");
    case project::Clock::demand: return QCoreApplication::translate("Words", "every demand");
    }
    return {};
}

QuantityRow::QuantityRow(project::Role role, bool required, QWidget* parent)
    : QWidget(parent), m_role(role), m_value(new QLineEdit(this)), m_unit(new QComboBox(this)),
      m_errorFactor(new QLineEdit(this)), m_parameter(new QComboBox(this)),
      m_document(new QLineEdit(this)), m_place(new QLineEdit(this)), m_tag(new QComboBox(this)),
      m_sentence(new QLabel(this)) {
    const auto& facts = project::facts(role);
    auto* title = new QLabel(required ? words(role) : tr("%1 (optional)").arg(words(role)), this);
    title->setToolTip(fromModels("Models", facts.sentence));
    title->setBuddy(m_value);
    const auto named = [&](QWidget* field, const char* name, const QString& what) {
        field->setObjectName(utf8(facts.word) + QLatin1Char('.') + QLatin1String(name));
        field->setAccessibleName(words(role) + QStringLiteral(", ") + what);
        field->setToolTip(what);
    };
    named(m_value, "value", tr("value"));
    named(m_unit, "unit", tr("unit"));
    named(m_errorFactor, "error-factor",
          tr("error factor of a lognormal distribution: 95 % value over median, above 1"));
    named(m_parameter, "parameter", tr("a number that several events share"));
    named(m_document, "document", tr("source: document"));
    named(m_place, "place", tr("source: table, section or page"));
    named(m_tag, "tag", tr("how far the source can be trusted"));
    m_value->setPlaceholderText(tr("not given"));
    m_errorFactor->setPlaceholderText(tr("error factor"));
    m_document->setPlaceholderText(tr("source: document"));
    m_place->setPlaceholderText(tr("table, page"));
    m_errorFactor->setMaximumWidth(fontMetrics().averageCharWidth() * 14);
    for (const auto& unit : project::allUnits()) {
        const bool fits = std::find(facts.dimensions.begin(), facts.dimensions.end(),
                                    unit.dimension) != facts.dimensions.end();
        if (!fits || unit.unit == project::Unit::unstated) continue;
        m_unit->addItem(QStringLiteral("%1").arg(utf8(unit.symbol)), static_cast<int>(unit.unit));
        m_unit->setItemData(m_unit->count() - 1, fromModels("Models", unit.words), Qt::ToolTipRole);
    }
    m_tag->addItem(tr("trust: not said"), QString());
    for (const auto tag : project::allSourceTags())
        m_tag->addItem(fromModels("Models", tag), utf8(tag));
    m_sentence->setWordWrap(true);

    auto* layout = new QGridLayout(this);
    layout->setContentsMargins(0, 2, 0, 6);
    layout->setVerticalSpacing(2);
    layout->addWidget(title, 0, 0, 1, 4);
    layout->addWidget(m_value, 1, 0);
    layout->addWidget(m_unit, 1, 1);
    layout->addWidget(m_errorFactor, 1, 2);
    layout->addWidget(m_parameter, 1, 3);
    layout->addWidget(m_document, 2, 0);
    layout->addWidget(m_place, 2, 1, 1, 2);
    layout->addWidget(m_tag, 2, 3);
    layout->addWidget(m_sentence, 3, 0, 1, 4);
    layout->setColumnStretch(0, 3);
    layout->setColumnStretch(3, 2);
    for (QComboBox* box : {m_unit, m_parameter, m_tag}) {
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(box == m_unit ? 6 : 10);
        connect(box, qOverload<int>(&QComboBox::activated), this, [this] {
            showState();
            emit edited();
        });
    }
    for (QLineEdit* edit : {m_value, m_errorFactor, m_document, m_place})
        connect(edit, &QLineEdit::editingFinished, this, [this, edit] {
            if (!edit->isModified()) return;
            edit->setModified(false);
            showState();
            emit edited();
        });
    showState();
}

void QuantityRow::show(const project::Quantity* quantity,
                       const std::vector<project::Parameter>& parameters) {
    m_shown = quantity ? *quantity : project::Quantity();
    if (!quantity || quantity->unit == project::Unit::unstated)
        m_shown.unit = static_cast<project::Unit>(m_unit->itemData(0).toInt());
    const QSignalBlocker quiet(this);
    setText(m_value,
            quantity && quantity->parameter.empty() ? numberWords(quantity->value) : QString());
    m_unit->setCurrentIndex(qMax(0, m_unit->findData(static_cast<int>(m_shown.unit))));
    const auto* lognormal = std::get_if<project::Lognormal>(&m_shown.uncertainty);
    setText(m_errorFactor, lognormal ? numberWords(lognormal->errorFactor) : QString());
    const bool other = !lognormal && m_shown.uncertainty.index() != 0;
    m_errorFactor->setEnabled(!other);
    if (other) m_errorFactor->setPlaceholderText(tr("other distribution"));
    m_parameter->clear();
    m_parameter->addItem(tr("its own number"), QString());
    for (const auto& parameter : parameters)
        m_parameter->addItem(
            QString::fromStdString(parameter.name.empty() ? parameter.id : parameter.name),
            QString::fromStdString(parameter.id));
    m_parameter->setCurrentIndex(
        qMax(0, m_parameter->findData(QString::fromStdString(m_shown.parameter))));
    setText(m_document, QString::fromStdString(m_shown.source.document));
    setText(m_place, QString::fromStdString(m_shown.source.place));
    m_tag->setCurrentIndex(qMax(0, m_tag->findData(QString::fromStdString(m_shown.source.tag))));
    showState();
}

bool QuantityRow::isReadable() const {
    const bool value = m_value->text().trimmed().isEmpty() || numberFrom(m_value->text());
    const bool factor = m_errorFactor->text().trimmed().isEmpty() ||
                        numberFrom(m_errorFactor->text()).value_or(0) > 1;
    return value && factor;
}

std::optional<project::Quantity> QuantityRow::quantity() const {
    project::Quantity made = m_shown;
    made.parameter = m_parameter->currentData().toString().toStdString();
    const auto value = numberFrom(m_value->text());
    if (!value && made.parameter.empty()) return std::nullopt;
    if (made.parameter.empty()) {
        made.value = *value;
        made.unit = static_cast<project::Unit>(m_unit->currentData().toInt());
        const auto factor = numberFrom(m_errorFactor->text());
        const auto* before = std::get_if<project::Lognormal>(&m_shown.uncertainty);
        if (factor && m_errorFactor->isEnabled()) {
            // The median stays where it was said; where the value was the median, it follows.
            const bool follows = !before || before->median == m_shown.value;
            made.uncertainty = project::Lognormal{follows ? *value : before->median, *factor};
        } else if (before) {
            made.uncertainty = {};
        }
    }
    made.source.document = m_document->text().trimmed().toStdString();
    made.source.place = m_place->text().trimmed().toStdString();
    made.source.tag = m_tag->currentData().toString().toStdString();
    return made;
}

void QuantityRow::showState() {
    const bool shared = m_parameter->currentIndex() > 0;
    for (QWidget* field : {static_cast<QWidget*>(m_value), static_cast<QWidget*>(m_unit)})
        field->setEnabled(!shared);
    QString text;
    if (!m_value->text().trimmed().isEmpty() && !numberFrom(m_value->text()))
        text = tr("\"%1\" is no number; type for example 1e-6 or 0.5.").arg(m_value->text());
    else if (!isReadable())
        text = tr("The error factor is a number above 1, for example 3.");
    m_sentence->setText(text);
    m_sentence->setVisible(!text.isEmpty());
}

} // namespace cutwater::editor
