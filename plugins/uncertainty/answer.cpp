// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/uncertainty/answer.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::uncertainty_plugin {
namespace {

using reliability::Estimate;
using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;

constexpr std::size_t kMostEvents = 4; // named in one cell
constexpr double kHeavyTail = 0.2;     // of the sum, in the largest thousandth of the samples
constexpr std::size_t kFewSamples = 10'000;

// "lognormal, median 1e-07, error factor 10", in the unit that the user wrote.
std::string describe(const project::Distribution& distribution) {
    if (const auto* lognormal = std::get_if<project::Lognormal>(&distribution))
        return fmt::format("lognormal, median {:.6g}, error factor {:.6g}", lognormal->median,
                           lognormal->errorFactor);
    if (const auto* gamma = std::get_if<project::Gamma>(&distribution))
        return fmt::format("gamma, shape {:.6g}, rate {:.6g}", gamma->shape, gamma->rate);
    if (const auto* beta = std::get_if<project::Beta>(&distribution))
        return fmt::format("beta, alpha {:.6g}, beta {:.6g}", beta->alpha, beta->beta);
    if (const auto* uniform = std::get_if<project::Uniform>(&distribution))
        return fmt::format("uniform, {:.6g} to {:.6g}", uniform->low, uniform->high);
    if (const auto* triangle = std::get_if<project::Triangular>(&distribution))
        return fmt::format("triangular, {:.6g}, {:.6g}, {:.6g}", triangle->low, triangle->mode,
                           triangle->high);
    return "none";
}

std::string eventList(const project::Project& project, const std::vector<std::size_t>& events) {
    std::vector<std::string> ids;
    for (std::size_t i = 0; i < std::min(events.size(), kMostEvents); ++i)
        ids.push_back(project.events[events[i]].id);
    std::string text = fmt::format("{}", fmt::join(ids, ", "));
    if (events.size() > kMostEvents)
        text += fmt::format(" and {} more", events.size() - kMostEvents);
    return text;
}

} // namespace

sdk::Table topTable(const std::vector<TopAnswer>& tops) {
    sdk::Table table{"top-events",
                     "How well each top event is known",
                     {{"top", "Top", ColumnType::reference, ""},
                      {"name", "Name", ColumnType::text, ""},
                      {"p5", "5 %", ColumnType::probability, ""},
                      {"median", "Median", ColumnType::probability, ""},
                      {"mean", "Mean", ColumnType::probability, ""},
                      {"p95", "95 %", ColumnType::probability, ""},
                      {"spread", "95 % by median", ColumnType::number, ""},
                      {"point", "With the point values", ColumnType::probability, ""}}};
    for (const TopAnswer& top : tops)
        table.rows.push_back(
            {top.target.id, top.target.name, top.summary.p5.value, top.summary.median.value,
             top.summary.mean.value, top.summary.p95.value,
             top.summary.median.value > 0 ? Cell(top.summary.p95.value / top.summary.median.value)
                                          : Cell(),
             top.point});
    table.remark = "Between 5 % and 95 % the top event's probability lies with 90 % confidence, as "
                   "far as the spreads of the numbers that went in are right.";
    return table;
}

sdk::Table confidenceTable(const std::vector<TopAnswer>& tops) {
    sdk::Table table{"convergence",
                     "How sure these figures are (95 % intervals of the simulation)",
                     {{"top", "Top", ColumnType::reference, ""},
                      {"figure", "Figure", ColumnType::text, ""},
                      {"value", "Value", ColumnType::probability, ""},
                      {"low", "At least", ColumnType::probability, ""},
                      {"high", "At most", ColumnType::probability, ""},
                      {"half-width", "Half width", ColumnType::number, "%"}}};
    for (const TopAnswer& top : tops) {
        const std::pair<const char*, Estimate> figures[] = {{"mean", top.summary.mean},
                                                            {"5 %", top.summary.p5},
                                                            {"median", top.summary.median},
                                                            {"95 %", top.summary.p95}};
        for (const auto& [name, figure] : figures)
            table.rows.push_back(
                {top.target.id, std::string(name), figure.value, std::max(figure.low, 0.0),
                 figure.high,
                 figure.value > 0 ? Cell(50 * (figure.high - figure.low) / figure.value) : Cell()});
    }
    table.remark = "These intervals say how far the simulation has got; more samples make them "
                   "narrower. They say nothing about the numbers that went in.";
    return table;
}

sdk::Table inputTable(const project::Project& project, const reliability::UncertainInputs& inputs,
                      const reliability::Samples& samples, std::size_t count) {
    sdk::Table table{"inputs",
                     "The numbers that were drawn",
                     {{"number", "Number", ColumnType::text, ""},
                      {"distribution", "Distribution", ColumnType::text, ""},
                      {"unit", "Unit", ColumnType::text, ""},
                      {"point", "Point value", ColumnType::number, ""},
                      {"mean", "Mean", ColumnType::number, ""},
                      {"events", "Events that use it", ColumnType::text, ""},
                      {"cut", "Draws cut at 1", ColumnType::number, "%"}}};
    for (std::size_t i = 0; i < inputs.inputs().size(); ++i) {
        const reliability::UncertainInput& input = inputs.inputs()[i];
        const project::Quantity& quantity = *input.quantity;
        table.rows.push_back(
            {input.name, describe(quantity.uncertainty),
             std::string(project::facts(quantity.unit).symbol), quantity.value,
             reliability::mean(quantity.uncertainty), eventList(project, input.events),
             input.atMostOne
                 ? Cell(100.0 * static_cast<double>(samples.cut[i]) / static_cast<double>(count))
                 : Cell()});
    }
    return table;
}

