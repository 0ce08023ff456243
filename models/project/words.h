// SPDX-License-Identifier: GPL-3.0-or-later
// One table of words for each small enumeration: the file, the shell and the messages all use it.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <utility>

namespace cutwater::project {

// Words in the order of the enumeration, which starts at 0.
template <std::size_t Size>
using WordTable = std::array<std::string_view, Size>;

template <typename Enum, std::size_t Size>
std::string_view wordOf(const WordTable<Size>& words, Enum value) {
    return words[static_cast<std::size_t>(value)];
}

template <typename Enum, std::size_t Size>
std::optional<Enum> valueOf(const WordTable<Size>& words, std::string_view word) {
    for (std::size_t i = 0; i < Size; ++i)
        if (words[i] == word) return static_cast<Enum>(i);
    return std::nullopt;
}

} // namespace cutwater::project
