// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/nearest.h"

#include <algorithm>
#include <array>

namespace cutwater::project {

namespace {

constexpr std::size_t kLongest = 130; // an id has at most 128

char lower(char c) {
    return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace

std::size_t typingDistance(std::string_view a, std::string_view b, std::size_t limit) {
    if (a.size() > b.size()) std::swap(a, b);
    if (b.size() - a.size() > limit || b.size() >= kLongest) return limit + 1;
    // Three rows of the usual table: two above are needed for exchanged neighbours.
    std::array<std::array<std::size_t, kLongest>, 3> rows;
    for (std::size_t j = 0; j <= b.size(); ++j)
        rows[0][j] = j;
    for (std::size_t i = 1; i <= a.size(); ++i) {
        auto& row = rows[i % 3];
        const auto& above = rows[(i + 2) % 3];
        const auto& twoAbove = rows[(i + 1) % 3];
        row[0] = i;
        std::size_t best = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const bool same = lower(a[i - 1]) == lower(b[j - 1]);
            row[j] = std::min({above[j] + 1, row[j - 1] + 1, above[j - 1] + (same ? 0 : 1)});
            if (i > 1 && j > 1 && lower(a[i - 1]) == lower(b[j - 2]) &&
                lower(a[i - 2]) == lower(b[j - 1]))
                row[j] = std::min(row[j], twoAbove[j - 2] + 1);
            best = std::min(best, row[j]);
        }
        if (best > limit) return limit + 1;
    }
    return std::min(rows[a.size() % 3][b.size()], limit + 1);
}

std::string_view nearestWord(std::string_view word,
                             const std::vector<std::string_view>& candidates) {
    std::size_t limit = std::max<std::size_t>(1, word.size() / 3);
    std::string_view best;
    for (std::string_view candidate : candidates) {
        const std::size_t distance = typingDistance(word, candidate, limit);
        if (distance > limit || (distance == limit && !best.empty())) continue;
        best = candidate;
        if (distance == 0) break;
        limit = distance;
    }
    return best;
}

} // namespace cutwater::project
