// SPDX-License-Identifier: GPL-3.0-or-later
// Many samples side by side give what one at a time gives, to the bit.
#include "models/logic/sweep.h"

#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <algorithm>

namespace cutwater::oracle {
namespace {

TEST(ProbabilitySweep, SameToTheBitAsOneAtATime) {
    constexpr std::size_t kSamples = logic::ProbabilitySweep::kSamples;
    for (std::uint64_t seed = 1; seed <= 400; ++seed) {
        TreeWish wish;
        wish.events = 4 + static_cast<std::uint32_t>(seed % 20);
        wish.gates = 5 + static_cast<std::uint32_t>(seed % 30);
        wish.negations = seed % 2 == 0;
        const RandomTree tree = makeTree(seed, wish);
        const auto solution = solved(tree.formula, tree.top);
        ASSERT_TRUE(solution);
        Random random(seed);
        std::vector<double> q(tree.formula.variableCount() * kSamples);
        for (double& value : q)
            value = random.unit();
        logic::ProbabilitySweep sweep(*solution);
        for (int again = 0; again < 2; ++again) { // kept buffers must not remember
            std::array<double, kSamples> top{};
            sweep(q, top);
            for (std::size_t s = 0; s < kSamples; ++s) {
                std::vector<double> one;
                for (std::uint32_t v = 0; v < tree.formula.variableCount(); ++v)
                    one.push_back(q[v * kSamples + s]);
                ASSERT_EQ(top[s], solution->probability(one).occurs) << describe(tree);
            }
            std::reverse(q.begin(), q.end());
        }
    }
}

} // namespace
} // namespace cutwater::oracle
