// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/layout_worker.h"

#include "app/editor/diagram/gate_figures.h"

#include <QElapsedTimer>
#include <QMetaObject>

#include <atomic>
#include <chrono>
#include <condition_variable>
#include <exception>
#include <mutex>
#include <stop_token>
#include <thread>

namespace cutwater::editor {
namespace {

project::Problem problem(std::string what, std::string remedy) {
    project::Problem result;
    result.what = std::move(what);
    result.remedy = std::move(remedy);
    return result;
}

// Gates are computed so long before the picture is shown, and so long between two pictures.
constexpr std::chrono::milliseconds kFirstPiece{60}, kPiece{400};

// What the thread keeps between requests.
class Desk {
public:
    explicit Desk(const sdk::Layout* layout) : m_layout(layout) {}

    // After an answer: whether more is known by now than it shows.
    bool goOn(const std::stop_token& stop) {
        if (m_captionKind != CaptionKind::gates || m_gates.isDone()) return false;
        m_gates.goOn(kPiece, stop);
        return !stop.stop_requested();
    }

    LayoutAnswer answer(LayoutRequest request, const std::stop_token& stop) {
        LayoutAnswer answer;
        answer.serial = request.serial;
        answer.request = std::move(request);
        QElapsedTimer clock;
        clock.start();
        try {
            fill(answer, stop);
        } catch (const std::bad_alloc&) {
            answer.problems = {problem("there is not enough memory to draw this tree",
                                       "look at a part of it: show a lower gate as the top")};
        } catch (const std::exception& error) {
            answer.problems = {problem(std::string("the drawing failed: ") + error.what(),
                                       "use another layout plug-in")};
        }
        answer.milliseconds = static_cast<double>(clock.nsecsElapsed()) / 1e6;
        return answer;
    }

private:
    void fill(LayoutAnswer& answer, const std::stop_token& stop) {
        const LayoutRequest& request = answer.request;
        if (!m_layout) {
            answer.problems = {problem("no layout plug-in is there", "install the program whole")};
            return;
        }
        if (!m_lettering) {
            // Fonts belong to the thread that uses them.
            project::Outcome<drawing::Lettering> found = drawing::findLettering();
            if (!found) {
                answer.problems = found.problems();
                return;
            }
            m_lettering = std::move(*found);
        }
        if (!m_tree || m_tree->project != request.project || m_top != request.top) {
            project::Outcome<std::shared_ptr<const Tree>> tree =
                makeTree(request.project, request.top);
            if (!tree) {
                answer.problems = tree.problems();
                return;
            }
            m_tree = std::move(*tree);
            m_top = request.top;
            m_captionKind.reset();
            m_sheets.clear();
        }
        answer.tree = m_tree;
        if (m_captionKind != request.captionKind) {
            m_captions = captionsFor(*m_tree->project, m_tree->index, request.captionKind);
            m_captionKind = request.captionKind;
            m_sheets.clear();
        }
        if (request.captionKind == CaptionKind::gates) {
            m_gates.begin(m_tree);
            m_gates.goOn(kFirstPiece, stop);
            for (const auto& [gate, words] : m_gates.words())
                m_captions.words[gate] = words;
            m_sheets.clear();
        }
        if (stop.stop_requested()) return;
        if (request.kind == ViewKind::tree)
            drawTree(answer, stop);
        else
            drawSheets(answer, stop);
    }

    void drawTree(LayoutAnswer& answer, const std::stop_token& stop) {
        const LayoutRequest& request = answer.request;
        const Folds before = revealed(*m_tree, request.folds.value_or(Folds()), request.reveal);
        answer.folds = settleFolds(*m_tree, before, request.reveal,
                                   request.folds ? kMostVisible : kFirstVisible);
        answer.foldedForRoom = request.folds && answer.folds.size() > before.size();
        sdk::Job job;
        job.stop = stop;
        sdk::Answer<Page> page =
            composeTree(*m_tree, answer.folds, m_captions, *m_lettering, m_labels, *m_layout, job);
        answer.problems = page.problems;
        if (page.content)
            answer.pages.push_back(std::make_shared<const Page>(std::move(*page.content)));
    }

