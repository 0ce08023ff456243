// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/analysis_command.h"

#include "app/cli/delivery.h"
#include "app/cli/options.h"
#include "app/cli/progress.h"
#include "app/cli/registry.h"
#include "app/cli/show_result.h"
#include "app/results/display_text.h"
#include "models/project/index.h"
#include "plugins/sdk/guard.h"

#include <fmt/format.h>

#include <ostream>

namespace cutwater::cli {

using results::printable;
namespace {

// The last thing that the host said about a file.
std::string reasonFor(const std::string& file, const sdk::Host& host) {
    std::string reason;
    for (const sdk::Rejected& rejected : host.rejected())
        if (rejected.file == file) reason = rejected.sentence;
    return reason;
}

std::vector<std::string> knownNames(const sdk::Host& host) {
    std::vector<std::string> names;
    for (const Command& command : builtInCommands())
        names.push_back(command.name);
    for (const sdk::PluginFacts& facts : host.plugins())
        if (facts.kind == sdk::PluginKind::analysis) names.push_back(facts.id);
    return names;
}

// A top event that is not in the project is a mistake of the command line, not of the file. Empty
// where all are there.
std::string unknownTop(const std::vector<sdk::Parameter>& parameters, const sdk::Values& values,
                       const project::Project& project) {
    const project::Index index(project);
    for (const sdk::Parameter& parameter : parameters) {
        if (parameter.type != sdk::ParameterType::topEvent) continue;
        const auto id = values.text(parameter.name);
        if (!id || index.top(*id) || index.gate(*id) || index.event(*id)) continue;
        std::vector<std::string> ids;
        for (const project::TopEvent& top : project.tops)
            ids.push_back(top.id);
        for (const project::Gate& gate : project.gates)
            ids.push_back(gate.id);
        const std::string near = sdk::nearest(*id, ids);
        if (!near.empty())
            return fmt::format("there is no top event, gate or event '{}'; did you mean {}?", *id,
                               near);
        return fmt::format("there is no top event, gate or event '{}'; `cutwater list FILE` shows "
                           "the top events",
                           *id);
    }
    return {};
}

int run(const Call& call, Context& context) {
    const sdk::PluginFacts* const facts =
        context.host.find(sdk::PluginKind::analysis, call.command);
    sdk::Analysis* const analysis = context.host.analysis(call.command);
    if (!facts || !analysis) return kFileHasErrors; // cannot be: findCommand() has loaded it
    const std::string& path = call.operands.front();
    const auto project = readProject(path, context);
    if (!project) return kFileHasErrors;

    const auto parameters = sdk::parametersOf(*analysis, *facts, &*project);
    if (!parameters) return reportEnding(sdk::Ending::failed, parameters.problems(), {}, context);
    const auto values = sdk::complete(*parameters, call.values);
    if (!values) return usageError(values.problems(), context);
    if (const std::string mistake = unknownTop(*parameters, *values, *project); !mistake.empty())
        return usageError(mistake, context);

    sdk::Answer<sdk::Result> answer;
    {
        Progress progress(!context.globals.quiet);
        sdk::Job job;
        job.stop = context.stop;
        job.memoryBytes = context.globals.memoryBytes;
        job.progress = [&](double share, const std::string& what) { progress.show(share, what); };
        answer = sdk::runGuarded(*analysis, *facts, *project, *values, job);
    }
    if (answer.ending != sdk::Ending::finished)
        return reportEnding(answer.ending, answer.problems, shownName(path), context);
    reportEnding(answer.ending, answer.problems, shownName(path), context);
    return showResult(std::move(*answer.content), {call.command, facts->version, path}, context);
}

std::optional<Command> fromPlugin(const sdk::PluginFacts& facts, Context& context) {
    sdk::Analysis* const analysis = context.host.analysis(facts.id);
    if (!analysis) {
        context.err << "cutwater: " << printable(reasonFor(facts.file, context.host)) << '\n';
        return {};
    }
    auto parameters = sdk::parametersOf(*analysis, facts, nullptr);
    if (!parameters) {
        reportEnding(sdk::Ending::failed, parameters.problems(), {}, context);
        return {};
    }
    Command command;
    command.name = facts.id;
    command.summary = facts.summary;
    command.operands = "FILE";
    command.details = fmt::format("{}, version {}.", facts.title, facts.version);
    command.options = std::move(*parameters);
    command.run = run;
    return command;
}

} // namespace

std::optional<Command> findCommand(const std::string& name, Context& context) {
    if (const Command* builtIn = findBuiltIn(name)) return *builtIn;
    if (const sdk::PluginFacts* facts = context.host.find(sdk::PluginKind::analysis, name))
        return fromPlugin(*facts, context);
    const std::string near = sdk::nearest(name, knownNames(context.host));
    if (!near.empty())
        usageError(
            fmt::format("there is no command or analysis '{}'; did you mean {}?", name, near),
            context);
    else
        usageError(fmt::format("there is no command or analysis '{}'; `cutwater list` and "
                               "`cutwater --help` show what there is",
                               name),
                   context);
    return {};
}

} // namespace cutwater::cli
