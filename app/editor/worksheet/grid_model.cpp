// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/grid_model.h"

#include <algorithm>
#include <numeric>
#include <unordered_map>
#include <unordered_set>
#include <utility>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostRuns = 100; // of lines that go and come one by one; beyond: a reset

} // namespace

GridModel::GridModel(QObject* parent)
    : QAbstractTableModel(parent),
      m_data(std::make_shared<SheetData>(std::make_shared<const project::Project>())), m_groups(1),
      m_today(QDate::currentDate()) {
    m_columns.resize(sheetColumns().size());
    std::iota(m_columns.begin(), m_columns.end(), 0);
}

std::vector<GridModel::Group> GridModel::split(const std::vector<std::size_t>& rows) const {
    if (!isGrouped()) return {Group{{}, rows, false}};
    std::unordered_set<std::string> folded;
    for (const Group& group : m_groups)
        if (group.folded) folded.insert(group.name.toStdString());
    std::vector<Group> groups;
    const GroupBy by = m_arrangement.group;
    QString last;
    for (const std::size_t row : rows) {
        const QString key = groupKey(*m_data, row, by);
        if (groups.empty() || key != last) {
            const QString name = groupOf(*m_data, row, by);
            groups.push_back({name, {}, folded.contains(name.toStdString())});
        }
        last = key;
        groups.back().rows.push_back(row);
    }
    return groups;
}

void GridModel::arrange(const Arrangement& arrangement) {
    beginResetModel();
    if (arrangement.group != m_arrangement.group)
        for (Group& group : m_groups)
            group.folded = false;
    m_arrangement = arrangement;
    m_groups = split(arranged(*m_data, m_figures, m_arrangement));
    m_lines = linesOf(m_groups);
    m_mayBeOutOfOrder = false;
    endResetModel();
    emit orderChanged();
}

std::vector<GridModel::Line> GridModel::linesOf(const std::vector<Group>& groups) const {
    std::vector<Line> lines;
    for (std::size_t i = 0; i < groups.size(); ++i) {
        const int number = static_cast<int>(i);
        if (isGrouped()) lines.push_back({-1, number});
        if (groups[i].folded) continue;
        for (const std::size_t row : groups[i].rows)
            lines.push_back({static_cast<int>(row), number});
    }
    return lines;
}

// The groups with the rows of the next sheet: what is known stays where it is.
std::vector<GridModel::Group> GridModel::carriedOver(const SheetData& next) const {
    std::vector<Group> groups;
    std::unordered_map<std::size_t, std::pair<std::size_t, std::size_t>> places; // in `groups`
    for (const Group& group : m_groups) {
        Group& made = groups.emplace_back(Group{group.name, {}, group.folded});
        for (const std::size_t row : group.rows) {
            const int now = next.rowOf(m_data->id(row));
            if (now >= 0) made.rows.push_back(static_cast<std::size_t>(now));
        }
        if (made.rows.empty() && isGrouped()) groups.pop_back();
    }
    for (std::size_t row = 0; row < next.rows(); ++row) {
        if (m_data->rowOf(next.id(row)) >= 0) continue;
        const QString name = groupOf(next, row, m_arrangement.group);
        auto group = std::find_if(groups.begin(), groups.end(), [&](const Group& each) {
            return each.name.compare(name, Qt::CaseInsensitive) == 0;
        });
        if (group == groups.end()) {
            groups.push_back({name, {}, false});
            group = groups.end() - 1;
        }
        auto& rows = group->rows;
        const auto before = row > 0 ? std::find(rows.begin(), rows.end(), row - 1) : rows.end();
        rows.insert(before == rows.end() ? before : before + 1, row);
    }
    return groups;
}

void GridModel::setData(std::shared_ptr<const SheetData> next) {
    if (m_data->rows() == 0 || next->rows() == 0) {
        m_data = std::move(next);
        arrange(m_arrangement);
        return;
    }
    replaceLines(carriedOver(*next), next);
    m_mayBeOutOfOrder = !m_arrangement.keys.empty() || m_arrangement.hasFilter() || isGrouped();
    emit orderChanged();
}

