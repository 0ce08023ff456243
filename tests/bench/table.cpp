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
        "family",    "instance", "events",      "gates",      "shared",    "ours ms",
        "clock ms",  "MB",       "nodes",       "set nodes",  "BuDDy ms",  "init ms",
        "MB",        "least MB", "nodes",       "made",       "variant",   "ratio",
        "with init", "sets",     "probability", "difference", "checked by"};
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
    const bool answered = ours.ending == Ending::answered;
    add(answered ? milliseconds(ours.processorSeconds) : sentence(ours.ending, wish.limits));
    add(answered ? milliseconds(ours.wallSeconds) : "-");
    add(answered ? fmt::format("{:.1f}", ours.peakMB) : "-");
    add(answered ? std::to_string(ours.diagramNodes) : "-");
    add(answered ? std::to_string(ours.setNodes) : "-");
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
    add(answered ? count(ours.sets) : "-");
    const double probability = answered     ? ours.probability
                               : row.best() ? row.best()->result.probability
                                            : -1;
    add(probability < 0 ? "-" : fmt::format("{:.11e}", probability));
    add(row.difference ? fmt::format("{:.1e}", *row.difference) : "-");
    add(row.wrong.empty() ? fmt::format("{}", fmt::join(row.checkedBy, ", ")) : "WRONG");
    return cells;
}

std::string preface(const Conditions& conditions) {
    return fmt::format("{}; {}; {}.\n"
                       "Times are processor time, median of {} runs or more, in a process each; "
                       "limits {:g} s and {} MB. Ours: solve() and "
                       "probability(), the cut-set diagrams included. BuDDy: building and "
                       "probability, without cut sets; bdd_init apart. "
                       "MB: growth of resident memory at its peak. BuDDy's nodes: of the top's "
                       "diagram, and made in all.\n",
                       conditions.machine, conditions.build, conditions.when, conditions.wish.runs,
                       conditions.wish.limits.seconds, conditions.wish.limits.memoryBytes >> 20);
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

std::string quoted(const std::string& text) {
    std::string result = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') result += '\\';
        result += c;
    }
    return result + '"';
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

std::string asJson(const std::vector<Row>& rows, const Conditions& conditions) {
    std::string text =
        fmt::format("{{\"machine\": {}, \"build\": {}, \"when\": {}, \"limitSeconds\": {}, "
                    "\"limitMB\": {}, \"rows\": [",
                    quoted(conditions.machine), quoted(conditions.build), quoted(conditions.when),
                    conditions.wish.limits.seconds, conditions.wish.limits.memoryBytes >> 20);
    const auto ending = [&](Ending e) {
        return quoted(e == Ending::answered ? "answered" : sentence(e, conditions.wish.limits));
    };
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Row& row = rows[i];
        const Ours& o = row.measured.ours;
        text += fmt::format(
            "{}\n{{\"family\": {}, \"instance\": {}, \"events\": {}, \"gates\": {}, "
            "\"sharedGates\": {}, "
            "\"sharedEvents\": {}, \"depth\": {}, \"ours\": {{\"ending\": {}, "
            "\"processorSeconds\": {:.6g}, "
            "\"wallSeconds\": {:.6g}, \"peakMB\": {:.4g}, \"engineMB\": {:.4g}, \"diagramNodes\": "
            "{}, \"setNodes\": {}, "
            "\"modules\": {}, \"sets\": {}, \"probability\": {:.17g}, \"complement\": {:.17g}}}, "
            "\"buddy\": [",
            i ? "," : "", quoted(word(row.recipe->family)), quoted(row.recipe->name),
            row.measured.census.events, row.measured.census.gates, row.measured.census.sharedGates,
            row.measured.census.sharedEvents, row.measured.census.depth, ending(o.ending),
            o.processorSeconds, o.wallSeconds, o.peakMB, o.engineMB, o.diagramNodes, o.setNodes,
            o.modules, quoted(toDecimal(o.sets)), o.probability, o.complement);
        for (std::size_t j = 0; j < row.measured.buddy.size(); ++j) {
            const BuddyRun& b = row.measured.buddy[j];
            text +=
                fmt::format("{}{{\"variant\": {}, \"ending\": {}, \"processorSeconds\": {:.6g}, "
                            "\"wallSeconds\": {:.6g}, "
                            "\"initSeconds\": {:.6g}, \"peakMB\": {:.4g}, \"tableMB\": {:.4g}, "
                            "\"nodes\": {}, \"made\": {}, "
                            "\"collections\": {}, \"probability\": {:.17g}}}",
                            j ? ", " : "", quoted(b.variant), ending(b.ending),
                            b.result.processorSeconds, b.result.wallSeconds, b.result.initSeconds,
                            b.peakMB, b.result.tableMB, b.result.finalNodes, b.result.producedNodes,
                            b.result.collections, b.result.probability);
        }
        text +=
            fmt::format("], \"best\": {}, \"wrong\": {}}}", row.measured.best, row.wrong.size());
    }
    return text + "\n]}\n";
}

} // namespace bench
