// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/cli/process.h"

#include <QProcess>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <random>
#include <stdexcept>

namespace shell {
namespace {

Ran run(const QString& program, const QStringList& words, const Wish& wish) {
    QProcess process;
    QProcessEnvironment environment = QProcessEnvironment::systemEnvironment();
    environment.remove(QStringLiteral("COLUMNS"));
    environment.insert(QStringLiteral("CUTWATER"), QStringLiteral(CUTWATER_PROGRAM));
    for (const std::string& entry : wish.environment) {
        const QString text = QString::fromStdString(entry);
        environment.insert(text.section(u'=', 0, 0), text.section(u'=', 1));
    }
    process.setProcessEnvironment(environment);
    process.start(program, words);
    if (!process.waitForStarted()) return {};
    if (!wish.input.empty()) process.write(QByteArray::fromStdString(wish.input));
    process.closeWriteChannel();
    if (wish.meanwhile) wish.meanwhile(process.processId());
    if (!process.waitForFinished(wish.seconds * 1000)) {
        process.kill();
        process.waitForFinished();
        return {-1, "", "(did not end in time)"};
    }
    Ran ran;
    ran.code = process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -1;
    ran.out = process.readAllStandardOutput().toStdString();
    ran.err = process.readAllStandardError().toStdString();
    return ran;
}

} // namespace

Ran cutwater(const std::vector<std::string>& words, const Wish& wish) {
    QStringList list;
    for (const std::string& word : words)
        list.append(QString::fromStdString(word));
    return run(QStringLiteral(CUTWATER_PROGRAM), list, wish);
}

Ran sh(const std::string& line) {
    return run(QStringLiteral("/bin/bash"), {QStringLiteral("-c"), QString::fromStdString(line)},
               {});
}

std::string file(const std::string& name) {
    return std::string(CUTWATER_SOURCE_DIR) + "/tests/app/cli/files/" + name;
}

std::string fixtureFolder(const std::string& id) {
    return std::string(CUTWATER_FIXTURES) + "/" + id;
}

Folder::Folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "cutwater-cli-XXXXXX").string();
    if (!mkdtemp(pattern.data())) throw std::runtime_error("no temporary folder");
    m_path = pattern;
}

Folder::~Folder() {
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

std::string Folder::path(const std::string& name) const {
    return (m_path / name).string();
}

std::string Folder::write(const std::string& name, const std::string& bytes) const {
    std::ofstream(m_path / name, std::ios::binary) << bytes;
    return path(name);
}

std::string bytesOf(const std::string& path) {
    std::ifstream stream(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(stream), {}};
}

std::string tangle(int events, int sets) {
    std::mt19937 random(1); // the standard fixes its numbers
    std::string gates, inputs,
        text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
               "<cutwater version=\"1.0\">\n  <events>\n";
    for (int i = 0; i < events; ++i)
        text += "    <event id=\"e" + std::to_string(i) + "\" kind=\"basic\"/>\n";
    for (int i = 0; i < sets; ++i) {
        const std::string id = "g" + std::to_string(i);
        inputs += "      <input ref=\"" + id + "\"/>\n";
        gates += "    <gate id=\"" + id + "\" kind=\"and\">\n";
        for (int k = 0; k < 3; ++k) // of three thirds: never one event twice
            gates +=
                "      <input ref=\"e" +
                std::to_string(k * (events / 3) +
                               static_cast<int>(random() % static_cast<unsigned>(events / 3))) +
                "\"/>\n";
        gates += "    </gate>\n";
    }
    return text + "  </events>\n  <gates>\n    <gate id=\"top\" kind=\"or\">\n" + inputs +
           "    </gate>\n" + gates +
           "  </gates>\n  <top-events>\n    <top-event id=\"T1\">\n      <node ref=\"top\"/>\n"
           "    </top-event>\n  </top-events>\n</cutwater>\n";
}

} // namespace shell
