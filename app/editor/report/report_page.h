// SPDX-License-Identifier: GPL-3.0-or-later
// ReportPage: the report as a page of the window: what goes in, and how it will look.
#pragma once

#include "app/editor/report/report_run.h"

#include <QWidget>

#include <functional>

class QCheckBox;
class QLabel;
class QLineEdit;
class QListView;
class QPlainTextEdit;
class QProgressBar;
class QPushButton;
class QStackedWidget;
class QTextBrowser;

namespace cutwater::editor {

class ReportPage : public QWidget {
    Q_OBJECT
public:
    // `host` lives longer.
    explicit ReportPage(sdk::Host& host, QWidget* parent = nullptr);

    ReportList& list() { return *m_list; }
    ReportRun& run() { return *m_run; }
    void setProject(std::shared_ptr<const project::Project> project, const QString& file);
    // Another project: what was sent belongs to the one before.
    void startAnew();

    void preview();
    // Writes it as the end of the name says; finished() follows.
    void exportTo(const QString& path);
    void print();
    QTextBrowser* sheet() const { return m_preview; }

    // Dialogs, so that tests can answer in their place.
    std::function<QString(QWidget*, const QString& filter)> whereToSave;

signals:
    void previewed();
    void finished(bool done, const QString& sentence); // of an export or a print

private:
    enum class Purpose { preview, file, print };
    void make(Purpose purpose, const std::string& mediaType);
    void take(const std::shared_ptr<const ReportOutcome>& outcome);
    void showChosen();
    void updateButtons();
    void say(const QString& words);
    void printPreview();
    int chosen() const;
    QWidget* makeLeft();
    QWidget* makeRight();

    ReportList* m_list;
    ReportRun* m_run;
    std::shared_ptr<const project::Project> m_project;
    QString m_file;
    Purpose m_purpose = Purpose::preview;
    QString m_path; // where it is written
    QListView* m_view;
    QLineEdit* m_title;
    QPlainTextEdit* m_comment;
    QCheckBox* m_drawings;
    QPushButton *m_up, *m_down, *m_remove, *m_standard;
    QPushButton *m_previewButton, *m_exportButton, *m_printButton, *m_cancel;
    QProgressBar* m_progress;
    QLabel* m_state;
    QTextBrowser* m_preview;
};

} // namespace cutwater::editor
