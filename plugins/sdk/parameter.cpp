// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/parameter.h"

#include "models/project/quantity.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>

namespace cutwater::sdk {
namespace {

using project::Problem;
using project::Severity;

Problem complaint(const Parameter& parameter, std::string what, std::string remedy) {
    return {Severity::error, std::move(what), std::move(remedy), "parameter " + parameter.name, 0};
}

std::string withUnit(double value, const std::string& unit) {
    return unit.empty() ? fmt::format("{}", value) : fmt::format("{} {}", value, unit);
}

std::string rangeWords(const Parameter& parameter) {
    if (parameter.minimum && parameter.maximum)
        return fmt::format("from {} to {}", withUnit(*parameter.minimum, ""),
                           withUnit(*parameter.maximum, parameter.unit));
    if (parameter.minimum)
        return fmt::format("of at least {}", withUnit(*parameter.minimum, parameter.unit));
    if (parameter.maximum)
        return fmt::format("of at most {}", withUnit(*parameter.maximum, parameter.unit));
    return parameter.unit.empty() ? std::string{} : "in " + parameter.unit;
}

std::string remedyFor(const Parameter& parameter) {
    const bool whole = parameter.type == ParameterType::integer;
    const std::string range = rangeWords(parameter);
    return fmt::format("give a {}{}{}", whole ? "whole number" : "number", range.empty() ? "" : " ",
                       range);
}

std::string joined(const std::vector<std::string>& words) {
    return fmt::format("{}", fmt::join(words, ", "));
}

std::string trimmed(const std::string& text) {
    const auto begin = text.find_first_not_of(" \t\r\n");
    if (begin == std::string::npos) return {};
    return text.substr(begin, text.find_last_not_of(" \t\r\n") - begin + 1);
}

// The factor that takes a number typed with `symbol` to the parameter's own unit: "2 wk" where
// hours are asked for.
std::optional<double> factorOf(const std::string& symbol, const Parameter& parameter) {
    if (symbol == parameter.unit) return 1.0;
    const auto typed = project::unitFromSymbol(symbol);
    const auto wanted = project::unitFromSymbol(parameter.unit);
    if (!typed || !wanted || parameter.unit.empty()) return {};
    const project::UnitFacts& from = project::facts(*typed);
    const project::UnitFacts& to = project::facts(*wanted);
    if (from.dimension != to.dimension) return {};
    return from.factor / to.factor;
}

bool inRange(const Parameter& parameter, double value) {
    return std::isfinite(value) && (!parameter.minimum || value >= *parameter.minimum) &&
           (!parameter.maximum || value <= *parameter.maximum);
}

project::Outcome<Value> parseNumber(const Parameter& parameter, const std::string& text) {
    std::string digits = trimmed(text);
    if (!digits.empty() && digits.front() == '+') digits.erase(0, 1);
    const char* const end = digits.data() + digits.size();
    double number = 0;
    const auto parsed = std::from_chars(digits.data(), end, number);
    const std::string unit = trimmed(std::string(parsed.ptr, end));
    const auto factor = unit.empty() ? std::optional(1.0) : factorOf(unit, parameter);
    if (parsed.ec != std::errc{} || !factor || !std::isfinite(number)) {
        const bool comma = parsed.ec == std::errc{} && !unit.empty() && unit.front() == ',';
        return complaint(parameter, fmt::format("{} '{}' is not a number", parameter.name, text),
                         remedyFor(parameter) + (comma ? ", with a decimal point" : ""));
    }
    number *= *factor;
    if (!inRange(parameter, number))
        return complaint(parameter, fmt::format("{} {} is out of range", parameter.name, text),
                         remedyFor(parameter));
    return Value(number);
}

project::Outcome<Value> parseInteger(const Parameter& parameter, const std::string& text) {
    std::string digits = trimmed(text);
    if (!digits.empty() && digits.front() == '+') digits.erase(0, 1);
    const char* const end = digits.data() + digits.size();
    std::int64_t number = 0;
    const auto parsed = std::from_chars(digits.data(), end, number);
    if (parsed.ec == std::errc::result_out_of_range)
        return complaint(parameter, fmt::format("{} {} is out of range", parameter.name, text),
                         remedyFor(parameter));
    if (parsed.ec != std::errc{} || parsed.ptr != end)
        return complaint(parameter,
                         fmt::format("{} '{}' is not a whole number", parameter.name, text),
                         remedyFor(parameter));
    if (!inRange(parameter, static_cast<double>(number)))
        return complaint(parameter, fmt::format("{} {} is out of range", parameter.name, text),
                         remedyFor(parameter));
    return Value(number);
}

project::Outcome<Value> parseFlag(const Parameter& parameter, const std::string& text) {
    const std::string word = trimmed(text);
    if (word == "yes" || word == "true" || word == "on" || word == "1") return Value(true);
    if (word == "no" || word == "false" || word == "off" || word == "0") return Value(false);
    return complaint(parameter, fmt::format("{} '{}' is neither yes nor no", parameter.name, text),
                     "give yes or no");
}

project::Outcome<Value> parseChoice(const Parameter& parameter, const std::string& text) {
    const std::string word = trimmed(text);
    if (std::find(parameter.choices.begin(), parameter.choices.end(), word) !=
        parameter.choices.end())
        return Value(word);
    const std::string near = nearest(word, parameter.choices);
    return complaint(parameter, fmt::format("{} has no choice '{}'", parameter.name, text),
                     near.empty() ? "choose one of " + joined(parameter.choices)
                                  : fmt::format("try '{}'; the choices are {}", near,
                                                joined(parameter.choices)));
}

// A value that did not come from text: an editor's form, a script.
project::Outcome<Value> checked(const Parameter& parameter, const Value& value) {
    const auto wrongType = [&](const char* wanted) {
        return complaint(parameter, fmt::format("{} has a value of the wrong type", parameter.name),
                         fmt::format("give {}", wanted));
    };
    switch (parameter.type) {
    case ParameterType::text:
    case ParameterType::topEvent:
        if (!std::holds_alternative<std::string>(value)) return wrongType("text");
        return parseValue(parameter, std::get<std::string>(value));
    case ParameterType::choice:
        if (!std::holds_alternative<std::string>(value)) return wrongType("one of the choices");
        return parseChoice(parameter, std::get<std::string>(value));
    case ParameterType::flag:
        if (!std::holds_alternative<bool>(value)) return wrongType("yes or no");
        return value;
    case ParameterType::integer:
        if (!std::holds_alternative<std::int64_t>(value)) return wrongType("a whole number");
        if (!inRange(parameter, static_cast<double>(std::get<std::int64_t>(value))))
            return complaint(
                parameter,
                fmt::format("{} {} is out of range", parameter.name, std::get<std::int64_t>(value)),
                remedyFor(parameter));
        return value;
    case ParameterType::number: {
        double number = 0;
        if (const auto* whole = std::get_if<std::int64_t>(&value))
            number = static_cast<double>(*whole);
        else if (const auto* real = std::get_if<double>(&value))
            number = *real;
        else
            return wrongType("a number");
        if (!inRange(parameter, number))
            return complaint(parameter,
                             fmt::format("{} {} is out of range", parameter.name, number),
                             remedyFor(parameter));
        return Value(number);
    }
    }
    return wrongType("another one");
}

} // namespace

std::optional<std::string> Values::text(const std::string& name) const {
    const auto found = m_values.find(name);
    if (found == m_values.end()) return {};
    const auto* text = std::get_if<std::string>(&found->second);
    return text ? std::optional(*text) : std::nullopt;
}

std::optional<std::int64_t> Values::integer(const std::string& name) const {
    const auto found = m_values.find(name);
    if (found == m_values.end()) return {};
    const auto* whole = std::get_if<std::int64_t>(&found->second);
    return whole ? std::optional(*whole) : std::nullopt;
}

std::optional<double> Values::number(const std::string& name) const {
    const auto found = m_values.find(name);
    if (found == m_values.end()) return {};
    if (const auto* real = std::get_if<double>(&found->second)) return *real;
    if (const auto* whole = std::get_if<std::int64_t>(&found->second))
        return static_cast<double>(*whole);
    return {};
}

bool Values::flag(const std::string& name) const {
    const auto found = m_values.find(name);
    if (found == m_values.end()) return false;
    const auto* flag = std::get_if<bool>(&found->second);
    return flag && *flag;
}

std::vector<std::string> Values::names() const {
    std::vector<std::string> names;
    names.reserve(m_values.size());
    for (const auto& [name, value] : m_values)
        names.push_back(name);
    return names;
}

const Value* Values::find(const std::string& name) const {
    const auto found = m_values.find(name);
    return found == m_values.end() ? nullptr : &found->second;
}

project::Outcome<Value> parseValue(const Parameter& parameter, const std::string& text) {
    switch (parameter.type) {
    case ParameterType::integer: return parseInteger(parameter, text);
    case ParameterType::number: return parseNumber(parameter, text);
    case ParameterType::flag: return parseFlag(parameter, text);
    case ParameterType::choice: return parseChoice(parameter, text);
    case ParameterType::text: return Value(text);
    case ParameterType::topEvent: break;
    }
    if (trimmed(text).empty())
        return complaint(parameter, parameter.name + " is empty", "give the id of a top event");
    return Value(trimmed(text));
}

project::Outcome<Values> complete(const std::vector<Parameter>& parameters, const Values& given) {
    project::Problems problems;
    Values values;
    std::vector<std::string> known;
    for (const Parameter& parameter : parameters) {
        known.push_back(parameter.name);
        const Value* const value = given.find(parameter.name);
        if (!value) {
            if (parameter.standard) values.set(parameter.name, *parameter.standard);
            continue;
        }
        auto outcome = checked(parameter, *value);
        if (outcome)
            values.set(parameter.name, std::move(*outcome));
        else
            problems.insert(problems.end(), outcome.problems().begin(), outcome.problems().end());
    }
    for (const std::string& name : given.names()) {
        if (std::find(known.begin(), known.end(), name) != known.end()) continue;
        const std::string near = nearest(name, known);
        std::string remedy = "leave it out";
        if (!near.empty())
            remedy = fmt::format("try '{}'", near);
        else if (!known.empty())
            remedy = "there are " + joined(known);
        problems.push_back({Severity::error, fmt::format("there is no parameter '{}'", name),
                            std::move(remedy), "parameter " + name, 0});
    }
    if (!problems.empty()) return problems;
    return values;
}

} // namespace cutwater::sdk
