// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/outline_model.h"

#include "app/editor/outline/outline_node.h"
#include "models/project/edits/facts.h"

namespace cutwater::editor {

using project::edits::kCondition;
using project::edits::kLast;
using project::edits::kLoose;
using project::edits::Place;
using project::edits::Use;

OutlineModel::OutlineModel(Session& session, QObject* parent)
    : QAbstractItemModel(parent), m_session(session), m_root(std::make_unique<Node>()),
      m_ink(Qt::black) {
    m_root->fetched = true;
    take();
    for (const Wanted& wanted : wantedBelow(*m_root))
        m_root->children.push_back(make(*m_root, wanted));
    connect(&m_session, &Session::projectChanged, this, &OutlineModel::update);
    connect(&m_session, &Session::replaced, this, [this] {
        // Another project: rows with ids that happen to be equal are other rows.
        beginResetModel();
        m_draft = nullptr;
        m_root->children.clear();
        take();
        for (const Wanted& wanted : wantedBelow(*m_root))
            m_root->children.push_back(make(*m_root, wanted));
        endResetModel();
    });
}

OutlineModel::~OutlineModel() = default;

OutlineModel::Node* OutlineModel::nodeAt(const QModelIndex& index) const {
    return index.isValid() ? static_cast<Node*>(index.internalPointer()) : m_root.get();
}

QModelIndex OutlineModel::indexOf(const Node& node, int column) const {
    if (&node == m_root.get()) return {};
    return createIndex(static_cast<int>(node.position()), column, const_cast<Node*>(&node));
}

QModelIndex OutlineModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    return createIndex(row, column, nodeAt(parent)->children[static_cast<std::size_t>(row)].get());
}

QModelIndex OutlineModel::parent(const QModelIndex& child) const {
    return child.isValid() ? indexOf(*nodeAt(child)->parent) : QModelIndex();
}

int OutlineModel::rowCount(const QModelIndex& parent) const {
    if (parent.column() > 0) return 0;
    return static_cast<int>(nodeAt(parent)->children.size());
}

int OutlineModel::columnCount(const QModelIndex&) const {
    return columnCount_;
}

bool OutlineModel::hasInputs(const Node& node) const {
    const project::Gate* gate = m_lookup->gate(node.id);
    if (!gate || (gate->inputs.empty() && gate->condition.id.empty())) return false;
    // A file may hold a circle: it is shown once round.
    for (const Node* above = node.parent; above && above != m_root.get(); above = above->parent)
        if (above->id == node.id) return false;
    return true;
}

bool OutlineModel::hasChildren(const QModelIndex& parent) const {
    if (parent.column() > 0) return false;
    const Node& node = *nodeAt(parent);
    return node.fetched ? !node.children.empty() : hasInputs(node);
}

bool OutlineModel::canFetchMore(const QModelIndex& parent) const {
    if (parent.column() > 0) return false;
    return !nodeAt(parent)->fetched;
}

void OutlineModel::fetchMore(const QModelIndex& parent) {
    Node& node = *nodeAt(parent);
    if (node.fetched) return;
    node.fetched = true;
    const auto wanted = wantedBelow(node);
    if (wanted.empty()) return;
    beginInsertRows(parent, 0, static_cast<int>(wanted.size()) - 1);
    for (const Wanted& each : wanted)
        node.children.push_back(make(node, each));
    endInsertRows();
}

std::unique_ptr<OutlineModel::Node> OutlineModel::make(Node& parent, const Wanted& wanted) const {
    auto node = std::make_unique<Node>();
    node->parent = &parent;
    node->kind = wanted.kind;
    node->id = wanted.id;
    node->row = parent.children.size();
    node->fetched = !hasInputs(*node);
    return node;
}

