// SPDX-License-Identifier: GPL-3.0-or-later
// What ten thousand analyses leave on the heap: nothing, whether they end well, are stopped, or run
// out of memory.
#include "models/logic/recall.h"
#include "tests/oracle/random_tree.h"
#include "tests/oracle/solved.h"

#include <malloc.h>

namespace cutwater::oracle {
namespace {

using logic::Limits;

// Bytes that are handed out and not given back, small blocks and large ones.
std::size_t heapInUse() {
    const struct mallinfo2 info = mallinfo2();
    return info.uordblks + info.hblkhd;
}

std::vector<RandomTree> someTrees() {
    std::vector<RandomTree> trees;
    for (std::uint64_t seed = 700; seed < 710; ++seed)
        trees.push_back(makeTree(seed, TreeWish{.events = 20,
                                                .gates = 14,
                                                .negations = seed % 2 == 1,
                                                .oddities = seed % 3 == 1,
                                                .maxInputs = 4}));
    return trees;
}

struct Seen {
    int solved = 0, stopped = 0;
};

// One analysis as a user would ask for it; `round` decides what it is and how it ends.
void analyse(const RandomTree& tree, std::size_t round,
             const std::shared_ptr<logic::Recall>& recall, Seen& seen) {
    Limits limits;
    if (round % 4 == 1) limits.recall = recall;
    if (round % 4 == 2) limits.memoryBytes = 30'000 + 1000 * (round % 50);
    if (round % 4 == 3) limits.nodesPerModule = round % 40;
    const auto outcome = logic::solve(tree.formula, tree.top, limits);
    ++(outcome.solution ? seen.solved : seen.stopped);
    if (!outcome.solution) return;
    double sink = outcome.solution->probability(tree.q).occurs;
    for (const double factor : outcome.solution->birnbaum(tree.q))
        sink += factor;
    auto listing = outcome.solution->list(tree.q, {});
    for (int i = 0; i < 5; ++i)
        if (const auto set = listing.next()) sink += set->probability;
    ASSERT_TRUE(sink == sink);
}

TEST(Heap, TenThousandAnalysesLeaveNothing) {
    const std::vector<RandomTree> trees = someTrees();
    const auto recall = std::make_shared<logic::Recall>();
    Seen seen;
    const auto thousand = [&] {
        for (std::size_t round = 0; round < 1000; ++round)
            analyse(trees[round % trees.size()], round / trees.size() * 4 + round % 4, recall,
                    seen);
    };
    thousand(); // what is made once and kept
    const std::size_t before = heapInUse();
    if (before == 0) GTEST_SKIP() << "this build's heap does not tell";
    for (int i = 0; i < 10; ++i)
        thousand();
    EXPECT_GE(seen.solved, 3000);
    EXPECT_GE(seen.stopped, 1000);
    // One small object an analysis would be 160,000. What the library keeps at hand for the next
    // request of a size counts as handed out: some 10,000 here, and nothing of it with
    // GLIBC_TUNABLES=glibc.malloc.tcache_count=0.
    EXPECT_LE(heapInUse(), before + 16 * 1024);
}

} // namespace
} // namespace cutwater::oracle
