// SPDX-License-Identifier: GPL-3.0-or-later
// What a Solution holds: one part per module, each pointing to a shape, and the shapes solved once
// each.
#pragma once

#include "models/logic/implicants.h"
#include "models/logic/shape.h"
#include "models/logic/solution.h"

#include <array>
#include <span>
#include <vector>

namespace cutwater::logic {

struct Part {
    std::uint32_t shape = 0;
    std::size_t firstLeaf = 0;
    std::uint32_t leafCount = 0;
    std::array<bool, 2> needed{}; // the sets of the function, of its negation
};

struct SolutionData {
    std::vector<SolvedShape> shapes;
    std::vector<Part> parts; // a part stands after the parts it is made of; the last one is the top
    std::vector<Leaf> leaves; // of every part, in the order of its levels
    std::optional<bool> constant;
    bool coherent = true;
    std::uint32_t variableCount = 0; // of the formula that was asked about
    Effort effort;

    std::span<const Leaf> leavesOf(const Part& part) const {
        return {leaves.data() + part.firstLeaf, part.leafCount};
    }
    const Diagram& diagramOf(const Part& part) const { return shapes[part.shape].shape->diagram; }
    const Families& setsOf(std::size_t part, bool negated) const {
        return *shapes[parts[part].shape].sets[negated];
    }
    std::size_t topPart() const { return parts.size() - 1; }
    static Solution wrap(std::shared_ptr<const SolutionData> data) {
        return Solution(std::move(data));
    }
    // Lives as long as the solution or a copy of it does.
    static const SolutionData& of(const Solution& solution) { return *solution.m_data; }
};

// Calls see(part, negated, families) for every part's sets that the top needs, parts before those
// that stand on them.
template <typename See>
void forEachNeeded(const SolutionData& data, See see) {
    for (std::size_t part = 0; part < data.parts.size(); ++part)
        for (const bool negated : {false, true})
            if (data.parts[part].needed[negated]) see(part, negated, data.setsOf(part, negated));
}

} // namespace cutwater::logic