// Lines go while the old sheet still counts, and come when the new one does, so that whoever looks
// meanwhile sees a whole sheet.
void GridModel::replaceLines(std::vector<Group> groups, std::shared_ptr<const SheetData> next) {
    std::vector<Line> wanted = linesOf(groups);
    // Group numbers may shift: heads are known by the name of their group.
    std::unordered_map<std::string, int> numbers;
    for (std::size_t i = 0; i < groups.size(); ++i)
        numbers.emplace(groups[i].name.toStdString(), static_cast<int>(i));
    const auto moved = [&](const Line& line) -> Line {
        const auto found =
            numbers.find(m_groups[static_cast<std::size_t>(line.group)].name.toStdString());
        const int group = found == numbers.end() ? -1 : found->second;
        if (line.row < 0) return {-1, group};
        return {next->rowOf(m_data->id(static_cast<std::size_t>(line.row))), group};
    };
    std::vector<Line> kept;
    std::vector<bool> goes(m_lines.size());
    std::size_t runs = 0;
    for (std::size_t i = 0; i < m_lines.size(); ++i) {
        const Line now = moved(m_lines[i]);
        goes[i] = now.group < 0 || (m_lines[i].row >= 0 && now.row < 0);
        if (!goes[i])
            kept.push_back(now);
        else
            runs += i == 0 || !goes[i - 1];
    }
    std::vector<bool> comes(wanted.size(), true);
    std::size_t at = 0;
    for (std::size_t i = 0; i < wanted.size(); ++i) {
        if (at < kept.size() && wanted[i] == kept[at]) {
            comes[i] = false;
            ++at;
        } else {
            runs += i == 0 || !comes[i - 1];
        }
    }
    if (at != kept.size() || runs > kMostRuns) { // in another order altogether
        beginResetModel();
        m_data = std::move(next);
        m_groups = std::move(groups);
        m_lines = std::move(wanted);
        endResetModel();
        return;
    }
    for (std::size_t end = goes.size(); end > 0;) {
        if (!goes[end - 1]) {
            --end;
            continue;
        }
        std::size_t begin = end;
        while (begin > 0 && goes[begin - 1])
            --begin;
        beginRemoveRows({}, static_cast<int>(begin), static_cast<int>(end) - 1);
        m_lines.erase(m_lines.begin() + std::ptrdiff_t(begin),
                      m_lines.begin() + std::ptrdiff_t(end));
        endRemoveRows();
        end = begin;
    }
    m_lines = std::move(kept);
    m_data = std::move(next);
    m_groups = std::move(groups);
    for (std::size_t begin = 0; begin < comes.size();) {
        if (!comes[begin]) {
            ++begin;
            continue;
        }
        std::size_t end = begin;
        while (end < comes.size() && comes[end])
            ++end;
        beginInsertRows({}, static_cast<int>(begin), static_cast<int>(end) - 1);
        m_lines.insert(m_lines.begin() + std::ptrdiff_t(begin),
                       wanted.begin() + std::ptrdiff_t(begin),
                       wanted.begin() + std::ptrdiff_t(end));
        endInsertRows();
        begin = end;
    }
    if (!m_lines.empty() && !m_columns.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
    if (!m_lines.empty()) emit headerDataChanged(Qt::Vertical, 0, rowCount() - 1);
}

void GridModel::setFigures(EffectFigures figures) {
    m_figures = std::move(figures);
    if (!m_lines.empty() && !m_columns.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, columnCount() - 1));
}

void GridModel::showColumns(std::vector<int> columns) {
    if (columns == m_columns) return;
    beginResetModel();
    m_columns = std::move(columns);
    endResetModel();
}

const SheetColumn& GridModel::columnAt(int section) const {
    return sheetColumns()[static_cast<std::size_t>(m_columns[static_cast<std::size_t>(section)])];
}

int GridModel::lineOf(const project::Id& id) const {
    const int row = m_data->rowOf(id);
    const auto found = std::find_if(m_lines.begin(), m_lines.end(),
                                    [&](const Line& line) { return line.row == row; });
    return row < 0 || found == m_lines.end() ? -1 : static_cast<int>(found - m_lines.begin());
}

project::Id GridModel::idAt(int line) const {
    return isGroup(line) ? project::Id() : m_data->id(static_cast<std::size_t>(rowAt(line)));
}

std::vector<std::size_t> GridModel::shownRows() const {
    std::vector<std::size_t> rows;
    for (const Line& line : m_lines)
        if (line.row >= 0) rows.push_back(static_cast<std::size_t>(line.row));
    return rows;
}

std::size_t GridModel::rowsPassing() const {
    return std::accumulate(
        m_groups.begin(), m_groups.end(), std::size_t{0},
        [](std::size_t sum, const Group& group) { return sum + group.rows.size(); });
}

void GridModel::fold(int line, bool folded) {
    if (!isGrouped() || line < 0 || line >= rowCount()) return;
    const int number = m_lines[static_cast<std::size_t>(line)].group;
    Group& group = m_groups[static_cast<std::size_t>(number)];
    if (group.folded == folded) return;
    const auto head = std::find(m_lines.begin(), m_lines.end(), Line{-1, number});
    const int first = static_cast<int>(head - m_lines.begin()) + 1;
    const int size = static_cast<int>(group.rows.size());
    if (folded) {
        beginRemoveRows({}, first, first + size - 1);
        m_lines.erase(m_lines.begin() + first, m_lines.begin() + first + size);
        group.folded = true;
        endRemoveRows();
    } else {
        beginInsertRows({}, first, first + size - 1);
        std::vector<Line> lines;
        for (const std::size_t row : group.rows)
            lines.push_back({static_cast<int>(row), number});
        m_lines.insert(m_lines.begin() + first, lines.begin(), lines.end());
        group.folded = false;
        endInsertRows();
    }
    emit dataChanged(index(first - 1, 0), index(first - 1, columnCount() - 1));
    emit orderChanged();
}

void GridModel::foldAll(bool folded) {
    if (!isGrouped()) return;
    beginResetModel();
    for (Group& group : m_groups)
        group.folded = folded;
    m_lines = linesOf(m_groups);
    endResetModel();
    emit orderChanged();
}

int GridModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

int GridModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_columns.size());
}

} // namespace cutwater::editor
