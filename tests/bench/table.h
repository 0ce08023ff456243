// SPDX-License-Identifier: GPL-3.0-or-later
// The table of engine_table: what was measured, checked and written in three forms.
#pragma once

#include "tests/bench/measure.h"

#include <optional>
#include <string>
#include <vector>

namespace bench {

constexpr double kAllowedDifference = 1e-9; // relative, between two probabilities

struct Row {
    const Recipe* recipe = nullptr;
    Measured measured;
    std::optional<double> tried;        // probability by trying everything
    std::optional<double> difference;   // relative, the largest that was found
    std::vector<std::string> checkedBy; // "BuDDy", "all states", "closed form" ...
    std::vector<std::string> wrong;     // a sentence for each disagreement

    const BuddyRun* best() const {
        return measured.best < 0 ? nullptr
                                 : &measured.buddy[static_cast<std::size_t>(measured.best)];
    }
    // BuDDy's time over ours, by its quickest variant; infinity where only we answered, nothing
    // where we did not. Its tables are not made for each answer in a program that runs on, so
    // without bdd_init; and with it, the quickest variant then perhaps another.
    std::optional<double> ratio() const { return ratio(false); }
    std::optional<double> ratioWithInit() const { return ratio(true); }
    // The memory of the most frugal variant that answered; 0 where none did.
    double leastBuddyMB() const;

private:
    std::optional<double> ratio(bool withInit) const;
};

// Compares whatever there is to compare with.
void check(Row& row, const Instance& instance);

// The slope of log(time) over log(size), by least squares, of one series.
struct Growth {
    std::string series;
    std::size_t points = 0;
    double ours = 0, oursLargest = 0; // all sizes; the two largest
    std::optional<double> buddy;
};
std::vector<Growth> growth(const std::vector<Row>& rows);

struct Conditions {
    std::string machine, build, when;
    MeasureWish wish;
};

std::string asText(const std::vector<Row>& rows, const Conditions& conditions);
std::string asMarkdown(const std::vector<Row>& rows, const Conditions& conditions);
std::string asJson(const std::vector<Row>& rows, const Conditions& conditions);

} // namespace bench
