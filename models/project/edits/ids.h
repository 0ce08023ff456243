// SPDX-License-Identifier: GPL-3.0-or-later
// Ids for new values.
#pragma once

#include "models/project/value.h"

#include <string>
#include <string_view>

namespace cutwater::project::edits {

// Words to the form of an id (see value.h): "Pump A stops" -> "pump-a-stops"; "node" where nothing
// of them can be used.
Id slug(std::string_view words);

// `wanted`, or with "-2", "-3" ... behind it where `taken(id)` says so.
template <typename Taken>
Id uniqueId(const Id& wanted, Taken taken) {
    Id id = wanted;
    for (int number = 2; taken(id); ++number)
        id = wanted + "-" + std::to_string(number);
    return id;
}

} // namespace cutwater::project::edits
