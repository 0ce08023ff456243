// SPDX-License-Identifier: GPL-3.0-or-later
// Selection: what is looked at. Every view sets it and follows it; views do not call each other.
#pragma once

#include "models/project/value.h"

#include <QObject>
#include <QString>

#include <set>
#include <vector>

namespace cutwater::editor {

// A node at one of its places: an event that is used twice stands at two spots. `parent` may be
// empty: then any of its places is meant (or it is the start of a tree).
struct Spot {
    project::Id node;
    project::Id parent = {};
    bool operator==(const Spot&) const = default;
};

class Selection : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    // Id of the TopEvent whose tree is shown; empty where there is none. Ids may be gone from the
    // project after an edit: views ignore those that they do not find.
    const project::Id& top() const { return m_top; }
    // The last one is the current one, where keys work.
    const std::vector<Spot>& spots() const { return m_spots; }
    Spot current() const { return m_spots.empty() ? Spot{} : m_spots.back(); }
    bool isSelected(const project::Id& node) const;
    // Nodes that belong together, such as a cut set, and why: drawn by line and mark, and said.
    const std::set<project::Id>& marked() const { return m_marked; }
    const QString& reason() const { return m_reason; }

    // Each signals only where something changes.
    void showTop(const project::Id& top);
    void select(const std::vector<project::Id>& nodes);
    void selectSpots(std::vector<Spot> spots);
    void mark(std::set<project::Id> nodes, const QString& reason);
    void clearMarks() { mark({}, {}); }

signals:
    void topChanged();
    void selectionChanged();
    void marksChanged();

private:
    project::Id m_top;
    std::vector<Spot> m_spots;
    std::set<project::Id> m_marked;
    QString m_reason;
};

} // namespace cutwater::editor
