// SPDX-License-Identifier: GPL-3.0-or-later
// CausesPage: proposed common causes with their reason, accepted one by one.
#pragma once

#include "app/editor/proposals/findings.h"
#include "app/editor/selection/selection.h"

#include <QWidget>

class QCheckBox;
class QComboBox;
class QLabel;
class QLineEdit;
class QPushButton;
class QTreeWidget;

namespace cutwater::editor {

class CausesPage : public QWidget {
    Q_OBJECT
public:
    CausesPage(Session& session, Selection& selection, QWidget* parent = nullptr);

    void show(std::shared_ptr<const Findings> findings); // null: none yet
    void accept();

signals:
    void sentence(const QString& text);

private:
    void fill();
    void showCurrent();
    const worksheet::CauseProposal* current() const;

    Session& m_session;
    Selection& m_selection;
    std::shared_ptr<const Findings> m_findings;
    QCheckBox* m_fresh;
    QLabel* m_words;
    QTreeWidget* m_list;
    QLabel* m_reason;
    QLineEdit* m_beta;
    QLineEdit* m_source;
    QComboBox* m_tag;
    QPushButton* m_accept;
    bool m_filling = false;
};

} // namespace cutwater::editor
