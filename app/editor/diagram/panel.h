// SPDX-License-Identifier: GPL-3.0-or-later
// DiagramPanel: the diagram as a page of the editor. It shows the selection's top event from the
// session's latest snapshot, follows and sets the selection, and turns what the hand does into
// edits of the session.
#pragma once

#include "app/editor/diagram/drop.h"
#include "app/editor/diagram/layout_worker.h"
#include "app/editor/diagram/serial_layout.h"
#include "app/editor/diagram/view.h"
#include "app/editor/diagram/walk.h"
#include "app/editor/selection/selection.h"
#include "app/editor/session/session.h"

#include <QElapsedTimer>
#include <QTimer>
#include <QVariantMap>
#include <QWidget>

#include <functional>
#include <map>

class QAction;
class QActionGroup;
class QComboBox;
class QLabel;
class QMenu;
class QMimeData;
class QToolBar;

namespace cutwater::editor {

class ExportTask;
class FindBar;
class Overview;
class RenameField;

class DiagramPanel : public QWidget {
    Q_OBJECT
public:
    // All three live longer than the panel, or are not used any more when it goes; `layout` longer
    // than LayoutWorker::leftRunning() says. It may be null where no plug-in is there.
    DiagramPanel(Session& session, Selection& selection, const sdk::Layout* layout,
                 QWidget* parent = nullptr);
    ~DiagramPanel() override;

    // Every action with its name and keys, for menus and the palette of commands.
    const std::vector<QAction*>& allActions() const { return m_all; }
    QAction* action(const char* name) const; // by object name; null where there is none

    DiagramView& view() { return *m_view; }
    DiagramScene& scene() { return *m_scene; }

    // Off where the user, or his desktop, does not like things that move.
    void setAnimated(bool animated);
    // Captions, overview and motion, for the window's settings.
    QVariantMap habits() const;
    void setHabits(const QVariantMap& habits);
    void setKind(ViewKind kind);
    ViewKind kind() const { return m_kind; }
    void setCaptions(CaptionKind kind);
    void setPaper(drawing::Paper paper, drawing::Orientation orientation);
    drawing::Paper paper() const { return m_paper; }
    drawing::Orientation orientation() const { return m_orientation; }
    CaptionKind captions() const { return m_captions; }

    // From 0; sheets only.
    int sheet() const { return m_sheet; }
    int sheets() const;
    void showSheet(int sheet);

    // Unfolds what hides the spot, scrolls there and selects it.
    void jumpTo(const Spot& spot);
    void find(const QString& text);
    const std::vector<project::Id>& hits() const { return m_hits; }
    void fold(const project::Id& gate, bool folded, bool allBelow = false);
    bool isFolded(const project::Id& gate) const;
    // Types over the box of the node, now or as soon as it is shown.
    void rename(const project::Id& node);

    // What carries a box out of the view; a test may do without the platform.
    std::function<void(std::unique_ptr<QMimeData>)> carry;

    bool isBusy() const { return m_worker->isBusy(); }
    // What the last layout took, worker's time.
    double layoutMilliseconds() const { return m_answer ? m_answer->milliseconds : 0; }
    QString message() const;

    // Writes all sheets (or the one shown) to a file, in a thread of its own; `exported` follows.
    void exportTo(const QString& path, bool onlyThisSheet, int dpi);

signals:
    void pageShown(); // after each layout
    void exported(bool done, const QString& sentence);
    void said(const QString& sentence); // for the status bar

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    // panel.cpp: what it is made of
    void makeBar(QToolBar* bar);
    QAction* add(const char* name, const QString& text, const QKeySequence& keys,
                 const std::function<void()>& run);
    void makeActions();
    void makeEditActions();
    void connectView();
    void enableActions();

    // panel_show.cpp: requests, answers, and what is looked at
    project::Id topToShow() const; // the selection's, or the first one; empty where there is none
    void refresh(std::vector<Spot> reveal = {});
    void take(const std::shared_ptr<const LayoutAnswer>& answer);
    void put(std::shared_ptr<const Page> page);
    void firstLook();
    void followSelection(bool scroll);
    void followMarks(bool scroll);
    void showMessage();
    void listSheets();
    bool bring(const Spot& spot); // true where it is shown already
    int sheetOf(const Spot& spot) const;
    void search(bool jump);
    void nextHit(int step);

    // panel_keys.cpp: hand and keys
    void press(std::size_t box, Qt::KeyboardModifiers modifiers);
    void open(std::size_t box); // double click
    void step(Direction direction, bool extend);
    std::vector<std::size_t> heldWith(std::size_t source) const; // the selection moves together
    DropPlan planFor(std::size_t source, std::size_t target, bool right, bool share) const;
    void dragTo(std::size_t source, std::size_t target, bool right, bool share);
    void dropOn(std::size_t source, std::size_t target, bool right, bool share);
    // panel_drag.cpp: to and from other views
    void dragOut(std::size_t source);
    bool outside(const QMimeData& data, std::size_t target, bool right, bool share, bool drop);
    void selectBand(const QRectF& area);
    void showMenu(std::size_t box, QPoint global);

    // panel_edits.cpp
    const PageBox* currentBox() const;
    project::edits::Use useNow(const PageBox& box) const;
    std::vector<project::edits::Use> selectedUses() const;
    Spot afterRemoval() const;
    bool apply(const Edit& edit); // selects what was touched
    void addInput();
    void addSibling();
    void removeSelected();
    void insertGate(project::GateKind kind);
    void dissolve();
    void setGateKind(project::GateKind kind);
    void setEventKind(project::EventKind kind);
    void copySelected();
    void pasteBelow();
    void separateSelected();
    void reorderCurrent(int steps);
    void startRename();

    // panel_export.cpp
    void askExport();
    void askPrint();

    Session& m_session;
    Selection& m_selection;
    std::shared_ptr<SerialLayout> m_layout;
    LayoutWorker* m_worker;
    DiagramScene* m_scene;
    DiagramView* m_view;
    Overview* m_overview;
    RenameField* m_rename;
    FindBar* m_find;
    QLabel* m_message;
    QLabel* m_busy;
    QComboBox* m_sheetList;
    QComboBox* m_captionList;
    QLabel* m_zoomLabel;
    QTimer m_busyTimer;
    std::vector<QAction*> m_all;
    std::unique_ptr<ExportTask> m_export;

    ViewKind m_kind = ViewKind::tree;
    CaptionKind m_captions = CaptionKind::none;
    drawing::Paper m_paper = drawing::Paper::a4;
    drawing::Orientation m_orientation = drawing::Orientation::automatic;
    std::map<project::Id, Folds> m_folds;         // of each top that was looked at
    std::shared_ptr<const LayoutAnswer> m_answer; // what is on the screen
    project::Id m_shownTop;
    int m_sheet = 0;
    bool m_firstLook = true;          // the next page is a new one: fit it
    std::optional<Spot> m_bringLater; // as soon as it is laid out
    bool m_mayAsk = true;             // for another layout that unfolds what is hidden
    bool m_marksLater = false;        // scroll to the marks as soon as they are laid out
    project::Id m_renameLater;
    bool m_selecting = false; // the selection changes by our own hand
    std::vector<project::Id> m_hits;
    int m_hit = -1;
    std::vector<project::Id> m_touched; // by the edit that just was made
    QString m_drawingProblem, m_markWords;
};

} // namespace cutwater::editor
