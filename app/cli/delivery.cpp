// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/delivery.h"

#include "app/results/display_text.h"
#include "models/document/document.h"

#include <QFile>
#include <QFileInfo>
#include <QSaveFile>

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <ostream>
#include <vector>

namespace cutwater::cli {

using results::printable;
namespace {

using project::Problem;
using project::Problems;
using project::Severity;

constexpr std::size_t kMostProblems = 50; // more do not help; `check` prints them all

project::Outcome<std::string> standardInput() {
    std::string bytes;
    std::vector<char> block(std::size_t{1} << 16);
    for (;;) {
        const std::size_t got = std::fread(block.data(), 1, block.size(), stdin);
        bytes.append(block.data(), got);
        if (bytes.size() > document::kMaxFileBytes)
            return Problem{Severity::error, "standard input is too long for a project",
                           fmt::format("give at most {} MB", document::kMaxFileBytes >> 20), "", 0};
        if (got < block.size()) break;
    }
    if (std::ferror(stdin) != 0)
        return Problem{Severity::error, "standard input cannot be read", "name a file instead", "",
                       0};
    return bytes;
}

bool writeAll(QIODevice& device, const std::string& bytes) {
    const auto size = static_cast<qint64>(bytes.size());
    return device.write(bytes.data(), size) == size;
}

int cannotBeWritten(const std::string& path, const QIODevice& device, Context& context) {
    context.err << fmt::format("{}: error: the answer cannot be written ({}); choose a place "
                               "where you may write.\n",
                               printable(path), device.errorString().toStdString());
    return kFileHasErrors;
}

} // namespace

std::string shownName(const std::string& path) {
    return path == "-" ? "standard input" : printable(path);
}

project::Outcome<document::Loaded> loadProject(const std::string& path) {
    if (path != "-") return document::load(path);
    auto bytes = standardInput();
    if (!bytes) return bytes.problems();
    auto loaded = document::parse(*bytes);
    if (!loaded) return loaded;
    Problems found = project::validate(loaded->project);
    if (project::hasErrors(found)) return found;
    loaded->warnings.insert(loaded->warnings.end(), found.begin(), found.end());
    return loaded;
}

void printProblems(const Problems& problems, const std::string& file, std::ostream& stream,
                   std::size_t most) {
    const std::size_t shown = std::min(most, problems.size());
    for (std::size_t i = 0; i < shown; ++i)
        stream << printable(project::toSentence(problems[i], file)) << '\n';
    if (shown < problems.size())
        stream << fmt::format("... and {} more; `cutwater check FILE` prints them all.\n",
                              problems.size() - shown);
}

std::optional<project::Project> readProject(const std::string& path, Context& context) {
    auto loaded = loadProject(path);
    if (!loaded) {
        printProblems(loaded.problems(), shownName(path), context.err, kMostProblems);
        return {};
    }
    const std::size_t warnings = loaded->warnings.size();
    if (warnings > 0 && !context.globals.quiet)
        context.err << fmt::format("{}: {} warning{} about the file; `cutwater check` prints {}.\n",
                                   shownName(path), warnings, warnings == 1 ? "" : "s",
                                   warnings == 1 ? "it" : "them");
    return std::move(loaded->project);
}

int deliver(const std::string& bytes, Context& context) {
    const std::string& path = context.globals.output;
    if (path.empty()) {
        errno = 0;
        context.out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        context.out.flush();
        // A reader that has seen enough (`| head`) is no error; a full disk behind `>` is one.
        if (!context.out && errno != EPIPE) {
            context.err << "cutwater: the answer cannot be written to standard output; is the disk "
                           "full?\n";
            return kFileHasErrors;
        }
        return kFine;
    }
    const QString name = QString::fromStdString(path);
    // A device or a pipe is written to. A save file would put a new file in its place, and root may
    // do that even to /dev/null.
    const QFileInfo info(name);
    if (info.exists() && !info.isFile() && !info.isDir()) {
        QFile device(name);
        if (device.open(QIODevice::WriteOnly) && writeAll(device, bytes) && device.flush())
            return kFine;
        return cannotBeWritten(path, device, context);
    }
    QSaveFile file(name);
    if (!file.open(QIODevice::WriteOnly) || !writeAll(file, bytes) || !file.commit())
        return cannotBeWritten(path, file, context);
    return kFine;
}

int deliverProject(const project::Project& project, Context& context) {
    const auto text = document::write(project);
    if (!text) return reportEnding(sdk::Ending::failed, text.problems(), {}, context);
    return deliver(*text, context);
}

int reportEnding(sdk::Ending ending, const Problems& problems, const std::string& file,
                 Context& context) {
    printProblems(problems, file, context.err, kMostProblems);
    switch (ending) {
    case sdk::Ending::finished: return kFine;
    case sdk::Ending::failed: return kFileHasErrors;
    case sdk::Ending::cancelled:
    case sdk::Ending::overLimit: return kStopped;
    }
    return kFileHasErrors;
}

int usageError(const std::string& sentence, Context& context) {
    context.err << "cutwater: " << printable(sentence);
    if (!sentence.empty() && sentence.back() != '?' && sentence.back() != '.') context.err << '.';
    context.err << '\n';
    return kUsage;
}

int usageError(const Problems& problems, Context& context) {
    return usageError(fmt::format("{}; {}", problems.front().what, problems.front().remedy),
                      context);
}

} // namespace cutwater::cli
