// SPDX-License-Identifier: GPL-3.0-or-later
// The real window offscreen with a large project: to the first paint, and from key to answer. The
// bounds are those of the requirements times four, for a loaded machine; figures are printed.
#include "tests/app/editor/window/room.h"

#include "app/editor/outline/outline_view.h"
#include "models/project/edits/add.h"
#include "models/project/edits/facts.h"

#include <QElapsedTimer>

#include <cstdio>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace edits = cutwater::project::edits;
namespace document = cutwater::document;

namespace {

// Groups of ten below groups of ten; every seventh event is used twice.
Project large(int events) {
    Project project;
    TopEvent top;
    top.id = "T1";
    top.node.id = "g0";
    project.tops = {top};
    const int gates = events / 9;
    for (int i = 0; i < gates; ++i)
        project.gates.push_back(smallGate(("g" + std::to_string(i)).c_str(), "group of failures",
                                          i % 2 ? GateKind::andGate : GateKind::orGate, {}));
    for (int i = 1; i < gates; ++i)
        project.gates[static_cast<std::size_t>((i - 1) / 10)].inputs.push_back(
            {"g" + std::to_string(i), {}});
    for (int i = 0; i < events; ++i) {
        project.events.push_back(smallEvent(("e" + std::to_string(i)).c_str(), "some part fails"));
        auto& model = project.events.back().model;
        model.kind = ModelKind::probability;
        Quantity chance;
        chance.value = 1e-4;
        chance.unit = Unit::number;
        model.set(Role::probability, chance);
        project.gates[static_cast<std::size_t>(i % gates)].inputs.push_back(
            {"e" + std::to_string(i), {}});
        if (i % 7 == 0)
            project.gates[static_cast<std::size_t>((i + 3) % gates)].inputs.push_back(
                {"e" + std::to_string(i), {}});
    }
    return project;
}

class Speed : public Room {};

} // namespace

TEST_F(Speed, TwoThousandEventsFromFileToPaintAndFromKeyToAnswer) {
    const QString path = folder.filePath("large.cutwater");
    ASSERT_TRUE(document::save(large(2000), path.toStdString()).empty());
    QElapsedTimer clock;
    clock.start();
    openPath(path);
    auto* outline = window->findChild<OutlineView*>();
    outline->viewport()->repaint();
    const qint64 opened = clock.elapsed();
    outline->setFocus();
    outline->unfoldBelow();
    qint64 longest = 0;
    for (int i = 0; i < 20; ++i) {
        clock.restart();
        session().apply([&](const Project& p) {
            return edits::rename(p, "e" + std::to_string(i * 7), "renamed " + std::to_string(i));
        });
        outline->viewport()->repaint();
        longest = qMax(longest, clock.elapsed());
    }
    std::printf("2,000 events: file to paint %lld ms; longest edit %lld ms\n",
                static_cast<long long>(opened), static_cast<long long>(longest));
    EXPECT_LT(opened, 4 * 1000);
    EXPECT_LT(longest, 4 * 50);
}

TEST_F(Speed, TwentyThousandEventsFolded) {
    const QString path = folder.filePath("large.cutwater");
    ASSERT_TRUE(document::save(large(20000), path.toStdString()).empty());
    QElapsedTimer clock;
    clock.start();
    openPath(path);
    const qint64 opened = clock.elapsed();
    clock.restart();
    session().apply([](const Project& p) { return edits::addEvent(p, {"g0"}, "one more"); });
    const qint64 edit = clock.elapsed();
    clock.restart();
    session().undoStack()->undo();
    std::printf("20,000 events: open %lld ms, edit %lld ms, undo %lld ms\n",
                static_cast<long long>(opened), static_cast<long long>(edit),
                static_cast<long long>(clock.elapsed()));
    EXPECT_LT(opened, 20 * 1000);
    EXPECT_LT(edit, 2000);
}
