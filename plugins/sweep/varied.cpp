// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sweep/varied.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::sweep_plugin {
namespace {

using project::Dimension;
using project::Problem;
using project::Role;
using project::Severity;
using reliability::Knob;

constexpr std::size_t kNamesShown = 6;
constexpr double kWide = 5; // above this ratio of the ends the steps are equal ratios

Problem problem(std::string what, std::string remedy) {
    return {Severity::error, std::move(what), std::move(remedy), "", 0};
}

std::string unitOf(Dimension dimension) {
    switch (dimension) {
    case Dimension::time: return "h";
    case Dimension::rate: return "/h";
    case Dimension::perStart: return "/start";
    case Dimension::perDemand: return "/demand";
    default: return "";
    }
}

// What a number in the role may be.
bool mayBe(Role role, double value) {
    switch (role) {
    case Role::probability:
    case Role::coverage: return value >= 0 && value <= 1;
    case Role::rate:
    case Role::mission:
    case Role::firstTest:
    case Role::testDuration:
    case Role::location:
    case Role::frequency: return value >= 0;
    case Role::repair:
    case Role::interval:
    case Role::shape:
    case Role::scale: return value > 0;
    }
    return false;
}

std::vector<std::string> split(const std::string& names) {
    std::vector<std::string> parts;
    std::string part;
    for (const char c : names + ",") {
        if (c == ',') {
            if (!part.empty()) parts.push_back(part);
            part.clear();
        } else if (c != ' ') {
            part += c;
        }
    }
    return parts;
}

std::string examples(const std::vector<std::string>& ids) {
    const std::size_t shown = std::min(ids.size(), kNamesShown);
    const auto end = ids.begin() + static_cast<std::ptrdiff_t>(shown);
    std::string text = fmt::format("{}", fmt::join(ids.begin(), end, ", "));
    if (ids.size() > shown) text += fmt::format(" and {} more", ids.size() - shown);
    return text;
}

project::Outcome<double> parse(const std::string& name, const std::string& unit,
                               const std::string& text) {
    sdk::Parameter parameter;
    parameter.name = name;
    parameter.type = sdk::ParameterType::number;
    parameter.unit = unit;
    const auto value = sdk::parseValue(parameter, text);
    if (!value) return value.problems();
    return std::get<double>(*value);
}

} // namespace

std::string Varied::words() const {
    std::vector<std::string> ids;
    for (const Knob& knob : knobs)
        ids.push_back(knob.id());
    return fmt::format("{}", fmt::join(ids, " and "));
}

bool Varied::isInterval() const {
    return std::any_of(knobs.begin(), knobs.end(),
                       [](const Knob& knob) { return knob.role == Role::interval; });
}

void Varied::turn(reliability::WhatIf& whatIf, double value) const {
    for (std::size_t i = 0; i < knobs.size(); ++i)
        whatIf.turn(knobs[i], value / factors[i]);
}

project::Outcome<Varied> variedOf(const project::Project& project, const std::vector<Knob>& known,
                                  const std::optional<std::string>& names,
                                  const std::optional<std::string>& from,
                                  const std::optional<std::string>& to, const std::string& scale) {
    std::vector<std::string> ids;
    for (const Knob& knob : known)
        ids.push_back(knob.id());
    const std::vector<std::string> wanted = split(names.value_or(""));
    if (wanted.empty())
        return problem("nothing says which number is to be varied",
                       ids.empty() ? "ask about a top event whose events have numbers"
                                   : fmt::format("give --vary with one of {}", examples(ids)));
    Varied varied;
    std::optional<Dimension> dimension;
    for (const std::string& name : wanted) {
        const auto found = std::find(ids.begin(), ids.end(), name);
        if (found == ids.end()) {
            const std::string near = sdk::nearest(name, ids);
            return problem(fmt::format("'{}' is no number that these top events use", name),
                           near.empty() ? fmt::format("name one of {}", examples(ids))
                                        : fmt::format("try '{}'", near));
        }
        const Knob& knob = known[static_cast<std::size_t>(found - ids.begin())];
        const project::Quantity* const quantity = reliability::find(project, knob);
        if (!quantity) return problem(fmt::format("there is no parameter {}", name), "add it");
        const auto& unit = project::facts(quantity->unit);
        if (dimension && *dimension != unit.dimension)
            return problem(fmt::format("{} and {} are not of one kind", wanted.front(), name),
                           "vary numbers of one kind together, or one after another");
        dimension = unit.dimension;
        varied.unit = unitOf(unit.dimension);
        varied.knobs.push_back(knob);
        varied.factors.push_back(unit.factor);
        if (varied.knobs.size() == 1) varied.point = project::inBaseUnits(*quantity);
    }
    const bool chance = varied.knobs.front().role == Role::probability ||
                        varied.knobs.front().role == Role::coverage;
    varied.from = varied.point / 10;
    varied.to = chance ? std::min(1.0, varied.point * 10) : varied.point * 10;
    for (auto [text, value, name] :
         {std::tuple{&from, &varied.from, "from"}, {&to, &varied.to, "to"}}) {
        if (!*text) continue;
        const auto parsed = parse(name, varied.unit, **text);
        if (!parsed) return parsed.problems();
        *value = *parsed;
    }
    if (!(varied.from < varied.to))
        return problem(
            fmt::format("there is nothing between {:g} and {:g}", varied.from, varied.to),
            "give --from a smaller value than --to");
    for (const Knob& knob : varied.knobs)
        for (const double value : {varied.from, varied.to})
            if (!mayBe(knob.role, value))
                return problem(
                    fmt::format("the {} cannot be {:g}", project::facts(knob.role).word, value),
                    "give --from and --to values that it can have");
    varied.logarithmic =
        scale == "ratio" || (scale == "auto" && varied.from > 0 && varied.to > kWide * varied.from);
    if (varied.logarithmic && varied.from <= 0)
        return problem("steps of equal ratio cannot begin at zero",
                       "give --from a value above zero");
    return varied;
}

} // namespace cutwater::sweep_plugin
