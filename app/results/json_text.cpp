// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/results/json_text.h"

#include "app/results/display_text.h"

#include <fmt/format.h>

#include <cmath>

namespace cutwater::results {
namespace {

void appendEscaped(std::string& out, char c) {
    switch (c) {
    case '"': out += "\\\""; return;
    case '\\': out += "\\\\"; return;
    case '\n': out += "\\n"; return;
    case '\r': out += "\\r"; return;
    case '\t': out += "\\t"; return;
    default: break;
    }
    if (static_cast<unsigned char>(c) < 0x20 || c == 0x7F)
        out += fmt::format("\\u{:04x}", static_cast<unsigned>(static_cast<unsigned char>(c)));
    else
        out += c;
}

} // namespace

std::string jsonString(const std::string& text) {
    std::string out = "\"";
    std::string run; // of bytes outside ASCII
    const auto flush = [&] {
        if (!run.empty()) out += printable(run);
        run.clear();
    };
    for (const char c : text) {
        if (static_cast<unsigned char>(c) >= 0x80) {
            run += c;
            continue;
        }
        flush();
        appendEscaped(out, c);
    }
    flush();
    return out + "\"";
}

std::string jsonNumber(double number) {
    return std::isfinite(number) ? fmt::format("{}", number) : "null";
}

} // namespace cutwater::results
