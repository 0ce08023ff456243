// SPDX-License-Identifier: GPL-3.0-or-later
// ReportList: what goes into the report, in its order: results that were sent to it, and analyses
// that are computed anew whenever the report is made. Kept for the session; the project file has no
// place for it.
#pragma once

#include "models/project/project.h"
#include "plugins/sdk/interfaces.h"

#include <QAbstractListModel>

#include <memory>
#include <optional>
#include <vector>

namespace cutwater::editor {

struct ReportItem {
    QString title;        // the user's; empty: that of the result
    QString comment;      // the user's
    QString method;       // what answered
    std::string analysis; // its id
    // A result that was sent; none: computed when the report is made.
    std::shared_ptr<const sdk::Result> result;
    std::vector<std::pair<std::string, std::string>> parameters;
    std::shared_ptr<const project::Project> of; // what it was computed from
    bool wanted = true;                         // in the report; else it waits in the list

    QString shownTitle() const;
};

class ReportList : public QAbstractListModel {
    Q_OBJECT
public:
    using QAbstractListModel::QAbstractListModel;

    const std::vector<ReportItem>& items() const { return m_items; }
    const ReportItem& item(int row) const { return m_items[static_cast<std::size_t>(row)]; }
    // One that has the same result is not doubled. Answers its row.
    int add(ReportItem item);
    void remove(int row);
    void move(int row, int by); // up: -1, down: 1; nothing at the ends
    void setTitle(int row, const QString& title);
    void setComment(int row, const QString& comment);
    void clear();
    // Results of another project than this one are said to be stale.
    void setProject(std::shared_ptr<const project::Project> project);
    bool isStale(int row) const;

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;

signals:
    void changed();

private:
    void tell(int row);

    std::vector<ReportItem> m_items;
    std::shared_ptr<const project::Project> m_project;
};

} // namespace cutwater::editor
