// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plugins/sdk/result.h"

#include <QTimer>
#include <QWidget>

#include <memory>

class QLabel;
class QLineEdit;
class QTableView;

namespace cutwater::editor {

class ResultFilter;
class ResultModel;

// One table of a result: sortable, with a filter, copied as text or CSV as it is shown.
class TablePage : public QWidget {
    Q_OBJECT

public:
    TablePage(std::shared_ptr<const sdk::Result> result, std::size_t table,
              QWidget* parent = nullptr);

    QTableView* view() const { return m_view; }
    // The selected rows where there are several, otherwise all that are shown.
    QString asText() const;
    QString asCsv() const;

signals:
    // A row became the current one, or was clicked.
    void rowChosen(const std::vector<std::string>& nodes, const QString& reason);

private:
    void choose(const QModelIndex& index);
    void filter();
    void fitRows();
    void makeActions();
    sdk::Table picked() const;

    ResultModel* m_model;
    ResultFilter* m_filter;
    QLineEdit* m_words;
    QLabel* m_count;
    QTableView* m_view;
    QTimer m_pause; // between typing and filtering
};

} // namespace cutwater::editor
