// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/redundancy/tables.h"

#include "plugins/redundancy/words.h"

#include <fmt/format.h>

#include <algorithm>
#include <iterator>

namespace cutwater::redundancy_plugin {
namespace {

using reliability::SupplyTrace;
using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;

constexpr std::size_t kMostRows = 200; // of differing sets, each way

Cell whole(std::size_t value) {
    return static_cast<std::int64_t>(value);
}

void addSingles(Tables& tables, const project::Project& project, const project::Index& index,
                const Traced& one, const std::string& load) {
    const project::Id& own = project.components[one.trace.load.component].id;
    for (const std::size_t mode : one.singles) {
        const project::Id& part = project.modes[mode].component;
        tables.marks.push_back(
            {tables.singles.id, tables.singles.rows.size(), nodesOf(project, {mode})});
        tables.singles.rows.push_back({load, inWords(project, index, mode), project.modes[mode].id,
                                       part == own ? "the load itself, which hands the supply on"
                                                   : places(project, index, one.trace, part),
                                       project.modes[mode].detection});
    }
}

void addPairs(Tables& tables, const project::Project& project, const project::Index& index,
              const Traced& one, const std::string& load) {
    const SupplyTrace& trace = one.trace;
    for (std::size_t a = 0; a < trace.legs.size(); ++a)
        for (std::size_t b = a + 1; b < trace.legs.size(); ++b) {
            const ModeSet &ofA = one.legSingles[a], &ofB = one.legSingles[b];
            ModeSet both;
            std::set_intersection(ofA.begin(), ofA.end(), ofB.begin(), ofB.end(),
                                  std::inserter(both, both.end()));
            const std::string legs = fmt::format("{} | {}", trace.legs[a].name, trace.legs[b].name);
            const std::string ratings =
                fmt::format("{} | {}", capacityOf(project, trace, trace.legs[a]),
                            capacityOf(project, trace, trace.legs[b]));
            if (both.empty())
                tables.pairs.rows.push_back({load, trace.load.medium, legs, ratings,
                                             std::string("nothing shared"), Cell(), Cell()});
            for (const std::size_t mode : both) {
                tables.marks.push_back(
                    {tables.pairs.id, tables.pairs.rows.size(), nodesOf(project, {mode})});
                tables.pairs.rows.push_back(
                    {load, trace.load.medium, legs, ratings, inWords(project, index, mode),
                     places(project, index, trace, project.modes[mode].component),
                     project.modes[mode].compensation});
            }
        }
}

void addDrawn(Tables& tables, const project::Project& project, const std::string& load,
              const Difference& difference) {
    const auto row = [&](const std::string& verdict, std::size_t order, const std::string& set) {
        tables.drawn.rows.push_back(
            {load, difference.gate, verdict, order > 0 ? whole(order) : Cell(), set});
    };
    if (!difference.comparable) {
        row("cannot be compared: too many sets, or not coherent", 0, "");
        return;
    }
    if (difference.agree) {
        row(fmt::format("they agree in all {} sets", difference.common), 0, "");
        return;
    }
    const std::size_t traced = difference.onlyTraced.size(), drawn = difference.onlyDrawn.size();
    row(fmt::format("{} sets in both, {} only traced, {} only drawn", difference.common, traced,
                    drawn),
        0, "");
    for (std::size_t i = 0; i < std::min(traced, kMostRows); ++i)
        row("only traced: missing in the tree?", difference.onlyTraced[i].size(),
            listOf(project, difference.onlyTraced[i]));
    for (std::size_t i = 0; i < std::min(drawn, kMostRows); ++i)
        row("only drawn: missing in the network?", difference.onlyDrawn[i].size(),
            fmt::format("{}", fmt::join(difference.onlyDrawn[i], ", ")));
    const std::size_t left =
        traced + drawn - std::min(traced, kMostRows) - std::min(drawn, kMostRows);
    if (left > 0) row(fmt::format("{} more", left), 0, "");
}

void addPaths(Tables& tables, const project::Project& project, const Traced& one,
              const std::string& load) {
    for (const auto& [set, probability] : one.paths)
        tables.paths.rows.push_back({load, whole(set.size()),
                                     probability ? Cell(*probability) : Cell(),
                                     listOf(project, set)});
    if (!one.allPaths)
        tables.notes.push_back(
            {NoteKind::method,
             fmt::format("{} has more path sets than are listed: see --limit.", load)});
}

} // namespace

Tables emptyTables() {
    Tables tables;
    tables.loads = {"loads",
                    "Supplies that were traced",
                    {{"load", "Load", ColumnType::text, ""},
                     {"name", "Name", ColumnType::text, ""},
                     {"medium", "Medium", ColumnType::text, ""},
                     {"legs", "Legs", ColumnType::integer, ""},
                     {"singles", "Single failures", ColumnType::integer, ""},
                     {"verdict", "Redundant", ColumnType::text, ""},
                     {"sets", "Sets", ColumnType::integer, ""},
                     {"probability", "Without supply", ColumnType::probability, ""}}};
    tables.singles = {"single-failures",
                      "What alone takes the supply away",
                      {{"load", "Load", ColumnType::text, ""},
                       {"part", "Part and failure", ColumnType::text, ""},
                       {"mode", "Failure mode", ColumnType::text, ""},
                       {"where", "Where it stands", ColumnType::text, ""},
                       {"noticed", "How it is noticed", ColumnType::text, ""}}};
    tables.pairs = {"shared",
                    "What the legs share",
                    {{"load", "Load", ColumnType::text, ""},
                     {"medium", "Medium", ColumnType::text, ""},
                     {"legs", "Legs", ColumnType::text, ""},
                     {"ratings", "Smallest rating of each", ColumnType::text, ""},
                     {"part", "Takes both", ColumnType::text, ""},
                     {"where", "Where it stands", ColumnType::text, ""},
                     {"compensation", "What makes up for it", ColumnType::text, ""}},
                    {},
                    "A pair with a shared part is redundant on paper, not in fact. \"Nothing "
                    "shared\" means: nothing that is drawn."};
    tables.drawn = {"drawn-tree",
                    "Against the tree that was drawn by hand",
                    {{"load", "Load", ColumnType::text, ""},
                     {"gate", "Drawn", ColumnType::reference, ""},
                     {"verdict", "Verdict", ColumnType::text, ""},
                     {"order", "Order", ColumnType::integer, ""},
                     {"set", "Set", ColumnType::text, ""}}};
    tables.paths = {"path-sets",
                    "What is enough to keep the supply (minimal path sets)",
                    {{"load", "Load", ColumnType::text, ""},
                     {"order", "Parts", ColumnType::integer, ""},
                     {"probability", "Probability that all hold", ColumnType::probability, ""},
                     {"set", "None of these happens", ColumnType::text, ""}}};
    tables.modes = {"modes",
                    "Failure modes on the way, and how they were taken",
                    {{"load", "Load", ColumnType::text, ""},
                     {"mode", "Failure mode", ColumnType::text, ""},
                     {"name", "Part and failure", ColumnType::text, ""},
                     {"breaks", "Breaks the path", ColumnType::text, ""},
                     {"why", "Why", ColumnType::text, ""}},
                    {},
                    "The rule reads names. Where it is wrong, say so with --breaks or --passes."};
    return tables;
}

void addLoad(Tables& tables, const project::Project& project, const project::Index& index,
             const Traced& one, const std::optional<Difference>& difference) {
    const SupplyTrace& trace = one.trace;
    const project::Component& component = project.components[trace.load.component];
    const std::string load = tagOf(component);
    const char* const verdict = trace.legs.size() < 2 ? "one way only"
                                : one.singles.empty() ? "yes, as far as drawn"
                                                      : "on paper, not in fact";
    tables.loads.rows.push_back(
        {load, component.name, trace.load.medium, whole(trace.legs.size()),
         whole(one.singles.size()), std::string(verdict),
         one.allSets ? whole(one.sets.size()) : Cell(fmt::format("more than {}", kMostSets)),
         one.probability ? Cell(*one.probability) : Cell()});
    addSingles(tables, project, index, one, load);
    addPairs(tables, project, index, one, load);
    if (difference) addDrawn(tables, project, load, *difference);
    addPaths(tables, project, one, load);
    for (const reliability::TracedMode& traced : trace.modes)
        tables.modes.rows.push_back(
            {load, project.modes[traced.mode].id, inWords(project, index, traced.mode),
             std::string(traced.verdict.breaks ? "yes" : "no"), traced.verdict.why});
    for (const std::string& warning : trace.warnings)
        tables.notes.push_back({NoteKind::warning, warning});
    if (difference && difference->comparable && !difference->agree)
        tables.notes.push_back(
            {NoteKind::warning,
             fmt::format("{}: network and drawn tree {} do not agree. Either may be wrong: look at "
                         "the panel.",
                         load, difference->gate)});
}

} // namespace cutwater::redundancy_plugin
