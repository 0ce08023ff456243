// SPDX-License-Identifier: GPL-3.0-or-later
// SheetReportStrip: what became of the last step, one sentence that stays until the next one; where
// cells were not taken, the list of them with the reason.
#pragma once

#include "app/editor/worksheet/cell_block.h"

#include <QFrame>

#include <vector>

class QLabel;
class QPushButton;
class QTableWidget;

namespace cutwater::editor {

class SheetReportStrip : public QFrame {
    Q_OBJECT
public:
    explicit SheetReportStrip(QWidget* parent);

    // `bad`: something was not done.
    void tell(const QString& sentence, bool bad);
    void tell(const QString& sentence, std::vector<NotTaken> notTaken);
    void putAway();
    QString sentence() const;
    const std::vector<NotTaken>& notTaken() const { return m_notTaken; }
    QString asText() const; // the list, with tabs

signals:
    void rowWished(const cutwater::project::Id& mode, const QString& column);

private:
    void showList(bool shown);

    std::vector<NotTaken> m_notTaken;
    QLabel* m_mark;
    QLabel* m_sentence;
    QPushButton* m_show;
    QPushButton* m_copy;
    QTableWidget* m_list;
};

} // namespace cutwater::editor
