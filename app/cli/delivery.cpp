// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/delivery.h"

#include "app/cli/display_text.h"
#include "models/document/document.h"

#include <QFileInfo>
#include <QSaveFile>

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <cstdio>
#include <ostream>
#include <vector>

namespace cutwater::cli {
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
    QSaveFile file(QString::fromStdString(path));
    // Devices such as /dev/null cannot be replaced by a new file.
    const QFileInfo info(file.fileName());
    if (info.exists() && !info.isFile() && !info.isDir()) file.setDirectWriteFallback(true);
    const auto size = static_cast<qint64>(bytes.size());
    if (!file.open(QIODevice::WriteOnly) || file.write(bytes.data(), size) != size ||
        !file.commit()) {
        context.err << fmt::format("{}: error: the answer cannot be written ({}); choose a place "
                                   "where you may write.\n",
                                   printable(path), file.errorString().toStdString());
        return kFileHasErrors;
    }
    return kFine;
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

} // namespace cutwater::cli
