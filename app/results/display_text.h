// SPDX-License-Identifier: GPL-3.0-or-later
// UTF-8 text on a terminal: how wide it is, how it is broken into lines, and made harmless.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace cutwater::results {

// Terminal columns that the text takes: combining marks none, East Asian wide characters two.
std::size_t displayWidth(std::string_view text);

// One line without control characters: line ends and tabs become spaces, what could steer a
// terminal and bytes that are no UTF-8 become U+FFFD.
std::string printable(std::string_view text);

// Breaks at spaces; a word that is longer than a line is broken behind . : / _ - or anywhere. Never
// returns an empty list. `width` of 0 counts as 1.
std::vector<std::string> wrapped(std::string_view text, std::size_t width);

// `text` with spaces put behind (or in front) up to `width`.
std::string padded(std::string_view text, std::size_t width, bool right = false);

// Wrapped paragraph: `first` before the first line, as many spaces before the others.
std::string paragraph(std::string_view text, std::size_t width, const std::string& first = {});

} // namespace cutwater::results
