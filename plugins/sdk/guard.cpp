// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/guard.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>

namespace cutwater::sdk {
namespace {

using project::Problem;
using project::Severity;

Problem about(const PluginFacts& facts, std::string what, std::string remedy) {
    return {Severity::error, std::move(what), std::move(remedy), "plug-in " + facts.id, 0};
}

bool fits(const Parameter& parameter, const Value& value) {
    switch (parameter.type) {
    case ParameterType::text:
    case ParameterType::choice:
    case ParameterType::topEvent: return std::holds_alternative<std::string>(value);
    case ParameterType::integer: return std::holds_alternative<std::int64_t>(value);
    case ParameterType::number:
        return std::holds_alternative<double>(value) || std::holds_alternative<std::int64_t>(value);
    case ParameterType::flag: return std::holds_alternative<bool>(value);
    }
    return false;
}

bool canBeTyped(const std::string& name) {
    if (name.empty() || name.front() < 'a' || name.front() > 'z') return false;
    return std::all_of(name.begin(), name.end(), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
    });
}

// Empty where the declarations make sense.
std::string nonsenseIn(const std::vector<Parameter>& parameters) {
    std::set<std::string> names;
    for (const Parameter& parameter : parameters) {
        if (!canBeTyped(parameter.name))
            return fmt::format("declares a parameter '{}' that cannot be typed", parameter.name);
        if (!names.insert(parameter.name).second)
            return fmt::format("declares the parameter '{}' twice", parameter.name);
        if (parameter.type == ParameterType::choice && parameter.choices.empty())
            return fmt::format("declares the parameter '{}' without choices", parameter.name);
        if (parameter.standard && !fits(parameter, *parameter.standard))
            return fmt::format("declares a standard of the wrong type for '{}'", parameter.name);
    }
    return {};
}

// Empty where every row has a cell for every column and every mark stands at a row.
std::string nonsenseIn(const Result& result) {
    for (const Table& table : result.tables)
        for (const auto& row : table.rows)
            if (row.size() != table.columns.size())
                return fmt::format("answered a table '{}' with a row of {} cells for {} columns",
                                   table.id, row.size(), table.columns.size());
    for (const Series& series : result.series)
        if (series.x.size() != series.y.size())
            return fmt::format("answered a series '{}' with {} x and {} y", series.id,
                               series.x.size(), series.y.size());
    for (const Mark& mark : result.marks) {
        const auto table =
            std::find_if(result.tables.begin(), result.tables.end(),
                         [&](const Table& candidate) { return candidate.id == mark.table; });
        if (table == result.tables.end() || mark.row >= table->rows.size())
            return fmt::format("answered a mark at row {} of table '{}', which is not there",
                               mark.row, mark.table);
    }
    return {};
}

} // namespace

Problem thrownBy(const PluginFacts& facts, const std::string& what) {
    return about(facts,
                 fmt::format("plug-in {} failed{}{}", facts.id, what.empty() ? "" : ": ", what),
                 fmt::format("tell whoever made {}", facts.file));
}

Problem outOfMemoryIn(const PluginFacts& facts) {
    return about(facts, fmt::format("plug-in {} found no more memory", facts.id),
                 "close other programs, or ask for less");
}

Problem contradictionOf(const PluginFacts& facts, const std::string& what) {
    return about(facts, fmt::format("plug-in {} {}", facts.id, what),
                 fmt::format("tell whoever made {}", facts.file));
}

project::Outcome<std::vector<Parameter>>
parametersOf(const Analysis& analysis, const PluginFacts& facts, const project::Project* project) {
    auto answer = guarded<std::vector<Parameter>>(
        facts, [&] { return Answer<std::vector<Parameter>>::of(analysis.parameters(project)); });
    if (!answer.content) return answer.problems;
    if (const std::string nonsense = nonsenseIn(*answer.content); !nonsense.empty())
        return contradictionOf(facts, nonsense);
    return std::move(*answer.content);
}

Answer<Result> runGuarded(const Analysis& analysis, const PluginFacts& facts,
                          const project::Project& project, const Values& values, const Job& job) {
    auto answer = guarded<Result>(facts, [&] { return analysis.run(project, values, job); });
    if (answer.content)
        if (const std::string nonsense = nonsenseIn(*answer.content); !nonsense.empty())
            return Answer<Result>::failed({contradictionOf(facts, nonsense)});
    return answer;
}

} // namespace cutwater::sdk
