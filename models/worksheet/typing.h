// SPDX-License-Identifier: GPL-3.0-or-later
// Typing: texts put into many cells at once. What can be taken is taken, and each cell that cannot
// says why.
#pragma once

#include "models/project/index.h"
#include "models/project/project.h"
#include "models/worksheet/columns.h"

#include <string>
#include <string_view>
#include <vector>

namespace cutwater::worksheet {

struct TypedCell {
    project::Id mode;
    std::string_view column; // id of one of columns()
    std::string text;        // as a person typed it; empty clears the cell
};

struct RefusedCell {
    std::size_t cell = 0; // position in what was typed
    std::string why;      // a clause: "is not a whole number from 1 to 10"
};

struct Typing {
    std::vector<project::FailureMode> changed; // each once, in the order of the project
    std::size_t cells = 0;                     // that changed something
    std::vector<RefusedCell> refused;          // in the order of what was typed
};

// A cell that gets the text it shows stays as it is, whatever stands behind the text. The cells of
// one row are taken in the order of the columns: an action before its owner.
Typing typeInto(const project::Project& project, const project::Index& index,
                const std::vector<TypedCell>& cells);

// What a cell that can be typed shows, of a failure mode that stands in no sheet.
std::string shownText(const Column& column, const project::Index& index,
                      const project::FailureMode& mode);

// The component that is meant by an id, a tag or a name. The clause says why there is none.
project::Outcome<project::Id> componentMeant(const project::Project& project,
                                             const std::string& text);

} // namespace cutwater::worksheet
