// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/risk-matrix/risk_matrix.h"

#include "models/project/index.h"
#include "models/worksheet/risk_placement.h"
#include "plugins/sdk/cells.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/circumstances.h"
#include "plugins/sdk/tree/common_causes.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::risk_matrix_plugin {
namespace {

using project::RiskLevel;
using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;
using sdk::numberCell;
using sdk::textCell;
using worksheet::RiskItem;
using worksheet::RiskPicture;

constexpr std::size_t kNamed = 4; // in one cell of the matrix

// "T1-1, T3-1 and 12 failure modes".
std::string listed(const std::vector<const RiskItem*>& items) {
    std::vector<std::string> named;
    std::size_t modes = 0, tops = 0;
    for (const RiskItem* item : items) {
        if (!item->isTop)
            ++modes;
        else if (tops++ < kNamed)
            named.push_back(item->id);
    }
    if (tops > kNamed) named.push_back(fmt::format("{} more top events", tops - kNamed));
    if (modes > 0) named.push_back(fmt::format("{} failure mode{}", modes, modes == 1 ? "" : "s"));
    return fmt::format("{}", fmt::join(named, ", "));
}

sdk::Table matrixTable(const RiskPicture& picture) {
    sdk::Table table{"matrix", "Risk matrix: risk index, and what stands there", {}, {}, {}};
    table.columns = {{"frequency-index", "FI", ColumnType::integer, ""},
                     {"frequency", "Frequency", ColumnType::text, ""},
                     {"per-year", "Per year", ColumnType::number, "/y"}};
    for (const RiskLevel& severity : picture.matrix.severities)
        table.columns.push_back({fmt::format("si-{}", severity.index.value_or(0)),
                                 fmt::format("SI {} {}", severity.index.value_or(0), severity.word),
                                 ColumnType::text, ""});
    const auto& levels = picture.matrix.frequencies;
    for (auto level = levels.rbegin(); level != levels.rend(); ++level) {
        std::vector<Cell> row{numberCell(level->index), textCell(level->word),
                              numberCell(level->value)};
        for (const RiskLevel& severity : picture.matrix.severities) {
            const int index = level->index.value_or(0) + severity.index.value_or(0);
            const auto* band = worksheet::bandOf(picture.matrix, index);
            std::string cell = fmt::format("{}", index);
            if (band && !band->word.empty()) cell += " " + band->word;
            if (const std::string here =
                    listed(picture.at(level->index.value_or(0), severity.index.value_or(0)));
                !here.empty())
                cell += ": " + here;
            row.emplace_back(std::move(cell));
        }
        table.rows.push_back(std::move(row));
    }
    return table;
}

void addItems(sdk::Result& result, const RiskPicture& picture) {
    sdk::Table placed{"placed",
                      "What stands in the matrix, the highest risk index first",
                      {{"what", "What", ColumnType::text, ""},
                       {"id", "Id", ColumnType::text, ""},
                       {"name", "Name", ColumnType::text, ""},
                       {"frequency", "Frequency", ColumnType::number, "/y"},
                       {"frequency-index", "FI", ColumnType::integer, ""},
                       {"severity", "Severity", ColumnType::text, ""},
                       {"severity-index", "SI", ColumnType::integer, ""},
                       {"risk-index", "RI", ColumnType::integer, ""},
                       {"band", "Called", ColumnType::text, ""},
                       {"how", "From", ColumnType::text, ""}},
                      {},
                      {}};
    sdk::Table left{"not-placed",
                    "What cannot be placed",
                    {{"what", "What", ColumnType::text, ""},
                     {"id", "Id", ColumnType::text, ""},
                     {"name", "Name", ColumnType::text, ""},
                     {"severity", "Severity", ColumnType::text, ""},
                     {"why", "Why", ColumnType::text, ""}},
                    {},
                    {}};
    std::vector<const RiskItem*> items;
    std::size_t beyond = 0;
    for (const RiskItem& item : picture.items)
        items.push_back(&item);
    std::stable_sort(items.begin(), items.end(), [](const RiskItem* a, const RiskItem* b) {
        return std::pair(a->riskIndex.value_or(-1), a->severityIndex.value_or(-1)) >
               std::pair(b->riskIndex.value_or(-1), b->severityIndex.value_or(-1));
    });
    for (const RiskItem* item : items) {
        const std::string what = item->isTop ? "top event" : "failure mode";
        if (item->riskIndex) {
            beyond += item->frequencyIndex->beyond ? 1 : 0;
            placed.rows.push_back({what, item->id, textCell(item->name), numberCell(item->perYear),
                                   numberCell(std::optional(item->frequencyIndex->index)),
                                   textCell(item->severity), numberCell(item->severityIndex),
                                   numberCell(item->riskIndex), textCell(item->band),
                                   textCell(item->how)});
            continue;
        }
        std::string why = item->perYear ? "" : item->how;
        if (item->perYear && !item->frequencyIndex) why = "its frequency is 0";
        if (!item->severityIndex)
            why += (why.empty() ? "" : "; ") + (item->severity.empty()
                                                    ? std::string("no severity")
                                                    : fmt::format("the severity \"{}\" is not in "
                                                                  "the matrix",
                                                                  item->severity));
        left.rows.push_back({what, item->id, textCell(item->name), textCell(item->severity), why});
    }
    if (beyond > 0)
        result.notes.push_back(
            {NoteKind::warning,
             fmt::format("{} item{} outside the frequency scale and stand{} at its end.", beyond,
                         beyond == 1 ? " lies" : "s lie", beyond == 1 ? "s" : "")});
    result.tables.push_back(std::move(placed));
    result.tables.push_back(std::move(left));
}

} // namespace

