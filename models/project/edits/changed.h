// SPDX-License-Identifier: GPL-3.0-or-later
// What an edit answers. Edits are pure functions: a project goes in, a changed copy comes out, or
// one sentence why not. They refuse what breaks the structure (a circle, a missing id); what is
// only incomplete (a gate that has no inputs yet) they allow, and validate() reports it.
#pragma once

#include "models/project/project.h"

#include <string>
#include <vector>

namespace cutwater::project::edits {

struct Changed {
    Project project;
    std::string doing;       // for undo: "Rename %1"; faces translate it before they fill it in
    std::string about;       // what stands for %1; empty where there is none
    std::vector<Id> touched; // events and gates to look at afterwards; may be empty
};

using Result = Outcome<Changed>;

} // namespace cutwater::project::edits
