// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/column_texts.h"

#include "models/project/dates.h"
#include "models/worksheet/columns.h"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <cmath>
#include <fmt/format.h>
#include <type_traits>

namespace cutwater::worksheet {

namespace {

template <typename Number>
bool readNumber(const std::string& typed, Number& number) {
    std::string text = trimmed(typed);
    // "0,5": where no point stands beside it a comma can be nothing else.
    if (std::is_floating_point_v<Number> && text.find('.') == std::string::npos &&
        std::count(text.begin(), text.end(), ',') == 1)
        std::replace(text.begin(), text.end(), ',', '.');
    const char* end = text.data() + text.size();
    const auto [stop, error] = std::from_chars(text.data(), end, number);
    return !text.empty() && error == std::errc() && stop == end;
}

} // namespace

std::string trimmed(const std::string& text) {
    const std::size_t first = text.find_first_not_of(" \t\r\n");
    if (first == std::string::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t\r\n") - first + 1);
}

std::string lowered(std::string text) {
    for (char& c : text)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return text;
}

std::string joined(const std::vector<std::string>& texts) {
    if (std::all_of(texts.begin(), texts.end(), [](const std::string& t) { return t.empty(); }))
        return {};
    return fmt::format("{}", fmt::join(texts, kListSeparator));
}

std::vector<std::string> split(const std::string& text) {
    std::vector<std::string> parts;
    if (text.empty()) return parts;
    std::size_t from = 0;
    for (;;) {
        const std::size_t to = text.find(kListSeparator, from);
        parts.push_back(trimmed(text.substr(from, to == std::string::npos ? to : to - from)));
        if (to == std::string::npos) return parts;
        from = to + kListSeparator.size();
    }
}

Fault writeDate(const std::string& typed, std::string& date) {
    const std::string text = trimmed(typed);
    if (!text.empty() && !project::isIsoDate(text)) return "is not a date like 2026-02-28";
    date = text;
    return {};
}

Fault writeRating(const std::string& typed, std::optional<int>& rating) {
    if (trimmed(typed).empty()) {
        rating.reset();
        return {};
    }
    int value = 0;
    if (!readNumber(typed, value) || value < 1 || value > 10)
        return "is not a whole number from 1 to 10";
    rating = value;
    return {};
}

Fault writeShare(const std::string& typed, std::optional<project::Quantity>& share) {
    if (trimmed(typed).empty()) {
        share.reset();
        return {};
    }
    if (const std::string text = trimmed(typed); text.starts_with(kSharedNumber)) {
        const std::string id = text.substr(kSharedNumber.size());
        if (!project::isWellFormedId(id)) return "does not name a parameter of the project";
        if (share && share->parameter == id) return {};
        share.emplace();
        share->parameter = id;
        share->unit = project::Unit::number;
        return {};
    }
    double value = 0;
    if (!readNumber(typed, value) || !(value >= 0) || !(value <= 1))
        return "is not a number from 0 to 1";
    if (share && share->parameter.empty() && share->value == value) return {};
    share.emplace();
    share->value = value;
    share->unit = project::Unit::number;
    return {};
}

std::string toWords(const project::Quantity& quantity) {
    if (!quantity.parameter.empty()) return kSharedNumber + quantity.parameter;
    return fmt::format("{} {}", quantity.value, project::facts(quantity.unit).symbol);
}

Fault writeInterval(const std::string& typed, project::FailureModel& model) {
    using project::Role;
    const std::string text = trimmed(typed);
    const project::Quantity* now = model.find(Role::interval);
    if (text.empty()) {
        std::erase_if(model.numbers,
                      [](const project::Assignment& each) { return each.role == Role::interval; });
        return {};
    }
    if (now && text == toWords(*now)) return {};
    if (model.kind != project::ModelKind::tested) return kNoTests;
    const std::size_t end = text.find_first_not_of("0123456789.,eE+-");
    project::Unit unit = now ? now->unit : project::Unit::unstated;
    if (end != std::string::npos)
        unit = project::unitFromSymbol(trimmed(text.substr(end))).value_or(project::Unit::unstated);
    double value = 0;
    if (!readNumber(text.substr(0, end), value) || !(value > 0) ||
        project::facts(unit).dimension != project::Dimension::time)
        return "is not a time like 4 wk: a number above 0 with s, min, h, d, wk or y";
    project::Quantity made;
    made.value = value;
    made.unit = unit;
    model.set(Role::interval, std::move(made));
    return {};
}

Fault writeTruth(const std::string& typed, bool& truth) {
    const std::string text = lowered(trimmed(typed));
    if (text == "yes" || text == "true" || text == "x" || text == "1" || text == "y")
        truth = true;
    else if (text.empty() || text == "no" || text == "false" || text == "0" || text == "n")
        truth = false;
    else
        return "is neither yes nor no";
    return {};
}

Fault writeState(const std::string& typed, project::ActionState& state) {
    const std::string text = lowered(trimmed(typed));
    if (text.empty()) {
        state = project::ActionState::open;
        return {};
    }
    const auto found = project::actionStateFromWord(text);
    if (!found) return "is none of open, under-way, done, proved, dropped";
    state = *found;
    return {};
}

Fault writeActions(const std::string& typed, project::FailureMode& mode,
                   const std::function<Fault(const std::string&, project::Action&)>& one) {
    const std::vector<std::string> parts = split(typed);
    if (parts.size() < mode.actions.size() && !parts.empty())
        return fmt::format("has {} part{}, but there are {} actions: put \"{}\" between the parts",
                           parts.size(), parts.size() == 1 ? "" : "s", mode.actions.size(),
                           kListSeparator);
    std::vector<project::Action> actions = mode.actions;
    if (parts.size() > actions.size()) actions.resize(parts.size());
    // Nothing typed: each part is cleared.
    for (std::size_t i = 0; i < actions.size(); ++i)
        if (Fault fault = one(i < parts.size() ? parts[i] : std::string(), actions[i]))
            return fault;
    mode.actions = std::move(actions);
    return {};
}

} // namespace cutwater::worksheet
