// SPDX-License-Identifier: GPL-3.0-or-later
// Measures the diagram as a user meets it, offscreen: `diagram_bench [EVENTS...]`. One line a
// figure, in milliseconds. Ends with 1 where a limit of the editor's issue is not kept.
#include "tests/app/editor/diagram/stage.h"

#include "app/editor/diagram/compose.h"
#include "models/project/edits/facts.h"

#include <QApplication>
#include <QElapsedTimer>
#include <QScrollBar>
#include <QTest>

#include <sys/resource.h>
#include <time.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>

namespace {

using namespace cutwater;

int worst = 0;

void say(const char* what, std::size_t events, double ms, double limit) {
    const bool kept = limit <= 0 || ms <= limit;
    if (!kept) worst = 1;
    if (limit > 0)
        std::printf("%6zu events  %-44s %9.1f ms  (limit %.0f)%s\n", events, what, ms, limit,
                    kept ? "" : "  NOT KEPT");
    else
        std::printf("%6zu events  %-44s %9.1f ms\n", events, what, ms);
    std::fflush(stdout);
}

double since(const QElapsedTimer& clock) {
    return static_cast<double>(clock.nsecsElapsed()) / 1e6;
}

// What this thread worked; other programs on the machine do not count.
double worked() {
    timespec time{};
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &time);
    return static_cast<double>(time.tv_sec) * 1e3 + static_cast<double>(time.tv_nsec) / 1e6;
}

struct Turn {
    double wall = 0, work = 0; // ms
    void take(double wallMs, double workMs) {
        wall = std::max(wall, wallMs);
        work = std::max(work, workMs);
    }
};

// A turn of the event loop is judged by the thread's own work, so that a busy machine does not
// count; the wall clock stands beside.
void sayTurn(const char* what, std::size_t events, const Turn& turn, double limit) {
    say(what, events, turn.work, limit);
    std::printf("%49s by the clock %9.1f ms\n", "", turn.wall);
}

// Runs events until idle; the answer is the longest that one turn of the event loop took.
Turn longestTurn(test::Stage& stage) {
    Turn longest;
    QElapsedTimer all;
    all.start();
    const auto turnOnce = [&] {
        QElapsedTimer turn;
        turn.start();
        const double before = worked();
        QCoreApplication::processEvents(QEventLoop::AllEvents);
        longest.take(since(turn), worked() - before);
    };
    while ((stage.panel->isBusy() || stage.panel->scene().isMoving()) && all.elapsed() < 60000)
        turnOnce();
    turnOnce();
    return longest;
}

void measure(std::size_t events) {
    const project::Project tree = test::largeTree(events);
    QElapsedTimer clock;
    clock.start();
    test::Stage stage(tree, "T1", QSize(1400, 900));
    stage.panel->view().viewport()->repaint();
    say("shown: from the project to the first paint", events, since(clock),
        events <= 2000 ? 1000 : 0);
    say("layout of the first look (worker)", events, stage.panel->layoutMilliseconds(),
        events <= 2000 ? 300 : 0);

    const std::string event = tree.events[events / 2].id;
    stage.panel->setAnimated(true);
    clock.restart();
    stage.session.apply([&](const project::Project& project) {
        return project::edits::rename(project, event, "Another name for it");
    });
    say("edit: the GUI thread is free again", events, since(clock), events <= 2000 ? 50 : 0);
    sayTurn("edit: longest turn of the event loop", events, longestTurn(stage), 50);
    say("edit: laid out again (worker)", events, stage.panel->layoutMilliseconds(),
        events <= 2000 ? 300 : 0);

    const project::Id gate = [&] {
        for (const editor::PageBox& box : stage.panel->scene().page()->boxes)
            if (box.folded) return box.node;
        return project::Id();
    }();
    if (!gate.empty()) {
        clock.restart();
        stage.panel->fold(gate, false);
        const Turn turn = longestTurn(stage);
        say("unfold one gate: until it stands still", events, since(clock), 0);
        sayTurn("unfold one gate: longest turn", events, turn, 50);
    }
    stage.panel->setAnimated(false);
    clock.restart();
    stage.panel->fold(stage.panel->scene().page()->boxes.front().node, false, true);
    const Turn turn = longestTurn(stage);
    std::printf("%6zu events  %zu boxes unfolded\n", events,
                stage.panel->scene().page()->boxes.size());
    say("unfold all there is room for: done", events, since(clock), 0);
    sayTurn("unfold all: longest turn", events, turn, 50);
    clock.restart();
    stage.panel->view().fitPage();
    stage.panel->view().viewport()->repaint();
    say("unfold all: paint of all of it", events, since(clock), 0);
    stage.panel->view().setZoom(1);
    stage.panel->view().viewport()->repaint();
    clock.restart();
    for (int i = 0; i < 20; ++i) {
        stage.panel->view().horizontalScrollBar()->setValue(
            stage.panel->view().horizontalScrollBar()->value() + 60);
        stage.panel->view().viewport()->repaint();
    }
    say("unfold all: one step of panning", events, since(clock) / 20, 50);
    clock.restart();
    stage.panel->find(QString());
    stage.panel->view().viewport()->repaint();
    clock.restart();
    stage.selection.mark({tree.events[events - 1].id}, "one");
    say("mark an event: GUI thread", events, since(clock), 50);
    stage.settle();

    if (events > 5000) return;
    clock.restart();
    stage.panel->setKind(editor::ViewKind::sheets);
    stage.settle();
    std::printf("%6zu events  %d sheets on A4\n", events, stage.panel->sheets());
    say("all sheets drawn and the first one shown", events, since(clock), 0);
    say("layout of a sheet (mean, with its drawing)", events,
        stage.panel->layoutMilliseconds() / std::max(1, stage.panel->sheets()), 300);
    clock.restart();
    stage.panel->showSheet(stage.panel->sheets() / 2);
    stage.panel->view().viewport()->repaint();
    say("another sheet: shown and painted", events, since(clock), 0);
}

} // namespace

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    QApplication application(argc, argv);
    std::vector<std::size_t> sizes;
    for (int i = 1; i < argc; ++i)
        sizes.push_back(static_cast<std::size_t>(std::max(10, std::atoi(argv[i]))));
    if (sizes.empty()) sizes = {200, 2000, 20000};
    for (const std::size_t events : sizes)
        measure(events);
    struct rusage use {};
    getrusage(RUSAGE_SELF, &use);
    std::printf("most memory %ld MB\n", use.ru_maxrss / 1024);
    return worst;
}
