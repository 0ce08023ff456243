// SPDX-License-Identifier: GPL-3.0-or-later
// PlantModel: the breakdown of the plant as rows: components, their parts, and below each component
// first its failure modes.
#pragma once

#include "app/editor/plant/tree_places.h"
#include "app/editor/session/session.h"
#include "models/project/edits/plant.h"
#include "models/project/index.h"

#include <QAbstractItemModel>

#include <memory>
#include <vector>

namespace cutwater::editor {

class PlantModel : public QAbstractItemModel {
    Q_OBJECT
public:
    enum Column { textColumn, typeColumn, locationColumn, treesColumn, columnCount_ };
    enum class Kind { component, mode };

    explicit PlantModel(Session& session, QObject* parent = nullptr);
    ~PlantModel() override;

    QModelIndex index(int row, int column, const QModelIndex& parent = {}) const override;
    QModelIndex parent(const QModelIndex& child) const override;
    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    Qt::DropActions supportedDropActions() const override {
        return Qt::MoveAction | Qt::CopyAction;
    }
    Qt::DropActions supportedDragActions() const override {
        return Qt::MoveAction | Qt::CopyAction;
    }

    // Only rows in which all of these words occur (and what is above them); empty: all.
    void setFilter(const QString& words);
    const QString& filter() const { return m_filter; }
    int found() const { return m_found; } // rows that fit the filter themselves

    Kind kindAt(const QModelIndex& index) const;
    project::Id idAt(const QModelIndex& index) const; // empty for the draft, and for no row
    QModelIndex find(Kind kind, const project::Id& id) const;
    const project::Component*
    componentAt(const QModelIndex& index) const; // null: it is no component
    const project::FailureMode* modeAt(const QModelIndex& index) const;
    const project::Project& project() const { return *m_project; }
    const project::Index& lookup() const;
    const TreePlaces& places() const;

    // A row that is being typed: a component, or a failure mode.
    QModelIndex startDraft(const QModelIndex& parent, int row, Kind kind);
    void dropDraft();
    bool isDraft(const QModelIndex& index) const;
    // Where what is typed shall go.
    project::edits::PartPlace draftPlace() const;
    // Before child `row` of `parent`, counted among the children of that kind.
    project::edits::PartPlace placeAt(const QModelIndex& parent, int row, Kind kind) const;

signals:
    void aboutToRebuild(); // rows are made anew: remember what is unfolded
    void rebuilt();

private:
    struct Node;
    Node* nodeAt(const QModelIndex& index) const;
    QModelIndex indexOf(const Node& node, int column = 0) const;
    std::unique_ptr<Node> build();
    bool fits(const project::Component& component) const;
    bool fits(const project::FailureMode& mode) const;
    void follow(bool always);
    QString textOf(const Node& node, int column) const;
    QString tipOf(const Node& node) const;

    Session& m_session;
    Snapshot m_project;
    mutable std::unique_ptr<project::Index> m_lookup; // made when it is asked for, like m_places
    mutable std::unique_ptr<TreePlaces> m_places;
    std::unique_ptr<Node> m_root;
    Node* m_draft = nullptr;
    QString m_filter;
    QStringList m_words;
    int m_found = 0;
};

} // namespace cutwater::editor
