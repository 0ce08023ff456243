// SPDX-License-Identifier: GPL-3.0-or-later
// CoveragePage: where the worksheet and the trees do not meet; and severity beside probability
// where they do.
#pragma once

#include "app/editor/proposals/findings.h"
#include "app/editor/selection/selection.h"

#include <QWidget>

class QLabel;
class QTreeWidget;
class QTreeWidgetItem;

namespace cutwater::editor {

class CoveragePage : public QWidget {
    Q_OBJECT
public:
    CoveragePage(Session& session, Selection& selection, QWidget* parent = nullptr);

    void show(std::shared_ptr<const Findings> findings); // null: none yet

signals:
    void modeWished(const cutwater::project::Id& mode); // show it in the plant
    void treeWished(const QString& effect);             // propose a tree for it

private:
    void fill();
    void go(const QTreeWidgetItem* item);

    Session& m_session;
    Selection& m_selection;
    std::shared_ptr<const Findings> m_findings;
    QLabel* m_words;
    QTreeWidget* m_list;
};

} // namespace cutwater::editor
