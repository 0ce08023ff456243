// SPDX-License-Identifier: GPL-3.0-or-later
// TypeModel: the component types of all libraries as rows, those that fit what is looked for.
#pragma once

#include "app/editor/library/shelf.h"

#include <QAbstractTableModel>

#include <memory>
#include <vector>

namespace cutwater::editor {

class TypeModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { nameColumn, groupColumn, modesColumn, ratesColumn, libraryColumn, columnCount_ };

    using QAbstractTableModel::QAbstractTableModel;

    void setContent(std::shared_ptr<const ShelfContent> content);
    // Words that must all occur in name, group, function or failure modes of a type.
    void setFilter(const QString& words);

    struct Row {
        const library::Library* library = nullptr;
        const library::ComponentType* type = nullptr;
    };
    Row rowAt(const QModelIndex& index) const; // nulls for no row
    QModelIndex find(const project::Id& library, const project::Id& type) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void fill();

    std::shared_ptr<const ShelfContent> m_content;
    std::vector<Row> m_rows;
    QString m_filter;
};

} // namespace cutwater::editor
