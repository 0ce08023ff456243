// SPDX-License-Identifier: GPL-3.0-or-later
// The two kinds of JSON value (RFC 8259) that need care.
#pragma once

#include <string>

namespace cutwater::results {

// Quoted and escaped; bytes that are no UTF-8 become U+FFFD, so that the whole stays well-formed.
std::string jsonString(const std::string& text);

// The shortest digits that give the same double again; NaN and infinity, which JSON has no word
// for, become null.
std::string jsonNumber(double number);

} // namespace cutwater::results
