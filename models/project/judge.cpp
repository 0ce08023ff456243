// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/judge.h"

#include "models/project/dates.h"
#include "models/project/nearest.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>

namespace cutwater::project {

namespace {

constexpr std::array<std::string_view, 6> kTargetWords = {
    "component", "failure mode", "event", "event or gate", "top event", "parameter"};

template <typename Value>
void addIds(std::vector<std::string_view>& ids, const std::vector<Value>& values) {
    for (const Value& value : values)
        ids.push_back(value.id);
}

std::string shortened(std::string_view id) {
    return id.size() <= 128 ? std::string(id) : std::string(id.substr(0, 60)) + "...";
}

} // namespace

std::string Place::words() const {
    std::string words;
    if (!part.empty()) words = std::string(part) + " of ";
    words += kind;
    if (!id.empty()) words += ' ' + shortened(id);
    return words;
}

void Judge::error(const Place& place, std::string what, std::string remedy) {
    problems.push_back(
        {Severity::error, std::move(what), std::move(remedy), place.words(), place.line});
}

void Judge::warn(const Place& place, std::string what, std::string remedy) {
    problems.push_back(
        {Severity::warning, std::move(what), std::move(remedy), place.words(), place.line});
}

void Judge::id(const Place& place, const Id& id, bool isFirst, int firstLine) {
    if (id.empty()) {
        error(place, fmt::format("a {} has no id", place.kind), "give it one");
        return;
    }
    if (!isWellFormedId(id))
        error(place, fmt::format("\"{}\" is not an id", shortened(id)),
              "use up to 128 of the characters A-Z a-z 0-9 _ - . : / and start with a letter, a "
              "digit or _");
    if (!isFirst)
        error(place,
              fmt::format("the id {} is used twice{}", shortened(id),
                          firstLine > 0 ? fmt::format(", first in line {}", firstLine) : ""),
              fmt::format("give this {} another id", place.kind));
}

void Judge::id(const Place& place, const Id& id, Seen& seen) {
    const auto [first, isFirst] = seen.try_emplace(id, place.line);
    this->id(place, id, isFirst, first->second);
}

bool Judge::exists(Target target, std::string_view id) const {
    switch (target) {
    case Target::component: return index.component(id) != nullptr;
    case Target::mode: return index.mode(id) != nullptr;
    case Target::event: return index.event(id) != nullptr;
    case Target::node: return static_cast<bool>(index.node(id));
    case Target::top: return index.top(id) != nullptr;
    case Target::parameter: return index.parameter(id) != nullptr;
    }
    return false;
}

std::string_view Judge::nearest(Target target, std::string_view id) {
    auto& ids = m_candidates[static_cast<std::size_t>(target)];
    if (ids.empty()) {
        switch (target) {
        case Target::component: addIds(ids, project.components); break;
        case Target::mode: addIds(ids, project.modes); break;
        case Target::event: addIds(ids, project.events); break;
        case Target::node:
            addIds(ids, project.events);
            addIds(ids, project.gates);
            break;
        case Target::top: addIds(ids, project.tops); break;
        case Target::parameter: addIds(ids, project.parameters); break;
        }
    }
    if (ids.size() > m_comparisonsLeft) return {};
    m_comparisonsLeft -= ids.size();
    return nearestWord(id, ids);
}

bool Judge::reference(Target target, const Id& id, const Place& place) {
    if (exists(target, id)) return true;
    const std::string_view kind = kTargetWords[static_cast<std::size_t>(target)];
    if (target == Target::event && index.gate(id)) {
        error(place, fmt::format("{} is {}, which is a gate, not an event", place.words(), id),
              "name an event");
        return false;
    }
    if (id.empty()) {
        error(place, fmt::format("{} names nothing", place.words()),
              fmt::format("name {} {}",
                          kind == "component" || kind == "failure mode" || kind == "top event" ||
                                  kind == "parameter"
                              ? "a"
                              : "an",
                          kind));
        return false;
    }
    const std::string_view near = nearest(target, id);
    error(
        place,
        fmt::format("{} is {}, but there is no {} of that id", place.words(), shortened(id), kind),
        near.empty() ? fmt::format("add it, or name another {}", kind)
                     : fmt::format("write {}, or add what is missing", near));
    return false;
}

void Judge::references(Target target, const std::vector<Reference>& references, const Place& owner,
                       std::string_view part) {
    for (const Reference& one : references)
        reference(target, one.id, owner.with(part, one.line.number));
}

bool Judge::value(double value, const Place& place, Range range) {
    if (!std::isfinite(value)) {
        error(place, fmt::format("{} is not a finite number", place.words()), "enter a number");
        return false;
    }
    const char* wanted = nullptr;
    if (range == Range::chance && (value < 0 || value > 1))
        wanted = "from 0 to 1";
    else if (range == Range::notNegative && value < 0)
        wanted = "of 0 or more";
    else if (range == Range::positive && value <= 0)
        wanted = "above 0";
    if (wanted)
        error(place, fmt::format("{} is {}, which cannot be", place.words(), value),
              fmt::format("enter a number {}", wanted));
    return !wanted;
}

void Judge::number(const std::optional<double>& number, const Place& place, Range range) {
    if (number) value(*number, place, range);
}

void Judge::rating(const std::optional<int>& value, const Place& place) {
    if (value && (*value < 1 || *value > 10))
        error(place, fmt::format("{} is {}", place.words(), *value), "rate it from 1 to 10");
}

void Judge::date(const std::string& text, const Place& place) {
    if (!text.empty() && !isIsoDate(text))
        error(place,
              fmt::format("{} is \"{}\", which is not a date", place.words(), shortened(text)),
              "write it like 2026-02-28");
}

void Judge::source(const SourceNote& note, const Place& place) {
    const auto& tags = allSourceTags();
    if (note.tag.empty() || std::find(tags.begin(), tags.end(), note.tag) != tags.end()) return;
    const std::string_view near = nearestWord(note.tag, tags);
    error(place,
          fmt::format("the source of {} has the unknown tag \"{}\"", place.words(),
                      shortened(note.tag)),
          near.empty() ? fmt::format("use one of: {}", fmt::join(tags, "; "))
                       : fmt::format("write {}", near));
}

} // namespace cutwater::project