std::vector<sdk::Parameter> RiskMatrixPlugin::parameters(const project::Project*) const {
    sdk::Parameter what;
    what.name = "what";
    what.type = sdk::ParameterType::choice;
    what.choices = {"both", "modes", "tops"};
    what.standard = std::string("both");
    what.sentence = "place failure modes, top events, or both";
    return {what, sdk::tree::commonCauseParameter()};
}

sdk::Answer<sdk::Result> RiskMatrixPlugin::run(const project::Project& project,
                                               const sdk::Values& values,
                                               const sdk::Job& job) const {
    using Answer = sdk::Answer<sdk::Result>;
    const project::Index index(project);
    worksheet::RiskWish wish;
    const std::string what = values.text("what").value_or("both");
    wish.modes = what != "tops";
    wish.tops = what != "modes";
    wish.limits = {job.memoryBytes, job.stop, values.flag("common-cause")};
    wish.progress = job.progress;
    const RiskPicture picture = worksheet::placeRisks(project, index, wish);
    if (picture.cancelled)
        return Answer::stopped(sdk::Ending::cancelled,
                               {project::Severity::error,
                                "cancelled while a top event was computed",
                                "start it again when there is time, or ask with --what modes",
                                {},
                                0});
    sdk::Result result;
    result.title = "Risk matrix";
    result.tables = {matrixTable(picture)};
    addItems(result, picture);
    const project::SourceNote& source = picture.matrix.source;
    result.notes.push_back(
        {NoteKind::method,
         fmt::format(
             "Risk index = frequency index + severity index. Matrix: {}{}. A frequency goes "
             "to the level that is nearest to it on a logarithmic scale.",
             picture.matrix.name.empty() ? "the project's own" : picture.matrix.name,
             source.document.empty()
                 ? ""
                 : fmt::format(" ({}, {}, {})", source.document, source.edition, source.place))});
    result.notes.push_back(
        {NoteKind::method,
         "A failure mode counts with how often it comes, whatever protects against its effect; a "
         "top "
         "event with the expected number in a year, or with its probability times how often it is "
         "asked about."});
    if (picture.matrix.bands.empty())
        result.notes.push_back({NoteKind::assumption,
                                "The matrix names no limits: which index may be borne is for those "
                                "who sign, and for flag and class, to say."});
    sdk::tree::addGroupNotes(result.notes, project, picture.groups, wish.limits.commonCauses);
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::figures, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::risk_matrix_plugin
