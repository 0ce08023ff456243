// SPDX-License-Identifier: GPL-3.0-or-later
// For programs that solve again and again, as an editor does after every keystroke.
#pragma once

namespace cutwater::logic {

// The tables of a solution are a few megabytes and live for some milliseconds. Given back to the
// system each time they come back as pages that must be cleared and mapped anew, which takes as
// long as the work in them. After this call the C library keeps what was used once, up to 256 MB.
// Call it at the start of main(); where the C library cannot be told so, nothing happens.
void keepMemory();

} // namespace cutwater::logic
