// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"

#include <fmt/format.h>

#include <algorithm>
#include <optional>
#include <set>

namespace cutwater::cli {
namespace {

using sdk::Parameter;
using sdk::ParameterType;

// One word that begins with "--" (or one of the short forms), taken apart.
struct Option {
    std::string name;
    std::optional<std::string> value;
};

bool isOption(const std::string& word) {
    return word.size() > 1 && word[0] == '-'; // "-" alone is standard input
}

// The short forms: few, and only where the habit is universal.
std::string longName(const std::string& word) {
    if (word == "-h") return "help";
    if (word == "-o") return "output";
    if (word == "-q") return "quiet";
    return {};
}

Option takeApart(const std::string& word) {
    if (const std::string name = longName(word); !name.empty()) return {name, {}};
    const std::size_t dashes = word.rfind("--", 0) == 0 ? 2 : 1;
    const std::size_t equals = word.find('=');
    if (equals == std::string::npos) return {word.substr(dashes), {}};
    return {word.substr(dashes, equals - dashes), word.substr(equals + 1)};
}

const Parameter* find(const std::vector<Parameter>& parameters, const std::string& name) {
    for (const Parameter& parameter : parameters)
        if (parameter.name == name) return &parameter;
    return nullptr;
}

UsageMistake unknownOption(const std::string& word, const std::string& name,
                           const std::vector<Parameter>& known, const std::string& command) {
    std::vector<std::string> names = {"help", "version", "plugins"};
    for (const Parameter& parameter : known)
        names.push_back(parameter.name);
    const std::string near = sdk::nearest(name, names);
    const std::string help = command.empty() ? "cutwater --help" : "cutwater help " + command;
    if (near.empty())
        return fmt::format("there is no option {}; `{}` shows the options", word, help);
    return fmt::format("there is no option {}; did you mean --{}?", word, near);
}

// The value of an option: behind '=' or the next word.
std::variant<std::string, UsageMistake>
valueOf(const Option& option, const std::vector<std::string>& words, std::size_t& i) {
    if (option.value)
        return std::variant<std::string, UsageMistake>(std::in_place_index<0>, *option.value);
    if (i + 1 >= words.size() || words[i + 1].rfind("--", 0) == 0)
        return std::variant<std::string, UsageMistake>(
            std::in_place_index<1>, fmt::format("option --{} needs a value", option.name));
    return std::variant<std::string, UsageMistake>(std::in_place_index<0>, words[++i]);
}

UsageMistake asMistake(const project::Problem& problem) {
    return fmt::format("{}; {}", problem.what, problem.remedy);
}

} // namespace

const std::vector<Parameter>& globalOptions() {
    static const std::vector<Parameter> options = {
        {"format",
         ParameterType::choice,
         "",
         {},
         {},
         {"text", "json", "csv"},
         sdk::Value(std::string("text")),
         "how the answer is written"},
        {"output",
         ParameterType::text,
         "",
         {},
         {},
         {},
         {},
         "file to write the answer to; what was in it stays until the answer is complete"},
        {"table", ParameterType::text, "", {}, {}, {}, {}, "show only the table with this id"},
        {"memory",
         ParameterType::integer,
         "MB",
         16,
         1 << 24,
         {},
         sdk::Value(std::int64_t{2048}),
         "how much memory the computation may use"},
        {"width",
         ParameterType::integer,
         "",
         20,
         10000,
         {},
         {},
         "columns of the text; without it those of the terminal, or 100"},
        {"quiet",
         ParameterType::flag,
         "",
         {},
         {},
         {},
         {},
         "no progress and no remarks, only the answer and errors"},
    };
    return options;
}

std::variant<FirstLook, UsageMistake> firstLook(const std::vector<std::string>& words) {
    FirstLook look;
    bool onlyOperands = false;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const std::string& word = words[i];
        if (onlyOperands || !isOption(word)) {
            if (look.command.empty() && !onlyOperands && word != "-")
                look.command = word;
            else
                look.rest.push_back(word);
            continue;
        }
        if (word == "--") {
            onlyOperands = true;
            look.rest.push_back(word);
            continue;
        }
        const Option option = takeApart(word);
        if (option.name == "help" && !option.value) {
            look.help = true;
        } else if (option.name == "version" && !option.value) {
            look.version = true;
        } else if (option.name == "plugins") {
            auto value = valueOf(option, words, i);
            if (value.index() == 1) return std::get<1>(std::move(value));
            look.pluginFolders.push_back(std::get<0>(std::move(value)));
        } else {
            look.rest.push_back(word);
            const Parameter* const global = find(globalOptions(), option.name);
            if (look.command.empty()) {
                if (!global) return unknownOption(word, option.name, globalOptions(), {});
                // Its value must not be taken for the command.
                if (global->type != ParameterType::flag && !option.value && i + 1 < words.size())
                    look.rest.push_back(words[++i]);
            }
        }
    }
    return look;
}

