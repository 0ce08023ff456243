// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/live_answers.h"

#include "models/document/document.h"
#include "tests/plugins/analyses/plants.h"

#include <QCoreApplication>
#include <QSignalSpy>
#include <QTest>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <atomic>
#include <thread>

using namespace cutwater;
using namespace std::chrono_literals;
using editor::LiveAnswer;
using editor::LiveAnswers;
using editor::LiveMeans;

namespace {

using State = LiveAnswers::State;

std::shared_ptr<const project::Project> pumps(double panel) {
    auto plant = std::make_shared<project::Project>(plants::twoPumps());
    plant->events[2] = plants::event("panel", panel);
    return plant;
}

bool becomesCurrent(LiveAnswers& answers) {
    return QTest::qWaitFor([&] { return answers.state() == State::current; }, 30000);
}

} // namespace

TEST(LiveAnswers, TheOldAnswerIsStaleUntilTheNewOneIsThere) {
    LiveAnswers answers;
    EXPECT_EQ(answers.state(), State::empty);
    answers.ask(pumps(0.5), "T1");
    EXPECT_EQ(answers.state(), State::waiting);
    EXPECT_TRUE(answers.isStale());
    ASSERT_TRUE(becomesCurrent(answers));
    EXPECT_NEAR(answers.answer()->figure->upper, 1 - 0.5 * 0.98, 1e-15);
    answers.ask(pumps(0.25), "T1");
    EXPECT_TRUE(answers.isStale());
    EXPECT_NEAR(answers.answer()->figure->upper, 1 - 0.5 * 0.98, 1e-15); // still in sight
    ASSERT_TRUE(becomesCurrent(answers));
    EXPECT_NEAR(answers.answer()->figure->upper, 1 - 0.75 * 0.98, 1e-15);
    ASSERT_TRUE(answers.before());
    EXPECT_NEAR(answers.before()->figure->upper, 1 - 0.5 * 0.98, 1e-15);
}

TEST(LiveAnswers, FastTypingMakesOneRun) {
    std::atomic<int> runs{0};
    LiveAnswers answers;
    answers.setCompute(
        [&](const project::Project& project, const std::string& top, const LiveMeans& means) {
            ++runs;
            return editor::computeLive(project, top, means);
        });
    for (int i = 0; i < 20; ++i)
        answers.ask(pumps(0.01 * i), "T1");
    ASSERT_TRUE(becomesCurrent(answers));
    EXPECT_EQ(runs, 1);
    EXPECT_NEAR(answers.answer()->figure->upper, 1 - (1 - 0.19) * 0.98, 1e-15);
}

// The run that is under way when the next edit comes is stopped, and where it ends all the same
// its answer is thrown away.
TEST(LiveAnswers, AnAnswerToAnOlderQuestionNeverShows) {
    std::atomic<int> started{0}, stopped{0};
    LiveAnswers answers;
    answers.setPause(0ms);
    answers.setCompute(
        [&](const project::Project& project, const std::string& top, const LiveMeans& means) {
            const int run = ++started;
            if (run == 1) { // deaf: goes on although it was stopped, and then answers
                while (!means.stop.stop_requested())
                    std::this_thread::sleep_for(1ms);
                ++stopped;
                return editor::computeLive(project, top, {});
            }
            return editor::computeLive(project, top, means);
        });
    std::vector<double> shown;
    QObject::connect(&answers, &LiveAnswers::answered, &answers,
                     [&] { shown.push_back(answers.answer()->figure->upper); });
    answers.ask(pumps(0.5), "T1");
    ASSERT_TRUE(QTest::qWaitFor([&] { return started == 1; }, 10000));
    answers.ask(pumps(0.25), "T1");
    ASSERT_TRUE(becomesCurrent(answers));
    QTest::qWait(20);
    EXPECT_EQ(stopped, 1);
    ASSERT_EQ(shown.size(), 1u);
    EXPECT_NEAR(shown[0], 1 - 0.75 * 0.98, 1e-15);
}

