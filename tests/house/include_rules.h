// SPDX-License-Identifier: GPL-3.0-or-later
// Who may include whom. The rules themselves stand in include_rules.cpp, and in words in
// docs/decisions/include-directions.md.
#pragma once

#include <filesystem>
#include <map>
#include <set>
#include <string>
#include <vector>

namespace house {

struct Include {
    std::string file; // that includes, relative to the top of the tree
    int line = 0;
    std::string target; // what stands between the quotes or brackets
    bool quoted = false;
};

// A room is the folder that the rules speak of: "models/logic", "plugins/cut-sets", "app/cli",
// "app/editor/outline"; for other files the first folder ("tests", "share").
std::string roomOf(const std::string& path);

// Whether code of room `from` may include code of room `to`, both of our own tree.
bool mayInclude(const std::string& from, const std::string& to);

// Which module of Qt a header belongs to: read from the folders of the installed Qt, so that no
// list of class names can grow old.
class QtModules {
public:
    explicit QtModules(const std::filesystem::path& includeFolder);
    // "QtCore" for <QFile>, <QtCore/QFile> and <qfile.h>; "Qt" where it is Qt's but in no module
    // found; empty where it is not Qt's.
    std::string moduleOf(const std::string& header) const;

private:
    std::map<std::string, std::string> m_modules;
};

// Whether code of a room may use a module of Qt.
bool mayUseQt(const std::string& room, const std::string& module);

using Graph = std::map<std::string, std::set<std::string>>;
// One circle of the graph, its first element repeated at the end; empty where there is none.
std::vector<std::string> findCircle(const Graph& graph);

std::vector<Include> includesOf(const std::string& file, const std::string& text);

// Every breach in models/, plugins/ and app/, one sentence each, sorted.
std::vector<std::string> breaches(const std::filesystem::path& top, const QtModules& qt);

} // namespace house
