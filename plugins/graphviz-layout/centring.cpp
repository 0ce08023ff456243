// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/graphviz-layout/centring.h"

#include <algorithm>
#include <limits>

namespace cutwater::graphviz {
namespace {

struct Span {
    double low = std::numeric_limits<double>::infinity();
    double high = -std::numeric_limits<double>::infinity();
    void add(double x) {
        low = std::min(low, x);
        high = std::max(high, x);
    }
    bool empty() const { return low > high; }
};

} // namespace

std::vector<double> centreParents(const Layers& layers, double gap, std::vector<double> x) {
    std::vector<std::vector<std::size_t>> rows(static_cast<std::size_t>(layers.rows));
    for (std::size_t i = 0; i < x.size(); ++i)
        rows[static_cast<std::size_t>(layers.row[i])].push_back(i);
    std::vector<std::vector<std::size_t>> below(x.size());
    for (const Segment& segment : layers.segments)
        below[segment.upper].push_back(segment.lower);
    Span sheet;
    for (std::size_t i = 0; i < x.size(); ++i) {
        sheet.add(x[i] - layers.width[i] / 2);
        sheet.add(x[i] + layers.width[i] / 2);
    }
    // From the bottom up: a row is in its final place when the one above follows it.
    for (std::size_t r = rows.size(); r-- > 0;) {
        std::vector<std::size_t>& row = rows[r];
        std::stable_sort(row.begin(), row.end(),
                         [&](std::size_t a, std::size_t b) { return x[a] < x[b]; });
        // Twice: a neighbour that moved away makes room.
        for (int pass = 0; pass < 2; ++pass)
            for (std::size_t i = 0; i < row.size(); ++i) {
                const std::size_t slot = row[i];
                Span inputs;
                for (const std::size_t child : below[slot])
                    inputs.add(x[child]);
                if (inputs.empty()) continue;
                const double half = layers.width[slot] / 2;
                double least = sheet.low + half, most = sheet.high - half;
                if (i > 0) least = x[row[i - 1]] + layers.width[row[i - 1]] / 2 + gap + half;
                if (i + 1 < row.size())
                    most = x[row[i + 1]] - layers.width[row[i + 1]] / 2 - gap - half;
                if (least > most) continue; // dot left less than the gap: stay
                x[slot] = std::clamp((inputs.low + inputs.high) / 2, least, most);
            }
    }
    return x;
}

} // namespace cutwater::graphviz
