// SPDX-License-Identifier: GPL-3.0-or-later
// The files of a checkout, as the tests of the house look at them: relative paths and texts.
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace house {

// All regular files under `top`, as generic paths relative to it, sorted. Left out: .git and what
// .gitignore names at the top (build folders, the caches of tools).
std::vector<std::string> filesUnder(const std::filesystem::path& top);

// Files that the compiler reads: .h and .cpp.
bool isCode(const std::string& path);

std::string readText(const std::filesystem::path& file);
std::vector<std::string> lines(const std::string& text);

// A folder of its own under the system's place for temporary files, gone with the object.
class TemporaryFolder {
public:
    TemporaryFolder();
    ~TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    const std::filesystem::path& path() const { return m_path; }
    // Writes a file, with the folders that it needs.
    void plant(const std::string& relative, const std::string& text) const;

private:
    std::filesystem::path m_path;
};

} // namespace house
