// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/value.h"

#include <algorithm>

namespace cutwater::project {

namespace {

bool isLetterOrDigit(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_';
}

bool mayStandInId(char c) {
    return isLetterOrDigit(c) || c == '-' || c == '.' || c == ':' || c == '/';
}

} // namespace

bool isWellFormedId(const Id& id) {
    return !id.empty() && id.size() <= 128 && isLetterOrDigit(id.front()) &&
           std::all_of(id.begin(), id.end(), mayStandInId);
}

} // namespace cutwater::project
