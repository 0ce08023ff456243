// SPDX-License-Identifier: GPL-3.0-or-later
// The .cutlib file: a library of component types. XML of the same kind and version as a project,
// with the same promises (document.h); schema share/schema/cutwater-library-1.rng.
#pragma once

#include "models/library/library.h"

#include <string>
#include <vector>

namespace cutwater::document {

struct LoadedLibrary {
    library::Library library;
    project::Problems warnings;
};

project::Outcome<library::Library> parseLibrary(const std::string& text);
// Reads, parses and validates: what comes out has no errors.
project::Outcome<LoadedLibrary> loadLibrary(const std::string& path);
project::Outcome<std::string> writeLibrary(const library::Library& library);

} // namespace cutwater::document
