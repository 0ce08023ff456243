// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/source_tree.h"

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <sstream>
#include <stdexcept>

namespace fs = std::filesystem;

namespace house {

namespace {

bool ignoredAtTop(const std::string& name) {
    return name == ".git" || name == ".cache" || name == "compile_commands.json" ||
           name.starts_with("build") || name.ends_with(".user");
}

} // namespace

std::vector<std::string> filesUnder(const fs::path& top) {
    std::vector<std::string> found;
    for (auto it = fs::recursive_directory_iterator(top); it != fs::recursive_directory_iterator();
         ++it) {
        if (it.depth() == 0 && ignoredAtTop(it->path().filename().string()))
            it.disable_recursion_pending();
        else if (it->is_regular_file())
            found.push_back(it->path().lexically_relative(top).generic_string());
    }
    std::sort(found.begin(), found.end());
    return found;
}

bool isCode(const std::string& path) {
    return path.ends_with(".h") || path.ends_with(".cpp");
}

std::string readText(const fs::path& file) {
    std::ifstream in(file, std::ios::binary);
    if (!in) throw std::runtime_error("cannot read " + file.string());
    std::ostringstream text;
    text << in.rdbuf();
    return text.str();
}

std::vector<std::string> lines(const std::string& text) {
    std::vector<std::string> found;
    std::istringstream in(text);
    for (std::string line; std::getline(in, line);)
        found.push_back(line);
    return found;
}

TemporaryFolder::TemporaryFolder() {
    std::string pattern = (fs::temp_directory_path() / "cutwater-house-XXXXXX").string();
    if (!mkdtemp(pattern.data())) throw std::runtime_error("cannot make a temporary folder");
    m_path = pattern;
}

TemporaryFolder::~TemporaryFolder() {
    std::error_code ignored;
    fs::remove_all(m_path, ignored);
}

void TemporaryFolder::plant(const std::string& relative, const std::string& text) const {
    const fs::path file = m_path / relative;
    fs::create_directories(file.parent_path());
    std::ofstream(file, std::ios::binary) << text;
}

} // namespace house