sdk::Table runTable(const Wish& wish, std::size_t inputs) {
    const bool plain = wish.drawing.drawing == reliability::Drawing::plain;
    return {"simulation",
            "How it was done",
            {{"method", "Method", ColumnType::text, ""},
             {"samples", "Samples", ColumnType::integer, ""},
             {"seed", "Seed", ColumnType::integer, ""},
             {"inputs", "Uncertain numbers", ColumnType::integer, ""},
             {"common-causes", "Common causes", ColumnType::text, ""}},
            {{std::string(plain ? "Monte Carlo" : "Latin hypercube, 10 batches"),
              static_cast<std::int64_t>(wish.drawing.samples),
              static_cast<std::int64_t>(wish.drawing.seed), static_cast<std::int64_t>(inputs),
              std::string(wish.commonCauses ? "counted" : "not counted")}}};
}

void addCurves(std::vector<sdk::Series>& series, const sdk::tree::Target& target,
               const std::vector<double>& samples, reliability::Drawing drawing) {
    sdk::Series spread;
    spread.id = target.id + ".spread";
    spread.title = target.id + ": chance that its probability is at most x";
    spread.xTitle = "probability of the top event";
    spread.yTitle = "confidence";
    spread.yUnit = "%";
    std::vector<double> sorted = samples;
    std::sort(sorted.begin(), sorted.end());
    for (int percent = 1; percent <= 99; ++percent) {
        spread.x.push_back(reliability::percentile(sorted, percent / 100.0));
        spread.y.push_back(percent);
    }
    series.push_back(std::move(spread));

    const auto points = reliability::convergence(samples, drawing);
    const auto curve = [&](const char* id, const char* title, auto value) {
        sdk::Series one;
        one.id = fmt::format("{}.{}", target.id, id);
        one.title = fmt::format("{}: {}", target.id, title);
        one.xTitle = "samples";
        one.yTitle = "probability";
        for (const auto& point : points) {
            one.x.push_back(static_cast<double>(point.samples));
            one.y.push_back(value(point));
        }
        series.push_back(std::move(one));
    };
    curve("mean", "mean so far", [](const auto& point) { return point.mean.value; });
    curve("mean-low", "mean so far, lower limit", [](const auto& point) { return point.mean.low; });
    curve("mean-high", "mean so far, upper limit",
          [](const auto& point) { return point.mean.high; });
    curve("p95", "95 % point so far", [](const auto& point) { return point.p95; });
}

void addNotes(std::vector<sdk::Note>& notes, const std::vector<TopAnswer>& tops,
              const reliability::UncertainInputs& inputs, const reliability::Samples& samples,
              const Wish& wish) {
    notes.push_back({NoteKind::method,
                     "Each sample draws every uncertain number once and computes the top events "
                     "exactly. Events that name the same parameter or the same failure mode get "
                     "the same draw, as what is not known about one is not known about the others. "
                     "Random numbers: Philox4x32-10, a function of seed, number and sample, so "
                     "that the answer does not depend on the computer's threads."});
    notes.push_back({NoteKind::assumption,
                     "Lognormal: error factor = 95 % / median, z = 1.6448536. A draw above 1 for "
                     "what is a probability, a coverage or a share counts as 1."});
    notes.push_back({NoteKind::assumption,
                     "Different numbers are drawn independently of each other, and numbers without "
                     "a distribution stay at their point values."});
    for (std::size_t i = 0; i < inputs.inputs().size(); ++i) {
        const double share =
            static_cast<double>(samples.cut[i]) / static_cast<double>(wish.drawing.samples);
        if (share > 0.001)
            notes.push_back({NoteKind::warning,
                             fmt::format("{}: {:.2g} % of its draws were above 1 and counted as 1. "
                                         "Its distribution is too wide for a probability; a beta "
                                         "distribution cannot leave 0 to 1.",
                                         inputs.inputs()[i].name, 100 * share)});
    }
    if (inputs.inputs().empty())
        notes.push_back(
            {NoteKind::warning,
             "No number that counts here has a distribution: nothing was drawn, and the "
             "result is not certain but unexamined."});
    for (const TopAnswer& top : tops)
        if (top.summary.tailShare > kHeavyTail)
            notes.push_back(
                {NoteKind::warning,
                 fmt::format(
                     "{}: the largest thousandth of the samples makes {:.0f} % of the mean. "
                     "It hangs on a few draws, and its interval is too narrow: trust the "
                     "median and the 95 % point, or draw more.",
                     top.target.id, 100 * top.summary.tailShare)});
    if (wish.drawing.samples < kFewSamples)
        notes.push_back({NoteKind::warning,
                         fmt::format("{} samples are few: the 5 % and 95 % points rest on {} of "
                                     "them each.",
                                     wish.drawing.samples, wish.drawing.samples / 20)});
}

} // namespace cutwater::uncertainty_plugin
