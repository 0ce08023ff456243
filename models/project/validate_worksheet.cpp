// SPDX-License-Identifier: GPL-3.0-or-later
// The rules for what only the worksheet needs: shares of a failure rate, actions, scales and the
// risk matrix.
#include "models/project/judge.h"

#include <cmath>
#include <fmt/format.h>
#include <map>
#include <set>

namespace cutwater::project {

namespace {

constexpr double kRounding = 1e-9; // alphas are typed in decimal
constexpr double kSameRate = 0.01; // alpha x lambda_p and a rate of its own: one fact, twice

void judgeShares(Judge& judge) {
    struct Sum {
        double alpha = 0;
        std::size_t modes = 0;
        int line = 0;
    };
    std::unordered_map<std::string_view, Sum> sums;
    for (const FailureMode& mode : judge.project.modes) {
        const Place place{"failure mode", mode.id, mode.line.number};
        if (mode.effectChance)
            judge.quantity(*mode.effectChance,
                           place.with("chance of the effect", mode.effectChance->line.number),
                           {Dimension::number}, Range::chance);
        if (!mode.ratio) continue;
        judge.quantity(*mode.ratio, place.with("mode ratio", mode.ratio->line.number),
                       {Dimension::number}, Range::chance);
        const Component* component = judge.index.component(mode.component);
        const Quantity* ratio = judge.index.resolved(*mode.ratio);
        if (!component || !ratio || !(ratio->value >= 0 && ratio->value <= 1)) continue;
        if (!component->failureRate) {
            judge.warn(place.with("mode ratio", mode.ratio->line.number),
                       fmt::format("the mode ratio of {} is a share of a failure rate that "
                                   "component {} does not have",
                                   place.words(), component->id),
                       "give the component its failure rate, or the mode a rate of its own");
            continue;
        }
        Sum& sum = sums[component->id];
        sum.alpha += ratio->value;
        ++sum.modes;
        sum.line = component->line.number;
        const Quantity* whole = judge.index.resolved(*component->failureRate);
        const Quantity* own = mode.model.find(Role::rate);
        own = own ? judge.index.resolved(*own) : nullptr;
        if (!whole || !own || facts(whole->unit).dimension != Dimension::rate ||
            facts(own->unit).dimension != Dimension::rate)
            continue;
        const double share = ratio->value * inBaseUnits(*whole);
        const double rate = inBaseUnits(*own);
        if (std::abs(share - rate) > kSameRate * std::max(share, rate))
            judge.warn(place.with("mode ratio", mode.ratio->line.number),
                       fmt::format("{} has a rate of its own, {:.3g} per hour, and its share of "
                                   "the failure rate of {} is {:.3g} per hour",
                                   place.words(), rate, component->id, share),
                       "make them agree, or take one away: the tree counts with the mode's own "
                       "rate");
    }
    for (const auto& component : judge.project.components) {
        const auto found = sums.find(component.id);
        if (found == sums.end() || found->second.alpha <= 1 + kRounding) continue;
        judge.warn({"component", component.id, component.line.number},
                   fmt::format("the mode ratios of component {} add up to {:.4g} over {} failure "
                               "modes; they are shares of one failure rate, so they can make at "
                               "most 1",
                               component.id, found->second.alpha, found->second.modes),
                   "lower them, or raise the failure rate of the component");
    }
}

void judgeActions(Judge& judge, const FailureMode& mode, const Place& place) {
    for (const Action& action : mode.actions) {
        const Place here = place.with("action", action.line.number);
        judge.date(action.due, here.with("due date of an action", 0));
        judge.date(action.doneOn, here.with("day of an action", 0));
        if (action.what.empty())
            judge.error(
                here, fmt::format("an action of {} does not say what is to be done", place.words()),
                "say it, or delete the action");
        const bool finished =
            action.state == ActionState::done || action.state == ActionState::proved;
        if (finished && action.doneOn.empty())
            judge.warn(here,
                       fmt::format("an action of {} is {} without a day", place.words(),
                                   word(action.state)),
                       "enter the day it was done on");
        if (action.state == ActionState::proved && action.proof.empty())
            judge.warn(
                here, fmt::format("an action of {} is proved, but nothing says how", place.words()),
                "say how it was shown that it helped, or set it to done");
        if (action.state == ActionState::dropped && action.proof.empty())
            judge.warn(here,
                       fmt::format("an action of {} is dropped without a reason", place.words()),
                       "say why");
    }
    if (mode.actions.empty() && (mode.severityAfter || mode.occurrenceAfter || mode.detectionAfter))
        judge.warn(place,
                   fmt::format("{} is rated after an action that it does not have", place.words()),
                   "enter the action, or take the ratings away");
}

void judgeModes(Judge& judge) {
    for (const FailureMode& mode : judge.project.modes) {
        const Place place{"failure mode", mode.id, mode.line.number};
        judge.rating(mode.severityAfter, place.with("severity rating after the action", 0));
        judge.rating(mode.occurrenceAfter, place.with("occurrence rating after the action", 0));
        judge.rating(mode.detectionAfter, place.with("detection rating after the action", 0));
        judge.date(mode.provedOn, place.with("day of the proof", 0));
        if (!mode.provedOn.empty() && mode.provedBy.empty())
            judge.warn(place,
                       fmt::format("{} was proved on {}, but nothing says by which test",
                                   place.words(), mode.provedOn),
                       "name the test, or delete the day");
        judgeActions(judge, mode, place);
    }
}

void judgeOrigins(Judge& judge) {
    for (const Component& component : judge.project.components) {
        const Place place{"component", component.id, component.line.number};
        if (component.failureRate)
            judge.quantity(*component.failureRate,
                           place.with("failure rate", component.failureRate->line.number),
                           {Dimension::rate, Dimension::time},
                           facts(component.failureRate->unit).dimension == Dimension::time
                               ? Range::positive
                               : Range::notNegative);
        if (!component.origin) continue;
        for (const auto& [id, part] : {std::pair{&component.origin->library, "library"},
                                       std::pair{&component.origin->type, "library type"}})
            if (!isWellFormedId(*id))
                judge.error(place.with(part, 0),
                            fmt::format("the {} of {} is not an id", part, place.words()),
                            "name it as the library does, or take the origin away");
    }
}

void judgeScale(Judge& judge, const std::vector<RatingLevel>& scale, const char* kind,
                bool limited) {
    std::map<int, const RatingLevel*> byRating;
    for (const RatingLevel& level : scale) {
        const Place place{kind, {}, level.line.number};
        if (!level.rating) {
            judge.error(place, fmt::format("a step of the {} has no rating", kind),
                        "rate it from 1 to 10");
            continue;
        }
        judge.rating(level.rating, place);
        if (!byRating.emplace(*level.rating, &level).second)
            judge.error(place, fmt::format("the {} has two steps rated {}", kind, *level.rating),
                        "keep one of them");
        if (level.limit && !limited)
            judge.warn(place, fmt::format("a step of the {} has a limit per year", kind),
                       "take it away: only the occurrence scale is held against frequencies");
        if (limited) judge.number(level.limit, place.with("limit", 0), Range::positive);
    }
    double before = 0;
    for (const auto& [rating, level] : byRating) {
        if (!limited || !level->limit || !(*level->limit > 0)) continue;
        if (*level->limit <= before)
            judge.error({kind, {}, level->line.number},
                        fmt::format("the limit of rating {} of the {} is {} per year, not above "
                                    "that of the rating before",
                                    rating, kind, *level->limit),
                        "let the limits rise with the ratings");
        before = *level->limit;
    }
}

void judgeAxis(Judge& judge, const std::vector<RiskLevel>& levels, const char* kind) {
    std::map<int, const RiskLevel*> byIndex;
    std::set<std::string_view> words;
    for (const RiskLevel& level : levels) {
        const Place place{kind, {}, level.line.number};
        if (!level.index) {
            judge.error(place, fmt::format("a {} of the risk matrix has no index", kind),
                        "number it");
            continue;
        }
        if (!byIndex.emplace(*level.index, &level).second)
            judge.error(place,
                        fmt::format("two of the risk matrix have the {} {}", kind, *level.index),
                        "keep one of them");
        if (!level.word.empty() && !words.insert(level.word).second)
            judge.error(place,
                        fmt::format("two of the risk matrix have the {} \"{}\"", kind, level.word),
                        "give each its own word");
        judge.number(level.value, place.with("value", 0), Range::positive);
    }
    double before = 0;
    for (const auto& [index, level] : byIndex) {
        if (!level->value || !(*level->value > 0)) continue;
        if (*level->value <= before)
            judge.error({kind, {}, level->line.number},
                        fmt::format("the value of the {} {} is {}, not above that of the one "
                                    "before",
                                    kind, index, *level->value),
                        "let the values rise with the index");
        before = *level->value;
    }
}

void judgeMatrix(Judge& judge) {
    const RiskMatrix& matrix = judge.project.worksheet.matrix;
    if (matrix.empty()) return;
    const Place place{"risk matrix", {}, matrix.line.number};
    if (matrix.frequencies.empty() || matrix.severities.empty())
        judge.error(place, "the risk matrix lacks one of its two axes",
                    "give it frequency levels and severity levels, or delete it: the IMO one then "
                    "counts");
    judgeAxis(judge, matrix.frequencies, "frequency index");
    judgeAxis(judge, matrix.severities, "severity index");
    std::set<int> from;
    for (const RiskBand& band : matrix.bands) {
        const Place here{"band", {}, band.line.number};
        if (!band.from)
            judge.error(here, "a band of the risk matrix does not say from which index on it holds",
                        "say it");
        else if (!from.insert(*band.from).second)
            judge.error(here, fmt::format("two bands of the risk matrix begin at {}", *band.from),
                        "keep one of them");
    }
    judge.source(matrix.source, place);
    std::set<std::string_view> words;
    for (const RiskLevel& level : matrix.severities)
        words.insert(level.word);
    const auto judgeWord = [&](const std::string& severity, const Place& where) {
        if (!severity.empty() && !words.contains(severity))
            judge.warn(where,
                       fmt::format("the severity of {} is \"{:.60}\", which the risk matrix does "
                                   "not have",
                                   where.words(), severity),
                       fmt::format("use one of: {}", fmt::join(words, "; ")));
    };
    for (const FailureMode& mode : judge.project.modes)
        judgeWord(mode.severity, {"failure mode", mode.id, mode.line.number});
    for (const TopEvent& top : judge.project.tops)
        judgeWord(top.severity, {"top event", top.id, top.line.number});
}

} // namespace

void judgeWorksheet(Judge& judge) {
    const Worksheet& worksheet = judge.project.worksheet;
    judgeOrigins(judge);
    judgeModes(judge);
    judgeShares(judge);
    if (worksheet.operatingTime)
        judge.quantity(*worksheet.operatingTime,
                       {"worksheet", {}, worksheet.operatingTime->line.number, "operating time"},
                       {Dimension::time}, Range::positive);
    judgeScale(judge, worksheet.severityScale, "severity scale", false);
    judgeScale(judge, worksheet.occurrenceScale, "occurrence scale", true);
    judgeScale(judge, worksheet.detectionScale, "detection scale", false);
    judgeMatrix(judge);
}

} // namespace cutwater::project
