// SPDX-License-Identifier: GPL-3.0-or-later
// Probabilities at the gates: small ones by hand, all of the demo's against the shell.
#include "app/editor/diagram/gate_figures.h"
#include "models/document/document.h"
#include "tests/app/editor/diagram/stage.h"

#include <QTest>

#include <gtest/gtest.h>

namespace cutwater {
namespace {

using namespace editor;

project::Event withProbability(const char* id, double q) {
    project::Event event;
    event.id = id;
    project::FailureModel model;
    model.kind = project::ModelKind::probability;
    project::Quantity quantity;
    quantity.value = q;
    model.set(project::Role::probability, quantity);
    event.model = model;
    return event;
}

TEST(GateFigures, OfAndAndOrByHand) {
    project::Project project = test::smallTree();
    const std::map<std::string, double> chances{{"x", 0.1}, {"y", 0.2}, {"z", 0.3}, {"s", 0.05}};
    for (project::Event& event : project.events)
        if (const auto found = chances.find(event.id); found != chances.end()) {
            project::Event made = withProbability(event.id.c_str(), found->second);
            made.name = event.name;
            event = made;
        }
    auto tree = makeTree(std::make_shared<const project::Project>(project), "T1");
    ASSERT_TRUE(tree);
    GateFigures figures;
    figures.begin(*tree);
    ASSERT_TRUE(figures.goOn(std::chrono::seconds(20), {}));
    EXPECT_EQ(figures.words().at("a"), "2.00e-02"); // 0.1 * 0.2
    EXPECT_EQ(figures.words().at("b"), "4.40e-01"); // 1 - 0.8 * 0.7
}

TEST(GateFigures, TheTreeWithErrorsHasNone) {
    project::Project project = test::smallTree();
    project.gates.front().k = 7;
    project.gates.front().kind = project::GateKind::vote;
    auto tree = makeTree(std::make_shared<const project::Project>(project), "T1");
    ASSERT_TRUE(tree);
    GateFigures figures;
    figures.begin(*tree);
    EXPECT_TRUE(figures.goOn(std::chrono::seconds(20), {}));
    EXPECT_TRUE(figures.words().empty());
}

TEST(GateFigures, TheyAppearInThePictureAndStopWhenTheTreeIsEdited) {
    auto loaded = document::load(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater");
    ASSERT_TRUE(loaded);
    test::Stage stage(loaded->project, "T3-1");
    stage.panel->setCaptions(CaptionKind::gates);
    const auto known = [&] {
        for (const PageBox& box : stage.panel->scene().page()->boxes)
            if (box.isGate && !box.transfer && box.words.atLeft.empty()) return false;
        return true;
    };
    EXPECT_TRUE(QTest::qWaitFor(known, 20000));
}

} // namespace
} // namespace cutwater
