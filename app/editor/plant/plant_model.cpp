// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/plant/plant_model.h"

#include "app/editor/plant/plant_node.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

namespace cutwater::editor {

using project::Component;
using project::FailureMode;
using project::edits::PartPlace;

PlantModel::PlantModel(Session& session, QObject* parent)
    : QAbstractItemModel(parent), m_session(session), m_root(std::make_unique<Node>()) {
    m_project = m_session.project();
    m_root = build();
    connect(&m_session, &Session::projectChanged, this, [this] { follow(false); });
    connect(&m_session, &Session::replaced, this, [this] { follow(true); });
}

PlantModel::~PlantModel() = default;

// Nobody may be looking, and a tree of 20,000 events is not to be indexed at each stroke of a key.
const project::Index& PlantModel::lookup() const {
    if (!m_lookup) m_lookup = std::make_unique<project::Index>(*m_project);
    return *m_lookup;
}

const TreePlaces& PlantModel::places() const {
    if (!m_places) m_places = std::make_unique<TreePlaces>(m_project);
    return *m_places;
}

// No recursion: a file may hold a breakdown of any depth, or a circle. Components of a circle, and
// those whose parent is missing, stand at the top, where they can be mended.
std::unique_ptr<PlantModel::Node> PlantModel::build() {
    auto root = std::make_unique<Node>();
    const auto& components = m_project->components;
    std::unordered_map<std::string_view, std::vector<const Component*>> parts;
    std::unordered_map<std::string_view, std::vector<const FailureMode*>> modes;
    std::unordered_set<std::string_view> known;
    for (const Component& each : components)
        known.insert(each.id);
    for (const Component& each : components)
        parts[known.contains(each.parent) ? std::string_view(each.parent) : std::string_view()]
            .push_back(&each);
    for (const FailureMode& each : m_project->modes)
        modes[each.component].push_back(&each);
    std::unordered_set<std::string_view> placed;
    m_found = 0;
    const auto put = [&](Node& above, const Component& component) {
        std::vector<std::pair<Node*, const Component*>> left{{&above, &component}};
        while (!left.empty()) {
            const auto [parent, each] = left.back();
            left.pop_back();
            if (!placed.insert(each->id).second) continue;
            Node& node = parent->add(Kind::component, each->id);
            const bool itself = fits(*each);
            node.wanted = itself;
            m_found += itself && !m_words.isEmpty();
            for (const FailureMode* mode : modes[each->id]) {
                const bool fit = fits(*mode);
                m_found += fit && !m_words.isEmpty();
                if (itself || fit) {
                    node.add(Kind::mode, mode->id).wanted = true;
                    node.wanted = true;
                }
            }
            const auto& below = parts[each->id];
            for (auto part = below.rbegin(); part != below.rend(); ++part)
                left.emplace_back(&node, *part);
        }
    };
    for (const Component* each : parts[{}])
        put(*root, *each);
    for (const Component& each : components)
        if (!placed.contains(each.id)) put(*root, each);
    if (!m_words.isEmpty()) root->keepWanted();
    root->number();
    return root;
}

bool PlantModel::fits(const Component& each) const {
    if (m_words.isEmpty()) return true;
    QString text;
    for (const std::string* part :
         {&each.id, &each.tag, &each.name, &each.type, &each.function, &each.location})
        text += QString::fromStdString(*part) + ' ';
    return std::all_of(m_words.begin(), m_words.end(), [&](const QString& word) {
        return text.contains(word, Qt::CaseInsensitive);
    });
}

bool PlantModel::fits(const FailureMode& each) const {
    if (m_words.isEmpty()) return true;
    QString text;
    for (const std::string* part : {&each.id, &each.name, &each.localEffect, &each.endEffect})
        text += QString::fromStdString(*part) + ' ';
    return std::all_of(m_words.begin(), m_words.end(), [&](const QString& word) {
        return text.contains(word, Qt::CaseInsensitive);
    });
}

void PlantModel::follow(bool always) {
    const Snapshot old = m_project; // texts that rows look into until they are made anew
    m_project = m_session.project();
    m_lookup.reset();
    m_places.reset();
    auto made = build();
    if (!always && !m_draft && made->sameAs(*m_root)) {
        m_root->each([this](Node& node) {
            if (node.children.empty()) return;
            const QModelIndex above = indexOf(node);
            emit dataChanged(index(0, 0, above),
                             index(rowCount(above) - 1, columnCount_ - 1, above));
        });
        return;
    }
    emit aboutToRebuild();
    beginResetModel();
    m_draft = nullptr;
    m_root = std::move(made);
    endResetModel();
    emit rebuilt();
}

void PlantModel::setFilter(const QString& words) {
    if (words == m_filter) return;
    m_filter = words;
    m_words = words.split(' ', Qt::SkipEmptyParts);
    follow(true);
}

PlantModel::Node* PlantModel::nodeAt(const QModelIndex& index) const {
    return index.isValid() ? static_cast<Node*>(index.internalPointer()) : m_root.get();
}

QModelIndex PlantModel::indexOf(const Node& node, int column) const {
    if (!node.parent) return {};
    return createIndex(node.row, column, const_cast<Node*>(&node));
}

QModelIndex PlantModel::index(int row, int column, const QModelIndex& parent) const {
    if (!hasIndex(row, column, parent)) return {};
    return createIndex(row, column, nodeAt(parent)->children[static_cast<std::size_t>(row)].get());
}

QModelIndex PlantModel::parent(const QModelIndex& child) const {
    return child.isValid() ? indexOf(*nodeAt(child)->parent) : QModelIndex();
}

int PlantModel::rowCount(const QModelIndex& parent) const {
    return parent.column() > 0 ? 0 : static_cast<int>(nodeAt(parent)->children.size());
}

int PlantModel::columnCount(const QModelIndex&) const {
    return columnCount_;
}

PlantModel::Kind PlantModel::kindAt(const QModelIndex& index) const {
    return nodeAt(index)->kind;
}

project::Id PlantModel::idAt(const QModelIndex& index) const {
    return index.isValid() ? nodeAt(index)->id : project::Id();
}

const Component* PlantModel::componentAt(const QModelIndex& index) const {
    return index.isValid() && kindAt(index) == Kind::component ? lookup().component(idAt(index))
                                                               : nullptr;
}

const FailureMode* PlantModel::modeAt(const QModelIndex& index) const {
    return index.isValid() && kindAt(index) == Kind::mode ? lookup().mode(idAt(index)) : nullptr;
}

QModelIndex PlantModel::find(Kind kind, const project::Id& id) const {
    QModelIndex found;
    if (id.empty()) return found;
    m_root->each([&](Node& node) {
        if (node.parent && node.kind == kind && node.id == id) found = indexOf(node);
    });
    return found;
}

bool PlantModel::isDraft(const QModelIndex& index) const {
    return index.isValid() && nodeAt(index) == m_draft;
}

QModelIndex PlantModel::startDraft(const QModelIndex& parent, int row, Kind kind) {
    dropDraft();
    Node& above = *nodeAt(parent);
    const int at = std::clamp(row, 0, static_cast<int>(above.children.size()));
    beginInsertRows(parent.siblingAtColumn(0), at, at);
    auto node = std::make_unique<Node>();
    node->parent = &above;
    node->kind = kind;
    m_draft = node.get();
    above.children.insert(above.children.begin() + at, std::move(node));
    above.number();
    endInsertRows();
    return indexOf(*m_draft);
}

void PlantModel::dropDraft() {
    if (!m_draft) return;
    Node& above = *m_draft->parent;
    const int row = m_draft->row;
    beginRemoveRows(indexOf(above), row, row);
    m_draft = nullptr;
    above.children.erase(above.children.begin() + row);
    above.number();
    endRemoveRows();
}

PartPlace PlantModel::draftPlace() const {
    return m_draft ? placeAt(indexOf(*m_draft->parent), m_draft->row + 1, m_draft->kind)
                   : PartPlace();
}

PartPlace PlantModel::placeAt(const QModelIndex& parent, int row, Kind kind) const {
    const Node& above = *nodeAt(parent);
    for (auto i = static_cast<std::size_t>(std::max(row, 0)); i < above.children.size(); ++i) {
        const Node& next = *above.children[i];
        if (next.kind == kind && !next.id.empty()) return {above.id, next.id};
    }
    return {above.id, {}};
}

} // namespace cutwater::editor
