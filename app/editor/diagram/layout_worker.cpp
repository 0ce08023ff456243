// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/layout_worker.h"

#include <QElapsedTimer>
#include <QMetaObject>

#include <exception>

namespace cutwater::editor {
namespace {

project::Problem problem(std::string what, std::string remedy) {
    project::Problem result;
    result.what = std::move(what);
    result.remedy = std::move(remedy);
    return result;
}

// What the thread keeps between requests.
class Desk {
public:
    explicit Desk(const sdk::Layout* layout) : m_layout(layout) {}

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
    std::vector<std::shared_ptr<const Page>> m_sheets;
    std::pair<drawing::Paper, drawing::Orientation> m_sheetsKey{};
};

} // namespace

LayoutWorker::LayoutWorker(const sdk::Layout* layout, QObject* parent)
    : QObject(parent), m_layout(layout), m_thread([this](std::stop_token stop) { run(stop); }) {}

LayoutWorker::~LayoutWorker() {
    m_thread.request_stop();
    {
        const std::lock_guard lock(m_mutex);
        m_waiting.reset();
        m_stopOne.request_stop();
    }
    m_wake.notify_all();
    m_thread.join();
}

quint64 LayoutWorker::submit(LayoutRequest request) {
    request.serial = ++m_submitted;
    {
        const std::lock_guard lock(m_mutex);
        m_waiting = std::move(request);
        m_stopOne.request_stop();
    }
    m_wake.notify_all();
    return m_submitted;
}

void LayoutWorker::run(std::stop_token stop) {
    Desk desk(m_layout);
    while (true) {
        LayoutRequest request;
        std::stop_token stopOne;
        {
            std::unique_lock lock(m_mutex);
            if (!m_wake.wait(lock, stop, [this] { return m_waiting.has_value(); })) return;
            request = std::move(*m_waiting);
            m_waiting.reset();
            m_stopOne = std::stop_source();
            stopOne = m_stopOne.get_token();
        }
        auto answer =
            std::make_shared<const LayoutAnswer>(desk.answer(std::move(request), stopOne));
        if (stop.stop_requested()) return;
        // Dropped by Qt where the worker is gone by then.
        QMetaObject::invokeMethod(
            this, [this, answer] { take(answer); }, Qt::QueuedConnection);
    }
}

void LayoutWorker::take(std::shared_ptr<const LayoutAnswer> answer) {
    if (answer->serial != m_submitted) return;
    m_answered = answer->serial;
    emit answered(answer);
}

} // namespace cutwater::editor
