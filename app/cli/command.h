// SPDX-License-Identifier: GPL-3.0-or-later
// Command: one thing that the shell program can do, declared as a value. A new command is a file
// pair with a function that returns one, and a line in registry.cpp.
#pragma once

#include "plugins/sdk/host.h"

#include <cstddef>
#include <iosfwd>
#include <stop_token>
#include <string>
#include <vector>

namespace cutwater::cli {

// What the program says to the shell that called it.
enum ExitCode : int {
    kFine = 0,
    kFileHasErrors = 1, // or could not be read, written or computed
    kUsage = 2,
    kStopped = 3, // cancelled, or over a limit
};

enum class Format { text, json, csv };

// The options that every command understands.
struct Globals {
    Format format = Format::text;
    std::string output; // empty: standard output
    std::size_t memoryBytes = std::size_t{2} << 30;
    bool quiet = false;
    std::string table; // show only this one
    int width = 0;     // of the terminal, in columns; 0: ask it
    std::vector<std::string> pluginFolders;
};

// What was typed, checked: operands in number as declared, options in type and range.
struct Call {
    std::string command;
    std::vector<std::string> operands;
    sdk::Values values;
};

// What a command may use. Answers go to `out` by way of deliver() (see delivery.h), everything else
// to `err`.
struct Context {
    sdk::Host& host;
    const Globals& globals;
    std::stop_token stop;
    std::ostream& out;
    std::ostream& err;
};

struct Command {
    std::string name;
    std::string summary;  // one line for the list of commands
    std::string operands; // as shown in the usage line: "FILE"
    std::string details;  // paragraphs for `cutwater NAME --help`
    // Options of its own. One that is named like a global one ("format") replaces it here.
    std::vector<sdk::Parameter> options;
    std::size_t minOperands = 1, maxOperands = 1;
    int (*run)(const Call& call, Context& context) = nullptr;
};

} // namespace cutwater::cli
