// SPDX-License-Identifier: GPL-3.0-or-later
// The words of the plug-ins that the editor shows and can translate: titles, summaries, parameters,
// tables, columns, plots. Sentences with numbers in them are not among them.
#pragma once

#include "plugins/sdk/host.h"

#include <set>
#include <string>

namespace cutwater::test {

// Runs every analysis on the demo to see its tables.
std::set<std::string> pluginWords(sdk::Host& host, const project::Project& demo);
// As a source file that lupdate reads.
std::string asSource(const std::set<std::string>& words);

} // namespace cutwater::test
