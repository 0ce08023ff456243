// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/dates.h"

#include <chrono>
#include <optional>

namespace cutwater::project {

namespace {

std::optional<int> digits(std::string_view text) {
    int value = 0;
    for (char c : text) {
        if (c < '0' || c > '9') return std::nullopt;
        value = 10 * value + (c - '0');
    }
    return value;
}

} // namespace

bool isIsoDate(std::string_view text) {
    if (text.size() != 10 || text[4] != '-' || text[7] != '-') return false;
    const auto year = digits(text.substr(0, 4));
    const auto month = digits(text.substr(5, 2));
    const auto day = digits(text.substr(8, 2));
    if (!year || !month || !day) return false;
    return std::chrono::year_month_day(std::chrono::year(*year),
                                       std::chrono::month(static_cast<unsigned>(*month)),
                                       std::chrono::day(static_cast<unsigned>(*day)))
        .ok();
}

bool isTimeOfDay(std::string_view text) {
    if (text.size() != 5 || text[2] != ':') return false;
    const auto hour = digits(text.substr(0, 2));
    const auto minute = digits(text.substr(3, 2));
    return hour && minute && *hour < 24 && *minute < 60;
}

} // namespace cutwater::project
