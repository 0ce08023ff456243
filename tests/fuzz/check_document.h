// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for any bytes whatever that are given to the reader.
#pragma once

#include <string>

namespace cutwater::fuzz {

// Empty where it holds: a project comes out that is written and read back the same, or at least one
// problem, each with words for it on one line. Otherwise a sentence that says what went wrong.
std::string complaintAbout(const std::string& bytes);

} // namespace cutwater::fuzz
