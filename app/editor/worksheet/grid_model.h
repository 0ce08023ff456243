// SPDX-License-Identifier: GPL-3.0-or-later
// GridModel: the worksheet as lines on a screen: rows, and the heads of groups. Rows follow the
// project, but keep the place they have until somebody sorts, filters or groups again: a row does
// not run away from under the hand that types in it.
#pragma once

#include "app/editor/worksheet/arrange.h"
#include "app/editor/worksheet/sheet_data.h"

#include <QAbstractTableModel>
#include <QDate>

#include <functional>
#include <memory>
#include <vector>

namespace cutwater::editor {

class GridModel : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Role {
        typedRole = Qt::UserRole, // bool: can be typed
        groupRole,                // QString: the head of a group, in words; else invalid
        foldedRole,               // bool, of heads
        overdueRole,              // bool: a date that has gone by
    };

    explicit GridModel(QObject* parent = nullptr);

    // A new snapshot. Rows keep their order, what is gone goes, what is new stands behind its
    // neighbour in the project, whether the filter would show it or not.
    void setData(std::shared_ptr<const SheetData> data);
    void setFigures(EffectFigures figures);
    void setToday(const QDate& today) { m_today = today; }
    const SheetData& sheet() const { return *m_data; }
    const std::shared_ptr<const SheetData>& data() const { return m_data; }
    const EffectFigures& figures() const { return m_figures; }

    const Arrangement& arrangement() const { return m_arrangement; }
    // Sorts, filters and groups anew, also where nothing of it changed. Resets the model.
    void arrange(const Arrangement& arrangement);
    // Something changed since: rows may stand where the arrangement would not have them.
    bool mayBeOutOfOrder() const { return m_mayBeOutOfOrder; }

    // Places in sheetColumns(), in the order in which they are seen.
    const std::vector<int>& shownColumns() const { return m_columns; }
    void showColumns(std::vector<int> columns);
    const SheetColumn& columnAt(int section) const;

    // The row of the sheet, or -1 for the head of a group.
    int rowAt(int line) const { return m_lines[static_cast<std::size_t>(line)].row; }
    bool isGroup(int line) const { return rowAt(line) < 0; }
    int lineOf(const project::Id& id) const;    // -1: not seen
    project::Id idAt(int line) const;           // empty for the head of a group
    std::vector<std::size_t> shownRows() const; // without those in folded groups
    std::size_t rowsPassing() const;            // with them
    bool isGrouped() const { return m_arrangement.group != GroupBy::none; }
    void fold(int line, bool folded);
    void foldAll(bool folded);

    // Types into the cell: a sentence why not, or empty. Set by whoever owns the session.
    std::function<QString(const QModelIndex&, const QString&)> typing;

    int rowCount(const QModelIndex& parent = {}) const override;
    int columnCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

signals:
    void typingRefused(const QString& sentence);
    void orderChanged();

private:
    struct Line {
        int row = -1;
        int group = 0;
        bool operator==(const Line&) const = default;
    };
    struct Group {
        QString name;
        std::vector<std::size_t> rows;
        bool folded = false;
    };

    std::vector<Group> split(const std::vector<std::size_t>& rows) const;
    std::vector<Group> carriedOver(const SheetData& next) const;
    std::vector<Line> linesOf(const std::vector<Group>& groups) const;
    void replaceLines(std::vector<Group> groups, std::shared_ptr<const SheetData> next);
    QVariant groupData(const Group& group, int column, int role) const;
    QString shownText(int row, int place) const;
    QString tip(int row, int column) const;
    bool isOverdue(int row, const SheetColumn& column) const;

    std::shared_ptr<const SheetData> m_data;
    EffectFigures m_figures;
    Arrangement m_arrangement;
    std::vector<int> m_columns;
    std::vector<Group> m_groups; // one without a name where nothing is grouped
    std::vector<Line> m_lines;
    QDate m_today;
    bool m_mayBeOutOfOrder = false;
};

} // namespace cutwater::editor
