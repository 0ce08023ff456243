// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers as text and back, exactly and whatever the locale is.
#pragma once

#include <string>
#include <string_view>

namespace cutwater::document {

enum class NumberFault { none, notANumber, outOfRange };

// Decimal digits with point and exponent ("3e-07"), blanks around them are allowed. Infinity, NaN
// and hexadecimal numbers are not numbers here; 1e999 is out of range.
NumberFault readNumber(std::string_view text, double& value);
// Whole numbers only: "2.5" is not a number here.
NumberFault readWhole(std::string_view text, int& value);

// The shortest digits that give the same double again. Precondition: finite.
std::string numberText(double value);

} // namespace cutwater::document
