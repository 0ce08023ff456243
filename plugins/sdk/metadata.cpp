// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/metadata.h"

#include <QFileInfo>
#include <QJsonObject>
#include <QPluginLoader>
#include <QtGlobal>

#include <fmt/format.h>

#include <array>

namespace cutwater::sdk {
namespace {

struct KindFacts {
    PluginKind kind;
    const char* word;
    const char* iid;
};

constexpr std::array<KindFacts, 4> kKinds = {{
    {PluginKind::analysis, "analysis", CUTWATER_ANALYSIS_IID},
    {PluginKind::exchange, "exchange", CUTWATER_EXCHANGE_IID},
    {PluginKind::layout, "layout", CUTWATER_LAYOUT_IID},
    {PluginKind::report, "report", CUTWATER_REPORT_IID},
}};

std::string sentence(const std::string& file, const std::string& what) {
    return fmt::format("{}: {}.", file, what);
}

// "cutwater.Analysis/" of "cutwater.Analysis/1": what stays the same between versions.
std::string stem(const std::string& iid) {
    return iid.substr(0, iid.rfind('/') + 1);
}

bool isCommandWord(const std::string& id) {
    if (id.empty() || id.size() > 64 || id.front() < 'a' || id.front() > 'z') return false;
    for (const char c : id)
        if (!((c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-')) return false;
    return id.back() != '-';
}

std::string text(const QJsonObject& object, const char* key) {
    return object.value(QLatin1String(key)).toString().toStdString();
}

// Empty where the library was built for this Qt: the same major version, and no newer minor one.
std::string qtComplaint(const QJsonObject& metadata) {
    const auto version = static_cast<unsigned>(metadata.value(QLatin1String("version")).toInt());
    const unsigned major = version >> 16, minor = (version >> 8) & 0xff;
    if (major == QT_VERSION_MAJOR && minor <= QT_VERSION_MINOR) return {};
    return fmt::format("it was built for Qt {}.{}, this program runs with Qt {}.{}; build it again",
                       major, minor, QT_VERSION_MAJOR, QT_VERSION_MINOR);
}

} // namespace

std::string word(PluginKind kind) {
    for (const KindFacts& facts : kKinds)
        if (facts.kind == kind) return facts.word;
    return "plug-in";
}

std::variant<PluginFacts, std::string> judge(const std::string& file, const QJsonObject& metadata) {
    if (metadata.isEmpty()) return sentence(file, "this is not a Qt plug-in");
    if (const std::string complaint = qtComplaint(metadata); !complaint.empty())
        return sentence(file, complaint);
    const std::string iid = text(metadata, "IID");
    const KindFacts* kind = nullptr;
    for (const KindFacts& facts : kKinds) {
        if (iid == facts.iid) kind = &facts;
        if (iid != facts.iid && stem(iid) == stem(facts.iid))
            return sentence(file,
                            fmt::format("it was built for another version of the plug-in interface "
                                        "({}), this program speaks {}; build it again",
                                        iid, facts.iid));
    }
    if (!kind)
        return sentence(file, fmt::format("this is a plug-in of another program (its interface is "
                                          "'{}')",
                                          iid));
    const QJsonObject own = metadata.value(QLatin1String("MetaData")).toObject();
    PluginFacts facts;
    facts.id = text(own, "id");
    facts.kind = kind->kind;
    facts.title = text(own, "title");
    facts.summary = text(own, "summary");
    facts.version = text(own, "version");
    facts.file = file;
    for (const char* key : {"id", "title", "summary", "version"})
        if (text(own, key).empty())
            return sentence(file, fmt::format("its metadata has no \"{}\"; add it to the JSON file "
                                              "and build it again",
                                              key));
    if (!isCommandWord(facts.id))
        return sentence(file, fmt::format("its id '{}' cannot be a command; use small letters, "
                                          "digits and hyphens",
                                          facts.id));
    const QJsonValue interface = own.value(QLatin1String("interface"));
    if (!interface.isUndefined() && interface.toString().toStdString() != kind->word)
        return sentence(file,
                        fmt::format("its metadata says interface '{}', but it is built as "
                                    "'{}'; make them agree",
                                    interface.toVariant().toString().toStdString(), kind->word));
    return facts;
}

std::variant<PluginFacts, std::string> judgeFile(const std::string& file) {
    const QString path = QString::fromStdString(file);
    const QFileInfo info(path);
    if (!info.exists()) return sentence(file, "this is a link to a file that is not there");
    if (!info.isFile())
        return sentence(file, "this is not a regular file"); // opening a pipe would wait for ever
    if (!info.isReadable()) return sentence(file, "this file may not be read");
    if (info.size() == 0) return sentence(file, "this file is empty");
    const QPluginLoader loader(path);
    const QJsonObject metadata = loader.metaData();
    if (metadata.isEmpty())
        return sentence(file, "this is not a plug-in (no Qt plug-in metadata in it)");
    return judge(file, metadata);
}

} // namespace cutwater::sdk
