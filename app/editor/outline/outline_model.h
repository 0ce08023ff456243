// SPDX-License-Identifier: GPL-3.0-or-later
// OutlineModel: the trees of a project as rows. A shared gate or event stands below each of its
// parents; rows are made when they are unfolded, so a mesh of gates costs no more than is looked
// at.
#pragma once

#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"
#include "models/project/edits/place.h"
#include "models/project/index.h"

#include <QAbstractItemModel>
#include <QIcon>

#include <map>
#include <memory>
#include <optional>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace cutwater::editor {

class OutlineModel : public QAbstractItemModel {
    Q_OBJECT
public:
    enum Column { textColumn, kindColumn, usesColumn, modelColumn, columnCount_ };
    enum Role { nodeRole = Qt::UserRole, isGateRole, usesRole };

    explicit OutlineModel(Session& session, QObject* parent = nullptr);
    ~OutlineModel() override;

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& child) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    bool hasChildren(const QModelIndex& parent = {}) const override;
    bool canFetchMore(const QModelIndex& parent) const override;
    void fetchMore(const QModelIndex& parent) override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::DropActions supportedDropActions() const override;
    Qt::DropActions supportedDragActions() const override;

    // What a row is; the node is empty for the draft row.
    project::edits::Use useAt(const QModelIndex& index) const;
    Spot spotAt(const QModelIndex& index) const;
    // Where something would be put before (with row kLast: behind) the children of this row; for an
    // invalid index among the top events.
    project::edits::Place placeBelow(const QModelIndex& parent, std::size_t row) const;
    bool isDraft(const QModelIndex& index) const;
    const project::Index& lookup() const { return *m_lookup; }
    const project::Project& project() const { return *m_project; }
    int usesOf(const project::Id& node) const;

    // A row for the spot, made and unfolded as far as needed; invalid where the node is in no tree.
    QModelIndex reveal(const Spot& spot);

    // An empty row to be typed into, before row `row` below `parent`; not part of the project.
    // There is one at a time.
    QModelIndex startDraft(const QModelIndex& parent, int row);
    void dropDraft();
    // Where the draft would be put.
    project::edits::Place draftPlace() const;

    // For icons; asked again when the palette changes.
    void setInk(const QColor& ink);

private:
    enum class Kind { top, loose, input, condition, draft };
    struct Node;
    struct Wanted {
        Kind kind;
        std::string_view id;
        bool operator==(const Wanted&) const = default;
    };

    void take();   // the session's snapshot
    void update(); // rows to what the snapshot says
    void updateChildren(Node& node);
    std::vector<Wanted> wantedBelow(const Node& node) const;
    std::unique_ptr<Node> make(Node& parent, const Wanted& wanted) const;
    bool hasInputs(const Node& node) const;
    Node* nodeAt(const QModelIndex& index) const;
    QModelIndex indexOf(const Node& node, int column = 0) const;
    QVariant text(const Node& node, int column) const;
    QString inWords(const Node& node) const;
    QIcon iconOf(const Node& node) const;

    Session& m_session;
    Snapshot m_project;
    std::unique_ptr<project::Index> m_lookup;
    std::unordered_map<std::string_view, std::vector<std::string_view>> m_parents; // gates above
    std::unordered_map<std::string_view, int> m_uses;
    std::unique_ptr<Node> m_root;
    Node* m_draft = nullptr;
    QColor m_ink;
    mutable std::map<int, QIcon> m_icons;
};

} // namespace cutwater::editor
