// SPDX-License-Identifier: GPL-3.0-or-later
// Host: finds plug-ins, judges them by their metadata before any of their code runs, and loads them
// when they are used.
#pragma once

#include "plugins/sdk/interfaces.h"

#include <memory>
#include <string>
#include <vector>

namespace cutwater::sdk {

enum class PluginKind { analysis, exchange, layout, report };

struct PluginFacts {
    std::string id; // "cut-sets": the command and the file's name
    PluginKind kind = PluginKind::analysis;
    std::string title;
    std::string summary; // one sentence
    std::string version;
    std::string file;
};

// A plug-in that was left out, and why, in one sentence.
struct Rejected {
    std::string file;
    std::string sentence;
};

// Looks only into the folders it is given, files in alphabetical order; of two plug-ins with one id
// the first is taken and the second reported. Not a singleton: the program makes one and hands it
// on. Use from one thread, except for the plug-ins themselves.
class Host {
public:
    explicit Host(const std::vector<std::string>& folders);
    ~Host();

    const std::vector<PluginFacts>& plugins() const; // sorted by kind and id
    const std::vector<Rejected>& rejected() const;   // grows when a plug-in fails to load
    const PluginFacts* find(PluginKind kind, const std::string& id) const;

    // Loads where needed. Null where it is unknown or cannot be loaded: the reason is then in
    // rejected().
    Analysis* analysis(const std::string& id);
    Exchange* exchange(const std::string& id);
    Layout* layout(const std::string& id);
    Report* report(const std::string& id);

private:
    struct State;
    std::unique_ptr<State> m_state;
};

// Runs an analysis so that nothing it throws gets out: an exception becomes a `failed` answer that
// names the plug-in.
Answer<Result> runGuarded(const Analysis& analysis, const PluginFacts& facts,
                          const project::Project& project, const Values& values, const Job& job);

// Where this program's own plug-ins are: beside the build or the installation it was started from.
std::string standardPluginFolder(const std::string& applicationFolder);

} // namespace cutwater::sdk
