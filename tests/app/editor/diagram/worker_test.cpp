// SPDX-License-Identifier: GPL-3.0-or-later
// The layout worker: one layout at a time, the latest request wins, and it may be closed at any
// moment.
#include "models/project/edits/facts.h"
#include "tests/app/editor/diagram/stage.h"

#include <QElapsedTimer>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;

LayoutRequest request(const std::string& name) {
    project::Project project = test::smallTree();
    project.events.front().name = name;
    LayoutRequest result;
    result.project = std::make_shared<const project::Project>(std::move(project));
    result.top = "T1";
    return result;
}

TEST(Worker, OfManyQuickRequestsTheLastIsAnswered) {
    test::Layout layout;
    layout.sleepMs = 5;
    LayoutWorker worker(std::make_shared<SerialLayout>(layout));
    std::vector<std::shared_ptr<const LayoutAnswer>> answers;
    QObject::connect(
        &worker, &LayoutWorker::answered, &worker,
        [&](const std::shared_ptr<const LayoutAnswer>& answer) { answers.push_back(answer); });
    quint64 last = 0;
    for (int i = 0; i < 500; ++i) {
        last = worker.submit(request("name " + std::to_string(i)));
        if (i % 50 == 0) QTest::qWait(1);
    }
    ASSERT_TRUE(QTest::qWaitFor([&] { return !worker.isBusy(); }, 20000));
    ASSERT_FALSE(answers.empty());
    EXPECT_EQ(answers.back()->serial, last);
    EXPECT_EQ(answers.back()->request.project->events.front().name, "name 499");
    EXPECT_LT(layout.calls, 100);
    EXPECT_EQ(layout.most, 1);
    for (std::size_t i = 1; i < answers.size(); ++i)
        EXPECT_LT(answers[i - 1]->serial, answers[i]->serial);
}

TEST(Worker, ClosedWhileALayoutRuns) {
    test::Layout layout;
    layout.sleepMs = 15;
    bool answered = false;
    for (int i = 0; i < 20; ++i) {
        auto worker = std::make_unique<LayoutWorker>(std::make_shared<SerialLayout>(layout));
        QObject::connect(worker.get(), &LayoutWorker::answered, worker.get(),
                         [&] { answered = true; });
        worker->submit(request("first"));
        QTest::qWait(i % 4 * 5);
        worker->submit(request("second"));
        worker.reset();
    }
    ASSERT_TRUE(QTest::qWaitFor([] { return LayoutWorker::leftRunning() == 0; }, 5000));
    EXPECT_EQ(layout.inside, 0);
    QTest::qWait(20);
    EXPECT_FALSE(answered);
}

TEST(Worker, ClosingDoesNotWaitForASlowLayout) {
    test::Layout layout;
    layout.sleepMs = 700;
    auto worker = std::make_unique<LayoutWorker>(std::make_shared<SerialLayout>(layout));
    worker->submit(request("slow"));
    ASSERT_TRUE(QTest::qWaitFor([&] { return layout.inside == 1; }, 5000));
    QElapsedTimer clock;
    clock.start();
    worker.reset();
    EXPECT_LT(clock.elapsed(), 50);
    EXPECT_EQ(LayoutWorker::leftRunning(), 1);
    ASSERT_TRUE(QTest::qWaitFor([] { return LayoutWorker::leftRunning() == 0; }, 5000));
    EXPECT_EQ(layout.inside, 0);
}

TEST(Worker, AnAnswerThatIsUnderWayWhenItClosesIsDropped) {
    test::Layout layout;
    bool answered = false;
    auto worker = std::make_unique<LayoutWorker>(std::make_shared<SerialLayout>(layout));
    QObject::connect(worker.get(), &LayoutWorker::answered, worker.get(), [&] { answered = true; });
    worker->submit(request("one"));
    QElapsedTimer clock;
    clock.start();
    while (layout.calls == 0 && clock.elapsed() < 5000)
        QThread::msleep(1);
    QThread::msleep(60); // it is done, and waits in our queue
    worker.reset();
    QTest::qWait(10);
    EXPECT_FALSE(answered);
}

TEST(Worker, ThePanelClosedWhileLayingOutAndExporting) {
    for (int i = 0; i < 5; ++i) {
        test::Stage stage(test::largeTree(120));
        stage.layout.sleepMs = 20;
        stage.panel->exportTo(QStringLiteral("/nowhere/x.pdf"), false, 100);
        stage.session.apply([](const project::Project& project) {
            return project::edits::rename(project, "E1", "Another");
        });
        QTest::qWait(i * 4);
        stage.panel.reset();
        ASSERT_TRUE(QTest::qWaitFor([] { return LayoutWorker::leftRunning() == 0; }, 5000));
        EXPECT_EQ(stage.layout.inside, 0);
        EXPECT_EQ(stage.layout.most, 1);
    }
}

TEST(Worker, EditsWhileLayingOutEndWithThePictureOfTheLast) {
    test::Stage stage(test::largeTree(150));
    stage.layout.sleepMs = 8;
    for (int i = 0; i < 60; ++i) {
        QElapsedTimer clock;
        clock.start();
        stage.session.apply([&](const project::Project& project) {
            return project::edits::rename(project, project.gates.back().id,
                                          "Name " + std::to_string(i));
        });
        // The hand is never held up by a layout.
        EXPECT_LT(clock.elapsed(), 50);
        if (i % 7 == 0) stage.session.undoStack()->undo();
        if (i % 5 == 0) QTest::qWait(3);
    }
    ASSERT_TRUE(stage.settle());
    EXPECT_EQ(stage.at(0).words.label.name.front(), stage.session.project()->gates.back().name);
}

TEST(Worker, AThousandRandomFoldsAndJumpsKeepPageAndSceneTogether) {
    test::Stage stage(test::largeTree(300));
    std::uint64_t state = 42;
    const auto random = [&](std::size_t below) {
        state = state * 6364136223846793005ULL + 1442695040888963407ULL;
        return static_cast<std::size_t>(state >> 33) % below;
    };
    for (int i = 0; i < 1000; ++i) {
        const project::Project& project = *stage.session.project();
        const project::Id gate = project.gates[random(project.gates.size())].id;
        switch (random(4)) {
        case 0: stage.panel->fold(gate, true); break;
        case 1: stage.panel->fold(gate, false); break;
        case 2: stage.selection.select({project.events[random(300)].id}); break;
        default: stage.panel->fold(gate, random(2) == 0, true);
        }
        if (random(10) == 0) QCoreApplication::processEvents();
    }
    ASSERT_TRUE(stage.settle());
    const Page& page = *stage.panel->scene().page();
    std::size_t items = 0;
    for (const QGraphicsItem* item : stage.panel->scene().items())
        if (dynamic_cast<const BoxItem*>(item)) ++items;
    EXPECT_EQ(items, page.boxes.size());
    for (std::size_t b = 0; b < page.boxes.size(); ++b) {
        EXPECT_EQ(stage.panel->scene().item(b)->box().key, page.boxes[b].key);
        EXPECT_EQ(page.boxes[b].folded,
                  stage.panel->isFolded(page.boxes[b].node) && page.boxes[b].foldable);
    }
}

} // namespace
} // namespace cutwater
