// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/host.h"

#include "plugins/sdk/guard.h"
#include "plugins/sdk/metadata.h"

#include <QDir>
#include <QFileInfo>
#include <QLibrary>
#include <QPluginLoader>

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <tuple>

namespace cutwater::sdk {
namespace {

enum class Loading { notTried, loaded, failed };

// What the loader or the factory of a plug-in does, in one sentence or as an object.
std::variant<QObject*, std::string> instanceOf(const PluginFacts& facts) {
    QPluginLoader loader(QString::fromStdString(facts.file));
    // What a plug-in made may live as long as the program: its code is never unloaded.
    loader.setLoadHints(QLibrary::PreventUnloadHint | QLibrary::ResolveAllSymbolsHint);
    try {
        if (QObject* const instance = loader.instance()) return instance;
    } catch (const std::exception& error) {
        return fmt::format("{}: plug-in {} failed while it was made: {}.", facts.file, facts.id,
                           error.what());
    } catch (...) {
        return fmt::format("{}: plug-in {} failed while it was made.", facts.file, facts.id);
    }
    std::string reason = loader.errorString().toStdString();
    while (!reason.empty() && (reason.back() == '.' || reason.back() == '\n'))
        reason.pop_back();
    return fmt::format("{}: plug-in {} cannot be loaded ({}).", facts.file, facts.id, reason);
}

} // namespace

struct Host::State {
    std::vector<PluginFacts> plugins;
    std::vector<Loading> loading; // beside plugins
    std::vector<QObject*> objects;
    std::vector<Rejected> rejected;
    std::set<QString> seen; // canonical paths: a folder named twice is one folder

    void reject(std::string file, std::string sentence) {
        rejected.push_back({std::move(file), std::move(sentence)});
    }

    void look(const std::string& folder) {
        const QFileInfo info(QString::fromStdString(folder));
        if (!info.isDir() || !info.isReadable()) {
            reject(folder,
                   fmt::format("{}: there is no folder here that can be read; name another one.",
                               folder));
            return;
        }
        // Absolute: the loader looks for a relative name in folders of its own instead of ours.
        // System: dead links and pipes are reported, too, when they are called like a plug-in.
        QDir dir(info.absoluteFilePath(), {}, QDir::Name, QDir::Files | QDir::System);
        for (const QFileInfo& file : dir.entryInfoList()) {
            if (!QLibrary::isLibrary(file.fileName())) continue;
            const QString canonical = file.canonicalFilePath();
            if (!canonical.isEmpty() && !seen.insert(canonical).second) continue;
            consider(file.filePath().toStdString());
        }
    }

    void consider(const std::string& file) {
        auto verdict = judgeFile(file);
        if (auto* sentence = std::get_if<std::string>(&verdict)) {
            reject(file, std::move(*sentence));
            return;
        }
        PluginFacts& facts = std::get<PluginFacts>(verdict);
        for (const PluginFacts& other : plugins) {
            if (other.kind != facts.kind || other.id != facts.id) continue;
            reject(file,
                   fmt::format("{}: there is another {} with the id '{}' ({}), which is used.",
                               file, word(facts.kind), facts.id, other.file));
            return;
        }
        plugins.push_back(std::move(facts));
    }

    template <typename Interface>
    Interface* load(PluginKind kind, const std::string& id) {
        for (std::size_t i = 0; i < plugins.size(); ++i) {
            const PluginFacts& facts = plugins[i];
            if (facts.kind != kind || facts.id != id) continue;
            if (loading[i] == Loading::notTried) {
                auto outcome = instanceOf(facts);
                loading[i] = Loading::failed;
                if (auto* sentence = std::get_if<std::string>(&outcome)) {
                    reject(facts.file, std::move(*sentence));
                } else {
                    objects[i] = std::get<QObject*>(outcome);
                    if (qobject_cast<Interface*>(objects[i]))
                        loading[i] = Loading::loaded;
                    else
                        reject(facts.file, fmt::format("{}: plug-in {} says that it is one, but "
                                                       "does not implement the {} interface.",
                                                       facts.file, facts.id, word(kind)));
                }
            }
            return loading[i] == Loading::loaded ? qobject_cast<Interface*>(objects[i]) : nullptr;
        }
        return nullptr;
    }
};

Host::Host(const std::vector<std::string>& folders) : m_state(std::make_unique<State>()) {
    for (const std::string& folder : folders)
        m_state->look(folder);
    std::sort(m_state->plugins.begin(), m_state->plugins.end(),
              [](const PluginFacts& a, const PluginFacts& b) {
                  return std::tie(a.kind, a.id) < std::tie(b.kind, b.id);
              });
    m_state->loading.assign(m_state->plugins.size(), Loading::notTried);
    m_state->objects.assign(m_state->plugins.size(), nullptr);
}

Host::~Host() = default;

const std::vector<PluginFacts>& Host::plugins() const {
    return m_state->plugins;
}

const std::vector<Rejected>& Host::rejected() const {
    return m_state->rejected;
}

const PluginFacts* Host::find(PluginKind kind, const std::string& id) const {
    for (const PluginFacts& facts : m_state->plugins)
        if (facts.kind == kind && facts.id == id) return &facts;
    return nullptr;
}

Analysis* Host::analysis(const std::string& id) {
    return m_state->load<Analysis>(PluginKind::analysis, id);
}

Exchange* Host::exchange(const std::string& id) {
    return m_state->load<Exchange>(PluginKind::exchange, id);
}

Layout* Host::layout(const std::string& id) {
    return m_state->load<Layout>(PluginKind::layout, id);
}

Report* Host::report(const std::string& id) {
    return m_state->load<Report>(PluginKind::report, id);
}

std::string standardPluginFolder(const std::string& applicationFolder) {
    const QDir here(QString::fromStdString(applicationFolder));
    // Installed: as the build was configured, and the usual places where that was moved as a whole.
    for (const char* folder : {CUTWATER_INSTALLED_PLUGINS, "../lib/cutwater/plugins"}) {
        const QString path = QDir::cleanPath(here.absoluteFilePath(QLatin1String(folder)));
        if (QFileInfo(path).isDir()) return path.toStdString();
    }
    return QDir::cleanPath(here.absoluteFilePath(QLatin1String("../plugins-out"))).toStdString();
}

} // namespace cutwater::sdk
