// SPDX-License-Identifier: GPL-3.0-or-later
// Cells from facts that may be missing: what is not known leaves its cell empty.
#pragma once

#include "plugins/sdk/result.h"

#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>

namespace cutwater::sdk {

inline Cell textCell(const std::string& text) {
    return text.empty() ? Cell() : Cell(text);
}

// A whole number where T is an integer type, else a number.
template <typename T>
Cell numberCell(const std::optional<T>& value) {
    if (!value) return {};
    if constexpr (std::is_integral_v<T>)
        return static_cast<std::int64_t>(*value);
    else
        return *value;
}

} // namespace cutwater::sdk
