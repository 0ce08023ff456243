// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/safety-function/request.h"

#include "plugins/sdk/tree/circumstances.h"
#include "plugins/sdk/tree/target.h"

namespace cutwater::safety_function_plugin {
namespace {

sdk::Parameter number(const char* name, const char* unit, double low, std::optional<double> high,
                      std::optional<double> standard, const char* sentence) {
    sdk::Parameter parameter;
    parameter.name = name;
    parameter.type = sdk::ParameterType::number;
    parameter.unit = unit;
    parameter.minimum = low;
    parameter.maximum = high;
    if (standard) parameter.standard = *standard;
    parameter.sentence = sentence;
    return parameter;
}

} // namespace

std::vector<sdk::Parameter> requestParameters(const project::Project* project) {
    sdk::Parameter top = sdk::tree::topParameter(project);
    top.sentence = "the tree of the protection's failure: a top event, or the gate that says that "
                   "the protection does not act";
    sdk::Parameter voting;
    voting.name = "voting";
    voting.type = sdk::ParameterType::choice;
    for (const reliability::Voting one : reliability::allVotings())
        voting.choices.emplace_back(reliability::word(one));
    voting.sentence = "how many of the channels must act, for the formulas of IEC 61508-6 Annex B";
    return {
        top,
        voting,
        number("rate", "/h", 0, {}, {}, "total failure rate of one channel, safe and dangerous"),
        number("dangerous-share", "", 0, 1, 0.5,
               "share of the rate that is dangerous; the tables of the standard take one half"),
        number("coverage", "", 0, 1, 0,
               "share of the dangerous failures that diagnostics see at once"),
        number("beta", "", 0, 1, 0, "share of the unseen dangerous failures of common cause"),
        number("beta-detected", "", 0, 1, {},
               "the same of those that diagnostics see; without it half of beta"),
        number("interval", "h", 1e-3, {}, {},
               "time between two proof tests; without it the longest "
               "test interval of the tree, or a year"),
        number("restoration", "h", 0, {}, 8,
               "mean time to restoration of what diagnostics see, for the formulas"),
        number("repair", "h", 0, {}, 8,
               "mean repair time of what the proof test finds, for the formulas"),
        sdk::tree::missionParameter(),
        sdk::tree::assessmentParameter(project)};
}

project::Outcome<Request> requestOf(const sdk::Values& values) {
    using project::Problem;
    using project::Severity;
    Request request;
    request.top = values.text("top");
    if (const auto voting = values.text("voting"))
        request.voting = reliability::votingFromWord(*voting);
    const auto rate = values.number("rate");
    if (!request.top && !request.voting)
        return Problem{Severity::error, "neither a tree nor a voting is given",
                       "give --top with the protection's failure, or --voting and --rate, or all "
                       "of them",
                       "", 0};
    if (request.voting && !rate)
        return Problem{Severity::error, "the formulas need the failure rate of one channel",
                       "give --rate, safe and dangerous failures together", "", 0};
    if (!request.voting && rate)
        return Problem{Severity::error, "the formulas need to know how the channels vote",
                       "give --voting", "", 0};
    reliability::ChannelData& channel = request.channel;
    channel.rate = rate.value_or(0);
    channel.dangerousShare = values.number("dangerous-share").value_or(0.5);
    channel.coverage = values.number("coverage").value_or(0);
    channel.beta = values.number("beta").value_or(0);
    channel.betaDetected = values.number("beta-detected");
    request.interval = values.number("interval");
    request.mission = values.number("mission");
    channel.interval = request.interval.value_or(8760);
    channel.restoration = values.number("restoration").value_or(8);
    channel.repair = values.number("repair").value_or(8);
    return request;
}

} // namespace cutwater::safety_function_plugin
