// SPDX-License-Identifier: GPL-3.0-or-later
// Declared parameters: the shell makes its options from them, the editor its form; the plug-in gets
// checked values.
#pragma once

#include "models/project/problem.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace cutwater::sdk {

enum class ParameterType { text, integer, number, flag, choice, topEvent };

using Value = std::variant<std::string, std::int64_t, double, bool>;

struct Parameter {
    std::string name; // the option is --name
    ParameterType type = ParameterType::text;
    std::string unit;
    std::optional<double> minimum, maximum; // of numbers, both allowed values
    // Of a choice: what may be given. Of a top event: what a form may offer; the id of any gate or
    // event may be given too.
    std::vector<std::string> choices;
    std::optional<Value>
        standard;         // what counts where nothing is given; none: "not given" is a value
    std::string sentence; // for --help and the form's tip
};

class Values {
public:
    bool has(const std::string& name) const { return m_values.contains(name); }
    void set(const std::string& name, Value value) { m_values[name] = std::move(value); }
    std::optional<std::string> text(const std::string& name) const;
    std::optional<std::int64_t> integer(const std::string& name) const;
    std::optional<double> number(const std::string& name) const;
    bool flag(const std::string& name) const;         // false where it is not given
    std::vector<std::string> names() const;           // in alphabetical order
    const Value* find(const std::string& name) const; // null where it is not given

private:
    std::map<std::string, Value> m_values;
};

// Text (from a shell or a form) to a checked value. A number may carry the parameter's unit or
// another of the same dimension ("2 wk" where hours are asked for) and is converted. The problem
// names the parameter, its range or its choices.
project::Outcome<Value> parseValue(const Parameter& parameter, const std::string& text);

// Fills in the standards and checks ranges; unknown names are problems with the nearest known one
// in the remedy.
project::Outcome<Values> complete(const std::vector<Parameter>& parameters, const Values& given);

// The candidate that is spelled most like `word` or begins with it, or empty where none is near
// (edit distance over a third of its length). Small and capital letters count as equal; of equally
// near ones the first.
std::string nearest(const std::string& word, const std::vector<std::string>& candidates);

} // namespace cutwater::sdk
