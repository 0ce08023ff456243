// SPDX-License-Identifier: GPL-3.0-or-later
// WorksheetPage: the FMEA worksheet as a page of the window: the grid and all that is done with it.
#pragma once

#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"
#include "app/editor/worksheet/cell_block.h"
#include "app/editor/worksheet/column_choice.h"
#include "app/editor/worksheet/effect_figures.h"
#include "app/editor/worksheet/grid_view.h"
#include "app/editor/worksheet/paper.h"
#include "app/editor/worksheet/report_strip.h"
#include "app/editor/worksheet/sheet_find_bar.h"
#include "plugins/sdk/host.h"

#include <QAction>
#include <QTimer>
#include <QWidget>

#include <functional>
#include <map>
#include <stop_token>

class QCheckBox;
class QComboBox;
class QDialog;
class QLabel;
class QLineEdit;
class QMenu;
class QPlainTextEdit;
class QPrinter;
class QProgressBar;
class QVBoxLayout;

namespace cutwater::editor {

// What is asked in dialogs, so that tests can answer in their place.
struct SheetQuestions {
    std::function<bool(QDialog&)> run; // true: accepted
    std::function<bool(QWidget*, const QString& question)> agree;
    // `filter` as QFileDialog has it; empty: nothing.
    std::function<QString(QWidget*, const QString& proposed, const QString& filter)> whereToSave;
};
SheetQuestions standardSheetQuestions();

class WorksheetPage : public QWidget {
    Q_OBJECT
public:
    // All of them live longer.
    WorksheetPage(Session& session, Selection& selection, sdk::Host& host,
                  QWidget* parent = nullptr);
    ~WorksheetPage() override;

    SheetQuestions questions = standardSheetQuestions();

    GridModel& grid() { return *m_grid; }
    GridView& view() { return *m_view; }
    SheetReportStrip& report() { return *m_report; }
    SheetFindBar& findBar() { return *m_find; }
    EffectWorker& effects() { return *m_effects; }
    QLineEdit& filterField() { return *m_filter; }
    // "sheet.fill-down" ...; null where there is none.
    QAction* action(const char* name) const;
    // In the order of a menu; null for a line between.
    const std::vector<QAction*>& actions() const { return m_menu; }

    void arrange(const Arrangement& arrangement);
    const ColumnChoice& columns() const { return m_choice; }
    void setColumns(const ColumnChoice& choice);
    void showRow(const project::Id& mode, std::string_view column = {});

    // The rows and columns that are seen, for paper.
    PaperOrder paperOrder() const;
    // Writes a PDF in a worker; exported() follows, without a sentence where it was cancelled.
    void writePdf(const QString& path, bool a3);
    void cancelPdf() { m_stop.request_stop(); }
    // `suffix`: csv, tsv or xlsx. `everything`: all rows and columns, not only those seen.
    void exportTo(const QString& path, const QString& suffix, bool everything);

signals:
    void said(const QString& sentence);
    void exported(bool good, const QString& sentence);

protected:
    void showEvent(QShowEvent* event) override;

private:
    // Construction.
    void makeActions();
    QAction* make(const char* name, const QString& text, const QKeySequence& keys,
                  const std::function<void()>& act, QWidget* where);
    QWidget* makeTools();
    QWidget* makeFilter();
    QWidget* makeFacts();
    QWidget* makeFoot();
    QWidget* makeWork();
    void fillHeadingMenu(QMenu& menu, int section);

    // Following.
    void follow();
    void followSelection();
    void tellSelection();
    void showState();
    void showCell();
    void wishFigures();
    void editMode();

    // Editing.
    struct Done {
        std::size_t cells = 0;
        std::vector<NotTaken> notTaken;
    };
    bool apply(const Edit& edit, std::vector<project::Id>* touched = nullptr);
    Done run(CellPlan plan, const char* doing, const QString& about = {});
    void report(const Done& done);
    QString typeCell(const QModelIndex& index, const QString& text);
    void copy();
    void cut();
    void paste(bool asCsv);
    void fillDown();
    void fillSame();
    void clearCells();
    void newRow();
    void duplicateRows();
    void removeRows();
    std::vector<project::Id> chosenRows() const;
    void goToNew(const std::vector<project::Id>& touched);

    // Finding, sorting, columns.
    void beginFind();
    QModelIndexList searched() const;
    void countFound();
    void goToNext(int direction);
    void replaceAll();
    void sortBy(int section, bool more);
    void setSort(int section, bool descending, bool more);
    void filterColumn(int section);
    void chooseColumns();
    void takeColumns();
    void moveColumn(int from, int to);
    void saveColumns();

    // Files.
    void importTable();
    void askExport();
    void askPdf();
    void print();
    void askCautions();
    QString filterWords() const;

    Session& m_session;
    Selection& m_selection;
    sdk::Host& m_host;
    QSettings m_settings;
    GridModel* m_grid;
    GridView* m_view;
    SheetReportStrip* m_report;
    SheetFindBar* m_find;
    EffectWorker* m_effects;
    ColumnChoice m_choice;
    std::map<QString, QAction*> m_actions;
    std::vector<QAction*> m_menu;
    QLineEdit* m_filter = nullptr;
    QComboBox* m_sets = nullptr;
    QComboBox* m_groups = nullptr;
    QCheckBox* m_dormant = nullptr;
    QLineEdit* m_mode = nullptr;
    QLabel* m_count = nullptr;
    QLabel* m_rpn = nullptr;
    QLabel* m_empty = nullptr;
    QLabel* m_caution = nullptr;
    QLabel* m_cellTitle = nullptr;
    QPlainTextEdit* m_cell = nullptr;
    QWidget* m_work = nullptr; // what takes its time: how far it is, and an end to it
    QProgressBar* m_progress = nullptr;
    std::stop_source m_stop;
    QTimer m_tell;        // the selection, once the hand rests
    QTimer m_narrow;      // the filter, once the hand rests
    bool m_behind = true; // the project changed while the page was not seen
    bool m_telling = false;
    bool m_dormantBySet = false;
};

} // namespace cutwater::editor
