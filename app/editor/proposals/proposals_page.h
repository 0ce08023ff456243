// SPDX-License-Identifier: GPL-3.0-or-later
// ProposalsPage: where worksheet and trees meet, a first tree for an end effect, and common causes.
#pragma once

#include "app/editor/proposals/findings.h"
#include "app/editor/selection/selection.h"

#include <QWidget>

class QLabel;
class QTabWidget;

namespace cutwater::editor {

class CausesPage;
class CoveragePage;
class SkeletonPage;

class ProposalsPage : public QWidget {
    Q_OBJECT
public:
    ProposalsPage(Session& session, Selection& selection, QWidget* parent = nullptr);

    Background& findings() { return *m_findings; }
    CoveragePage& coverage() { return *m_coverage; }
    SkeletonPage& skeleton() { return *m_skeleton; }
    CausesPage& causes() { return *m_causes; }

signals:
    void sentence(const QString& text);
    void modeWished(const cutwater::project::Id& mode);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void showFindings();

    Background* m_findings;
    QTabWidget* m_tabs;
    QLabel* m_state;
    CoveragePage* m_coverage;
    SkeletonPage* m_skeleton;
    CausesPage* m_causes;
};

} // namespace cutwater::editor
