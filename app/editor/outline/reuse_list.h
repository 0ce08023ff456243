// SPDX-License-Identifier: GPL-3.0-or-later
// What may be used at a place instead of a new event: events and gates that are there, and failure
// modes of the plant that are no event yet.
#pragma once

#include "models/project/project.h"

#include <QAbstractListModel>
#include <QString>

#include <vector>

namespace cutwater::editor {

struct Reuse {
    enum class What { nothing, node, mode };
    What what = What::nothing; // a new event
    project::Id id;
    QString text; // that is compared with what is typed
    QString note; // what it is
};

class ReuseList : public QAbstractListModel {
    Q_OBJECT
public:
    ReuseList(const project::Project& project, const project::Id& notThis, QObject* parent);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    const Reuse& at(int row) const { return m_items[static_cast<std::size_t>(row)]; }

private:
    std::vector<Reuse> m_items;
};

} // namespace cutwater::editor
