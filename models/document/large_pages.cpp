// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/large_pages.h"

#include <cstdint>

#ifdef __linux__
#include <sys/mman.h>
#endif

namespace cutwater::document {

void wishLargePages([[maybe_unused]] const void* data, [[maybe_unused]] std::size_t bytes) {
#ifdef __linux__
    constexpr std::size_t kPage = std::size_t{2} << 20;
    // Whole pages inside: what lies around them may belong to others.
    const auto begin = (reinterpret_cast<std::uintptr_t>(data) + kPage - 1) / kPage * kPage;
    const auto end = (reinterpret_cast<std::uintptr_t>(data) + bytes) / kPage * kPage;
    if (begin < end) madvise(reinterpret_cast<void*>(begin), end - begin, MADV_HUGEPAGE);
#endif
}

} // namespace cutwater::document
