// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/registry.h"

#include "app/cli/accept_command.h"
#include "app/cli/check_command.h"
#include "app/cli/convert_command.h"
#include "app/cli/draw_command.h"
#include "app/cli/draw_risk_command.h"
#include "app/cli/help.h"
#include "app/cli/import_command.h"
#include "app/cli/library_command.h"
#include "app/cli/list_command.h"
#include "app/cli/new_command.h"
#include "app/cli/report_command.h"
#include "app/cli/take_command.h"

namespace cutwater::cli {

const std::vector<Command>& builtInCommands() {
    static const std::vector<Command> commands = {
        newCommand(),         checkCommand(),   listCommand(),   drawCommand(),   drawRiskCommand(),
        reportCommand(),      convertCommand(), importCommand(), acceptCommand(), libraryCommand(),
        libraryNewsCommand(), takeCommand(),    helpCommand(),
    };
    return commands;
}

const Command* findBuiltIn(const std::string& name) {
    for (const Command& command : builtInCommands())
        if (command.name == name) return &command;
    return nullptr;
}

} // namespace cutwater::cli
