// SPDX-License-Identifier: GPL-3.0-or-later
// Whatever is done to a plant, it stays sound, and undo leads back to what was.
#include "models/project/edits/delta.h"
#include "models/project/edits/plant_copy.h"
#include "models/project/edits/supply.h"
#include "tests/models/project/edits/small_plant.h"

#include <gtest/gtest.h>

#include <random>

using namespace cutwater::test;
using namespace cutwater::project::edits;

namespace {

class Dice {
public:
    std::size_t below(std::size_t count) { return m_engine() % count; }
    Id part(const Project& p) { return p.components[below(p.components.size())].id; }
    Id mode(const Project& p) {
        return p.modes.empty() ? Id("none") : p.modes[below(p.modes.size())].id;
    }
    Id either(const Project& p) { return below(2) ? part(p) : mode(p); }
    Id parent(const Project& p) { return below(4) ? part(p) : Id(); }

    Result edit(const Project& p) {
        // A plant that only grows would say less and less about deleting.
        if (p.components.size() > 60) return removeParts(p, {part(p)});
        switch (below(10)) {
        case 0: return addPart(p, {parent(p), below(2) ? part(p) : Id()}, "X-1 part");
        case 1: return addMode(p, {part(p), {}}, "fails");
        case 2: return moveParts(p, {either(p)}, {parent(p), part(p)});
        case 3: return renameComponentId(p, part(p), "id" + std::to_string(below(40)));
        case 4: return renameModeId(p, mode(p), "m" + std::to_string(below(40)));
        case 5: return removeParts(p, {either(p)});
        case 6: {
            const auto fragment = copyParts(p, {part(p)});
            return fragment ? pasteParts(p, *fragment, {parent(p), {}}) : fragment.problems();
        }
        case 7: {
            Component facts = *partOf(p, part(p));
            facts.suppliedBy.push_back({part(p), {}});
            return setPart(p, facts);
        }
        case 8: {
            Connection connection;
            connection.from = part(p);
            connection.to = part(p);
            connection.through = {{part(p), {}}};
            return setConnection(p, connection);
        }
        default: {
            const auto fragment = copyParts(p, {mode(p)});
            return fragment ? pasteParts(p, *fragment, {parent(p), {}}, true) : fragment.problems();
        }
        }
    }

private:
    std::mt19937 m_engine{20261125};
};

} // namespace

TEST(EditPlantAtRandom, StaysSoundAndUndoLeadsBack) {
    Dice dice;
    Project project = smallPlant();
    int made = 0;
    for (int i = 0; i < 3000; ++i) {
        const auto result = dice.edit(project);
        if (!result) continue;
        ++made;
        for (const Problem& problem : validate(result->project))
            ASSERT_NE(problem.severity, Severity::error)
                << i << ' ' << result->doing << ": " << toSentence(problem);
        const Delta delta = differences(project, result->project);
        ASSERT_EQ(apply(delta, project), result->project) << i << ' ' << result->doing;
        ASSERT_EQ(revert(delta, result->project), project) << i << ' ' << result->doing;
        project = result->project;
        if (project.components.empty()) project = smallPlant();
    }
    EXPECT_GT(made, 1500) << "most of them are possible";
}
