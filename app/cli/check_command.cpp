// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/check_command.h"

#include "app/cli/delivery.h"
#include "app/cli/show_result.h"

#include <fmt/format.h>

#include <limits>
#include <sstream>

namespace cutwater::cli {
namespace {

using project::Problem;
using project::Severity;

std::string counted(std::size_t count, const char* one, const char* many) {
    return fmt::format("{} {}", count, count == 1 ? one : many);
}

std::string summary(const std::string& file, const project::Problems& problems,
                    const project::Project* project) {
    std::size_t errors = 0;
    for (const Problem& problem : problems)
        errors += problem.severity == Severity::error ? 1 : 0;
    std::string line = fmt::format("{}: {}, {}", file, counted(errors, "error", "errors"),
                                   counted(problems.size() - errors, "warning", "warnings"));
    if (project)
        line += fmt::format("; {}, {}, {}, {}, {}",
                            counted(project->components.size(), "component", "components"),
                            counted(project->modes.size(), "failure mode", "failure modes"),
                            counted(project->events.size(), "event", "events"),
                            counted(project->gates.size(), "gate", "gates"),
                            counted(project->tops.size(), "top event", "top events"));
    return line + ".";
}

sdk::Result asResult(const std::string& file, const project::Problems& problems) {
    using sdk::ColumnType;
    sdk::Result result;
    result.title = "Problems of " + file;
    sdk::Table table{"problems",
                     "Problems",
                     {{"line", "Line", ColumnType::integer, ""},
                      {"severity", "Severity", ColumnType::text, ""},
                      {"where", "Where", ColumnType::text, ""},
                      {"what", "What", ColumnType::text, ""},
                      {"remedy", "Remedy", ColumnType::text, ""}},
                     {},
                     {}};
    for (const Problem& problem : problems)
        table.rows.push_back(
            {problem.line > 0 ? sdk::Cell(std::int64_t{problem.line}) : sdk::Cell(),
             std::string(problem.severity == Severity::error ? "error" : "warning"), problem.where,
             problem.what, problem.remedy});
    result.tables.push_back(std::move(table));
    return result;
}

int run(const Call& call, Context& context) {
    const std::string& path = call.operands.front();
    const std::string file = shownName(path);
    const auto loaded = loadProject(path);
    const project::Problems& problems = loaded ? loaded->warnings : loaded.problems();
    const int code = project::hasErrors(problems) ? kFileHasErrors : kFine;
    int delivered = kFine;
    if (context.globals.format != Format::text) {
        delivered = showResult(asResult(file, problems), {"check", "", path}, context);
    } else {
        std::ostringstream text;
        printProblems(problems, file, text, std::numeric_limits<std::size_t>::max());
        if (!context.globals.quiet)
            text << summary(file, problems, loaded ? &loaded->project : nullptr) << '\n';
        delivered = deliver(text.str(), context);
    }
    return delivered == kFine ? code : delivered;
}

} // namespace

Command checkCommand() {
    Command command;
    command.name = "check";
    command.summary = "print every problem of a project file, with its line and how to mend it";
    command.operands = "FILE";
    command.details = "Errors keep a file from being computed; warnings do not. The exit code is 0 "
                      "where there are no errors and 1 where there are.";
    command.run = run;
    return command;
}

} // namespace cutwater::cli
