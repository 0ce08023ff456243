// SPDX-License-Identifier: GPL-3.0-or-later
// Sentences for what can go wrong with a file. Private to the folder.
#pragma once

#include "models/project/problem.h"

#include <string>

namespace cutwater::document {

// "cannot ACTION PATH: WHY".
project::Problem cannot(const std::string& action, const std::string& path, const std::string& why,
                        const std::string& remedy);
// What an errno means to the user, and what he can do about it.
std::string inWords(int error);
std::string remedyFor(int error);

} // namespace cutwater::document
