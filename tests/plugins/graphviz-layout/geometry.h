// SPDX-License-Identifier: GPL-3.0-or-later
// Random graphs, and what a good layout must keep to, said without knowing how it was made.
#pragma once

#include "plugins/sdk/interfaces.h"

#include <cstdint>
#include <string>
#include <vector>

namespace cutwater::test {

// Whole numbers below `limit`; the same from run to run on every machine.
class Dice {
public:
    explicit Dice(std::uint64_t seed) : m_state(seed * 2654435761u + 88172645463325252u) {}
    std::size_t below(std::size_t limit);

private:
    std::uint64_t m_state;
};

// A tree of `count` boxes of mixed sizes; `shared` more edges join boxes to a second parent, and
// the result has no circle.
sdk::LayoutGraph randomGraph(std::uint64_t seed, std::size_t count, std::size_t shared);

sdk::LayoutGraph chain(std::size_t count);

// Each complaint is a sentence; none: boxes are apart and inside the sheet, children lie below
// their parents, routes are right-angled, run from the parent's lower edge to the child's upper
// edge, and pass through no box.
std::vector<std::string> complaints(const sdk::LayoutGraph& placed);

// The stretches that lines of different parents share, as sentences.
std::vector<std::string> sharedStretches(const sdk::LayoutGraph& placed);

} // namespace cutwater::test
