// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plugins/sdk/result.h"

#include <QWidget>

#include <functional>
#include <memory>

class QComboBox;
class QLabel;
class QListView;
class QStackedWidget;

namespace cutwater::editor {

// A whole result: its notes on top, and one of its tables or plots below, chosen from a list.
class ResultView : public QWidget {
    Q_OBJECT

public:
    // `caption`: with which values it was computed.
    ResultView(std::shared_ptr<const sdk::Result> result, const QString& caption,
               QWidget* parent = nullptr);

    const std::shared_ptr<const sdk::Result>& result() const { return m_result; }
    const QString& caption() const { return m_caption; }
    QString asText() const;
    QString asCsv() const;
    // As CSV where the name ends with ".csv", else as text. Empty, or the sentence why not.
    QString save(const QString& path) const;
    // The table or plot that is shown, made when it is first looked at.
    QWidget* page() const;
    QComboBox* chooser() const { return m_chooser; }
    QListView* notes() const { return m_notes; }

signals:
    void reportWished(); // "Send to report"
    void nodesChosen(const std::vector<std::string>& nodes, const QString& reason);

private:
    void fillNotes();
    void fillChooser();
    void showItem(int item);
    void askWhere();

    std::shared_ptr<const sdk::Result> m_result;
    QString m_caption;
    QListView* m_notes;
    QLabel* m_summary; // how many warnings, cautions, assumptions
    QComboBox* m_chooser;
    QStackedWidget* m_stack;
    std::vector<std::function<QWidget*()>> m_makers; // by item of the chooser
    std::vector<QWidget*> m_pages;
};

} // namespace cutwater::editor
