// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/part_form.h"

#include "app/editor/details/left_edit.h"
#include "app/editor/details/quantity_row.h"
#include "app/editor/plant/plant_words.h"
#include "app/editor/plant/supply_box.h"
#include "models/project/edits/plant.h"
#include "models/project/index.h"

#include <QComboBox>
#include <QFormLayout>
#include <QGroupBox>
#include <QLabel>
#include <QLineEdit>
#include <QScopedValueRollback>
#include <QVBoxLayout>

#include <set>

namespace cutwater::editor {

namespace edits = project::edits;
using project::Component;

namespace {

constexpr int kMostNamed = 12;

QString text(const std::string& words) {
    return QString::fromStdString(words);
}

void setText(QLineEdit* edit, const std::string& words) {
    if (edit->text() != text(words)) edit->setText(text(words));
    edit->setModified(false);
}

QString link(const char* kind, const project::Id& id, const QString& words) {
    return QStringLiteral("<a href=\"%1:%2\">%3</a>")
        .arg(QLatin1String(kind), text(id), words.toHtmlEscaped());
}

} // namespace

PartForm::PartForm(Session& session, QWidget* parent) : QWidget(parent), m_session(session) {
    setObjectName("partForm");
    makeFields();
}

void PartForm::makeFields() {
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
    m_tag = field(new QLineEdit, "tag", tr("&Tag"), tr("Tag"));
    m_name = field(new QLineEdit, "name", tr("&Name"), tr("Name"));
    m_type = field(new QComboBox, "type", tr("T&ype"), tr("Type"));
    m_function = field(new QLineEdit, "function", tr("F&unction"), tr("Function"));
    m_location = field(new QComboBox, "location", tr("&Location"), tr("Location"));
    m_id = field(new QLineEdit, "id", tr("&Id"), tr("Id"));
    m_id->setToolTip(
        tr("The id stands in the file and in references; all of them follow a change."));
    m_same = field(new QLabel, "sameType", tr("Same type"), tr("Other components of the type"));
    m_modes = field(new QLabel, "modes", tr("Fails"), tr("Failure modes"));
    m_origin = field(new QLabel, "origin", tr("From"), tr("Library it was taken from"));
    for (QLabel* label : {m_same, m_modes, m_origin}) {
        label->setWordWrap(true);
        label->setTextInteractionFlags(Qt::TextBrowserInteraction);
        connect(label, &QLabel::linkActivated, this, [this](const QString& href) {
            const project::Id id = href.section(':', 1).toStdString();
            if (href.startsWith(QStringLiteral("mode:")))
                emit modeWished(id);
            else
                emit componentWished(id);
        });
    }
    for (QComboBox* box : {m_type, m_location}) {
        box->setEditable(true);
        box->setInsertPolicy(QComboBox::NoInsert);
        box->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        box->setMinimumContentsLength(16);
    }
    m_supply = new SupplyBox(m_session);
    auto* rates = new QGroupBox(tr("Failure rate of the whole, where its modes are shares of it"));
    m_rate = new QuantityRow(project::Role::rate, false, rates);
    (new QVBoxLayout(rates))->addWidget(m_rate);
    m_remark = new LeftEdit(this, [this] {
        const std::string words = m_remark->toPlainText().toStdString();
        if (m_remark->document()->isModified())
            change([&](Component& facts) { facts.remark = words; });
    });
    m_remark->setObjectName("remark");
    m_remark->setAccessibleName(tr("Remark"));
    auto* remarkLabel = new QLabel(tr("&Remark"));
    remarkLabel->setBuddy(m_remark);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(m_form);
    layout->addWidget(m_supply);
    layout->addWidget(remarkLabel);
    layout->addWidget(m_remark);
    layout->addWidget(rates);
    layout->addStretch();

    const auto line = [this](QLineEdit* edit, std::string Component::*fact) {
        connect(edit, &QLineEdit::editingFinished, this, [this, edit, fact] {
            if (!edit->isModified()) return;
            edit->setModified(false);
            const std::string words = edit->text().trimmed().toStdString();
            change([&](Component& facts) { facts.*fact = words; });
        });
    };
    line(m_tag, &Component::tag);
    line(m_name, &Component::name);
    line(m_function, &Component::function);
    const auto choice = [this](QComboBox* box, std::string Component::*fact) {
        const auto take = [this, box, fact] {
            const std::string words = box->currentText().trimmed().toStdString();
            change([&](Component& facts) { facts.*fact = words; });
        };
        connect(box->lineEdit(), &QLineEdit::editingFinished, this, take);
        connect(box, qOverload<int>(&QComboBox::activated), this, take);
    };
    choice(m_type, &Component::type);
    choice(m_location, &Component::location);
    connect(m_id, &QLineEdit::editingFinished, this, &PartForm::changeId);
    connect(m_rate, &QuantityRow::edited, this, [this] {
        if (!m_rate->isReadable()) return;
        const auto quantity = m_rate->quantity();
        change([&](Component& facts) { facts.failureRate = quantity; });
    });
    connect(m_supply, &SupplyBox::componentWished, this, &PartForm::componentWished);
}

// One fact is another one now; where nothing differs, nothing is to be undone.
void PartForm::change(const std::function<void(Component&)>& what) {
    if (m_busy) return;
    const project::Index index(*m_session.project());
    const Component* part = index.component(m_component);
    if (!part) return;
    Component facts = *part;
    what(facts);
    if (facts == *part) return;
    if (!m_session.apply([&](const project::Project& p) { return edits::setPart(p, facts); }))
        show(m_component);
}

void PartForm::changeId() {
    if (m_busy || !m_id->isModified()) return;
    m_id->setModified(false);
    const project::Id id = m_id->text().trimmed().toStdString(), old = m_component;
    if (id == old) return;
    m_component = id; // the page follows before apply() returns
    emit idChanged(id);
    if (m_session.apply(
            [&](const project::Project& p) { return edits::renameComponentId(p, old, id); }))
        return;
    m_component = old;
    emit idChanged(old);
    show(old);
}

void PartForm::offerWords() {
    if (m_offered == m_session.revision() && m_type->count() > 0) return;
    m_offered = m_session.revision();
    std::set<std::string> types, locations;
    for (const Component& each : m_session.project()->components) {
        types.insert(each.type);
        locations.insert(each.location);
    }
    m_type->clear();
    m_location->clear();
    for (const std::string& each : types)
        if (!each.empty()) m_type->addItem(text(each));
    for (const std::string& each : locations)
        if (!each.empty()) m_location->addItem(text(each));
}

void PartForm::show(const project::Id& component) {
    const QScopedValueRollback busy(m_busy, true);
    const Snapshot snapshot = m_session.project();
    const project::Index index(*snapshot);
    const Component* part = index.component(component);
    if (!part) return;
    m_component = component;
    offerWords();
    setText(m_tag, part->tag);
    setText(m_name, part->name);
    setText(m_id, part->id);
    setText(m_function, part->function);
    m_type->setEditText(text(part->type));
    m_location->setEditText(text(part->location));
    m_same->setText(sameType(*part));
    m_modes->setText(modesOf(*part));
    m_origin->setText(part->origin ? tr("library %1, type %2, revision %3")
                                         .arg(text(part->origin->library), text(part->origin->type),
                                              text(part->origin->revision))
                                   : QString());
    for (QLabel* label : {m_same, m_origin}) {
        label->setVisible(!label->text().isEmpty());
        m_form->labelForField(label)->setVisible(!label->text().isEmpty());
    }
    m_supply->show(component);
    m_rate->show(part->failureRate ? &*part->failureRate : nullptr, snapshot->parameters);
    if (m_remark->toPlainText() != text(part->remark)) m_remark->setPlainText(text(part->remark));
    m_remark->document()->setModified(false);
}

QString PartForm::sameType(const Component& part) const {
    if (part.type.empty()) return {};
    QStringList names;
    int more = 0;
    for (const Component& each : m_session.project()->components) {
        if (each.type != part.type || each.id == part.id) continue;
        if (names.size() < kMostNamed)
            names << link("part", each.id, text(each.tag.empty() ? each.id : each.tag));
        else
            ++more;
    }
    const QString list = names.join(QStringLiteral(", "));
    return more > 0 ? tr("%1 and %2 more").arg(list).arg(more) : list;
}

QString PartForm::modesOf(const Component& part) const {
    QStringList names;
    double shares = 0;
    int shared = 0;
    for (const auto& mode : m_session.project()->modes) {
        if (mode.component != part.id) continue;
        names << link("mode", mode.id, wordsOf(mode));
        if (mode.ratio && mode.ratio->parameter.empty()) {
            shares += mode.ratio->value;
            ++shared;
        }
    }
    if (names.isEmpty()) return tr("no failure mode yet: press M in the plant");
    QString list = names.join(QStringLiteral(", "));
    if (shared > 0)
        list += QStringLiteral("<br>") +
                (shares > 1 + 1e-9 ? tr("Their shares of the failure rate add up to %1: more than "
                                        "the whole.")
                                   : tr("Their shares of the failure rate add up to %1."))
                    .arg(shares, 0, 'g', 4);
    return list;
}

} // namespace cutwater::editor
