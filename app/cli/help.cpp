// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/help.h"

#include "app/cli/analysis_command.h"
#include "app/cli/delivery.h"
#include "app/cli/options.h"
#include "app/cli/registry.h"
#include "app/results/display_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace cutwater::cli {

using results::padded;
using results::paragraph;
namespace {

using sdk::ParameterType;

constexpr std::size_t kWidth = 80;
constexpr std::size_t kNames = 18; // columns for the names of commands

std::string number(double value) {
    // Whole numbers without an exponent: "16777216", not "1.67772e+07".
    if (value == static_cast<double>(static_cast<std::int64_t>(value)) && std::abs(value) < 1e15)
        return fmt::format("{}", static_cast<std::int64_t>(value));
    return fmt::format("{}", value);
}

std::string valueText(const sdk::Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return fmt::format("{}", *whole);
    if (const auto* real = std::get_if<double>(&value)) return number(*real);
    return std::get<bool>(value) ? "yes" : "no";
}

std::string placeholder(const sdk::Parameter& parameter) {
    switch (parameter.type) {
    case ParameterType::flag: return {};
    case ParameterType::choice: return fmt::format(" {}", fmt::join(parameter.choices, "|"));
    case ParameterType::topEvent: return " ID";
    case ParameterType::integer: return " N";
    case ParameterType::number: return " NUMBER";
    case ParameterType::text: break;
    }
    return " TEXT";
}

std::string range(const sdk::Parameter& p) {
    const std::string unit = p.unit.empty() ? "" : " " + p.unit;
    if (p.minimum && p.maximum)
        return fmt::format("{} to {}{}", number(*p.minimum), number(*p.maximum), unit);
    if (p.minimum) return fmt::format("{}{} or more", number(*p.minimum), unit);
    if (p.maximum) return fmt::format("{}{} or less", number(*p.maximum), unit);
    return p.unit.empty() ? std::string{} : "in " + p.unit;
}

std::string entry(const std::string& name, const std::string& summary) {
    return paragraph(summary, kWidth, "  " + padded(name, kNames) + " ");
}

std::string sentence(std::string text) {
    if (!text.empty() && text.back() != '.') text += '.';
    return text;
}

int run(const Call& call, Context& context) {
    if (call.operands.empty()) return deliver(generalHelp(context.host), context);
    const auto command = findCommand(call.operands.front(), context);
    if (!command) return kUsage; // findCommand() has said why
    return deliver(helpFor(*command), context);
}

} // namespace

std::string optionHelp(const sdk::Parameter& parameter) {
    std::string out = fmt::format("  --{}{}\n", parameter.name, placeholder(parameter));
    std::string text = sentence(parameter.sentence);
    if (const std::string limits = range(parameter); !limits.empty())
        text += fmt::format(" {}{}.", text.empty() ? "" : "Range: ", limits);
    if (parameter.standard && parameter.type != ParameterType::flag)
        text += fmt::format(" Standard: {}.", valueText(*parameter.standard));
    return out + paragraph(text, kWidth, "        ");
}

std::string generalHelp(const sdk::Host& host) {
    std::string out = "Cutwater: fault trees and FMEA for people who run machinery.\n\n"
                      "Usage: cutwater COMMAND [FILE] [options]\n"
                      "       cutwater ANALYSIS FILE [options]\n\nCommands\n";
    for (const Command& command : builtInCommands())
        out += entry(command.name, command.summary);
    out += "\nAnalyses\n";
    bool any = false;
    for (const sdk::PluginFacts& facts : host.plugins()) {
        if (facts.kind != sdk::PluginKind::analysis) continue;
        any = true;
        out += entry(facts.id, facts.summary);
    }
    if (!any)
        out += "  (no plug-in was found; `cutwater list` says why, --plugins FOLDER names more)\n";
    out += "\nOptions that every command understands\n";
    for (const sdk::Parameter& option : globalOptions())
        out += optionHelp(option);
    out += "  --plugins FOLDER\n" +
           paragraph("Look for plug-ins in this folder, too. May be given several times. Only name "
                     "folders whose owner you trust: plug-ins are programs.",
                     kWidth, "        ") +
           "  --help, --version\n";
    out += "\nA FILE is a .cutwater project; - is standard input.\n"
           "\nExit codes: 0 fine; 1 the file has errors, or could not be read, written or "
           "computed;\n2 the command line is wrong; 3 cancelled, or over a limit.\n"
           "\n`cutwater help COMMAND` says more about one of them.\n";
    return out;
}

std::string helpFor(const Command& command) {
    std::string out = fmt::format("Usage: cutwater {}{}{} [options]\n\n", command.name,
                                  command.operands.empty() ? "" : " ", command.operands);
    out += paragraph(sentence(command.summary), kWidth);
    if (!command.details.empty()) out += '\n' + paragraph(command.details, kWidth);
    if (!command.options.empty()) {
        out += "\nOptions\n";
        for (const sdk::Parameter& option : command.options)
            out += optionHelp(option);
    }
    out += "\nOptions that every command understands: ";
    std::string names;
    for (const sdk::Parameter& option : globalOptions()) {
        const auto same = [&](const sdk::Parameter& own) { return own.name == option.name; };
        if (std::none_of(command.options.begin(), command.options.end(), same))
            names += "--" + option.name + " ";
    }
    out += "\n" +
           paragraph(names + "--plugins --help --version (see `cutwater --help`)", kWidth, "  ");
    return out;
}

Command helpCommand() {
    Command command;
    command.name = "help";
    command.summary = "explain the program, a command or an analysis";
    command.operands = "[COMMAND]";
    command.minOperands = 0;
    command.run = run;
    return command;
}

} // namespace cutwater::cli
