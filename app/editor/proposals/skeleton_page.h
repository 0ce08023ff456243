// SPDX-License-Identifier: GPL-3.0-or-later
// SkeletonPage: a first tree for an end effect of the worksheet, gate by gate, with the reasons.
#pragma once

#include "app/editor/proposals/findings.h"
#include "app/editor/selection/selection.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QPushButton;
class QTreeWidget;
class QTreeWidgetItem;

namespace cutwater::editor {

class SkeletonPage : public QWidget {
    Q_OBJECT
public:
    SkeletonPage(Session& session, Selection& selection, QWidget* parent = nullptr);

    void show(std::shared_ptr<const Findings> findings); // null: none yet
    void choose(const QString& effect);
    void accept(); // what is ticked

signals:
    void effectWished(const QString& effect); // propose a tree for it
    void sentence(const QString& text);

private:
    void showEffects();
    void showTree();
    void showCurrent();
    void showAccept();

    Session& m_session;
    Selection& m_selection;
    std::shared_ptr<const Findings> m_findings;
    QComboBox* m_effects;
    QLabel* m_words;
    QTreeWidget* m_tree;
    QLabel* m_reason;
    QPushButton* m_accept;
    bool m_filling = false;
};

} // namespace cutwater::editor
