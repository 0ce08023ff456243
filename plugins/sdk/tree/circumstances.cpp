// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/circumstances.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::sdk::tree {

using project::Assessment;
using project::Problem;
using project::Severity;

Parameter commonCauseParameter() {
    Parameter parameter;
    parameter.name = "common-cause";
    parameter.type = ParameterType::flag;
    parameter.standard = false;
    parameter.sentence = "count the common-cause groups of the project; without it their events "
                         "are taken as independent, and the figures are too low";
    return parameter;
}

Parameter assessmentParameter(const project::Project* project) {
    Parameter parameter;
    parameter.name = "assessment";
    parameter.sentence = "the plant as it is under this assessment (its events certain or "
                         "impossible) instead of its normal state";
    if (project)
        for (const Assessment& assessment : project->assessments)
            parameter.choices.push_back(assessment.id);
    return parameter;
}

project::Outcome<Circumstances> circumstancesOf(const project::Project& project,
                                                const Values& values) {
    Circumstances circumstances;
    circumstances.commonCauses = values.flag("common-cause");
    const auto wanted = values.text("assessment");
    if (!wanted) return circumstances;
    const auto found =
        std::find_if(project.assessments.begin(), project.assessments.end(),
                     [&](const Assessment& assessment) { return assessment.id == *wanted; });
    if (found == project.assessments.end()) {
        std::vector<std::string> ids;
        for (const Assessment& assessment : project.assessments)
            ids.push_back(assessment.id);
        const std::string near = nearest(*wanted, ids);
        return Problem{Severity::error, fmt::format("there is no assessment '{}'", *wanted),
                       ids.empty()    ? "add one to the project, or leave --assessment out"
                       : near.empty() ? fmt::format("name one of {}", fmt::join(ids, ", "))
                                      : fmt::format("try '{}'", near),
                       "", 0};
    }
    circumstances.assessment = &*found;
    for (const project::ForcedEvent& forced : found->forced)
        circumstances.forced[forced.event.id] = forced.state;
    return circumstances;
}

void addAssessmentNotes(Result& result, const Circumstances& circumstances) {
    if (!circumstances.assessment) return;
    const Assessment& assessment = *circumstances.assessment;
    result.title += fmt::format(" - NOT the normal state: under assessment {}", assessment.id);
    std::vector<std::string> certain, impossible;
    for (const auto& [id, state] : circumstances.forced)
        (state ? certain : impossible).push_back(id);
    std::string what;
    if (!certain.empty()) what += fmt::format("{} taken as certain", fmt::join(certain, ", "));
    if (!impossible.empty())
        what += fmt::format("{}{} taken as impossible", what.empty() ? "" : "; ",
                            fmt::join(impossible, ", "));
    const auto warn = [&result](std::string sentence) {
        result.notes.push_back({NoteKind::warning, std::move(sentence)});
    };
    warn(
        fmt::format("NOT THE NORMAL STATE. These figures hold under assessment {} \"{}\" ({}): {}. "
                    "Without --assessment they are those of the normal state.",
                    assessment.id, assessment.name, project::word(assessment.state),
                    what.empty() ? std::string("it forces no event") : what));
    if (assessment.duration)
        warn(fmt::format("The assessment holds for {:.6g} h. A probability or frequency here is "
                         "that of a moment while it holds; over a longer time the plant is not in "
                         "this state.",
                         project::inBaseUnits(*assessment.duration)));
    else
        warn("The assessment states no duration: nobody has said for how long this state is to "
             "last.");
    if (assessment.measures.empty())
        warn("The assessment states no compensating measure.");
    else
        warn(fmt::format("Its compensating measures count here only as far as they are events of "
                         "the tree: {}.",
                         fmt::join(assessment.measures, "; ")));
    warn("The tool lists what is lost. It does not say that a bypass is acceptable: that is for "
         "those who sign, and for the permit.");
}

} // namespace cutwater::sdk::tree
