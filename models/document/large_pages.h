// SPDX-License-Identifier: GPL-3.0-or-later
// Large arrays in large pages: most of what reading a large file costs is the system handing out
// memory in pieces of 4 kB. Private to the folder.
#pragma once

#include <algorithm>
#include <cstddef>

namespace cutwater::document {

// Asks the system to back memory that is not written to yet by pages of 2 MB. A wish: where it is
// not granted, or the memory is small, nothing changes.
void wishLargePages(const void* data, std::size_t bytes);

// Room for `size` values, in large pages where it is new.
template <typename Array>
void reserveLarge(Array& array, std::size_t size) {
    if (size <= array.capacity()) return;
    array.reserve(size);
    wishLargePages(array.data() + array.size(),
                   (array.capacity() - array.size()) * sizeof(*array.data()));
}

// Room for one more value, at least twice as much as before where there is none.
template <typename Array>
void growLarge(Array& array) {
    if (array.size() == array.capacity())
        reserveLarge(array, std::max<std::size_t>(16, 2 * array.capacity()));
}

} // namespace cutwater::document
