// SPDX-License-Identifier: GPL-3.0-or-later
// Delta: what one edit changed, small enough that ten thousand of them fit in memory, and able to
// go either way.
#pragma once

#include "models/project/project.h"

#include <cstddef>
#include <tuple>
#include <vector>

namespace cutwater::project::edits {

// One run of values that was replaced, in a vector of the project.
template <typename Value>
struct Run {
    std::size_t before = 0, after = 0; // where it starts in the vector before and after
    std::vector<Value> removed, inserted;
};

template <typename Value>
using Runs = std::vector<Run<Value>>; // in the order of their places

struct Delta {
    // In the order of the vectors of Project.
    std::tuple<Runs<Parameter>, Runs<Component>, Runs<FailureMode>, Runs<Connection>, Runs<Event>,
               Runs<Gate>, Runs<TopEvent>, Runs<CommonCauseGroup>, Runs<Exposure>, Runs<LogEntry>,
               Runs<Assessment>>
        runs;
    // The project's own facts, with empty vectors; kept only where they differ.
    std::vector<std::pair<Project, Project>> facts;

    bool empty() const;
};

// apply(differences(a, b), a) == b and revert(differences(a, b), b) == a. Linear in the size of the
// projects; small where few values differ and the others keep their order.
Delta differences(const Project& before, const Project& after);
Project apply(const Delta& delta, Project before);
Project revert(const Delta& delta, Project after);

} // namespace cutwater::project::edits
