// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/project.h"

namespace cutwater::project {

Problems validate(const Project&) {
    return {};
} // replaced by the next commit

} // namespace cutwater::project
