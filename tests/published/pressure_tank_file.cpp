// SPDX-License-Identifier: GPL-3.0-or-later
// The pressure tank of NUREG-0492 chapter VIII (from memory) once more, this time all the way from
// a file on disk.
#include "models/document/document.h"
#include "models/reliability/event_model.h"
#include "models/reliability/tree_formula.h"
#include "tests/oracle/solved.h"

namespace cutwater::published {
namespace {

using oracle::near;

TEST(PressureTankFile, GivesTheFiguresOfTheTreeWrittenInCode) {
    const std::string path = CUTWATER_SOURCE_DIR "/tests/published/files/pressure-tank.cutwater";
    const auto loaded = document::load(path);
    ASSERT_TRUE(loaded) << project::toSentence(loaded.problems().front(), path);
    const auto& project = loaded->project;
    for (const auto& warning : loaded->warnings)
        ADD_FAILURE() << project::toSentence(warning, path);

    const project::Index index(project);
    const auto* top = index.top("tank-ruptures");
    ASSERT_TRUE(top);
    const auto tree = reliability::toFormula(project, index, top->node.id);
    std::vector<double> q;
    for (std::size_t position : tree.eventOfVariable) {
        const auto chance =
            reliability::probabilityOf(project, index, project.events[position], {});
        ASSERT_TRUE(chance) << project::toSentence(chance.problems().front(), path);
        EXPECT_TRUE(chance->warnings.empty());
        q.push_back(chance->value);
    }
    const auto solution = oracle::solved(tree.formula, tree.top);
    ASSERT_TRUE(solution);
    EXPECT_TRUE(near(solution->rareEventSum(q), 3.5016e-5, 1e-12));           // derived
    EXPECT_TRUE(near(solution->minCutUpperBound(q), 3.501584944e-5, 1e-9));   // derived
    EXPECT_TRUE(near(solution->probability(q).occurs, 3.501584875e-5, 1e-9)); // derived

    std::vector<std::vector<std::string>> sets;
    for (const auto& set : oracle::drain(solution->list(q, {}))) {
        sets.emplace_back();
        for (const auto& literal : set.literals)
            sets.back().push_back(project.events[tree.eventOfVariable[literal.variable]].id);
    }
    // Smallest first, then the most probable; the last two are equally probable.
    ASSERT_EQ(sets.size(), 5u);
    EXPECT_EQ(sets[0], (std::vector<std::string>{"K2"}));
    EXPECT_EQ(sets[1], (std::vector<std::string>{"T"}));
    EXPECT_EQ(sets[2], (std::vector<std::string>{"S", "R"}));
}

} // namespace
} // namespace cutwater::published
