// SPDX-License-Identifier: GPL-3.0-or-later
// Where the worksheet and the trees do not meet: failure modes in no tree, events in no row, end
// effects that no tree answers for.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::worksheet {

// Positions are those in the project's vectors.
struct EndEffect {
    std::string text;                    // as first written
    std::vector<std::size_t> modes;      // that have it
    std::string severity;                // the worst of them, by the risk matrix
    std::optional<int> severityIndex;    // of that
    std::vector<std::size_t> answeredBy; // top events that name it
    std::vector<std::size_t> foundIn;    // other top events in whose tree one of the modes is
};

struct Coverage {
    std::vector<std::size_t> modesInNoTree;
    std::vector<std::size_t> eventsInNoRow; // basic and undeveloped ones that are no failure mode
    std::vector<EndEffect> effects;         // in the order of the project
    std::vector<std::pair<std::size_t, std::string>> unknownEffects; // named by a top, in no row
};

// Two end effects are one where they differ in capitals, blanks and a full stop at the end only. A
// top event answers for an end effect that it names, or whose text is its own name.
Coverage coverageOf(const project::Project& project, const project::Index& index);

std::string plainEffect(const std::string& text); // for comparing; empty where there is nothing

} // namespace cutwater::worksheet
