// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/answer_model.h"

#include <algorithm>

namespace cutwater::editor {
namespace {

// The same thing, though its words may have changed: a single failure with another figure.
bool sameThing(const AnswerLine& a, const AnswerLine& b) {
    return a.kind == b.kind && a.nodes == b.nodes && (!a.nodes.empty() || a.text == b.text);
}

} // namespace

void AnswerModel::show(std::vector<AnswerLine> lines) {
    const auto same =
        std::mismatch(m_lines.begin(), m_lines.end(), lines.begin(), lines.end(), sameThing);
    const auto kept = static_cast<std::size_t>(same.first - m_lines.begin());
    std::size_t tail = 0;
    while (tail < std::min(m_lines.size(), lines.size()) - kept &&
           sameThing(m_lines[m_lines.size() - 1 - tail], lines[lines.size() - 1 - tail]))
        ++tail;
    const std::size_t oldEnd = m_lines.size() - tail, newEnd = lines.size() - tail;
    const auto at = [&](std::size_t row) {
        return m_lines.begin() + static_cast<std::ptrdiff_t>(row);
    };
    if (oldEnd > kept) {
        beginRemoveRows({}, static_cast<int>(kept), static_cast<int>(oldEnd) - 1);
        m_lines.erase(at(kept), at(oldEnd));
        endRemoveRows();
    }
    if (newEnd > kept) {
        beginInsertRows({}, static_cast<int>(kept), static_cast<int>(newEnd) - 1);
        m_lines.insert(at(kept), lines.begin() + static_cast<std::ptrdiff_t>(kept),
                       lines.begin() + static_cast<std::ptrdiff_t>(newEnd));
        endInsertRows();
    }
    for (std::size_t row = 0; row < lines.size(); ++row) {
        if (m_lines[row] == lines[row]) continue;
        m_lines[row] = std::move(lines[row]);
        const QModelIndex changed = index(static_cast<int>(row));
        emit dataChanged(changed, changed);
    }
}

int AnswerModel::find(const AnswerLine& line) const {
    const auto found = std::find_if(m_lines.begin(), m_lines.end(),
                                    [&](const AnswerLine& one) { return sameThing(one, line); });
    return found == m_lines.end() ? -1 : static_cast<int>(found - m_lines.begin());
}

int AnswerModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant AnswerModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const AnswerLine& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole: return line.text;
    case Qt::AccessibleTextRole: {
        const QString word = AnswerLines::word(line.kind);
        QString text = line.text;
        text.replace('\n', ". ");
        return word.isEmpty() ? text : word + ": " + text;
    }
    case KindRole: return static_cast<int>(line.kind);
    case ReasonRole: return line.reason;
    case NodesRole: {
        QStringList nodes;
        for (const std::string& node : line.nodes)
            nodes.push_back(QString::fromStdString(node));
        return nodes;
    }
    default: return {};
    }
}

Qt::ItemFlags AnswerModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    const bool heading = m_lines[static_cast<std::size_t>(index.row())].kind == LineKind::heading;
    return heading ? Qt::ItemFlags(Qt::ItemIsEnabled) | Qt::ItemNeverHasChildren
                   : Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemNeverHasChildren;
}

} // namespace cutwater::editor
