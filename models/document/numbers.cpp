// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/numbers.h"

#include <array>
#include <charconv>
#include <system_error>

namespace cutwater::document {

namespace {

bool isBlank(char c) {
    return c == ' ' || c == '\t' || c == '\n' || c == '\r';
}

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && isBlank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && isBlank(text.back()))
        text.remove_suffix(1);
    return text;
}

template <typename Number>
NumberFault read(std::string_view text, Number& value) {
    text = trimmed(text);
    // from_chars knows "inf" and "nan"; we do not.
    if (text.find_first_not_of("+-.0123456789eE") != std::string_view::npos)
        return NumberFault::notANumber;
    Number result{};
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), result);
    if (error == std::errc::invalid_argument || end != text.data() + text.size())
        return NumberFault::notANumber;
    if (error == std::errc::result_out_of_range) return NumberFault::outOfRange;
    value = result;
    return NumberFault::none;
}

} // namespace

NumberFault readNumber(std::string_view text, double& value) {
    return read(text, value);
}
NumberFault readWhole(std::string_view text, int& value) {
    return read(text, value);
}

std::string numberText(double value) {
    std::array<char, 32> digits;
    const auto [end, error] = std::to_chars(digits.data(), digits.data() + digits.size(), value);
    return error == std::errc{} ? std::string(digits.data(), end) : std::string();
}

} // namespace cutwater::document
