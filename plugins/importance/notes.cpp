// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/importance/notes.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::importance_plugin {
namespace {

using sdk::NoteKind;

constexpr double kNotRare = 0.1;

} // namespace

void addReadingNotes(std::vector<sdk::Note>& notes, bool withFrequency) {
    const auto method = [&notes](const char* sentence) {
        notes.push_back({NoteKind::method, sentence});
    };
    method("Fussell-Vesely says how often this event is part of the reason when the top is there: "
           "repair or improve what stands high here. \"Union\" is the chance that at least one "
           "minimal cut set with the event occurs, divided by the chance of the top; \"sum of "
           "sets\" adds up the sets with the event and divides by the sum of all sets.");
    method("Risk achievement worth says how many times as likely the top is while this part is "
           "failed or taken out: guard what stands high here, and never take out two of them at "
           "once. Below 1: the top is less likely then.");
    method("Risk reduction worth says by what factor the top falls if this event cannot happen: "
           "\"beyond all numbers\" where nothing happens without it.");
    method("Birnbaum is the difference between the top with the event certain and impossible; it "
           "does not depend on the event's own probability. Criticality is Birnbaum times that "
           "probability, divided by the top's.");
    method("Differential importance: how a change of all probabilities by the same percentage "
           "shares out among the events. It is the one measure that may be added up over events.");
    if (withFrequency)
        method(
            "Frequency of the top: sum of Birnbaum times the frequency of each event, at the "
            "moment that the probabilities hold for; for its course see the analysis over-time.");
}

void addTopNotes(sdk::Result& result, const sdk::tree::Solved& solved, const Numbers& numbers,
                 const std::vector<reliability::EventImportance>& entries,
                 const std::vector<std::string>& initiatingIds) {
    const std::string& id = solved.target.id;
    const auto warn = [&](std::string sentence) {
        result.notes.push_back({NoteKind::warning, std::move(sentence)});
    };
    if (!initiatingIds.empty())
        warn(fmt::format("{} has initiating events ({}), which come and are over: the measures of "
                         "probability leave out every set with one of them. Use the table of the "
                         "frequency.",
                         id, fmt::join(initiatingIds, ", ")));
    const double sum = solved.solution.rareEventSum(numbers.q);
    if (sum > kNotRare)
        warn(fmt::format("{}: the sum of all sets is {:.3g}, above {}: \"sum of sets\" is no good "
                         "approximation of Fussell-Vesely here.",
                         id, sum, kNotRare));
    if (!solved.solution.coherent())
        warn(fmt::format("{} is not coherent: Fussell-Vesely is left out, \"sum of sets\" counts "
                         "prime implicants, and a negative Birnbaum marks an event that keeps the "
                         "top away.",
                         id));
    const auto without = static_cast<std::size_t>(
        std::count_if(entries.begin(), entries.end(),
                      [](const auto& entry) { return !entry.fussellVesely.has_value(); }));
    if (solved.solution.coherent() && without > 0)
        warn(fmt::format("{}: Fussell-Vesely as the union of sets is left out for {} of {} events, "
                         "because its diagrams grow too large; they are sorted by \"sum of sets\", "
                         "which needs none.",
                         id, without, entries.size()));
}

} // namespace cutwater::importance_plugin
