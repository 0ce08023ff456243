// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/set_table.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace cutwater::sdk::tree {
namespace {

constexpr double kNotRare = 0.1;              // a sum of sets above it is visibly too high
constexpr std::uint32_t kCountedOrders = 100; // more rows than that help nobody
constexpr std::size_t kStepsBetweenLooks = 1024;

// Adds many small numbers to large ones without losing them (Neumaier 1974).
class Sum {
public:
    void add(double value) {
        const double next = m_sum + value;
        m_rest +=
            std::abs(m_sum) >= std::abs(value) ? (m_sum - next) + value : (value - next) + m_sum;
        m_sum = next;
    }
    double value() const { return m_sum + m_rest; }

private:
    double m_sum = 0, m_rest = 0;
};

struct SetText {
    std::string ids, names;
    std::vector<std::string> nodes;
    bool known = true;
};

SetText textOf(const logic::CutSet& set, const project::Project& project,
               const project::Index& index, const Solved& solved, const Figures& figures,
               Side side) {
    const char* const negation = side == Side::fails ? "not " : "occurs: ";
    SetText text;
    for (const logic::SetLiteral& literal : set.literals) {
        const std::string id = idOf(project, solved, literal.variable);
        if (!text.ids.empty()) {
            text.ids += ", ";
            text.names += "; ";
        }
        text.ids += literal.negated ? negation + id : id;
        text.names +=
            (literal.negated ? negation : "") + nameOf(project, index, solved, literal.variable);
        for (std::string& node : nodesOf(project, solved, literal.variable))
            text.nodes.push_back(std::move(node));
        text.known = text.known && figures.known[literal.variable];
    }
    if (set.literals.empty()) text.names = "(nothing: it holds whatever the events do)";
    return text;
}

void addCounts(Table& counts, const Solved& solved) {
    const auto byOrder = solved.solution.countsByOrder(kCountedOrders);
    logic::Count shown;
    for (std::size_t order = 0; order < byOrder.size(); ++order) {
        if (byOrder[order] == logic::Count{}) continue;
        shown = shown + byOrder[order];
        counts.rows.push_back(
            {solved.target.id, static_cast<std::int64_t>(order), countCell(byOrder[order])});
    }
    if (!(shown == solved.solution.setCount()))
        counts.remark = fmt::format("Orders above {} are not counted one by one.", kCountedOrders);
}

// How many sets are not in the list, in words.
std::string leftOutWords(const logic::Count& all, std::size_t listed) {
    if (all.saturated) return "more than can be counted";
    return logic::toDecimal({all.value - listed, false});
}

} // namespace

std::vector<Parameter> setParameters() {
    Parameter maxOrder{"max-order", ParameterType::integer,
                       "",          1,
                       1000000,     {},
                       {},          "leave out sets of more events than this"};
    Parameter minProbability{"min-probability",
                             ParameterType::number,
                             "",
                             0,
                             1,
                             {},
                             {},
                             "leave out sets that are less probable than this"};
    Parameter limit{"limit",
                    ParameterType::integer,
                    "",
                    1,
                    10000000,
                    {},
                    Value(std::int64_t{1000}),
                    "list at most this many sets of each top event"};
    Parameter sort{"sort",
                   ParameterType::choice,
                   "",
                   {},
                   {},
                   {"order", "probability"},
                   Value(std::string("order")),
                   "order: the smallest sets first; probability: the most probable first"};
    return {maxOrder, minProbability, limit, sort};
}

SetWish setWish(const Values& values, const Job& job, Side side) {
    SetWish wish;
    wish.side = side;
    wish.limit = static_cast<std::size_t>(values.integer("limit").value_or(1000));
    if (const auto order = values.integer("max-order"))
        wish.listing.maxOrder = static_cast<std::uint32_t>(*order);
    wish.listing.minProbability = values.number("min-probability").value_or(0);
    if (values.text("sort") == "probability") wish.listing.sorting = logic::Sorting::byProbability;
    wish.listing.memoryBytes = job.memoryBytes;
    return wish;
}