std::variant<Parsed, UsageMistake> parse(const FirstLook& look, const Command& command) {
    std::vector<Parameter> known = command.options;
    for (const Parameter& global : globalOptions())
        if (!find(command.options, global.name)) known.push_back(global);

    Parsed parsed;
    parsed.call.command = command.name;
    parsed.globals.pluginFolders = look.pluginFolders;
    sdk::Values typed;
    bool onlyOperands = false;
    for (std::size_t i = 0; i < look.rest.size(); ++i) {
        const std::string& word = look.rest[i];
        if (!onlyOperands && word == "--") {
            onlyOperands = true;
            continue;
        }
        if (onlyOperands || !isOption(word)) {
            parsed.call.operands.push_back(word);
            continue;
        }
        const Option option = takeApart(word);
        const Parameter* const parameter = find(known, option.name);
        if (!parameter) return unknownOption(word, option.name, known, command.name);
        if (typed.has(option.name))
            return fmt::format("option --{} is given twice; give it once", option.name);
        std::string text = "yes";
        if (parameter->type != ParameterType::flag || option.value) {
            auto value = valueOf(option, look.rest, i);
            if (value.index() == 1) return std::get<1>(std::move(value));
            text = std::get<0>(std::move(value));
        }
        auto value = sdk::parseValue(*parameter, text);
        if (!value) return asMistake(value.problems().front());
        typed.set(option.name, std::move(*value));
    }

    const std::size_t count = parsed.call.operands.size();
    if (count < command.minOperands)
        return fmt::format("{} needs {}; the usage is: cutwater {} {} [options]", command.name,
                           command.minOperands == 1 ? "a file" : "more words", command.name,
                           command.operands);
    if (count > command.maxOperands)
        return fmt::format("{} does not know what to do with '{}'; the usage is: cutwater {}{}{} "
                           "[options]",
                           command.name, parsed.call.operands[command.maxOperands], command.name,
                           command.operands.empty() ? "" : " ", command.operands);

    sdk::Values own, global;
    for (const std::string& name : typed.names())
        (find(command.options, name) ? own : global).set(name, *typed.find(name));
    auto completed = sdk::complete(command.options, own);
    if (!completed) return asMistake(completed.problems().front());
    parsed.call.values = std::move(*completed);

    const std::string format = global.text("format").value_or("text");
    parsed.globals.format = format == "json"  ? Format::json
                            : format == "csv" ? Format::csv
                                              : Format::text;
    parsed.globals.output = global.text("output").value_or("");
    if (global.has("output") && parsed.globals.output.empty())
        return std::string("option --output is empty; name a file");
    parsed.globals.table = global.text("table").value_or("");
    parsed.globals.memoryBytes = static_cast<std::size_t>(global.integer("memory").value_or(2048))
                                 << 20;
    parsed.globals.width = static_cast<int>(global.integer("width").value_or(0));
    parsed.globals.quiet = global.flag("quiet");
    return parsed;
}

} // namespace cutwater::cli
