// SPDX-License-Identifier: GPL-3.0-or-later
// The word that somebody probably meant.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace cutwater::project {

// How many letters must be put in, left out, changed or exchanged with their neighbour; stops
// counting beyond `limit` and answers limit + 1. Letters of either case count as equal. Bytes, not
// characters.
std::size_t typingDistance(std::string_view a, std::string_view b, std::size_t limit);

// The candidate nearest to `word`, the first of equals; empty where none is near enough to be meant
// (at most a third of the letters wrong). Time: candidates x (length of word)^2 at worst.
std::string_view nearestWord(std::string_view word,
                             const std::vector<std::string_view>& candidates);

} // namespace cutwater::project
