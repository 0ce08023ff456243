// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/include_rules.h"

#include "tests/house/source_tree.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <regex>

namespace fs = std::filesystem;

namespace house {

namespace {

// A room of models/ that is not named here may include nothing but itself, so a new one has to be
// thought about.
const Graph& modelsAllowed() {
    static const Graph allowed{
        {"models/project", {}},
        {"models/logic", {}},
        {"models/document", {"models/project", "models/library"}},
        {"models/reliability", {"models/project", "models/logic"}},
        {"models/evidence", {"models/reliability", "models/project", "models/logic"}},
        {"models/worksheet", {"models/reliability", "models/project", "models/logic"}},
        {"models/library", {"models/project"}},
    };
    return allowed;
}

// The rooms of the editor, from the bottom up: each may include those above it in this list.
constexpr std::array kEditorRooms{
    "app/editor/session", "app/editor/selection", "app/editor/outline",  "app/editor/details",
    "app/editor/diagram", "app/editor/answers",   "app/editor/analyses", "app/editor/worksheet",
    "app/editor/report",  "app/editor/exchange",  "app/editor/plant",    "app/editor/library",
    "app/editor/risk",    "app/editor/proposals", "app/editor/window",   "app/editor",
};

std::size_t editorFloor(const std::string& room) {
    return static_cast<std::size_t>(std::find(kEditorRooms.begin(), kEditorRooms.end(), room) -
                                    kEditorRooms.begin());
}

// Files and screens are no business of the models; the document alone reads bytes.
constexpr std::array kInputOutput{"fstream", "iostream", "filesystem", "print"};

bool isOurs(const std::string& target) {
    for (const char* folder : {"models/", "plugins/", "app/", "tests/", "share/"})
        if (target.starts_with(folder)) return true;
    return false;
}

bool isGenerated(const std::string& target) {
    return target.ends_with(".moc") || target.starts_with("moc_") || target.starts_with("ui_");
}

std::string whatIsWrong(const Include& include, const fs::path& top, const QtModules& qt) {
    const std::string from = roomOf(include.file);
    const std::string& target = include.target;
    if (isOurs(target)) {
        const std::string to = roomOf(target);
        if (!mayInclude(from, to)) return from + " may not include " + to;
        if (!fs::exists(top / target)) return "there is no such file";
        return include.quoted ? "" : "a header of our own is included with quotes";
    }
    if (isGenerated(target)) return "";
    if (include.quoted)
        return "includes of ours start at the top of the tree, those of others stand in brackets";
    if (const std::string module = qt.moduleOf(target); !module.empty())
        return mayUseQt(from, module) ? "" : from + " may not use " + module;
    if (from.starts_with("models/") && from != "models/document") {
        if (std::find(kInputOutput.begin(), kInputOutput.end(), target) != kInputOutput.end())
            return from + " reads and writes nothing";
        if (target.starts_with("pugixml")) return "only models/document knows how files are made";
    }
    return "";
}

std::string joined(const std::vector<std::string>& words) {
    std::string text;
    for (const std::string& word : words)
        text += (text.empty() ? "" : " -> ") + word;
    return text;
}

} // namespace

std::string roomOf(const std::string& path) {
    const auto first = path.find('/');
    if (first == std::string::npos) return "";
    const std::string folder = path.substr(0, first);
    if (folder != "models" && folder != "plugins" && folder != "app") return folder;
    auto second = path.find('/', first + 1);
    if (second == std::string::npos) return folder;
    // The editor is a house of its own: its folders are rooms.
    if (path.starts_with("app/editor/"))
        if (const auto third = path.find('/', second + 1); third != std::string::npos)
            second = third;
    return path.substr(0, second);
}

bool mayInclude(const std::string& from, const std::string& to) {
    if (from == to) return true;
    const bool toModels = to.starts_with("models/");
    if (from.starts_with("models/")) {
        const auto found = modelsAllowed().find(from);
        return found != modelsAllowed().end() && found->second.contains(to);
    }
    if (from == "plugins/sdk") return toModels;
    if (from.starts_with("plugins/")) return toModels || to == "plugins/sdk";
    if (to.starts_with("app/editor")) {
        const std::size_t below = editorFloor(to), above = editorFloor(from);
        return above < kEditorRooms.size() && below < above;
    }
    if (from.starts_with("app/")) return toModels || to == "plugins/sdk" || to.starts_with("app/");
    return true;
}

QtModules::QtModules(const fs::path& includeFolder) {
    for (const auto& module : fs::directory_iterator(includeFolder)) {
        const std::string name = module.path().filename().string();
        if (!module.is_directory() || !name.starts_with("Qt")) continue;
        for (const auto& header : fs::directory_iterator(module.path()))
            m_modules.emplace(header.path().filename().string(), name);
    }
}

std::string QtModules::moduleOf(const std::string& header) const {
    if (const auto slash = header.find('/'); slash != std::string::npos)
        return header.starts_with("Qt") ? header.substr(0, slash) : "";
    if (const auto found = m_modules.find(header); found != m_modules.end()) return found->second;
    const bool looksLikeIt =
        header.size() > 1 && header[0] == 'Q' &&
        (header[1] == 't' || std::isupper(static_cast<unsigned char>(header[1])));
    return looksLikeIt ? "Qt" : "";
}

bool mayUseQt(const std::string& room, const std::string& module) {
    if (room.starts_with("models/")) return false;
    if (module == "QtCore") return true;
    if (room == "plugins/sdk") return false;
    const bool onScreen = module.find("Widgets") != std::string::npos ||
                          module.starts_with("QtQuick") || module.starts_with("QtQml");
    if (room == "app/editor/session" || room == "app/editor/selection") return !onScreen;
    return !onScreen || room.starts_with("app/editor");
}

std::vector<std::string> findCircle(const Graph& graph) {
    enum class Mark { fresh, open, done };
    std::map<std::string, Mark> marks;
    for (const auto& [start, unused] : graph) {
        if (marks[start] != Mark::fresh) continue;
        std::vector<std::string> path{start};
        std::vector<std::vector<std::string>> waiting;
        const auto enter = [&](const std::string& node) {
            marks[node] = Mark::open;
            const auto found = graph.find(node);
            waiting.emplace_back();
            if (found != graph.end())
                waiting.back().assign(found->second.begin(), found->second.end());
        };
        enter(start);
        while (!path.empty()) {
            if (waiting.back().empty()) {
                marks[path.back()] = Mark::done;
                path.pop_back();
                waiting.pop_back();
                continue;
            }
            const std::string next = waiting.back().back();
            waiting.back().pop_back();
            if (marks[next] == Mark::open) {
                path.erase(path.begin(), std::find(path.begin(), path.end(), next));
                path.push_back(next);
                return path;
            }
            if (marks[next] == Mark::fresh) {
                path.push_back(next);
                enter(next);
            }
        }
    }
    return {};
}

std::vector<Include> includesOf(const std::string& file, const std::string& text) {
    static const std::regex pattern(R"(^\s*#\s*include\s*([<"])([^>"]+)[>"])");
    std::vector<Include> found;
    int number = 0;
    for (const std::string& line : lines(text)) {
        ++number;
        std::smatch match;
        if (std::regex_search(line, match, pattern))
            found.push_back({file, number, match[2], match[1] == "\""});
    }
    return found;
}

std::vector<std::string> breaches(const fs::path& top, const QtModules& qt) {
    std::vector<std::string> found;
    Graph files, rooms;
    for (const char* folder : {"models", "plugins", "app"}) {
        if (!fs::exists(top / folder)) continue;
        for (const std::string& inFolder : filesUnder(top / folder)) {
            const std::string file = std::string(folder) + "/" + inFolder;
            if (!isCode(file)) continue;
            for (const Include& include : includesOf(file, readText(top / file))) {
                if (const std::string wrong = whatIsWrong(include, top, qt); !wrong.empty())
                    found.push_back(file + ":" + std::to_string(include.line) + ": \"" +
                                    include.target + "\": " + wrong);
                if (!isOurs(include.target)) continue;
                files[file].insert(include.target);
                if (roomOf(file) != roomOf(include.target))
                    rooms[roomOf(file)].insert(roomOf(include.target));
            }
        }
    }
    if (const auto circle = findCircle(files); !circle.empty())
        found.push_back("files include each other in a circle: " + joined(circle));
    if (const auto circle = findCircle(rooms); !circle.empty())
        found.push_back("folders include each other in a circle: " + joined(circle));
    std::sort(found.begin(), found.end());
    return found;
}

} // namespace house