std::vector<OutlineModel::Wanted> OutlineModel::wantedBelow(const Node& node) const {
    std::vector<Wanted> wanted;
    if (&node == m_root.get()) {
        for (const auto& top : m_project->tops)
            wanted.push_back({Kind::top, top.node.id});
        for (const auto& gate : m_project->gates)
            if (!m_uses.contains(gate.id)) wanted.push_back({Kind::loose, gate.id});
        for (const auto& event : m_project->events)
            if (!m_uses.contains(event.id)) wanted.push_back({Kind::loose, event.id});
    } else if (hasInputs(node)) {
        const project::Gate* gate = m_lookup->gate(node.id);
        for (const auto& input : gate->inputs)
            wanted.push_back({Kind::input, input.id});
        if (!gate->condition.id.empty()) wanted.push_back({Kind::condition, gate->condition.id});
    }
    return wanted;
}

void OutlineModel::take() {
    // The old texts must live until no view looks into them any more.
    const Snapshot old = m_project;
    m_project = m_session.project();
    m_lookup = std::make_unique<project::Index>(*m_project);
    m_parents.clear();
    m_uses.clear();
    for (const auto& gate : m_project->gates) {
        for (const auto& input : gate.inputs) {
            ++m_uses[input.id];
            m_parents[input.id].push_back(gate.id);
        }
        if (gate.condition.id.empty()) continue;
        ++m_uses[gate.condition.id];
        m_parents[gate.condition.id].push_back(gate.id);
    }
    for (const auto& top : m_project->tops)
        ++m_uses[top.node.id];
}

int OutlineModel::usesOf(const project::Id& node) const {
    const auto found = m_uses.find(node);
    return found == m_uses.end() ? 0 : found->second;
}

Use OutlineModel::useAt(const QModelIndex& index) const {
    if (!index.isValid()) return {};
    const Node& node = *nodeAt(index);
    switch (node.kind) {
    case Kind::loose: return {node.id, {}, kLoose};
    case Kind::condition: return {node.id, node.parent->id, kCondition};
    case Kind::draft: return {};
    case Kind::top:
    case Kind::input: break;
    }
    return {node.id, node.parent->id, node.placeRow()};
}

Spot OutlineModel::spotAt(const QModelIndex& index) const {
    const Use use = useAt(index);
    return {use.node, use.parent};
}

Place OutlineModel::placeBelow(const QModelIndex& parent, std::size_t row) const {
    const Node& node = *nodeAt(parent);
    if (row >= node.children.size()) return {node.id, kLast};
    return {node.id, node.children[row]->placeRow()};
}

bool OutlineModel::isDraft(const QModelIndex& index) const {
    return index.isValid() && nodeAt(index) == m_draft;
}

QModelIndex OutlineModel::startDraft(const QModelIndex& parent, int row) {
    dropDraft();
    if (canFetchMore(parent)) fetchMore(parent);
    Node& above = *nodeAt(parent);
    const int at = std::clamp(row, 0, static_cast<int>(above.children.size()));
    auto node = std::make_unique<Node>();
    node->parent = &above;
    node->kind = Kind::draft;
    node->fetched = true;
    m_draft = node.get();
    beginInsertRows(parent.siblingAtColumn(0), at, at);
    above.children.insert(above.children.begin() + at, std::move(node));
    endInsertRows();
    return indexOf(*m_draft);
}

void OutlineModel::dropDraft() {
    if (!m_draft) return;
    Node& above = *m_draft->parent;
    const int row = static_cast<int>(m_draft->position());
    beginRemoveRows(indexOf(above), row, row);
    m_draft = nullptr;
    above.children.erase(above.children.begin() + row);
    endRemoveRows();
}

Place OutlineModel::draftPlace() const {
    return m_draft ? Place{m_draft->parent->id, m_draft->placeRow()} : Place{};
}

bool OutlineModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    if (role != Qt::EditRole || !index.isValid() || isDraft(index)) return false;
    const project::Id node = nodeAt(index)->id;
    const std::string text = value.toString().trimmed().toStdString();
    return m_session.apply([&](const project::Project& project) {
        return project::edits::rename(project, node, text);
    });
}

} // namespace cutwater::editor
