// SPDX-License-Identifier: GPL-3.0-or-later
// What the library says today, taken into a component that came from it.
#pragma once

#include "models/library/take.h"

#include <vector>

namespace cutwater::library {

// The component with the accepted ones of its news (newsOf(); those of other components are left
// out); it is then of the library's revision, so that what was not accepted counts as changed on
// purpose. A mode that the library has no more stays and is the project's own from then on.
// Problems: there is no such component; it came from no library; library or type are not at hand.
project::Outcome<project::Project> acceptNews(const project::Project& project,
                                              const std::vector<Library>& libraries,
                                              const project::Id& component,
                                              const std::vector<News>& accepted);

} // namespace cutwater::library
