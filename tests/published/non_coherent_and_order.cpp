// SPDX-License-Identifier: GPL-3.0-or-later
// Trees with negation, house events, conditions and order. Derived, but where said otherwise: A
// 0.1, B 0.2, C 0.3; prime implicants by trying all 27 products.
#include "models/reliability/sequence.h"
#include "models/reliability/tree_formula.h"
#include "tests/oracle/solved.h"
#include "tests/published/small_tree.h"

#include <cmath>
#include <limits>

namespace cutwater::published {
namespace {

using oracle::near;

struct Abc : SmallTree {
    logic::Literal a = event("A", 0.1), b = event("B", 0.2), c = event("C", 0.3);
};

TEST(NonCoherent, ExclusiveOr) {
    Abc tree;
    tree.solve(tree.any({tree.a, tree.b}));
    EXPECT_TRUE(near(tree.exact(), 0.28, 1e-12));
    tree.solve(tree.exactlyOne({tree.a, tree.b}));
    EXPECT_TRUE(near(tree.exact(), 0.26, 1e-12));
    EXPECT_FALSE(tree.solution().coherent());
    EXPECT_EQ(tree.sets(), (NamedSets{{"A", "~B"}, {"~A", "B"}}));
    // The derivative for A, 1 - 2 q_B.
    EXPECT_TRUE(near(tree.importance("A").birnbaum, 0.6, 1e-12));
}

TEST(NonCoherent, ManyInputExclusiveOrHasTwoMeanings) {
    // Cutwater's xor gate of many inputs means "exactly one"; odd parity is a chain of two-input
    // gates.
    Abc tree;
    tree.solve(tree.exactlyOne({tree.a, tree.b, tree.c}));
    EXPECT_TRUE(near(tree.exact(), 0.398, 1e-12));
    tree.solve(tree.exactlyOne({tree.exactlyOne({tree.a, tree.b}), tree.c}));
    EXPECT_TRUE(near(tree.exact(), 0.404, 1e-12));
    EXPECT_EQ(
        tree.sets(),
        (NamedSets{{"A", "~B", "~C"}, {"~A", "B", "~C"}, {"~A", "~B", "C"}, {"A", "B", "C"}}));
}

TEST(NonCoherent, OneWithoutTheOther) {
    Abc tree;
    tree.solve(tree.all({tree.a, ~tree.b}));
    EXPECT_TRUE(near(tree.exact(), 0.08, 1e-12));
    EXPECT_EQ(tree.sets(), (NamedSets{{"A", "~B"}}));
}

TEST(NonCoherent, ConsensusFindsTheImplicantThatIsInNoGate) {
    // The shape of the car-and-traffic-light tree in the literature on NOT logic (Andrews, about
    // 2000, from memory).
    Abc tree;
    tree.solve(tree.any({tree.all({tree.a, tree.b}), tree.all({~tree.a, tree.c})}));
    EXPECT_EQ(tree.sets(), (NamedSets{{"A", "B"}, {"~A", "C"}, {"B", "C"}}));
    EXPECT_TRUE(near(tree.exact(), 0.29, 1e-12));
    Abc standIn; // what is left when the negated events are simply taken as true
    standIn.solve(standIn.any({standIn.b, standIn.c}));
    EXPECT_TRUE(near(standIn.exact(), 0.44, 1e-12));
}

// ---- through a project, as a user's file would be
// ------------------------------------------------

project::Event event(const std::string& id, project::EventKind kind = project::EventKind::basic,
                     bool state = false) {
    project::Event made;
    made.id = id;
    made.kind = kind;
    made.state = state;
    return made;
}

project::Gate gate(const std::string& id, project::GateKind kind,
                   const std::vector<std::string>& inputs) {
    project::Gate made;
    made.id = id;
    made.kind = kind;
    for (const auto& input : inputs)
        made.inputs.push_back({input, {}});
    return made;
}

struct Answer {
    double exact;
    NamedSets sets;
};

Answer answer(const project::Project& project, const std::map<std::string, double>& chances,
              const std::map<project::Id, bool>& forced = {}) {
    const project::Index index(project);
    const auto tree = reliability::toFormula(project, index, "TOP", forced);
    std::vector<double> q;
    for (std::size_t position : tree.eventOfVariable)
        q.push_back(chances.at(project.events[position].id));
    const auto solution = oracle::solved(tree.formula, tree.top);
    if (!solution) return {};
    Answer result{solution->probability(q).occurs, {}};
    for (const auto& set : oracle::drain(solution->list(q, {}))) {
        std::set<std::string> names;
        for (const auto& literal : set.literals)
            names.insert((literal.negated ? "~" : "") +
                         project.events[tree.eventOfVariable[literal.variable]].id);
        result.sets.insert(names);
    }
    return result;
}

TEST(Inhibit, NeedsItsCondition) { // cause 0.02, condition 0.5
    project::Project project;
    project.events = {event("cause"), event("condition", project::EventKind::conditioning)};
    auto top = gate("TOP", project::GateKind::inhibit, {"cause"});
    top.condition.id = "condition";
    project.gates = {top};
    const Answer got = answer(project, {{"cause", 0.02}, {"condition", 0.5}});
    EXPECT_TRUE(near(got.exact, 0.01, 1e-12));
    EXPECT_EQ(got.sets, (NamedSets{{"cause", "condition"}}));
}

TEST(House, SwitchesItsPartOfTheTreeOnAndOff) { // A + B.H
    project::Project project;
    project.events = {event("A"), event("B"), event("H", project::EventKind::house, true)};
    project.gates = {gate("G", project::GateKind::andGate, {"B", "H"}),
                     gate("TOP", project::GateKind::orGate, {"A", "G"})};
    const std::map<std::string, double> chances{{"A", 0.1}, {"B", 0.2}};
    Answer got = answer(project, chances);
    EXPECT_TRUE(near(got.exact, 0.28, 1e-12));
    EXPECT_EQ(got.sets, (NamedSets{{"A"}, {"B"}}));

    project.events[2].state = false;
    got = answer(project, chances);
    EXPECT_TRUE(near(got.exact, 0.1, 1e-12));
    EXPECT_EQ(got.sets, (NamedSets{{"A"}}));

    // An assessment that forces the house on again.
    got = answer(project, chances, {{"H", true}});
    EXPECT_TRUE(near(got.exact, 0.28, 1e-12));
}

// ---- order and standby, against sums over small steps
// --------------------------------------------

// Sum over small steps with Simpson's weights.
template <typename F>
long double integrate(F density, double from, double to, int steps) {
    const long double width = (static_cast<long double>(to) - from) / steps;
    long double total =
        density(static_cast<long double>(from)) + density(static_cast<long double>(to));
    for (int i = 1; i < steps; ++i)
        total += (i % 2 == 1 ? 4 : 2) * density(from + i * width);
    return total * width / 3;
}

// A fails at some moment and B after it, both before `time`.
long double priorityAndByIntegration(double a, double b, double time) {
    return integrate(
        [a, b](long double t) { return (1 - std::exp(-a * t)) * b * std::exp(-b * t); }, 0, time,
        20'000);
}

TEST(Order, PriorityAnd) { // rates 1e-3 and 2e-3 per hour, 1000 h; for ever
    EXPECT_TRUE(near(reliability::priorityAnd(1e-3, 2e-3, 1000), 0.231189429, 1e-9));
    const double forEver = std::numeric_limits<double>::infinity();
    EXPECT_TRUE(near(reliability::priorityAnd(1e-3, 2e-3, forEver), 1 / 3.0L, 1e-14));
    EXPECT_TRUE(near(reliability::priorityAnd(1e-3, 2e-3, 1e7), 1 / 3.0L, 1e-14));
    EXPECT_TRUE(near(reliability::priorityAnd(1e-3, 2e-3, 1000),
                     priorityAndByIntegration(1e-3, 2e-3, 1000), 1e-12));
    EXPECT_TRUE(near(reliability::priorityAnd(1e-5, 3e-4, 2000),
                     priorityAndByIntegration(1e-5, 3e-4, 2000), 1e-12));
}

// Both units are down by `time`: the first failure at some moment u, the survivor after it.
long double standbyByIntegration(double rate, double dormancy, double time) {
    const double first = rate * (1 + dormancy);
    return integrate(
        [=](long double u) {
            return first * std::exp(-first * u) * -std::expm1(-rate * (time - u));
        },
        0, time, 20'000);
}

TEST(Order, StandbyPair) { // rate x time = 1: hot; warm at half the rate; cold
    // Nine decimals are printed; the closed forms give the rest: (1-e^-1)^2, 1 - (1.5 e^-1 -
    // e^-1.5)/0.5, 1 - 2 e^-1.
    EXPECT_NEAR(reliability::standbyPair(1e-3, 1, 1000), 0.399576401, 5.1e-10);
    EXPECT_NEAR(reliability::standbyPair(1e-3, 0.5, 1000), 0.342621997, 5.1e-10);
    EXPECT_NEAR(reliability::standbyPair(1e-3, 0, 1000), 0.264241118, 5.1e-10);
    const long double e = std::exp(1.0L);
    EXPECT_TRUE(near(reliability::standbyPair(1e-3, 1, 1000), (1 - 1 / e) * (1 - 1 / e), 1e-14));
    EXPECT_TRUE(near(reliability::standbyPair(1e-3, 0.5, 1000),
                     1 - 2 * (1.5L / e - std::exp(-1.5L)), 1e-14));
    EXPECT_TRUE(near(reliability::standbyPair(1e-3, 0, 1000), 1 - 2 / e, 1e-14));
    for (const double dormancy : {0.0, 0.1, 0.5, 1.0})
        for (const double time : {10.0, 900.0, 1100.0, 5000.0})
            EXPECT_TRUE(near(reliability::standbyPair(1e-3, dormancy, time),
                             standbyByIntegration(1e-3, dormancy, time), 1e-11))
                << dormancy << ", " << time << " h";
}

} // namespace
} // namespace cutwater::published
