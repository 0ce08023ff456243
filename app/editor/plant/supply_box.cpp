// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/supply_box.h"

#include "app/editor/outline/node_words.h"
#include "app/editor/plant/component_box.h"
#include "app/editor/plant/connection_dialog.h"
#include "app/editor/plant/plant_words.h"
#include "models/project/edits/plant.h"
#include "models/project/edits/supply.h"
#include "models/project/index.h"

#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>

#include <algorithm>
#include <map>

namespace cutwater::editor {

namespace edits = project::edits;

SupplyBox::SupplyBox(Session& session, QWidget* parent)
    : QGroupBox(tr("Supply"), parent), m_session(session), m_list(new QListWidget(this)),
      m_choice(new ComponentBox(this)), m_either(new QLabel(this)),
      m_remove(new QPushButton(tr("Remove"), this)), m_open(new QPushButton(tr("Open"), this)) {
    m_list->setObjectName("supplies");
    m_list->setAccessibleName(tr("Who supplies it, and whom it supplies"));
    m_list->setWordWrap(true);
    m_list->setMaximumHeight(fontMetrics().lineSpacing() * 8);
    m_list->installEventFilter(this);
    m_either->setObjectName("either");
    m_either->setWordWrap(true);
    m_choice->setObjectName("newSupplier");
    m_choice->setAccessibleName(tr("A component that it cannot do without"));
    auto* add = new QPushButton(tr("Add supplier"), this);
    add->setObjectName("addSupplier");
    add->setToolTip(tr("Without it this component is lost, too."));
    auto* connection = new QPushButton(tr("Add connection ..."), this);
    connection->setObjectName("addConnection");
    connection->setToolTip(tr("A feed or return with fuses, terminals and what it can carry."));
    m_remove->setObjectName("removeSupply");
    m_open->setObjectName("openSupply");
    auto* layout = new QGridLayout(this);
    layout->addWidget(m_list, 0, 0, 1, 3);
    layout->addWidget(m_either, 1, 0, 1, 3);
    layout->addWidget(m_choice, 2, 0, 1, 2);
    layout->addWidget(add, 2, 2);
    layout->addWidget(connection, 3, 0);
    layout->addWidget(m_open, 3, 1);
    layout->addWidget(m_remove, 3, 2);
    connect(add, &QPushButton::clicked, this, [this] { addSupplier(m_choice->component()); });
    connect(connection, &QPushButton::clicked, this, &SupplyBox::addConnection);
    connect(m_remove, &QPushButton::clicked, this, &SupplyBox::removeCurrent);
    connect(m_open, &QPushButton::clicked, this, &SupplyBox::openCurrent);
    connect(m_list, &QListWidget::itemActivated, this, &SupplyBox::openCurrent);
    const auto showButtons = [this] {
        const int row = m_list->currentRow();
        const bool any = row >= 0 && row < static_cast<int>(m_lines.size());
        m_open->setEnabled(any);
        m_remove->setEnabled(any && m_lines[static_cast<std::size_t>(row)].what != What::supplied);
    };
    connect(m_list, &QListWidget::currentRowChanged, this, showButtons);
    showButtons();
}

void SupplyBox::put(const Line& line, const QString& text) {
    m_lines.push_back(line);
    m_list->addItem(text);
}

void SupplyBox::show(const project::Id& component) {
    const int row = component == m_component ? m_list->currentRow() : -1;
    m_component = component;
    const Snapshot snapshot = m_session.project();
    const project::Index index(*snapshot);
    const auto named = [&](const project::Id& id) {
        const project::Component* other = index.component(id);
        return other ? wordsOf(*other) : tr("%1 (missing)").arg(QString::fromStdString(id));
    };
    m_list->clear();
    m_lines.clear();
    const project::Component* part = index.component(component);
    if (!part) return;
    for (const auto& supplier : part->suppliedBy)
        put({What::supplier, supplier.id, {}}, tr("Needs %1").arg(named(supplier.id)));
    for (const auto& each : snapshot->connections) {
        if (each.to != component && each.from != component) continue;
        QStringList way;
        for (const auto& device : each.through)
            way << named(device.id);
        const bool in = each.to == component;
        const QString medium =
            each.medium.empty() ? tr("something") : QString::fromStdString(each.medium);
        const QString sentence = each.path == project::SupplyPath::back
                                     ? (in ? tr("Return of %1 from %2") : tr("Return of %1 to %2"))
                                     : (in ? tr("Gets %1 from %2") : tr("Gives %1 to %2"));
        QString text = sentence.arg(medium, named(in ? each.from : each.to));
        if (!way.isEmpty()) text = tr("%1, through %2").arg(text, way.join(QStringLiteral(", ")));
        if (each.capacity)
            text = tr("%1; carries %2 %3")
                       .arg(text, numberWords(each.capacity->value),
                            QString::fromStdString(
                                std::string(project::facts(each.capacity->unit).symbol)));
        put({in ? What::incoming : What::outgoing, in ? each.from : each.to, each.id}, text);
    }
    for (const auto& each : snapshot->components)
        for (const auto& supplier : each.suppliedBy)
            if (supplier.id == component)
                put({What::supplied, each.id, {}}, tr("Is needed by %1").arg(wordsOf(each)));
    if (m_lines.empty()) {
        auto* none = new QListWidgetItem(tr("Nothing is known about who supplies it."), m_list);
        none->setFlags(Qt::NoItemFlags);
    } else {
        m_list->setCurrentRow(std::clamp(row, 0, m_list->count() - 1));
    }
    const QString either = redundancy();
    m_either->setText(either);
    m_either->setVisible(!either.isEmpty());
    if (m_offered != m_session.revision() || m_choice->count() == 0) m_choice->offer(*snapshot, {});
    m_offered = m_session.revision();
}

// Where a proposed tree takes one of several as enough: the rule of models/worksheet/skeleton.h.
QString SupplyBox::redundancy() const {
    const Snapshot snapshot = m_session.project();
    const project::Index index(*snapshot);
    std::map<std::string, QStringList> groups;
    const project::Component* part = index.component(m_component);
    for (const auto& supplier : part->suppliedBy)
        if (const auto* other = index.component(supplier.id); other && !other->type.empty())
            groups[other->type] << wordsOf(*other);
    for (const auto& each : snapshot->connections)
        if (each.to == m_component && each.path == project::SupplyPath::feed)
            if (const auto* other = index.component(each.from))
                groups[each.medium] << wordsOf(*other);
    QStringList sentences;
    for (const auto& [kind, names] : groups)
        if (names.size() > 1)
            sentences << tr("Redundant (%1): any one of %2 is taken as enough.")
                             .arg(QString::fromStdString(kind), names.join(QStringLiteral(", ")));
    return sentences.join('\n');
}

void SupplyBox::addSupplier(const project::Id& supplier) {
    const project::Index index(*m_session.project());
    const project::Component* part = index.component(m_component);
    if (!part) return;
    project::Component facts = *part;
    facts.suppliedBy.push_back({supplier, {}});
    m_session.apply([&](const project::Project& p) { return edits::setPart(p, facts); });
}

void SupplyBox::removeCurrent() {
    const int row = m_list->currentRow();
    if (row < 0 || row >= static_cast<int>(m_lines.size())) return;
    const Line line = m_lines[static_cast<std::size_t>(row)];
    if (line.what == What::incoming || line.what == What::outgoing) {
        m_session.apply(
            [&](const project::Project& p) { return edits::removeConnection(p, line.connection); });
    } else if (line.what == What::supplier) {
        project::Component facts = *project::Index(*m_session.project()).component(m_component);
        std::erase_if(facts.suppliedBy, [&](const auto& each) { return each.id == line.other; });
        m_session.apply([&](const project::Project& p) { return edits::setPart(p, facts); });
    }
}

void SupplyBox::openCurrent() {
    const int row = m_list->currentRow();
    if (row < 0 || row >= static_cast<int>(m_lines.size())) return;
    const Line line = m_lines[static_cast<std::size_t>(row)];
    if (line.connection.empty()) return emit componentWished(line.other);
    for (const auto& each : m_session.project()->connections)
        if (each.id == line.connection) {
            ConnectionDialog dialog(m_session, each, this);
            dialog.exec();
            return;
        }
}

void SupplyBox::addConnection() {
    project::Connection connection;
    connection.to = m_component;
    ConnectionDialog dialog(m_session, connection, this);
    dialog.exec();
}

bool SupplyBox::eventFilter(QObject* object, QEvent* event) {
    if (object == m_list && event->type() == QEvent::KeyPress &&
        static_cast<QKeyEvent*>(event)->key() == Qt::Key_Delete) {
        removeCurrent();
        return true;
    }
    return QGroupBox::eventFilter(object, event);
}

} // namespace cutwater::editor
