// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/library/type_model.h"

#include <algorithm>

namespace cutwater::editor {

namespace {

bool fits(const library::ComponentType& type, const QStringList& words) {
    QString text;
    for (const std::string* part : {&type.id, &type.name, &type.group, &type.function})
        text += QString::fromStdString(*part) + ' ';
    for (const library::Mode& mode : type.modes)
        text += QString::fromStdString(mode.facts.name + ' ' + mode.facts.localEffect) + ' ';
    return std::all_of(words.begin(), words.end(), [&](const QString& word) {
        return text.contains(word, Qt::CaseInsensitive);
    });
}

} // namespace

void TypeModel::setContent(std::shared_ptr<const ShelfContent> content) {
    beginResetModel();
    m_content = std::move(content);
    fill();
    endResetModel();
}

void TypeModel::setFilter(const QString& words) {
    if (words == m_filter) return;
    beginResetModel();
    m_filter = words;
    fill();
    endResetModel();
}

void TypeModel::fill() {
    m_rows.clear();
    if (!m_content) return;
    const QStringList words = m_filter.split(' ', Qt::SkipEmptyParts);
    for (const library::Library& library : m_content->libraries)
        for (const library::ComponentType& type : library.types)
            if (fits(type, words)) m_rows.push_back({&library, &type});
}

TypeModel::Row TypeModel::rowAt(const QModelIndex& index) const {
    return index.isValid() ? m_rows[static_cast<std::size_t>(index.row())] : Row();
}

QModelIndex TypeModel::find(const project::Id& library, const project::Id& type) const {
    for (std::size_t i = 0; i < m_rows.size(); ++i)
        if (m_rows[i].library->id == library && m_rows[i].type->id == type)
            return index(static_cast<int>(i), 0);
    return {};
}

int TypeModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int TypeModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : columnCount_;
}

QVariant TypeModel::data(const QModelIndex& index, int role) const {
    const Row row = rowAt(index);
    if (!row.type || (role != Qt::DisplayRole && role != Qt::ToolTipRole)) return {};
    if (role == Qt::ToolTipRole) return QString::fromStdString(row.type->function);
    switch (index.column()) {
    case nameColumn: return QString::fromStdString(row.type->name);
    case groupColumn: return QString::fromStdString(row.type->group);
    case modesColumn: return static_cast<int>(row.type->modes.size());
    case ratesColumn:
        return static_cast<int>(
            std::count_if(row.type->modes.begin(), row.type->modes.end(),
                          [](const library::Mode& mode) { return mode.noRate.empty(); }));
    case libraryColumn:
        return QString::fromStdString(row.library->name.empty() ? row.library->id
                                                                : row.library->name);
    default: return {};
    }
}

QVariant TypeModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case nameColumn: return tr("Type");
    case groupColumn: return tr("Group");
    case modesColumn: return tr("Modes");
    case ratesColumn: return tr("Rates");
    case libraryColumn: return tr("Library");
    default: return {};
    }
}

} // namespace cutwater::editor
