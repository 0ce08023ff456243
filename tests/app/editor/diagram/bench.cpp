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

// Runs events until idle; the answer is the longest time that one turn of the event loop took.
double longestTurn(test::Stage& stage) {
    double longest = 0;
    QElapsedTimer all;
    all.start();
    while ((stage.panel->isBusy() || stage.panel->scene().isMoving()) && all.elapsed() < 60000) {
        QElapsedTimer turn;
        turn.start();
        QCoreApplication::processEvents(QEventLoop::AllEvents);
        longest = std::max(longest, since(turn));
    }
    QElapsedTimer turn;
    turn.start();
    QCoreApplication::processEvents(QEventLoop::AllEvents);
    return std::max(longest, since(turn));
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
    say("edit: longest turn of the event loop", events, longestTurn(stage), 50);
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
        const double turn = longestTurn(stage);
        say("unfold one gate: until it stands still", events, since(clock), 0);
        say("unfold one gate: longest turn", events, turn, 50);
    }
    stage.panel->setAnimated(false);
    clock.restart();
    stage.panel->fold(stage.panel->scene().page()->boxes.front().node, false, true);
    const double turn = longestTurn(stage);
    std::printf("%6zu events  %zu boxes unfolded\n", events,
                stage.panel->scene().page()->boxes.size());
    say("unfold all there is room for: done", events, since(clock), 0);
    say("unfold all: longest turn", events, turn, 0);
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
