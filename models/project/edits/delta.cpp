// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/edits/delta.h"

#include <algorithm>
#include <iterator>
#include <string_view>
#include <unordered_set>
#include <utility>

namespace cutwater::project::edits {

namespace {

template <typename P>
auto vectorsOf(P& p) {
    return std::tie(p.parameters, p.components, p.modes, p.connections, p.events, p.gates, p.tops,
                    p.commonCauses, p.exposures, p.log, p.assessments);
}

template <typename Value>
std::string_view idOf(const Value& value) {
    if constexpr (requires { value.id; })
        return value.id;
    else
        return {};
}

// Equal as values; the line is no part of the value, but comes back with undo all the same.
template <typename Value>
Runs<Value> runsOf(const std::vector<Value>& a, const std::vector<Value>& b) {
    Runs<Value> runs;
    std::size_t i = 0, j = 0;
    std::unordered_set<std::string_view> inAfter; // made only where ids differ
    const auto open = [&]() -> Run<Value>& {
        if (runs.empty() || runs.back().before + runs.back().removed.size() != i ||
            runs.back().after + runs.back().inserted.size() != j)
            runs.push_back({i, j, {}, {}});
        return runs.back();
    };
    while (i < a.size() || j < b.size()) {
        if (i < a.size() && j < b.size() && a[i] == b[j]) {
            ++i, ++j;
            continue;
        }
        const bool both = i < a.size() && j < b.size();
        bool remove = i < a.size(), insert = j < b.size();
        if (both && idOf(a[i]) != idOf(b[j])) {
            if (inAfter.empty())
                for (const Value& value : b)
                    inAfter.insert(idOf(value));
            remove = !inAfter.contains(idOf(a[i]));
            insert = !remove;
        }
        Run<Value>& run = open();
        if (remove) run.removed.push_back(a[i]);
        if (insert) run.inserted.push_back(b[j]);
        i += remove;
        j += insert;
    }
    return runs;
}

// Replaces, from the last run to the first, `removed` by `inserted` (or the other way round).
template <typename Value>
void replace(std::vector<Value>& values, const Runs<Value>& runs, bool forward) {
    if (runs.empty()) return;
    std::vector<Value> made;
    made.reserve(values.size() + 16);
    std::size_t at = 0;
    for (const Run<Value>& run : runs) {
        const std::size_t start = forward ? run.before : run.after;
        const auto& out = forward ? run.removed : run.inserted;
        const auto& in = forward ? run.inserted : run.removed;
        made.insert(made.end(), std::make_move_iterator(values.begin() + std::ptrdiff_t(at)),
                    std::make_move_iterator(values.begin() + std::ptrdiff_t(start)));
        made.insert(made.end(), in.begin(), in.end());
        at = start + out.size();
    }
    made.insert(made.end(), std::make_move_iterator(values.begin() + std::ptrdiff_t(at)),
                std::make_move_iterator(values.end()));
    values = std::move(made);
}

// The project without its vectors.
Project factsOf(const Project& p) {
    Project facts;
    facts.name = p.name;
    facts.plant = p.plant;
    facts.description = p.description;
    facts.revision = p.revision;
    facts.date = p.date;
    facts.preparedBy = p.preparedBy;
    facts.checkedBy = p.checkedBy;
    facts.operatingMode = p.operatingMode;
    facts.rules = p.rules;
    facts.assumptions = p.assumptions;
    facts.cautions = p.cautions;
    facts.worksheet = p.worksheet;
    facts.kept = p.kept;
    facts.keptInSections = p.keptInSections;
    facts.newerMinorVersion = p.newerMinorVersion;
    return facts;
}

template <std::size_t... I>
void fill(Delta& delta, const Project& before, const Project& after, std::index_sequence<I...>) {
    const auto a = vectorsOf(before);
    const auto b = vectorsOf(after);
    ((std::get<I>(delta.runs) = runsOf(std::get<I>(a), std::get<I>(b))), ...);
}

template <std::size_t... I>
void replaceAll(Project& project, const Delta& delta, bool forward, std::index_sequence<I...>) {
    const auto vectors = vectorsOf(project);
    (replace(std::get<I>(vectors), std::get<I>(delta.runs), forward), ...);
}

using Sections = std::make_index_sequence<std::tuple_size_v<decltype(Delta::runs)>>;

Project turned(const Delta& delta, Project project, bool forward) {
    replaceAll(project, delta, forward, Sections{});
    for (const auto& [before, after] : delta.facts) {
        Project made = forward ? after : before;
        auto to = vectorsOf(made);
        to = std::tuple(
            std::move(project.parameters), std::move(project.components), std::move(project.modes),
            std::move(project.connections), std::move(project.events), std::move(project.gates),
            std::move(project.tops), std::move(project.commonCauses), std::move(project.exposures),
            std::move(project.log), std::move(project.assessments));
        project = std::move(made);
    }
    return project;
}

} // namespace

bool Delta::empty() const {
    return facts.empty() &&
           std::apply([](const auto&... each) { return (each.empty() && ...); }, runs);
}

Delta differences(const Project& before, const Project& after) {
    Delta delta;
    fill(delta, before, after, Sections{});
    Project a = factsOf(before), b = factsOf(after);
    if (!(a == b)) delta.facts.emplace_back(std::move(a), std::move(b));
    return delta;
}

Project apply(const Delta& delta, Project before) {
    return turned(delta, std::move(before), true);
}

Project revert(const Delta& delta, Project after) {
    return turned(delta, std::move(after), false);
}

} // namespace cutwater::project::edits
