// SPDX-License-Identifier: GPL-3.0-or-later
// What is printed wherever a result may lead somebody to the machine. Users can add cautions (in
// the project), never remove these.
#pragma once

#include "models/project/project.h"
#include "plugins/sdk/result.h"

#include <vector>

namespace cutwater::sdk::tree {

enum class CautionScope {
    figures, // the result is looked at: what it is not
    machine, // it says what to check: all of them
};

// Appends the standing cautions of that scope, then the project's own.
void addCautions(std::vector<Note>& notes, CautionScope scope, const project::Project& project);

} // namespace cutwater::sdk::tree
