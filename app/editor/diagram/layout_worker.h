// SPDX-License-Identifier: GPL-3.0-or-later
// LayoutWorker: the one thread that reads snapshots, asks the layout plug-in and composes pages. A
// layout cannot be interrupted; the latest request wins, and what an older one finds is dropped.
// Nobody waits for it at the end either: a layout that is still running then is let go, and ends by
// itself.
#pragma once

#include "app/editor/diagram/compose.h"

#include <QObject>

#include <memory>
#include <optional>

namespace cutwater::editor {

enum class ViewKind { tree, sheets };

struct LayoutRequest {
    std::shared_ptr<const project::Project> project;
    project::Id top;
    ViewKind kind = ViewKind::tree;
    std::optional<Folds> folds; // none: nobody folded this tree yet
    std::vector<Spot> reveal;   // unfold what hides these
    CaptionKind captionKind = CaptionKind::none;
    drawing::Paper paper = drawing::Paper::a4;
    drawing::Orientation orientation = drawing::Orientation::automatic;
    quint64 serial = 0; // filled in by the worker
};

struct LayoutAnswer {
    quint64 serial = 0;
    LayoutRequest request;
    std::shared_ptr<const Tree> tree; // null where the project cannot be read as a tree
    std::vector<std::shared_ptr<const Page>> pages; // one, or all sheets
    Folds folds;                                    // as settled
    bool foldedForRoom = false; // gates were folded because the tree is too large
    project::Problems problems; // why there is no page
    double milliseconds = 0;    // what it took
};

class LayoutWorker : public QObject {
    Q_OBJECT
public:
    // Null is allowed: then every answer is a problem.
    explicit LayoutWorker(std::shared_ptr<const sdk::Layout> layout, QObject* parent = nullptr);
    ~LayoutWorker() override; // waits a moment for a layout that is running, and no longer

    // Threads of workers that are gone, but whose layout is not at its end: what they use (the
    // plug-in) must not go before them.
    static int leftRunning();

    // The number of this request. GUI thread.
    quint64 submit(LayoutRequest request);
    bool isBusy() const { return m_answered != m_submitted; }

signals:
    // In the GUI thread, only for the latest request.
    void answered(const std::shared_ptr<const cutwater::editor::LayoutAnswer>& answer);

private:
    struct Shared; // with the thread, which may live longer than this
    static void run(const std::shared_ptr<Shared>& shared);
    void take(const std::shared_ptr<const LayoutAnswer>& answer);

    quint64 m_submitted = 0, m_answered = 0;
    std::shared_ptr<Shared> m_shared;
};

} // namespace cutwater::editor
