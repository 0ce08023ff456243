// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/convert_command.h"

#include "app/cli/delivery.h"
#include "models/document/document.h"
#include "plugins/sdk/guard.h"

#include <QFile>

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <ostream>

namespace cutwater::cli {
namespace {

constexpr const char* kOwnSuffix = "cutwater";

std::string suffixOf(const std::string& path) {
    const std::size_t dot = path.rfind('.');
    if (dot == std::string::npos || path.find('/', dot) != std::string::npos) return {};
    std::string suffix = path.substr(dot + 1);
    for (char& c : suffix)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return suffix;
}

struct Found {
    sdk::Exchange* exchange = nullptr;
    const sdk::PluginFacts* facts = nullptr;
};

// The first plug-in for the suffix that can do it.
Found exchangeFor(const std::string& suffix, bool reading, Context& context) {
    for (const sdk::PluginFacts& facts : context.host.plugins()) {
        if (facts.kind != sdk::PluginKind::exchange) continue;
        sdk::Exchange* exchange = context.host.exchange(facts.id);
        if (!exchange || !(reading ? exchange->canRead() : exchange->canWrite())) continue;
        const auto suffixes = exchange->suffixes();
        if (std::find(suffixes.begin(), suffixes.end(), suffix) != suffixes.end())
            return {exchange, &facts};
    }
    return {};
}

std::string unknownSuffix(const std::string& path, const char* doing) {
    return fmt::format("{}: no plug-in {} files that end like this; `cutwater list` shows the "
                       "plug-ins",
                       path, doing);
}

int run(const Call& call, Context& context) {
    const std::string& from = call.operands[0];
    const std::string& to = call.operands[1];
    sdk::Job job;
    job.stop = context.stop;
    job.memoryBytes = context.globals.memoryBytes;
    std::optional<project::Project> project;
    if (const std::string suffix = suffixOf(from); suffix == kOwnSuffix || from == "-") {
        project = readProject(from, context);
        if (!project) return kFileHasErrors;
    } else {
        const Found found = exchangeFor(suffix, true, context);
        if (!found.exchange) return usageError(unknownSuffix(from, "reads"), context);
        QFile file(QString::fromStdString(from));
        if (!file.open(QIODevice::ReadOnly) ||
            file.size() > static_cast<qint64>(document::kMaxFileBytes)) {
            context.err << fmt::format("{}: error: the file cannot be read ({}); name another.\n",
                                       shownName(from), file.errorString().toStdString());
            return kFileHasErrors;
        }
        const std::string bytes = file.readAll().toStdString();
        auto answer = sdk::guarded<project::Project>(
            *found.facts, [&] { return found.exchange->read(bytes, {}, job); });
        if (!answer.content)
            return reportEnding(answer.ending, answer.problems, shownName(from), context);
        project = std::move(answer.content);
    }
    std::string bytes;
    if (suffixOf(to) == kOwnSuffix) {
        auto text = document::write(*project);
        if (!text) return reportEnding(sdk::Ending::failed, text.problems(), {}, context);
        bytes = std::move(*text);
    } else {
        const Found found = exchangeFor(suffixOf(to), false, context);
        if (!found.exchange) return usageError(unknownSuffix(to, "writes"), context);
        auto answer = sdk::guarded<std::string>(
            *found.facts, [&] { return found.exchange->write(*project, {}, job); });
        if (!answer.content)
            return reportEnding(answer.ending, answer.problems, shownName(from), context);
        bytes = std::move(*answer.content);
    }
    Globals globals = context.globals;
    globals.output = to;
    Context writing{context.host, globals, context.stop, context.out, context.err};
    return deliver(bytes, writing);
}

} // namespace

Command convertCommand() {
    Command command;
    command.name = "convert";
    command.summary =
        "write a project in another format, or read one: the worksheet as csv, tsv, xlsx";
    command.operands = "FILE OUT";
    command.details =
        "The ends of the two names say which formats: .cutwater is the project file, the "
        "others belong to exchange plug-ins (`cutwater list`).";
    command.minOperands = command.maxOperands = 2;
    command.run = run;
    return command;
}

} // namespace cutwater::cli
