// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/list_command.h"

#include "app/cli/delivery.h"
#include "app/cli/show_result.h"
#include "models/project/index.h"

#include <fmt/format.h>

#include <unordered_set>

namespace cutwater::cli {
namespace {

using sdk::ColumnType;
using sdk::PluginKind;

struct Section {
    PluginKind kind;
    const char* id;
    const char* title;
};

constexpr Section kSections[] = {
    {PluginKind::analysis, "analyses", "Analyses: cutwater ID FILE"},
    {PluginKind::exchange, "exchanges", "Foreign formats"},
    {PluginKind::layout, "layouts", "Layouts of drawings"},
    {PluginKind::report, "reports", "Reports"},
};

sdk::Result plugins(const sdk::Host& host) {
    sdk::Result result;
    result.title = "Plug-ins";
    for (const Section& section : kSections) {
        sdk::Table table{section.id,
                         section.title,
                         {{"id", "Id", ColumnType::text, ""},
                          {"summary", "What it does", ColumnType::text, ""},
                          {"version", "Version", ColumnType::text, ""}},
                         {},
                         {}};
        for (const sdk::PluginFacts& facts : host.plugins())
            if (facts.kind == section.kind)
                table.rows.push_back({facts.id, facts.summary, facts.version});
        result.tables.push_back(std::move(table));
    }
    if (!host.rejected().empty()) {
        sdk::Table table{
            "left-out", "Left out", {{"reason", "Reason", ColumnType::text, ""}}, {}, {}};
        for (const sdk::Rejected& rejected : host.rejected())
            table.rows.push_back({rejected.sentence});
        result.tables.push_back(std::move(table));
    }
    return result;
}

struct Below {
    std::size_t gates = 0, events = 0;
};

// Gates and events that a top stands on, each counted once; depth is limited by memory only.
Below below(const project::Index& index, const project::Id& node) {
    Below count;
    std::unordered_set<project::Id> seen{node};
    std::vector<project::Id> open{node};
    while (!open.empty()) {
        const project::Id id = std::move(open.back());
        open.pop_back();
        const project::Gate* const gate = index.gate(id);
        if (!gate) {
            count.events += index.event(id) ? 1 : 0;
            continue;
        }
        ++count.gates;
        const auto visit = [&](const project::Reference& reference) {
            if (!reference.id.empty() && seen.insert(reference.id).second)
                open.push_back(reference.id);
        };
        for (const project::Reference& input : gate->inputs)
            visit(input);
        visit(gate->condition);
    }
    return count;
}

sdk::Result topEvents(const project::Project& project) {
    const project::Index index(project);
    sdk::Result result;
    result.title = project.name.empty() ? "Project without a name" : project.name;
    sdk::Table table{"top-events",
                     "Top events: what can be asked with --top ID",
                     {{"id", "Id", ColumnType::reference, ""},
                      {"name", "Name", ColumnType::text, ""},
                      {"operating-mode", "Operating mode", ColumnType::text, ""},
                      {"node", "Gate", ColumnType::reference, ""},
                      {"gates", "Gates", ColumnType::integer, ""},
                      {"events", "Events", ColumnType::integer, ""}},
                     {},
                     {}};
    for (const project::TopEvent& top : project.tops) {
        const Below count = below(index, top.node.id);
        table.rows.push_back({top.id, top.name, top.operatingMode, top.node.id,
                              static_cast<std::int64_t>(count.gates),
                              static_cast<std::int64_t>(count.events)});
    }
    table.remark = "Any gate or event of the project may be asked about, too, by its id.";
    result.tables.push_back(std::move(table));
    return result;
}

int run(const Call& call, Context& context) {
    if (call.operands.empty()) return showResult(plugins(context.host), {"list", "", ""}, context);
    const auto project = readProject(call.operands.front(), context);
    if (!project) return kFileHasErrors;
    return showResult(topEvents(*project), {"list", "", call.operands.front()}, context);
}

} // namespace

Command listCommand() {
    Command command;
    command.name = "list";
    command.summary = "show the analyses and other plug-ins, or the top events of a file";
    command.operands = "[FILE]";
    command.details = "Without a file: every plug-in that was found, and every one that was left "
                      "out, with the reason. With a file: its top events.";
    command.minOperands = 0;
    command.run = run;
    return command;
}

} // namespace cutwater::cli