    void drawSheets(LayoutAnswer& answer, const std::stop_token& stop) {
        const LayoutRequest& request = answer.request;
        const std::pair key(request.paper, request.orientation);
        if (m_sheets.empty() || m_sheetsKey != key) {
            drawing::Wishes wishes;
            wishes.paper = request.paper;
            wishes.orientation = request.orientation;
            wishes.values = m_captions.words;
            wishes.valuesRemark = m_captions.remark;
            wishes.maxSheets = 2000;
            sdk::Job job;
            job.stop = stop;
            sdk::Answer<drawing::Diagram> diagram =
                drawing::draw(*m_tree->project, m_tree->top, wishes, *m_lettering, *m_layout, job);
            answer.problems = diagram.problems;
            m_sheets.clear();
            if (!diagram.content) return;
            for (const drawing::Sheet& sheet : diagram.content->sheets)
                m_sheets.push_back(std::make_shared<const Page>(
                    composeSheet(*m_tree, sheet, diagram.content->sheets.size())));
            m_sheetsKey = key;
        }
        answer.pages = m_sheets;
        answer.folds = request.folds.value_or(Folds());
    }

    const sdk::Layout* m_layout;
    std::optional<drawing::Lettering> m_lettering;
    LabelCache m_labels;
    std::shared_ptr<const Tree> m_tree;
    project::Id m_top;
    std::optional<CaptionKind> m_captionKind;
    Captions m_captions;
    GateFigures m_gates;
    std::vector<std::shared_ptr<const Page>> m_sheets;
    std::pair<drawing::Paper, drawing::Orientation> m_sheetsKey{};
};

} // namespace

struct LayoutWorker::Shared {
    std::shared_ptr<const sdk::Layout> layout;
    std::mutex mutex;
    std::condition_variable wake; // something to do, or the end
    std::condition_variable ended;
    // All below: guarded by the mutex.
    LayoutWorker* owner = nullptr;        // null: it is gone, the thread shall end
    std::optional<LayoutRequest> waiting; // the latest
    std::stop_source stopOne;             // of the request being worked on
    bool over = false;                    // the thread is at its end
    bool alone = false;                   // nobody waits for it any more
};

namespace {
std::atomic<int> runningAlone = 0;
constexpr std::chrono::milliseconds kPatience{30};
} // namespace

int LayoutWorker::leftRunning() {
    return runningAlone;
}

LayoutWorker::LayoutWorker(std::shared_ptr<const sdk::Layout> layout, QObject* parent)
    : QObject(parent), m_shared(std::make_shared<Shared>()) {
    m_shared->layout = std::move(layout);
    m_shared->owner = this;
    std::thread([shared = m_shared] { run(shared); }).detach();
}

LayoutWorker::~LayoutWorker() {
    std::unique_lock lock(m_shared->mutex);
    m_shared->owner = nullptr;
    m_shared->waiting.reset();
    m_shared->stopOne.request_stop();
    m_shared->wake.notify_all();
    if (m_shared->ended.wait_for(lock, kPatience, [this] { return m_shared->over; })) return;
    m_shared->alone = true;
    ++runningAlone; // the thread takes it back
}

quint64 LayoutWorker::submit(LayoutRequest request) {
    request.serial = ++m_submitted;
    const std::lock_guard lock(m_shared->mutex);
    m_shared->waiting = std::move(request);
    m_shared->stopOne.request_stop();
    m_shared->wake.notify_all();
    return m_submitted;
}

void LayoutWorker::run(const std::shared_ptr<Shared>& shared) {
    {
        Desk desk(shared->layout.get());
        std::unique_lock lock(shared->mutex);
        while (true) {
            shared->wake.wait(lock, [&] { return !shared->owner || shared->waiting; });
            if (!shared->owner) break;
            LayoutRequest request = std::move(*shared->waiting);
            shared->waiting.reset();
            shared->stopOne = std::stop_source();
            const std::stop_token stop = shared->stopOne.get_token();
            while (true) {
                lock.unlock();
                auto answer = std::make_shared<const LayoutAnswer>(desk.answer(request, stop));
                lock.lock();
                if (!shared->owner) break;
                LayoutWorker* const owner = shared->owner;
                // Dropped by Qt where the worker is gone by then.
                QMetaObject::invokeMethod(
                    owner, [owner, answer] { owner->take(answer); }, Qt::QueuedConnection);
                if (shared->waiting) break;
                // The same once more where more numbers are known; folds stay as they were settled.
                if (!answer->pages.empty() && request.kind == ViewKind::tree)
                    request.folds = answer->folds;
                request.reveal.clear();
                lock.unlock();
                const bool more = desk.goOn(stop);
                lock.lock();
                if (!more || !shared->owner || shared->waiting) break;
            }
            if (!shared->owner) break;
        }
        lock.unlock();
    } // fonts and trees go before the end is told
    const std::lock_guard lock(shared->mutex);
    shared->over = true;
    shared->ended.notify_all();
    if (shared->alone) --runningAlone;
}

void LayoutWorker::take(const std::shared_ptr<const LayoutAnswer>& answer) {
    if (answer->serial != m_submitted) return;
    m_answered = answer->serial;
    emit answered(answer);
}

} // namespace cutwater::editor
