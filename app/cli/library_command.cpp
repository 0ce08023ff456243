// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/library_command.h"

#include "app/cli/delivery.h"
#include "app/cli/libraries.h"
#include "app/cli/show_result.h"
#include "models/library/take.h"
#include "plugins/sdk/cells.h"
#include "plugins/sdk/tree/cautions.h"

#include <fmt/format.h>

namespace cutwater::cli {
namespace {

using library::ComponentType;
using library::Library;
using library::Mode;
using library::News;
using library::NewsKind;
using sdk::Cell;
using sdk::ColumnType;
using sdk::textCell;

sdk::Table typesTable(const std::vector<Library>& libraries, const std::string& group) {
    sdk::Table table{"types",
                     "Component types",
                     {{"type", "Type", ColumnType::text, ""},
                      {"name", "Name", ColumnType::text, ""},
                      {"group", "Group", ColumnType::text, ""},
                      {"modes", "Failure modes", ColumnType::integer, ""},
                      {"with-rate", "With a rate", ColumnType::integer, ""},
                      {"library", "Library", ColumnType::text, ""},
                      {"revision", "Revision", ColumnType::text, ""}},
                     {},
                     {}};
    for (const Library& one : libraries)
        for (const ComponentType& type : one.types) {
            if (!group.empty() && type.group != group) continue;
            std::int64_t rated = 0;
            for (const Mode& mode : type.modes)
                rated += mode.facts.model.numbers.empty() ? 0 : 1;
            table.rows.push_back({type.id, type.name, textCell(type.group),
                                  static_cast<std::int64_t>(type.modes.size()), rated, one.id,
                                  textCell(type.revision)});
        }
    return table;
}

// The source that counts: of the number that says how often.
const project::SourceNote* sourceOf(const project::FailureModel& model) {
    for (const project::Assignment& number : model.numbers)
        if (!number.quantity.source.empty()) return &number.quantity.source;
    return nullptr;
}

std::string checksOf(const project::FailureMode& mode) {
    std::vector<std::string> all;
    for (const project::Check& check : mode.checks)
        all.push_back(check.minutes ? fmt::format("{} ({:g} min): {}", check.look, *check.minutes,
                                                  check.tells)
                                    : fmt::format("{}: {}", check.look, check.tells));
    return fmt::format("{}", fmt::join(all, "; "));
}

sdk::Table modesTable(const ComponentType& type) {
    sdk::Table table{"modes",
                     "Failure modes",
                     {{"mode", "Mode", ColumnType::text, ""},
                      {"name", "What fails", ColumnType::text, ""},
                      {"causes", "Causes", ColumnType::text, ""},
                      {"local-effect", "Local effect", ColumnType::text, ""},
                      {"next-effect", "Next higher effect", ColumnType::text, ""},
                      {"detection", "Detected by", ColumnType::text, ""},
                      {"dormant", "Dormant", ColumnType::text, ""},
                      {"check", "What to check", ColumnType::text, ""},
                      {"rate", "Rate", ColumnType::text, ""},
                      {"source", "Source", ColumnType::text, ""},
                      {"trust", "How far to trust it", ColumnType::text, ""},
                      {"remark", "Remark", ColumnType::text, ""}},
                     {},
                     {}};
    for (const Mode& mode : type.modes) {
        const project::FailureMode& facts = mode.facts;
        const bool rated = !facts.model.numbers.empty();
        const project::SourceNote* source = sourceOf(facts.model);
        table.rows.push_back(
            {facts.id, textCell(facts.name),
             textCell(fmt::format("{}", fmt::join(facts.causes, "; "))),
             textCell(facts.localEffect), textCell(facts.nextEffect), textCell(facts.detection),
             facts.dormant ? Cell(std::string("yes")) : Cell(), textCell(checksOf(facts)),
             rated ? textCell(library::inWords(facts.model)) : Cell(std::string("none")),
             source ? textCell(fmt::format("{}{}{}{}{}", source->document,
                                           source->edition.empty() ? "" : ", ", source->edition,
                                           source->place.empty() ? "" : ", ", source->place))
                    : Cell(),
             source ? textCell(library::trustOf(*source)) : textCell(mode.noRate),
             source && !source->remark.empty() ? Cell(source->remark) : textCell(facts.remark)});
    }
    return table;
}

int runLibrary(const Call& call, Context& context) {
    const auto libraries = readLibraries(call, context);
    if (!libraries) return kFileHasErrors;
    sdk::Result result;
    if (call.operands.empty()) {
        result.title = "Component types of the libraries";
        result.tables = {typesTable(*libraries, call.values.text("group").value_or(""))};
        if (result.tables.front().rows.empty())
            return usageError(
                fmt::format("no type is of the group '{}'", call.values.text("group").value_or("")),
                context);
    } else {
        const FoundType found = findType(*libraries, call.operands.front());
        if (!found.type) return usageError(unknownType(*libraries, call.operands.front()), context);
        result.title = fmt::format("{} ({}, revision {})", found.type->name, found.library->id,
                                   found.type->revision);
        result.tables = {modesTable(*found.type)};
    }
    result.notes.push_back(
        {sdk::NoteKind::warning,
         "Rates come from plants on shore and are a start with wide limits. Those "
         "\"from memory\" have to be checked against the source before they are "
         "relied on; where no public source was found there is none."});
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::machine, {});
    return showResult(std::move(result), {call.command, {}, {}}, context);
}

std::string sentenceFor(const News& news) {
    switch (news.kind) {
    case NewsKind::libraryMissing: return "its library is not at hand";
    case NewsKind::typeGone: return "the library no longer has this type";
    case NewsKind::revision: return "the library has another revision";
    case NewsKind::modeAdded: return "the library has one more failure mode";
    case NewsKind::modeGone: return "the library no longer has this failure mode";
    case NewsKind::differs: return "differs";
    }
    return {};
}

int runNews(const Call& call, Context& context) {
    const std::string& path = call.operands.front();
    const auto project = readProject(path, context);
    if (!project) return kFileHasErrors;
    const auto libraries = readLibraries(call, context);
    if (!libraries) return kFileHasErrors;
    sdk::Table table{"news",
                     "Where the library has moved on",
                     {{"component", "Component", ColumnType::text, ""},
                      {"mode", "Failure mode", ColumnType::text, ""},
                      {"what", "What", ColumnType::text, ""},
                      {"fact", "Fact", ColumnType::text, ""},
                      {"here", "In the project", ColumnType::text, ""},
                      {"there", "In the library", ColumnType::text, ""}},
                     {},
                     {}};
    for (const News& news : library::newsOf(*project, *libraries))
        table.rows.push_back({project->components[news.component].id, textCell(news.mode),
                              sentenceFor(news), textCell(news.fact), textCell(news.here),
                              textCell(news.there)});
    std::size_t taken = 0;
    for (const project::Component& component : project->components)
        taken += component.origin ? 1 : 0;
    sdk::Result result;
    result.title = "News of the library";
    result.tables = {std::move(table)};
    result.notes.push_back(
        {sdk::NoteKind::method,
         fmt::format("{} of {} components come from a library. One whose revision is still the "
                     "library's is not held against it: what differs there was changed on purpose.",
                     taken, project->components.size())});
    return showResult(std::move(result), {call.command, {}, path}, context);
}

} // namespace

Command libraryCommand() {
    Command command;
    command.name = "library";
    command.summary =
        "list the component types of the libraries, or show one with its failure modes";
    command.operands = "[TYPE]";
    command.details =
        "Without TYPE all types are listed. Every number is shown with its source and "
        "how far to trust it.";
    sdk::Parameter group;
    group.name = "group";
    group.sentence = "only types of this group: burner, fuel, air, control, \"water and steam\"";
    command.options = {group, libraryParameter()};
    command.minOperands = 0;
    command.run = runLibrary;
    return command;
}

Command libraryNewsCommand() {
    Command command;
    command.name = "library-news";
    command.summary = "say where the libraries have moved on since components were taken from them";
    command.operands = "FILE";
    command.options = {libraryParameter()};
    command.run = runNews;
    return command;
}

} // namespace cutwater::cli
