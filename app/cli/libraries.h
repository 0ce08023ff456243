// SPDX-License-Identifier: GPL-3.0-or-later
// The libraries that are at hand: those of the installation and those that the user names.
#pragma once

#include "app/cli/command.h"
#include "models/library/library.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::cli {

// --library: files or folders with commas between them.
sdk::Parameter libraryParameter();

// The user's first, so that his own type of an id counts. Files that cannot be read are reported,
// with what is wrong in them; nothing comes back then.
std::optional<std::vector<library::Library>> readLibraries(const Call& call, Context& context);

struct FoundType {
    const library::Library* library = nullptr;
    const library::ComponentType* type = nullptr;
};
// "solenoid-valve" or "cutwater-fuel/fuel-pump"; by name where no id fits.
FoundType findType(const std::vector<library::Library>& libraries, const std::string& wanted);
// The sentence for a type that is not there, with the nearest that is.
std::string unknownType(const std::vector<library::Library>& libraries, const std::string& wanted);

} // namespace cutwater::cli
