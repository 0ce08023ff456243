// SPDX-License-Identifier: GPL-3.0-or-later
// The .cutwater file: text to Project and back, and safely to disk.
#pragma once

#include "models/project/project.h"

#include <string>

namespace cutwater::document {

inline constexpr int kMajorVersion = 1;
inline constexpr int kMinorVersion = 1;
// A longer file is refused with a sentence; a project of 140,000 events needs about 60 MB.
inline constexpr std::size_t kMaxFileBytes = std::size_t{512} << 20;

struct Loaded {
    project::Project project;
    project::Problems warnings; // from the reader and from validate()
};

// Parses text. Every problem that can be found is reported, each with its line; no project comes
// out where one is an error of form. Does not validate the meaning: see load().
project::Outcome<Loaded> parse(const std::string& text);

// Reads a file, parses and validates it: what comes out has no errors. Problems are those of form,
// or, where the form is right, those of meaning. Refuses directories, special files and files over
// kMaxFileBytes before reading them.
project::Outcome<Loaded> load(const std::string& path);

// The file's text. Deterministic; parse(write(p)) == p for every p whose texts are valid UTF-8
// without control characters that XML forbids; such characters are a problem naming the element.
project::Outcome<std::string> write(const project::Project& project);

// Writes to a temporary file in the same folder, flushes it to the disk, and renames it over
// `path`: whatever happens, either the old or the new file is there, whole. Keeps the old file's
// permissions; follows a symbolic link.
project::Problems save(const project::Project& project, const std::string& path);

} // namespace cutwater::document
