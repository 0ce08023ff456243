// SPDX-License-Identifier: GPL-3.0-or-later
// RiskPage: the risk matrix as picture and as table, and the project's scales.
#pragma once

#include "app/editor/risk/live_risks.h"
#include "app/editor/selection/selection.h"

#include <QWidget>

#include <functional>
#include <memory>

class QCheckBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QSplitter;
class QVBoxLayout;

namespace cutwater::editor {

class RiskBoard;
class ScalesPage;
class TablePage;

class RiskPage : public QWidget {
    Q_OBJECT
public:
    RiskPage(Session& session, Selection& selection, QWidget* parent = nullptr);
    ~RiskPage() override;

    Background& risks() { return *m_risks; }
    RiskBoard& board() { return *m_board; }
    TablePage* table() const { return m_table; } // null until there is an answer
    ScalesPage& scales() { return *m_scales; }

    void copyPicture();
    void savePicture();
    void saveTable();

    // A file name for `what` ("SVG (*.svg)"), or empty; tests answer it.
    std::function<QString(const QString& title, const QString& proposed, const QString& what)>
        whereToSave;

signals:
    void sentence(const QString& text);

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void showRisks();
    void showState();
    void showTable();
    void choose(const std::vector<std::string>& nodes);
    void write(const QString& path, const std::string& bytes);

    Session& m_session;
    Selection& m_selection;
    Background* m_risks;
    std::shared_ptr<const RiskAnswer> m_shown;
    RiskBoard* m_board;
    ScalesPage* m_scales;
    TablePage* m_table = nullptr;
    QSplitter* m_split;
    bool m_divided = false; // once; then it is the user's
    QWidget* m_tablePlace;
    QLabel* m_cell; // what the table shows
    QLabel* m_state;
    QCheckBox* m_causes;
    QProgressBar* m_progress;
    QPushButton* m_all;
    QPushButton* m_copy;
    QPushButton* m_picture;
    QPushButton* m_csv;
};

} // namespace cutwater::editor