TEST(LiveAnswers, CancelStopsAndAgainStarts) {
    std::atomic<bool> wait{true};
    LiveAnswers answers;
    answers.setPause(0ms);
    answers.setCompute(
        [&](const project::Project& project, const std::string& top, const LiveMeans& means) {
            while (wait && !means.stop.stop_requested()) {
                means.progress(0.5);
                std::this_thread::sleep_for(1ms);
            }
            return editor::computeLive(project, top, means);
        });
    QSignalSpy progressed(&answers, &LiveAnswers::progressed);
    answers.ask(pumps(0.5), "T1");
    ASSERT_TRUE(QTest::qWaitFor([&] { return !progressed.isEmpty(); }, 10000)); // after a second
    EXPECT_EQ(progressed.first().first().toDouble(), 0.5);
    answers.cancel();
    EXPECT_EQ(answers.state(), State::cancelled);
    EXPECT_TRUE(answers.isStale());
    QTest::qWait(50);
    EXPECT_FALSE(answers.answer());
    wait = false;
    answers.again();
    ASSERT_TRUE(becomesCurrent(answers));
    EXPECT_TRUE(answers.answer()->figure);
}

TEST(LiveAnswers, WhatIsThrownBecomesASentence) {
    LiveAnswers answers;
    answers.setPause(0ms);
    answers.setCompute([](const project::Project&, const std::string&,
                          const LiveMeans&) -> LiveAnswer { throw std::bad_alloc(); });
    answers.ask(pumps(0.5), "T1");
    ASSERT_TRUE(becomesCurrent(answers));
    ASSERT_EQ(answers.answer()->warnings.size(), 1u);
    EXPECT_THAT(answers.answer()->warnings[0].sentence, testing::HasSubstr("memory"));
}

// Two hundred edits of the demo, each followed by an analysis, some stopped half way: the last
// answer is right, and no snapshot is held any longer.
TEST(LiveAnswers, TwoHundredQuickEdits) {
    const auto loaded =
        document::load(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater");
    ASSERT_TRUE(loaded);
    std::vector<std::weak_ptr<const project::Project>> snapshots;
    int finished = 0;
    {
        LiveAnswers answers;
        answers.setPause(0ms);
        QObject::connect(&answers, &LiveAnswers::answered, &answers, [&] { ++finished; });
        const std::string top = "T5";
        std::shared_ptr<const project::Project> last;
        for (int i = 0; i < 200; ++i) {
            auto edited = std::make_shared<project::Project>(loaded->project);
            project::Event added = plants::event("added", 0.001 + 0.001 * i);
            edited->events.push_back(added);
            for (project::Gate& gate : edited->gates)
                if (gate.id == "G-T1-1") gate.inputs.push_back({"added", {}});
            last = edited;
            edited.reset();
            snapshots.push_back(last);
            answers.ask(last, top);
            if (i % 3 == 0) {
                ASSERT_TRUE(becomesCurrent(answers));
            } else if (i % 3 == 1) {
                QTest::qWait(i % 7);
            } else {
                QCoreApplication::processEvents();
            }
        }
        ASSERT_TRUE(becomesCurrent(answers));
        const LiveAnswer fresh = editor::computeLive(*last, top, {});
        ASSERT_TRUE(fresh.figure && answers.answer()->figure);
        EXPECT_EQ(answers.answer()->figure->upper, fresh.figure->upper);
        EXPECT_EQ(answers.answer()->setCount, fresh.setCount);
        last.reset();
        // Those that were asked about before are gone: only the newest is held.
        QTest::qWait(10);
        int alive = 0;
        for (const auto& snapshot : snapshots)
            alive += snapshot.expired() ? 0 : 1;
        EXPECT_EQ(alive, 1);
    }
    for (const auto& snapshot : snapshots)
        EXPECT_TRUE(snapshot.expired());
    EXPECT_GE(finished, 67);
}

TEST(LiveAnswers, EndsWhileARunIsUnderWay) {
    for (int i = 0; i < 20; ++i) {
        LiveAnswers answers;
        answers.setPause(0ms);
        answers.ask(pumps(0.5), "T1");
        QTest::qWait(i % 3);
    }
}
