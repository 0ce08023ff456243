// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/reuse_list.h"

#include "app/editor/outline/node_words.h"
#include "models/project/index.h"

#include <algorithm>
#include <unordered_set>

namespace cutwater::editor {

ReuseList::ReuseList(const project::Project& project, const project::Id& notThis, QObject* parent)
    : QAbstractListModel(parent) {
    m_items.reserve(project.events.size() + project.gates.size() + project.modes.size());
    std::unordered_set<std::string_view> used;
    for (const project::Event& event : project.events) {
        used.insert(event.mode);
        if (event.id != notThis)
            m_items.push_back(
                {Reuse::What::node, event.id, nameOf(event), tr("event, used again")});
    }
    for (const project::Gate& gate : project.gates)
        if (gate.id != notThis)
            m_items.push_back({Reuse::What::node, gate.id, nameOf(gate), tr("gate, used again")});
    const project::Index index(project);
    for (const project::FailureMode& mode : project.modes) {
        if (used.contains(mode.id)) continue; // its event is in the list
        const project::Component* component = index.component(mode.component);
        QString text = QString::fromStdString(mode.name);
        if (component)
            text =
                QString::fromStdString(component->name.empty() ? component->tag : component->name) +
                QStringLiteral(" ") + text;
        m_items.push_back({Reuse::What::mode, mode.id, text, tr("failure mode of the plant")});
    }
    std::stable_sort(m_items.begin(), m_items.end(), [](const Reuse& a, const Reuse& b) {
        return a.text.compare(b.text, Qt::CaseInsensitive) < 0;
    });
}

int ReuseList::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QVariant ReuseList::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount()) return {};
    const Reuse& item = at(index.row());
    switch (role) {
    case Qt::DisplayRole:
        return QStringLiteral("%1   (%2, %3)")
            .arg(item.text, item.note, QString::fromStdString(item.id));
    case Qt::EditRole: return item.text;
    case Qt::UserRole: return item.text + QStringLiteral(" ") + QString::fromStdString(item.id);
    default: return {};
    }
}

} // namespace cutwater::editor