SetTables emptySetTables(Side side) {
    const bool fails = side == Side::fails;
    const Column top{"top", "Top", ColumnType::reference, ""};
    SetTables tables;
    tables.summary = {"summary",
                      fails ? "Minimal cut sets of each top event"
                            : "Minimal path sets of each top "
                              "event",
                      {top,
                       {"name", "Name", ColumnType::text, ""},
                       {"sets", "Sets", ColumnType::integer, ""},
                       {"listed", "Listed", ColumnType::integer, ""}}};
    tables.counts = {"counts",
                     "How many sets there are of each order",
                     {top,
                      {"order", "Order", ColumnType::integer, ""},
                      {"sets", "Sets", ColumnType::integer, ""}}};
    tables.sets = {
        "sets",
        fails ? "The sets: each one alone brings the top event about"
              : "The sets: as long as all events of one do not occur, the top event "
                "cannot happen",
        {top,
         {"rank", "No.", ColumnType::integer, ""},
         {"order", "Order", ColumnType::integer, ""},
         {"events", fails ? "Events" : "Events that must not occur", ColumnType::reference, ""},
         {"names", "In words", ColumnType::text, ""},
         {"probability", fails ? "Probability" : "Probability that none occurs",
          ColumnType::probability, ""}}};
    if (fails) {
        tables.summary.columns.push_back(
            {"rare-event-sum", "Sum of all sets", ColumnType::probability, ""});
        tables.summary.columns.push_back(
            {"left-out", "Sum of the sets left out", ColumnType::probability, ""});
        tables.sets.columns.push_back({"share", "Share of the sum", ColumnType::number, "%"});
    }
    return tables;
}

Interrupted addSets(SetTables& tables, const project::Project& project, const project::Index& index,
                    const Solved& solved, const Figures& figures, const SetWish& wish,
                    const Job& job) {
    const bool fails = wish.side == Side::fails;
    const bool withSum = fails && figures.complete();
    std::vector<double> q = figures.q;
    if (!fails)
        for (std::size_t v = 0; v < q.size(); ++v)
            q[v] = figures.known[v] ? 1 - q[v] : 1.0;
    const double sum = withSum ? solved.solution.rareEventSum(q) : 0;
    const bool shares = withSum && std::isfinite(sum) && sum > 0;

    addCounts(tables.counts, solved);
    logic::Listing listing = solved.solution.list(q, wish.listing);
    Sum listedSum;
    std::size_t listed = 0;
    while (listed < wish.limit) {
        if (listed % kStepsBetweenLooks == 0 && job.stop.stop_requested())
            return {Ending::cancelled, cancelledAt(solved.target)};
        const auto set = listing.next();
        if (!set) break;
        ++listed;
        listedSum.add(set->probability);
        SetText text = textOf(*set, project, index, solved, figures, wish.side);
        auto& row = tables.sets.rows.emplace_back();
        row = {solved.target.id,
               static_cast<std::int64_t>(listed),
               static_cast<std::int64_t>(set->literals.size()),
               std::move(text.ids),
               std::move(text.names),
               numberCell(text.known, set->probability)};
        if (fails) row.push_back(numberCell(shares, 100 * set->probability / sum));
        tables.marks.push_back({"sets", tables.sets.rows.size() - 1, std::move(text.nodes)});
    }

    const logic::Count all = solved.solution.setCount();
    const bool everything = !all.saturated && all.value == listed;
    auto& row = tables.summary.rows.emplace_back();
    row = {solved.target.id, solved.target.name, countCell(all), static_cast<std::int64_t>(listed)};
    // The difference of two sums that are nearly equal may come out a hair below zero.
    const double leftOut = everything ? 0.0 : std::max(0.0, sum - listedSum.value());
    if (fails) {
        row.push_back(numberCell(withSum, sum));
        row.push_back(numberCell(withSum, leftOut));
    }
    if (withSum && sum > kNotRare && !solved.solution.constant())
        tables.notes.push_back(
            {NoteKind::warning,
             fmt::format("{}: the sum of all sets is {:.3g}, above {}: it is no good approximation "
                         "of the probability here. The analysis probability has the exact figure.",
                         solved.target.id, sum, kNotRare)});
    if (everything) return {};
    tables.allListed = false;
    std::string sentence =
        fmt::format("{}: {} of {} sets are listed; the cut-offs left out {}", solved.target.id,
                    listed, logic::toDecimal(all), leftOutWords(all, listed));
    if (withSum && std::isfinite(sum))
        sentence += fmt::format(", whose probabilities add up to {:.3g} of {:.3g}", leftOut, sum);
    tables.notes.push_back({NoteKind::warning, sentence + "."});
    if (listing.outOfMemory())
        tables.notes.push_back(
            {NoteKind::warning, fmt::format("{}: the list ended early because the memory of {} MB "
                                            "was used up.",
                                            solved.target.id, job.memoryBytes >> 20)});
    return {};
}

} // namespace cutwater::sdk::tree
