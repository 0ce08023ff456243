// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/parameter.h"

#include <algorithm>
#include <numeric>

namespace cutwater::sdk {
namespace {

// Edit distance where a swap of two neighbours counts once (optimal string alignment): the most
// usual slip of a hand in a hurry. Three rows of the table are enough.
std::size_t distance(const std::string& a, const std::string& b) {
    std::vector<std::size_t> before(b.size() + 1), last(b.size() + 1), row(b.size() + 1);
    std::iota(last.begin(), last.end(), std::size_t{0});
    for (std::size_t i = 1; i <= a.size(); ++i) {
        row[0] = i;
        for (std::size_t j = 1; j <= b.size(); ++j) {
            const std::size_t change = a[i - 1] == b[j - 1] ? 0 : 1;
            row[j] = std::min({last[j] + 1, row[j - 1] + 1, last[j - 1] + change});
            if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                row[j] = std::min(row[j], before[j - 2] + 1);
        }
        std::swap(before, last);
        std::swap(last, row);
    }
    return last[b.size()];
}

std::string lowered(const std::string& text) {
    std::string lower = text;
    for (char& c : lower)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return lower;
}

} // namespace

std::string nearest(const std::string& word, const std::vector<std::string>& candidates) {
    constexpr std::size_t kLongest = 200; // longer words are not typing slips
    if (word.empty() || word.size() > kLongest) return {};
    const std::string lower = lowered(word);
    // A third of the length, but one slip is allowed even in a short word.
    const std::size_t allowed = std::max<std::size_t>(1, word.size() / 3);
    std::size_t best = allowed + 1;
    std::string answer;
    for (const std::string& candidate : candidates) {
        const std::size_t longer = std::max(candidate.size(), word.size());
        const std::size_t shorter = std::min(candidate.size(), word.size());
        // The beginning of a long name is the other thing that people type: worth one slip.
        const bool begins = word.size() > 1 && lowered(candidate.substr(0, word.size())) == lower;
        if (!begins && longer - shorter >= best) continue;
        const std::size_t d = begins ? std::min<std::size_t>(longer - shorter, 1)
                                     : distance(lower, lowered(candidate));
        // A word of which nothing is left is not near: "x" for "y".
        if (d < best && d < longer) {
            best = d;
            answer = candidate;
        }
    }
    return answer;
}

} // namespace cutwater::sdk
