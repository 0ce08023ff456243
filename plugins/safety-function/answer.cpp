// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/safety-function/answer.h"

#include "plugins/sdk/tree/figures.h"

#include <fmt/format.h>

namespace cutwater::safety_function_plugin {
namespace {

using sdk::Cell;
using sdk::ColumnType;
using sdk::NoteKind;

constexpr double kLargeLoad = 0.1; // rate x interval above which first terms are not enough
constexpr double kFarApart = 2;    // tree against formulas

// Better than level 4 there is no claim to make.
constexpr double kBestOnDemand = 1e-5, kBestPerHour = 1e-9;

std::string band(double value, double best, int level) {
    return value < best ? "below the SIL 4 band" : reliability::bandText(level);
}

void addRow(sdk::Result& result, std::string way, double onDemand, double perHour, Cell tolerance,
            std::string how) {
    result.tables[0].rows.push_back(
        {std::move(way), onDemand,
         band(onDemand, kBestOnDemand, reliability::levelOnDemand(onDemand)), perHour,
         band(perHour, kBestPerHour, reliability::levelPerHour(perHour)), std::move(tolerance),
         std::move(how)});
}

void warn(sdk::Result& result, std::string sentence) {
    result.notes.push_back({NoteKind::warning, std::move(sentence)});
}

Cell whole(std::size_t value) {
    return static_cast<std::int64_t>(value);
}

} // namespace

sdk::Table figureTable() {
    return {"figures",
            "Tree and formulas side by side",
            {{"way", "Found by", ColumnType::text, ""},
             {"on-demand", "Fails on demand (mean)", ColumnType::probability, ""},
             {"band-on-demand", "Low demand", ColumnType::text, ""},
             {"per-hour", "Dangerous failures", ColumnType::number, "/h"},
             {"band-per-hour", "High demand", ColumnType::text, ""},
             {"fault-tolerance", "Faults tolerated", ColumnType::integer, ""},
             {"how", "How", ColumnType::text, ""}},
            {},
            "A band is where a random-failure figure falls, and no safety integrity level: see the "
            "notes. Low demand: asked for at most once a year; otherwise high demand. Below the "
            "SIL 4 band the standard knows no better claim."};
}

sdk::Table bandTable() {
    return {"bands",
            "The bands (IEC 61508-1, tables 2 and 3, from memory)",
            {{"level", "SIL", ColumnType::integer, ""},
             {"on-demand-from", "On demand from", ColumnType::number, ""},
             {"on-demand-below", "below", ColumnType::number, ""},
             {"per-hour-from", "Per hour from", ColumnType::number, "/h"},
             {"per-hour-below", "below", ColumnType::number, "/h"}},
            {{std::int64_t{4}, 1e-5, 1e-4, 1e-9, 1e-8},
             {std::int64_t{3}, 1e-4, 1e-3, 1e-8, 1e-7},
             {std::int64_t{2}, 1e-3, 1e-2, 1e-7, 1e-6},
             {std::int64_t{1}, 1e-2, 1e-1, 1e-6, 1e-5}}};
}

void addFormulas(sdk::Result& result, const Request& request) {
    const reliability::ChannelData& channel = request.channel;
    const auto figures = reliability::safetyFigures(*request.voting, channel);
    const std::string voting(reliability::word(*request.voting));
    const double betaSeen = channel.betaDetected.value_or(channel.beta / 2);
    addRow(result, "formulas, " + voting, figures.onDemand, figures.perHour,
           whole(static_cast<std::size_t>(reliability::faultTolerance(*request.voting))),
           "IEC 61508-6:2000 Annex B");
    sdk::Table terms{"terms",
                     "What the formulas were given and what they give",
                     {{"term", "Term", ColumnType::text, ""},
                      {"value", "Value", ColumnType::number, ""},
                      {"unit", "Unit", ColumnType::text, ""}}};
    const auto term = [&terms](const char* name, double value, const char* unit) {
        terms.rows.push_back({std::string(name), value, std::string(unit)});
    };
    term("total rate of a channel", channel.rate, "/h");
    term("dangerous, unseen by diagnostics", channel.undetected(), "/h");
    term("dangerous, seen by diagnostics", channel.detected(), "/h");
    term("beta", channel.beta, "");
    term("beta of what is seen", betaSeen, "");
    term("interval between proof tests", channel.interval, "h");
    term("restoration of what is seen", channel.restoration, "h");
    term("repair of what the test finds", channel.repair, "h");
    term("mean down time of a channel", figures.channelDown, "h");
    term("mean down time of the voted group", figures.groupDown, "h");
    term("fails on demand, independent failures", figures.independent, "");
    term("fails on demand, common cause", figures.commonCause, "");
    result.tables.push_back(std::move(terms));

    result.notes.push_back(
        {NoteKind::method,
         "Formulas: IEC 61508-6 Annex B, first edition (2000), from memory, for one group of equal "
         "channels. The heading rate of that edition is the total of a channel, of which half is "
         "dangerous unless --dangerous-share says otherwise; the 2010 edition heads its tables "
         "with the dangerous rate and adds a factor to 1oo2D. A whole function is the sum of "
         "sensors, logic and final elements."});
    result.notes.push_back(
        {NoteKind::assumption,
         "Per hour, 1oo1 and 2oo2: what diagnostics see brings the plant to its safe state at "
         "once, and the alarm is not ignored."});
    const double load = channel.dangerous() * channel.interval;
    if (load > kLargeLoad)
        warn(result,
             fmt::format("Dangerous rate x interval is {:.2g}: the formulas are the first terms of "
                         "a series and too high by some ten per cent and more above {}. Test more "
                         "often, or use the tree.",
                         load, kLargeLoad));
    if (reliability::channelsOf(*request.voting) > 1 && channel.beta == 0)
        warn(result, "Beta is 0: nothing ever takes two channels at once. Nobody will believe it; "
                     "common values are 0.02 to 0.2.");
    if (*request.voting == reliability::Voting::twoOfTwo && channel.beta > 0)
        result.notes.push_back({NoteKind::method,
                                "2oo2: both channels are needed, so that a common cause adds "
                                "nothing, and the formula has no beta."});
}

void addTree(sdk::Result& result, const project::Project& project, const Request& request,
             const TreeFigures& figures) {
    const std::string period = fmt::format("mean over {:.6g} h", figures.period);
    const Cell tolerance = figures.smallestSet > 0 ? whole(figures.smallestSet - 1) : Cell();
    const std::string& id = figures.target.id;
    const reliability::PeriodFigures& plain = figures.independent;
    addRow(result, fmt::format("tree {}, independent", id), plain.meanUnavailability,
           plain.meanFrequency, tolerance, period);
    if (figures.common)
        addRow(result, fmt::format("tree {}, with common causes", id),
               figures.common->meanUnavailability, figures.common->meanFrequency, tolerance,
               period);
    const reliability::PeriodFigures& best = figures.common ? *figures.common : plain;

    sdk::Series curve;
    curve.id = "unavailability";
    curve.title = id + ": chance that it would not act, over the test interval";
    curve.xTitle = "time since all tests";
    curve.xUnit = "h";
    curve.yTitle = "fails on demand";
    for (const reliability::CurvePoint& point : best.curve) {
        curve.x.push_back(point.time);
        curve.y.push_back(point.unavailability);
    }
    result.series.push_back(std::move(curve));

    result.notes.push_back(
        {NoteKind::method,
         fmt::format("Tree: the chance that {} is there, exact at every moment and integrated over "
                     "{:.6g} h from test to test; all tests begin together at hour 0 unless the "
                     "models say otherwise. Per hour: the mean of its frequency (Vesely 1970). Its "
                     "worst moment is {:.6g} h with {:.3g}.",
                     id, figures.period, best.worst.time, best.worst.unavailability)});
    result.notes.push_back(
        {NoteKind::assumption,
         fmt::format("Every event below {} is a dangerous failure of the protection. Where it also "
                     "holds the demand (the water is low), or spurious trips, the figure means "
                     "something else: ask about the gate of the protection alone.",
                     id)});
    if (figures.smallestSet > 0)
        result.notes.push_back(
            {NoteKind::method,
             fmt::format("Faults tolerated by the tree: its smallest set without common causes has "
                         "{} event{}, so one fault less is tolerated. A bypass counts as a fault.",
                         figures.smallestSet, figures.smallestSet == 1 ? "" : "s")});
    if (!figures.common && !project.commonCauses.empty())
        warn(result, fmt::format("No common-cause group has two members below {}: the redundancy "
                                 "in it counts as perfect.",
                                 id));
    if (project.commonCauses.empty())
        warn(result, "The project has no common-cause group: redundancy counts as perfect.");
    if (!figures.coherent)
        warn(result,
             fmt::format("{} is not coherent (an event that does not occur can bring it "
                         "about): a protection's tree should not be. Its figure per hour is "
                         "a lower bound.",
                         id));
    if (figures.ignoresOrder)
        warn(result, fmt::format("{} has a priority-and gate: order was ignored, the figures are "
                                 "upper bounds.",
                                 id));
    if (!figures.longer.empty())
        warn(result,
             fmt::format("Tested less often than every {:.6g} h: {}. The mean over so short "
                         "a period is too good for them; leave --interval out.",
                         figures.period, sdk::tree::idList(project, figures.longer)));
    if (!figures.mixedGroups.empty())
        warn(result, fmt::format("The members of {} have models of different kinds: their common "
                                 "cause is a share of the first member's model.",
                                 fmt::join(figures.mixedGroups, ", ")));
    if (!figures.coherent || figures.ignoresOrder) result.exactness = sdk::Exactness::bounded;
    for (const std::string& sentence : figures.warnings)
        warn(result, sentence);

    if (!request.voting) return;
    const double formula = reliability::safetyFigures(*request.voting, request.channel).onDemand;
    const double tree = best.meanUnavailability;
    if (formula > 0 && tree > 0 && (tree > kFarApart * formula || formula > kFarApart * tree))
        warn(result, fmt::format("Tree ({:.2g}) and formulas ({:.2g}) are far apart. The formulas "
                                 "know one group of equal channels; the tree knows what is drawn. "
                                 "Find out which part makes the difference before either is used.",
                                 tree, formula));
    const auto tolerated = static_cast<std::size_t>(reliability::faultTolerance(*request.voting));
    if (figures.smallestSet > 0 && figures.smallestSet - 1 < tolerated)
        warn(result, fmt::format("The voting should tolerate {} fault{}, the tree tolerates {}: "
                                 "something is shared by the channels.",
                                 tolerated, tolerated == 1 ? "" : "s", figures.smallestSet - 1));
}

void addScope(std::vector<sdk::Note>& notes) {
    notes.push_back(
        {NoteKind::caution,
         "Not covered here: systematic capability (specification, software, installation, "
         "maintenance by the wrong drawing), the architectural limits of the standard (safe "
         "failure "
         "fraction), whether the protection is fast enough, and all its other requirements. A "
         "figure in a band is not a safety integrity level, and no figure replaces the judgement "
         "of "
         "a competent person."});
    notes.push_back(
        {NoteKind::caution,
         "A protection that is bypassed, or whose proof test is not done, does not have "
         "these figures."});
}

} // namespace cutwater::safety_function_plugin
