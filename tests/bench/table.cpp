// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/table.h"

#include <fmt/format.h>

#include <cmath>

namespace bench {

namespace {

std::string milliseconds(double seconds) {
    const double ms = seconds * 1e3;
    return ms < 0.1   ? fmt::format("{:.4f}", ms)
           : ms < 100 ? fmt::format("{:.2f}", ms)
                      : fmt::format("{:.0f}", ms);
}

std::string times(std::optional<double> ratio) {
    if (!ratio) return "-";
    if (std::isinf(*ratio)) return "only ours";
    return *ratio < 10 ? fmt::format("{:.2f}x", *ratio) : fmt::format("{:.0f}x", *ratio);
}

std::string count(const cutwater::logic::Count& sets) {
    if (sets.saturated) return "> 3.4e38";
    const std::string decimal = toDecimal(sets);
    return decimal.size() <= 12 ? decimal : fmt::format("{:.6e}", toDouble(sets));
}

const std::vector<std::string>& headings() {
    static const std::vector<std::string> names{
        "family", "instance",    "events",     "gates",     "shared",    "ours ms",  "clock ms",
        "MB",     "made",        "sets ms",    "sets MB",   "set nodes", "BuDDy ms", "init ms",
        "MB",     "least MB",    "nodes",      "made",      "variant",   "ratio",    "with init",
        "sets",   "probability", "difference", "checked by"};
    return names;
}

std::vector<std::string> cells(const Row& row, const MeasureWish& wish) {
    const Measured& m = row.measured;
    const Ours& ours = m.ours;
    std::vector<std::string> cells{
        word(row.recipe->family), row.recipe->name, std::to_string(m.census.events),
        std::to_string(m.census.gates),
        fmt::format("{:.0f} %", 100.0 * m.census.sharedGates / std::max(1u, m.census.gates))};
    const auto add = [&](std::string cell) { cells.push_back(std::move(cell)); };
    const Ours& withSets = m.withSets;
    const bool answered = ours.ending == Ending::answered;
    const bool counted = withSets.ending == Ending::answered;
    add(answered ? milliseconds(ours.processorSeconds) : sentence(ours.ending, wish.limits));
    add(answered ? milliseconds(ours.wallSeconds) : "-");
    add(answered ? fmt::format("{:.1f}", ours.peakMB) : "-");
    add(answered ? std::to_string(ours.diagramNodes) : "-");
    add(counted ? milliseconds(withSets.processorSeconds) : sentence(withSets.ending, wish.limits));
    add(counted ? fmt::format("{:.1f}", withSets.peakMB) : "-");
    add(counted ? std::to_string(withSets.setNodes) : "-");
    if (const BuddyRun* best = row.best()) {
        add(milliseconds(best->result.processorSeconds));
        add(milliseconds(best->result.initSeconds));
        add(fmt::format("{:.1f}", best->peakMB));
        add(fmt::format("{:.1f}", row.leastBuddyMB()));
        add(std::to_string(best->result.finalNodes));
        add(std::to_string(best->result.producedNodes));
        add(best->variant);
    } else {
        add(m.buddy.empty() ? "-" : sentence(m.buddy.front().ending, wish.limits));
        for (int i = 0; i < 6; ++i)
            add("-");
    }
    add(times(row.ratio()));
    add(times(row.ratioWithInit()));
    add(counted ? count(withSets.sets) : "-");
    const double probability = answered     ? ours.probability
                               : row.best() ? row.best()->result.probability
                                            : -1;
    add(probability < 0 ? "-" : fmt::format("{:.11e}", probability));
    add(row.difference ? fmt::format("{:.1e}", *row.difference) : "-");
    add(row.wrong.empty() ? fmt::format("{}", fmt::join(row.checkedBy, ", ")) : "WRONG");
    return cells;
}

std::string preface(const Conditions& conditions) {
    const MeasureWish& wish = conditions.wish;
    return fmt::format(
        "{}; {}; {}.\n"
        "Times are processor time{}, the median of {} runs or more, each program in a process of "
        "its "
        "own; limits {:g} s and {} MB. Ours: solve() without sets, and probability(); \"sets ms\": "
        "solve() with the diagrams of all sets, and probability(). BuDDy: building and probability "
        "by its quickest variant, no sets; bdd_init apart. MB: growth of resident memory at its "
        "peak; \"least MB\": of BuDDy's most frugal variant. Nodes: of the top's diagram; made: in "
        "all. Checked by: P the probability, N the number of sets.\n",
        conditions.machine, conditions.build, conditions.when,
        wish.threads > 1 ? fmt::format(" (ours, {} threads: the clock)", wish.threads) : "",
        wish.runs, wish.limits.seconds, wish.limits.memoryBytes >> 20);
}

std::string closing(const std::vector<Row>& rows) {
    std::string text;
    for (const Growth& g : growth(rows))
        text += fmt::format(
            "growth of {} over {} sizes: time ~ size^{:.2f}, last two sizes ^{:.2f}{}\n", g.series,
            g.points, g.ours, g.oursLargest,
            g.buddy ? fmt::format("; BuDDy ^{:.2f}", *g.buddy) : "");
    for (const Row& row : rows)
        for (const std::string& sentence : row.wrong)
            text += "WRONG: " + sentence + "\n";
    return text;
}

} // namespace

std::string asText(const std::vector<Row>& rows, const Conditions& conditions) {
    std::vector<std::vector<std::string>> lines{headings()};
    for (const Row& row : rows)
        lines.push_back(cells(row, conditions.wish));
    std::vector<std::size_t> widths(headings().size(), 0);
    for (const auto& line : lines)
        for (std::size_t i = 0; i < line.size(); ++i)
            widths[i] = std::max(widths[i], line[i].size());
    std::string text = preface(conditions);
    for (const auto& line : lines) {
        for (std::size_t i = 0; i < line.size(); ++i)
            text += i < 2 ? fmt::format("{:<{}}  ", line[i], widths[i])
                          : fmt::format("{:>{}}  ", line[i], widths[i]);
        text.erase(text.find_last_not_of(' ') + 1);
        text += '\n';
    }
    return text + closing(rows);
}

std::string asMarkdown(const std::vector<Row>& rows, const Conditions& conditions) {
    std::string text = preface(conditions) + "\n|";
    for (const std::string& name : headings())
        text += " " + name + " |";
    text += "\n|---|---|";
    for (std::size_t i = 2; i < headings().size(); ++i)
        text += "--:|";
    text += '\n';
    for (const Row& row : rows) {
        text += '|';
        for (const std::string& cell : cells(row, conditions.wish))
            text += " " + cell + " |";
        text += '\n';
    }
    const std::string end = closing(rows);
    return end.empty() ? text : text + "\n```\n" + end + "```\n";
}

} // namespace bench
