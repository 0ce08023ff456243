// SPDX-License-Identifier: GPL-3.0-or-later
// Failure modes as rows of the worksheet: many cells changed in one step, rows made, doubled and
// taken away.
#pragma once

#include "models/project/edits/changed.h"

#include <string>
#include <vector>

namespace cutwater::project::edits {

// Each mode of `changed` takes the place of the one with its id, whatever of it was changed.
// `doing` and `about` name the step. Refused where a mode or its component is not there.
Result changeRows(const Project& project, std::vector<FailureMode> changed, std::string doing,
                  std::string about);

// A new failure mode of that component, behind the row `after` (empty: at the end). Refused where
// the component is not there, the name is empty, or the component has a failure mode of that name.
Result addRow(const Project& project, const Id& component, const std::string& name,
              const Id& after = {});

// The same, of a component that is new, too: with this tag, as a part of `parent` (may be empty).
// Refused where the tag is empty or taken.
Result addRowOfNewComponent(const Project& project, const std::string& tag, const Id& parent,
                            const std::string& name, const Id& after = {});

// A copy of each row behind it: all facts, but with a name of its own ("... (2)"), and no origin in
// the library.
Result duplicateRows(const Project& project, const std::vector<Id>& modes);

// Events that were these failure modes stay in their trees, with the name and the failure model
// that they had. Refused where entries of the log speak of one of them.
Result removeRows(const Project& project, const std::vector<Id>& modes);

} // namespace cutwater::project::edits
