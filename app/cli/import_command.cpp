// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/import_command.h"

#include "app/cli/delivery.h"
#include "app/cli/show_result.h"
#include "models/document/document.h"
#include "models/worksheet/import.h"
#include "plugins/sdk/cells.h"

#include <QFile>

#include <fmt/format.h>

#include <ostream>

namespace cutwater::cli {
namespace {

using sdk::Cell;
using sdk::ColumnType;
using worksheet::Import;
using worksheet::ImportRow;

constexpr qint64 kMostBytes = qint64{64} << 20;

// "Failure=mode, Old remark=-".
std::vector<std::pair<std::string, std::string>> matchingOf(const std::string& text) {
    std::vector<std::pair<std::string, std::string>> pairs;
    const auto trimmed = [](const std::string& word) {
        const std::size_t first = word.find_first_not_of(' ');
        if (first == std::string::npos) return std::string();
        return word.substr(first, word.find_last_not_of(' ') - first + 1);
    };
    std::size_t from = 0;
    while (from < text.size()) {
        const std::size_t to = std::min(text.find(',', from), text.size());
        const std::string pair = text.substr(from, to - from);
        const std::size_t equals = pair.rfind('=');
        if (!trimmed(pair).empty())
            pairs.emplace_back(trimmed(pair.substr(0, equals)),
                               equals == std::string::npos ? "" : trimmed(pair.substr(equals + 1)));
        from = to + 1;
    }
    return pairs;
}

sdk::Result asResult(const Import& import, bool written) {
    sdk::Table rejected{
        "rejected",
        "Rows that are not taken",
        {{"line", "Line", ColumnType::integer, ""}, {"why", "Why", ColumnType::text, ""}},
        {},
        {}};
    sdk::Table taken{"taken",
                     written ? "Rows that were taken" : "Rows that would be taken",
                     {{"line", "Line", ColumnType::integer, ""},
                      {"mode", "Failure mode", ColumnType::text, ""},
                      {"new", "New", ColumnType::text, ""},
                      {"column", "Column", ColumnType::text, ""},
                      {"before", "Before", ColumnType::text, ""},
                      {"after", "After", ColumnType::text, ""}},
                     {},
                     {}};
    std::size_t unchanged = 0;
    for (const ImportRow& row : import.rows) {
        const auto line = static_cast<std::int64_t>(row.line);
        if (!row.taken) rejected.rows.push_back({line, row.why});
        unchanged += row.taken && row.changes.empty() && !row.isNew ? 1 : 0;
        if (row.taken && row.isNew && row.changes.empty())
            taken.rows.push_back({line, row.mode, std::string("yes"), Cell(), Cell(), Cell()});
        for (const worksheet::CellChange& change : row.changes)
            taken.rows.push_back({line, row.mode, row.isNew ? Cell(std::string("yes")) : Cell(),
                                  change.column, sdk::textCell(change.before),
                                  sdk::textCell(change.after)});
    }
    sdk::Table columns{"columns",
                       "Headings that are not taken",
                       {{"heading", "Heading and why", ColumnType::text, ""}},
                       {},
                       {}};
    for (const std::string& heading : import.matching.ignored)
        columns.rows.push_back({heading});
    sdk::Result result;
    result.title = written ? "Rows imported" : "Preview: nothing is written";
    result.notes.push_back(
        {sdk::NoteKind::method,
         fmt::format("{} row{}: {} taken, of them {} unchanged; {} not taken; {} new component{}.",
                     import.rows.size(), import.rows.size() == 1 ? "" : "s", import.taken(),
                     unchanged, import.rejected(), import.newComponents.size(),
                     import.newComponents.size() == 1 ? "" : "s")});
    result.tables = {std::move(rejected), std::move(taken), std::move(columns)};
    return result;
}

int run(const Call& call, Context& context) {
    const auto project = readProject(call.operands[0], context);
    if (!project) return kFileHasErrors;
    QFile file(QString::fromStdString(call.operands[1]));
    if (!file.open(QIODevice::ReadOnly) || file.size() > kMostBytes) {
        context.err << fmt::format(
            "{}: error: the table cannot be read ({}); name a CSV or TSV file "
            "of at most 64 MB.\n",
            shownName(call.operands[1]), file.errorString().toStdString());
        return kFileHasErrors;
    }
    worksheet::ImportWish wish;
    wish.matching = matchingOf(call.values.text("match").value_or(""));
    wish.makeComponents = call.values.flag("make-components");
    const auto import = worksheet::importRows(*project, file.readAll().toStdString(), wish);
    if (!import)
        return reportEnding(sdk::Ending::failed, import.problems(), shownName(call.operands[1]),
                            context);
    const bool refused = import->rejected() > 0 && !call.values.flag("partial");
    const bool write = !context.globals.output.empty() && !refused;
    if (write) {
        if (const int code = deliverProject(import->project, context); code != kFine) return code;
    }
    Globals globals = context.globals;
    globals.output.clear(); // the report goes to standard output, the project to --output
    Context report{context.host, globals, context.stop, context.out, context.err};
    const int code =
        showResult(asResult(*import, write), {call.command, {}, call.operands[0]}, report);
    if (code != kFine) return code;
    if (import->rejected() == 0) return kFine;
    if (!context.globals.output.empty() && refused)
        context.err << fmt::format("cutwater: {} row{} not taken, so nothing is written; mend the "
                                   "table, or give --partial to take the others.\n",
                                   import->rejected(), import->rejected() == 1 ? " is" : "s are");
    return kFileHasErrors;
}

} // namespace

Command importCommand() {
    Command command;
    command.name = "import-rows";
    command.summary =
        "import a table (CSV, TSV) into the worksheet, with a preview of every change";
    command.operands = "FILE TABLE";
    command.details =
        "Headings are matched to the columns that `cutwater fmea FILE --columns all` shows, by id, "
        "title or a usual other name. Without --output nothing is written: the changes are shown, "
        "and the rows that cannot be taken with the reason. A row belongs to the failure mode "
        "whose "
        "id it names, or to the one of that name of that component; else it makes a new one. Empty "
        "cells change nothing. Exit code 1 where a row was not taken.";
    sdk::Parameter match;
    match.name = "match";
    match.sentence = "which heading is which column: \"Failure=mode, Old remark=-\"; - leaves out";
    sdk::Parameter make;
    make.name = "make-components";
    make.type = sdk::ParameterType::flag;
    make.sentence = "a tag that is not in the plant makes a component";
    sdk::Parameter partial;
    partial.name = "partial";
    partial.type = sdk::ParameterType::flag;
    partial.sentence = "write the rows that can be taken even where others cannot";
    command.options = {match, make, partial};
    command.minOperands = command.maxOperands = 2;
    command.run = run;
    return command;
}

} // namespace cutwater::cli
