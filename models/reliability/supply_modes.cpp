// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/reliability/supply_modes.h"

#include <algorithm>
#include <cctype>
#include <string_view>

namespace cutwater::reliability {

namespace {

// The words of a text in small letters, one blank between them and at both ends, so that a phrase
// is found as whole words.
std::string words(std::string_view text) {
    std::string result = " ";
    for (const char letter : text) {
        const auto byte = static_cast<unsigned char>(letter);
        if (std::isalnum(byte) || byte >= 0x80)
            result += static_cast<char>(std::tolower(byte));
        else if (result.back() != ' ')
            result += ' ';
    }
    if (result.back() != ' ') result += ' ';
    return result;
}

// The first phrase that stands in the text, or nothing.
template <std::size_t N>
std::string_view firstOf(const std::string& text, const std::string_view (&phrases)[N]) {
    for (const std::string_view phrase : phrases)
        if (text.find(" " + std::string(phrase) + " ") != std::string::npos) return phrase;
    return {};
}

// Phrases that take the meaning out of a word that follows; looked for first.
constexpr std::string_view kElectricalPasses[] = {"does not open", "not open",    "fails to open",
                                                  "stuck made",    "stays made",  "welded",
                                                  "stuck closed",  "left closed", "contact short"};
constexpr std::string_view kElectricalBreaks[] = {
    "does not close", "not close", "not closed",     "fails to close", "open",
    "opens",          "opened",    "open circuit",   "loose",          "off",
    "broken",         "blown",     "burnt",          "burnt out",      "cut",
    "disconnected",   "no output", "no voltage",     "no supply",      "dead",
    "lost",           "loses",     "trips",          "tripped",        "stops",
    "stopped",        "flat",      "does not start", "fails",          "failed"};
constexpr std::string_view kShort[] = {"short",         "shorts",  "shorted",
                                       "short circuit", "earthed", "earth fault"};
constexpr std::string_view kFlowPasses[] = {"does not shut",  "not shut",   "does not close",
                                            "not close",      "stuck open", "left open",
                                            "fails to close", "leaks",      "not closed"};
constexpr std::string_view kFlowBreaks[] = {
    "does not open",  "not open", "fails to open", "closed",    "shut",         "choked", "plugged",
    "blocked",        "clogged",  "frozen",        "seized",    "empty",        "stops",  "stopped",
    "does not start", "no flow",  "no pressure",   "no output", "dead",         "lost",   "broken",
    "burst",          "trips",    "tripped",       "coil open", "winding open", "fails",  "failed"};

} // namespace

bool isElectrical(const std::string& medium) {
    static constexpr std::string_view kVolts[] = {"v", "kv", "ac", "dc", "volt", "volts"};
    if (!firstOf(words(medium), kVolts).empty()) return true;
    // "24V DC", written together
    for (std::size_t i = 1; i < medium.size(); ++i)
        if ((medium[i] == 'V' || medium[i] == 'v') &&
            std::isdigit(static_cast<unsigned char>(medium[i - 1])))
            return true;
    return false;
}

ModeVerdict verdictOf(const project::FailureMode& mode, PartRole role, bool electrical,
                      const PathRule& rule) {
    if (rule.breaks.contains(mode.id)) return {true, "as you decided"};
    if (rule.passes.contains(mode.id)) return {false, "as you decided"};
    const std::string name = words(mode.name);
    const auto because = [](std::string_view word, const char* what) {
        return "\"" + std::string(word) + "\": " + what;
    };
    if (electrical) {
        if (const auto word = firstOf(name, kElectricalPasses); !word.empty())
            return {false, because(word, "still conducts")};
        if (const auto word = firstOf(name, kShort); !word.empty())
            return role == PartRole::node
                       ? ModeVerdict{true, because(word, "takes the voltage away")}
                       : ModeVerdict{false, because(word, "still conducts")};
        if (const auto word = firstOf(name, kElectricalBreaks); !word.empty())
            return {true, because(word, "no current")};
    } else {
        if (const auto word = firstOf(name, kFlowPasses); !word.empty())
            return {false, because(word, "still flows")};
        if (const auto word = firstOf(name, kFlowBreaks); !word.empty())
            return {true, because(word, "no flow")};
    }
    return {false, "its name says nothing about the path"};
}

} // namespace cutwater::reliability
