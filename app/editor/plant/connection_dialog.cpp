// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/connection_dialog.h"

#include "app/editor/details/quantity_row.h"
#include "app/editor/outline/node_words.h"
#include "app/editor/plant/component_box.h"
#include "models/project/edits/supply.h"
#include "models/project/index.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

#include <set>

namespace cutwater::editor {

ConnectionDialog::ConnectionDialog(Session& session, const project::Connection& connection,
                                   QWidget* parent)
    : QDialog(parent), m_session(session), m_connection(connection), m_from(new ComponentBox(this)),
      m_to(new ComponentBox(this)), m_medium(new QComboBox(this)), m_path(new QComboBox(this)),
      m_through(new QLineEdit(this)), m_capacity(new QLineEdit(this)), m_unit(new QComboBox(this)),
      m_name(new QLineEdit(this)), m_wrong(new QLabel(this)) {
    setObjectName("connection");
    setWindowTitle(connection.id.empty() ? tr("New supply") : tr("Supply"));
    const project::Project& project = *session.project();
    auto* form = new QFormLayout;
    const auto field = [&](QWidget* widget, const char* name, const QString& label,
                           const QString& accessible) {
        widget->setObjectName(QLatin1String(name));
        widget->setAccessibleName(accessible);
        form->addRow(label, widget);
    };
    field(m_medium, "medium", tr("&What flows"), tr("What flows"));
    m_medium->setEditable(true);
    std::set<std::string> media;
    for (const auto& each : project.connections)
        if (!each.medium.empty()) media.insert(each.medium);
    for (const std::string& each : media)
        m_medium->addItem(QString::fromStdString(each));
    m_medium->setEditText(QString::fromStdString(connection.medium));
    m_medium->lineEdit()->setPlaceholderText(tr("24 V DC, fuel oil, control air, signal"));
    field(m_from, "from", tr("&From"), tr("From"));
    field(m_to, "to", tr("&To"), tr("To"));
    m_from->offer(project, {});
    m_to->offer(project, {});
    m_from->show(connection.from);
    m_to->show(connection.to);
    field(m_path, "path", tr("&Direction"), tr("Direction"));
    m_path->addItem(tr("feed: towards what is supplied"), 0);
    m_path->addItem(tr("return: back to the source"), 1);
    m_path->setCurrentIndex(connection.path == project::SupplyPath::back ? 1 : 0);
    field(m_through, "through", tr("T&hrough"), tr("Through which components, in their order"));
    m_through->setPlaceholderText(tr("fuses, breakers, terminals in their order: F-3, K-2"));
    QStringList way;
    for (const auto& device : connection.through)
        way << QString::fromStdString(device.id);
    m_through->setText(way.join(QStringLiteral(", ")));
    auto* capacity = new QWidget(this);
    auto* line = new QHBoxLayout(capacity);
    line->setContentsMargins(0, 0, 0, 0);
    line->addWidget(m_capacity);
    line->addWidget(m_unit);
    for (const auto& unit : project::allUnits())
        if (unit.dimension == project::Dimension::current ||
            unit.dimension == project::Dimension::power ||
            unit.dimension == project::Dimension::flow)
            m_unit->addItem(
                QString::fromUtf8(unit.symbol.data(), static_cast<qsizetype>(unit.symbol.size())),
                static_cast<int>(unit.unit));
    if (connection.capacity) {
        m_capacity->setText(numberWords(connection.capacity->value));
        m_unit->setCurrentIndex(
            qMax(0, m_unit->findData(static_cast<int>(connection.capacity->unit))));
    }
    form->addRow(tr("&Capacity"), capacity);
    m_capacity->setObjectName("capacity");
    m_capacity->setAccessibleName(tr("Capacity"));
    m_capacity->setPlaceholderText(tr("not known"));
    m_unit->setAccessibleName(tr("Unit of the capacity"));
    field(m_name, "name", tr("&Name"), tr("Name"));
    m_name->setText(QString::fromStdString(connection.name));
    m_wrong->setObjectName("wrong");
    m_wrong->setWordWrap(true);
    m_wrong->hide();
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Ok | QDialogButtonBox::Cancel, this);
    connect(buttons, &QDialogButtonBox::accepted, this, &ConnectionDialog::accept);
    connect(buttons, &QDialogButtonBox::rejected, this, &ConnectionDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(form);
    layout->addWidget(m_wrong);
    layout->addWidget(buttons);
    resize(480, sizeHint().height());
}

project::Connection ConnectionDialog::entered(QString& wrong) const {
    project::Connection made = m_connection;
    made.medium = m_medium->currentText().trimmed().toStdString();
    made.from = m_from->component();
    made.to = m_to->component();
    made.path = m_path->currentIndex() == 1 ? project::SupplyPath::back : project::SupplyPath::feed;
    made.name = m_name->text().trimmed().toStdString();
    made.through.clear();
    ComponentBox finder; // a tag is as good as an id
    finder.offer(*m_session.project(), {});
    for (const QString& each : m_through->text().split(',', Qt::SkipEmptyParts)) {
        finder.setEditText(each.trimmed());
        const project::Id id = finder.component();
        if (id.empty())
            wrong = tr("There is no component %1; write tags or ids with commas between them.")
                        .arg(each.trimmed());
        made.through.push_back({id, {}});
    }
    if (m_capacity->text().trimmed().isEmpty()) {
        made.capacity.reset();
    } else if (const auto value = numberFrom(m_capacity->text()); value && *value >= 0) {
        if (!made.capacity) made.capacity.emplace();
        made.capacity->value = *value;
        made.capacity->unit = static_cast<project::Unit>(m_unit->currentData().toInt());
    } else {
        wrong = tr("The capacity \"%1\" is no number of 0 or above.").arg(m_capacity->text());
    }
    return made;
}

void ConnectionDialog::accept() {
    QString wrong;
    const project::Connection facts = entered(wrong);
    if (wrong.isEmpty()) {
        const auto result = project::edits::setConnection(*m_session.project(), facts);
        if (!result) wrong = sentence(result.problems().front());
    }
    m_wrong->setText(wrong);
    m_wrong->setVisible(!wrong.isEmpty());
    if (!wrong.isEmpty()) return;
    if (m_session.apply(
            [&](const project::Project& p) { return project::edits::setConnection(p, facts); }))
        QDialog::accept();
}

} // namespace cutwater::editor
