// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/importance/event_rows.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace cutwater::importance_plugin {
namespace {

using reliability::EventImportance;
using reliability::FrequencyImportance;
using sdk::Cell;
using sdk::ColumnType;

constexpr std::size_t kMostBars = 15;

double measure(const std::string& word, const EventImportance& entry) {
    if (word == "birnbaum") return entry.birnbaum;
    if (word == "criticality") return entry.criticality;
    if (word == "risk-achievement") return entry.riskAchievement;
    if (word == "risk-reduction") return entry.riskReduction;
    if (word == "differential") return entry.differential;
    if (word == "sum-of-sets") return entry.setShare;
    return entry.fussellVesely.value_or(entry.setShare);
}

const char* titleOf(const std::string& word) {
    if (word == "birnbaum") return "Birnbaum";
    if (word == "criticality") return "Criticality";
    if (word == "risk-achievement") return "Risk achievement worth";
    if (word == "risk-reduction") return "Risk reduction worth";
    if (word == "differential") return "Differential importance";
    if (word == "sum-of-sets") return "Fussell-Vesely, sum of sets";
    return "Fussell-Vesely";
}

// The heaviest first; what is not a number last; equals in the order of the events.
template <typename Entry, typename Weight>
std::size_t keepHeaviest(std::vector<Entry>& entries, std::size_t most, Weight weight) {
    std::stable_sort(entries.begin(), entries.end(), [&](const Entry& a, const Entry& b) {
        const double left = weight(a), right = weight(b);
        if (std::isnan(left) || std::isnan(right)) return !std::isnan(left) && std::isnan(right);
        return left > right;
    });
    const std::size_t left = entries.size() > most ? entries.size() - most : 0;
    entries.resize(entries.size() - left);
    return left;
}

void addBars(sdk::Result& result, const EventRows& rows,
             const std::vector<EventImportance>& entries) {
    sdk::Series bars;
    bars.id = "importance-" + rows.solved.target.id;
    bars.title = fmt::format("{}: {}", rows.solved.target.id, titleOf(rows.sort));
    bars.kind = sdk::PlotKind::bar;
    bars.xTitle = "Event";
    bars.yTitle = titleOf(rows.sort);
    for (const EventImportance& entry : entries) {
        const double value = measure(rows.sort, entry);
        if (bars.x.size() == kMostBars) break;
        if (!std::isfinite(value)) continue; // a bar without end cannot be drawn
        bars.x.push_back(static_cast<double>(bars.x.size()));
        bars.y.push_back(value);
        bars.labels.push_back(rows.id(entry.variable));
    }
    if (!bars.x.empty()) result.series.push_back(std::move(bars));
}

} // namespace

const std::vector<std::string>& sortWords() {
    static const std::vector<std::string> words = {
        "fussell-vesely",   "sum-of-sets",    "birnbaum",    "criticality",
        "risk-achievement", "risk-reduction", "differential"};
    return words;
}

sdk::Table eventTable() {
    return {"events",
            "Importance of events",
            {{"top", "Top", ColumnType::reference, ""},
             {"event", "Event", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"probability", "Probability", ColumnType::probability, ""},
             {"fussell-vesely", "FV union", ColumnType::number, "%"},
             {"risk-achievement", "RAW", ColumnType::number, ""},
             {"risk-reduction", "RRW", ColumnType::number, ""}},
            {},
            "FV: Fussell-Vesely, as the union of the cut sets. RAW: risk achievement worth. RRW: "
            "risk reduction worth. How to read them stands in the notes."};
}

sdk::Table otherTable() {
    return {"other-measures",
            "The same events by other measures",
            {{"top", "Top", ColumnType::reference, ""},
             {"event", "Event", ColumnType::reference, ""},
             {"birnbaum", "Birnbaum", ColumnType::number, ""},
             {"criticality", "Criticality", ColumnType::number, "%"},
             {"sum-of-sets", "FV sum of sets", ColumnType::number, "%"},
             {"differential", "Differential", ColumnType::number, "%"}}};
}

sdk::Table frequencyTable() {
    return {
        "frequency",
        "Importance for the frequency of the top",
        {{"top", "Top", ColumnType::reference, ""},
         {"event", "Event", ColumnType::reference, ""},
         {"name", "Name", ColumnType::text, ""},
         {"frequency", "Its frequency", ColumnType::number, "/h"},
         {"completes", "Completes", ColumnType::number, "%"},
         {"reduction", "Reduction", ColumnType::number, "%"},
         {"risk-achievement", "Achievement", ColumnType::number, ""}},
        {},
        "\"Completes\": share of the top's failures that happen at the moment this event comes "
        "(Barlow and Proschan; of an initiating event its share as initiator). \"Reduction\": "
        "how much of the frequency goes if it is impossible. \"Achievement\": how many times as "
        "often the top comes while it is there all the time."};
}

std::size_t addEvents(sdk::Result& result, std::size_t table, const EventRows& rows,
                      std::vector<EventImportance> entries) {
    const std::size_t left = keepHeaviest(
        entries, rows.most, [&](const EventImportance& e) { return measure(rows.sort, e); });
    for (const EventImportance& entry : entries) {
        const std::string& top = rows.solved.target.id;
        result.tables[table].rows.push_back(
            {top, rows.id(entry.variable), rows.name(entry.variable),
             rows.numbers.q[entry.variable],
             entry.fussellVesely ? Cell(100 * *entry.fussellVesely) : Cell(), entry.riskAchievement,
             entry.riskReduction});
        result.tables[table + 1].rows.push_back({top, rows.id(entry.variable), entry.birnbaum,
                                                 100 * entry.criticality, 100 * entry.setShare,
                                                 100 * entry.differential});
        for (const std::size_t shown : {table, table + 1})
            result.marks.push_back({result.tables[shown].id, result.tables[shown].rows.size() - 1,
                                    rows.nodes(entry.variable)});
    }
    addBars(result, rows, entries);
    return left;
}

std::size_t addFrequencies(sdk::Result& result, std::size_t table, const EventRows& rows,
                           std::vector<FrequencyImportance> entries) {
    const std::size_t left = keepHeaviest(entries, rows.most, [](const FrequencyImportance& e) {
        return std::max(e.completes, e.reduction);
    });
    for (const FrequencyImportance& entry : entries) {
        const double own = rows.numbers.frequency[entry.variable];
        result.tables[table].rows.push_back({rows.solved.target.id, rows.id(entry.variable),
                                             rows.name(entry.variable),
                                             own > 0 ? Cell(own) : Cell(), 100 * entry.completes,
                                             100 * entry.reduction, entry.riskAchievement});
        result.marks.push_back({result.tables[table].id, result.tables[table].rows.size() - 1,
                                rows.nodes(entry.variable)});
    }
    return left;
}

} // namespace cutwater::importance_plugin
