// SPDX-License-Identifier: GPL-3.0-or-later
// LayoutWorker: the one thread that reads snapshots, asks the layout plug-in and composes pages. A
// layout cannot be interrupted; the latest request wins, and what an older one finds is dropped.
#pragma once

#include "app/editor/diagram/compose.h"

#include <QObject>

#include <condition_variable>
#include <memory>
#include <mutex>
#include <optional>
#include <thread>

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
    // `layout` lives longer than the worker; null is allowed: then every answer is a problem.
    explicit LayoutWorker(const sdk::Layout* layout, QObject* parent = nullptr);
    ~LayoutWorker() override; // waits for a layout that is running

    // The number of this request. GUI thread.
    quint64 submit(LayoutRequest request);
    bool isBusy() const { return m_answered != m_submitted; }

signals:
    // In the GUI thread, only for the latest request.
    void answered(const std::shared_ptr<const cutwater::editor::LayoutAnswer>& answer);

private:
    void run(std::stop_token stop);
    void take(std::shared_ptr<const LayoutAnswer> answer);

    const sdk::Layout* m_layout;
    quint64 m_submitted = 0, m_answered = 0; // GUI thread
    std::mutex m_mutex;
    std::condition_variable_any m_wake;
    std::optional<LayoutRequest> m_waiting; // guarded by m_mutex
    std::stop_source m_stopOne;             // of the request being worked on; guarded
    std::jthread m_thread;
};

} // namespace cutwater::editor
