// SPDX-License-Identifier: GPL-3.0-or-later
// Size and shape: many problems at once, deep chains, large circles. Recursion would overflow here,
// and anything quadratic would run into the time limit of the test.
#include "tests/models/project/sound_project.h"

#include <chrono>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater::project {

using ::testing::HasSubstr;

namespace {

std::string gateName(int i) {
    return "g" + std::to_string(i);
}

// g0 -> g1 -> ... -> the last, which has event e below it.
Project chain(int length) {
    Project project;
    Event event;
    event.id = "e";
    event.model.kind = ModelKind::probability;
    event.model.set(Role::probability, test::quantity(0.1, Unit::number));
    project.events.push_back(event);
    for (int i = 0; i < length; ++i) {
        Gate gate;
        gate.id = gateName(i);
        gate.inputs = {{i + 1 < length ? gateName(i + 1) : "e", {}}};
        project.gates.push_back(std::move(gate));
    }
    TopEvent top;
    top.id = "T";
    top.node.id = gateName(0);
    project.tops.push_back(top);
    return project;
}

class Stopwatch {
public:
    double seconds() const {
        return std::chrono::duration<double>(std::chrono::steady_clock::now() - m_start).count();
    }

private:
    std::chrono::steady_clock::time_point m_start = std::chrono::steady_clock::now();
};

} // namespace

TEST(ValidateSize, AllProblemsInOnePass) {
    Project project = test::soundProject();
    project.gates[1].inputs[0].id = "nowhere";
    project.gates[2].k = 7;
    project.events[1].model.numbers[0].quantity.value = 2;
    project.modes[0].model.set(Role::rate, test::quantity(-1, Unit::perHour, 251));
    project.components[3].id = "supply";
    project.connections[0].through.clear();
    project.log[0].date = "yesterday";
    const Problems problems = validate(project);
    EXPECT_EQ(problems.size(), 6u);
    EXPECT_TRUE(std::is_sorted(problems.begin(), problems.end(),
                               [](const auto& a, const auto& b) { return a.line < b.line; }));
}

TEST(ValidateSize, ChainOfAMillionGates) {
    const Project project = chain(1'000'000);
    EXPECT_TRUE(validate(project).empty());
}

TEST(ValidateSize, CircleOfAHundredThousandGatesIsNamedInShort) {
    Project project = chain(100'000);
    project.gates.back().inputs[0].id = "g0";
    project.events.clear();
    const Problems problems = validate(project);
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_THAT(problems[0].what, HasSubstr("g0 -> g1 -> g2 -> g3 -> ... (99992 more) -> g99996"));
    EXPECT_THAT(problems[0].what, HasSubstr("g99999 -> g0"));
}

TEST(ValidateSize, EachCircleOnce) {
    // Thirty circles of three, every one of them densely knotted, and one gate above all.
    Project project;
    Gate top;
    top.id = "top";
    for (int i = 0; i < 30; ++i)
        for (int k = 0; k < 3; ++k) {
            Gate gate;
            gate.id = gateName(3 * i + k);
            gate.line.number = 3 * i + k + 1;
            for (int j = 0; j < 3; ++j)
                if (j != k) gate.inputs.push_back({gateName(3 * i + j), {}});
            top.inputs.push_back({gate.id, {}});
            project.gates.push_back(std::move(gate));
        }
    project.gates.push_back(top);
    project.tops.push_back({"T", "", {"top", {}}, "", "", {}, {}, "", {}, {}});
    const Problems problems = validate(project);
    ASSERT_EQ(problems.size(), 30u);
    for (int i = 0; i < 30; ++i) {
        EXPECT_EQ(problems[static_cast<std::size_t>(i)].line, 3 * i + 1);
        EXPECT_THAT(
            problems[static_cast<std::size_t>(i)].what,
            HasSubstr(gateName(3 * i) + " -> " + gateName(3 * i + 1) + " -> " + gateName(3 * i)));
    }
}

TEST(ValidateSize, DeepPlantAndLongSupplyChain) {
    Project project;
    for (int i = 0; i < 200'000; ++i) {
        Component component;
        component.id = "c" + std::to_string(i);
        if (i > 0) {
            component.parent = "c" + std::to_string(i - 1);
            component.suppliedBy = {{component.parent, {}}};
        }
        project.components.push_back(std::move(component));
    }
    EXPECT_TRUE(validate(project).empty());
}

TEST(ValidateSize, ManyWrongReferencesStayLinear) {
    Project project = chain(100'000);
    for (Gate& gate : project.gates)
        gate.inputs[0].id += "-wrong";
    const Stopwatch watch;
    const Problems problems = validate(project);
    EXPECT_GE(problems.size(), 100'000u);
    EXPECT_LT(watch.seconds(), 30); // quadratic: hours
}

TEST(ValidateSize, GateWithAMillionEqualInputs) {
    Project project = chain(1);
    project.gates[0].inputs.assign(1'000'000, {"e", {}});
    EXPECT_EQ(validate(project).size(), 1u);
}

} // namespace cutwater::project
