// SPDX-License-Identifier: GPL-3.0-or-later
// Files as a whole: read with care, replaced so that no half-written one is ever seen. Private to
// the folder.
#pragma once

#include "models/project/problem.h"

#include <cstddef>
#include <functional>
#include <string>
#include <string_view>

namespace cutwater::document {

// The file's bytes. Directories, pipes, devices and files over `maxBytes` are refused unread.
project::Outcome<std::string> readFile(const std::string& path, std::size_t maxBytes);

// Called before each step that touches the disk: "create", "write" (once a piece), "permissions",
// "flush", "rename", "flush folder". Tests end the process in it, or make a step fail by answering
// an errno other than 0.
using StepHook = std::function<int(std::string_view step)>;

// Writes `text` to a temporary file beside the target, flushes it and renames it over the target.
// Follows symbolic links, keeps the permissions of a file that was there, and leaves no temporary
// file behind unless the process itself is ended. Empty where it went well.
project::Problems replaceFile(const std::string& path, std::string_view text,
                              const StepHook& hook = {});

} // namespace cutwater::document
