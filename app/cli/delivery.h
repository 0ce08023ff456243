// SPDX-License-Identifier: GPL-3.0-or-later
// How a command gets its project and how its answer leaves the program.
#pragma once

#include "app/cli/command.h"
#include "models/document/document.h"

#include <iosfwd>
#include <optional>

namespace cutwater::cli {

// Reads and checks a project file ("-": standard input). Where it has errors they are printed, each
// with its line, and nothing comes back. Warnings are counted in one line unless --quiet.
std::optional<project::Project> readProject(const std::string& path, Context& context);

// The same, but the problems are the caller's to show.
project::Outcome<document::Loaded> loadProject(const std::string& path);
// How a file is called in messages.
std::string shownName(const std::string& path);
// One sentence a line; of more than `most` only those, and how many are left.
void printProblems(const project::Problems& problems, const std::string& file, std::ostream& stream,
                   std::size_t most);

// Writes the answer to --output, so that either the old or the whole new file is there, or to
// standard output. Returns an exit code. A reader that closed the pipe is no error.
int deliver(const std::string& bytes, Context& context);

// The same with a project as a file of our own.
int deliverProject(const project::Project& project, Context& context);

// Prints the problems and returns the exit code for the way it ended. `file` is put before the line
// numbers.
int reportEnding(sdk::Ending ending, const project::Problems& problems, const std::string& file,
                 Context& context);

// A usage error: one sentence on `err`, exit code 2.
int usageError(const std::string& sentence, Context& context);
// The same for values that were understood and cannot be: the first problem and how to mend it.
int usageError(const project::Problems& problems, Context& context);

} // namespace cutwater::cli
