// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace cutwater::results {

inline constexpr const char* kVersion = CUTWATER_VERSION; // from the top CMakeLists.txt

} // namespace cutwater::results
