// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/program.h"

#include "app/cli/analysis_command.h"
#include "app/cli/delivery.h"
#include "app/cli/help.h"
#include "app/cli/options.h"
#include "app/results/display_text.h"
#include "app/results/version.h"

#include <QFileInfo>

#include <fmt/format.h>

#include <ostream>

namespace cutwater::cli {

using results::kVersion;
using results::printable;
namespace {

std::string missingFolder(const std::vector<std::string>& folders) {
    for (const std::string& folder : folders)
        if (!QFileInfo(QString::fromStdString(folder)).isDir()) return folder;
    return {};
}

} // namespace

int runProgram(const std::vector<std::string>& words, const std::string& applicationFolder,
               std::stop_token stop, std::ostream& out, std::ostream& err) {
    const auto look = firstLook(words);
    sdk::Host none({});
    const Globals standard;
    Context early{none, standard, stop, out, err};
    if (const auto* mistake = std::get_if<UsageMistake>(&look)) return usageError(*mistake, early);
    const FirstLook& first = std::get<FirstLook>(look);
    if (first.version) return deliver(fmt::format("cutwater {}\n", kVersion), early);
    if (const std::string folder = missingFolder(first.pluginFolders); !folder.empty())
        return usageError(fmt::format("--plugins {}: there is no such folder", folder), early);

    std::vector<std::string> folders{sdk::standardPluginFolder(applicationFolder)};
    folders.insert(folders.end(), first.pluginFolders.begin(), first.pluginFolders.end());
    sdk::Host host(folders);
    Context finding{host, standard, stop, out, err};
    if (first.command.empty() && first.help) return deliver(generalHelp(host), finding);
    if (first.command.empty()) {
        usageError("say what to do: cutwater COMMAND FILE; `cutwater --help` shows the commands",
                   finding);
        return kUsage;
    }
    const auto command = findCommand(first.command, finding);
    if (!command) {
        const bool known = host.find(sdk::PluginKind::analysis, first.command) != nullptr;
        return known ? kFileHasErrors : kUsage;
    }
    if (first.help) return deliver(helpFor(*command), finding);

    const auto parsed = parse(first, *command);
    if (const auto* mistake = std::get_if<UsageMistake>(&parsed))
        return usageError(*mistake, finding);
    const Parsed& request = std::get<Parsed>(parsed);
    if (!request.globals.quiet && command->name != "list")
        for (const sdk::Rejected& rejected : host.rejected())
            err << "cutwater: plug-in left out: " << printable(rejected.sentence) << '\n';
    Context context{host, request.globals, stop, out, err};
    return command->run(request.call, context);
}

} // namespace cutwater::cli
