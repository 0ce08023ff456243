// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/keep_memory.h"

#include <cstdlib> // says whether __GLIBC__

#ifdef __GLIBC__
#include <malloc.h>
#endif

namespace cutwater::logic {

void keepMemory() {
#ifdef __GLIBC__
    constexpr int kMegabyte = 1 << 20;
    mallopt(M_MMAP_THRESHOLD, 32 * kMegabyte); // the largest that it takes
    mallopt(M_TRIM_THRESHOLD, 256 * kMegabyte);
    mallopt(M_TOP_PAD, 4 * kMegabyte);
#endif
}

} // namespace cutwater::logic
