// SPDX-License-Identifier: GPL-3.0-or-later
// The program without its process: main() gives it the words, the streams and the stop.
#pragma once

#include <iosfwd>
#include <stop_token>
#include <string>
#include <vector>

namespace cutwater::cli {

// Returns the exit code. `applicationFolder`: where the program stands, to find its plug-ins.
int runProgram(const std::vector<std::string>& words, const std::string& applicationFolder,
               std::stop_token stop, std::ostream& out, std::ostream& err);

} // namespace cutwater::cli
