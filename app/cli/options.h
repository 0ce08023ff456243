// SPDX-License-Identifier: GPL-3.0-or-later
// From the words that were typed to checked values. Every mistake becomes one sentence.
#pragma once

#include "app/cli/command.h"

#include <string>
#include <variant>
#include <vector>

namespace cutwater::cli {

// --format, --output and so on, as declared parameters: --help shows them from here.
const std::vector<sdk::Parameter>& globalOptions();

// What can be seen before any plug-in is known.
struct FirstLook {
    std::string command; // empty: none was typed
    bool help = false;
    bool version = false;
    std::vector<std::string> pluginFolders;
    std::vector<std::string> rest; // everything but the command, --help, --version, --plugins
};

using UsageMistake = std::string; // a sentence

std::variant<FirstLook, UsageMistake> firstLook(const std::vector<std::string>& words);

struct Parsed {
    Call call;
    Globals globals;
};

// `rest` against the options of a command and the global ones.
std::variant<Parsed, UsageMistake> parse(const FirstLook& look, const Command& command);

} // namespace cutwater::cli
