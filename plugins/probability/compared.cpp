// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/probability/compared.h"

#include <set>

namespace cutwater::probability_plugin {
namespace {

using sdk::Cell;
using sdk::ColumnType;
using sdk::tree::Solved;

sdk::Table topTable() {
    return {"compared",
            "Under the assessment and in the normal state",
            {{"top", "Top", ColumnType::reference, ""},
             {"name", "Name", ColumnType::text, ""},
             {"normal", "Normal state", ColumnType::probability, ""},
             {"under", "Under the assessment", ColumnType::probability, ""},
             {"times", "Times", ColumnType::number, ""},
             {"singles-normal", "Single failures before", ColumnType::integer, ""},
             {"singles-under", "Single failures now", ColumnType::integer, ""}}};
}

sdk::Table singleTable() {
    return {
        "became-single",
        "What has become a single failure",
        {{"top", "Top", ColumnType::reference, ""},
         {"event", "Event", ColumnType::text, ""},
         {"name", "Name", ColumnType::text, ""}},
        {},
        "Each of these brings the top event about alone while the assessment holds, and did not "
        "before: guard them."};
}

// Variables that bring the top about alone, by their ids.
std::map<std::string, std::uint32_t> singles(const project::Project& project,
                                             const Solved& solved) {
    std::map<std::string, std::uint32_t> found;
    const std::vector<double> q(solved.variables.count(), 1.0);
    auto listing = solved.solution.list(q, {.maxOrder = 1});
    while (const auto set = listing.next())
        if (set->literals.size() == 1 && !set->literals.front().negated) {
            const std::uint32_t variable = set->literals.front().variable;
            found[sdk::tree::idOf(project, solved, variable)] = variable;
        }
    return found;
}

} // namespace

sdk::Answer<bool> addCompared(sdk::Result& result, const project::Project& project,
                              const project::Index& index, sdk::tree::FigureBook& book,
                              const std::vector<Solved>& under,
                              const sdk::tree::Circumstances& circumstances, const sdk::Job& job) {
    using Answer = sdk::Answer<bool>;
    sdk::tree::Circumstances usual;
    usual.commonCauses = circumstances.commonCauses;
    sdk::Table tops = topTable(), became = singleTable();
    for (const Solved& now : under) {
        auto solved =
            sdk::tree::solveAll(project, index, {now.target}, sdk::tree::Side::fails, job, usual);
        if (solved.ending == sdk::Ending::overLimit) continue; // its own row says what is known
        if (!solved.content) return {solved.ending, {}, std::move(solved.problems)};
        const Solved& before = solved.content->front();
        const auto chance = [&](const Solved& one) -> Cell {
            const sdk::tree::Figures figures = book.of(one);
            return sdk::tree::numberCell(figures.complete(),
                                         one.solution.probability(figures.q).occurs);
        };
        const Cell normal = chance(before), there = chance(now);
        const double* const low = std::get_if<double>(&normal);
        const double* const high = std::get_if<double>(&there);
        const auto was = singles(project, before), is = singles(project, now);
        tops.rows.push_back({now.target.id, now.target.name, normal, there,
                             low && high && *low > 0 ? Cell(*high / *low) : Cell(),
                             static_cast<std::int64_t>(was.size()),
                             static_cast<std::int64_t>(is.size())});
        for (const auto& [id, variable] : is) {
            if (was.count(id) > 0) continue;
            result.marks.push_back(
                {became.id, became.rows.size(), sdk::tree::nodesOf(project, now, variable)});
            became.rows.push_back(
                {now.target.id, id, sdk::tree::nameOf(project, index, now, variable)});
        }
    }
    result.tables.push_back(std::move(tops));
    result.tables.push_back(std::move(became));
    return Answer::of(true);
}

} // namespace cutwater::probability_plugin
