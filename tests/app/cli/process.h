// SPDX-License-Identifier: GPL-3.0-or-later
// Runs the real program as a shell would.
#pragma once

#include <filesystem>
#include <functional>
#include <string>
#include <vector>

namespace shell {

struct Ran {
    int code = -1; // -1: it crashed or did not end in time
    std::string out, err;
};

struct Wish {
    std::string input;
    std::vector<std::string> environment;         // "NAME=value", added
    std::function<void(long long pid)> meanwhile; // called once it runs
    int seconds = 120;
};

// `cutwater` with these words.
Ran cutwater(const std::vector<std::string>& words, const Wish& wish = {});
// A command line for /bin/sh, for pipes; $CUTWATER is the program.
Ran sh(const std::string& line);

// A file in tests/app/cli/files, the demo project, a fixture's folder.
std::string file(const std::string& name);
std::string fixtureFolder(const std::string& id);

// A folder that is gone when the test is over.
class Folder {
public:
    Folder();
    ~Folder();
    Folder(const Folder&) = delete;
    Folder& operator=(const Folder&) = delete;
    std::string path(const std::string& name) const;
    std::string write(const std::string& name, const std::string& bytes) const;

private:
    std::filesystem::path m_path;
};
std::string bytesOf(const std::string& path);

// A project whose one top event is any of `sets` triples out of `events` events, drawn at random
// but always the same: no order of the events keeps its diagram small.
std::string tangle(int events, int sets);

} // namespace shell
