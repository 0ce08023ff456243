// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/report_content.h"

#include "app/drawing/svg.h"
#include "models/project/index.h"
#include "models/reliability/event_model.h"
#include "plugins/sdk/guard.h"

#include <fmt/format.h>

namespace cutwater::paper {
namespace {

constexpr std::int64_t kRows = 100; // of lists that can have millions

std::string words(const sdk::Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) return *text;
    if (const auto* whole = std::get_if<std::int64_t>(&value)) return fmt::format("{}", *whole);
    if (const auto* real = std::get_if<double>(&value)) return fmt::format("{:.6g}", *real);
    return std::get<bool>(value) ? "yes" : "no";
}

} // namespace

const std::vector<std::string>& standardAnalyses() {
    static const std::vector<std::string> ids{"probability", "single-failures", "cut-sets"};
    return ids;
}

sdk::Values standardValues(const std::vector<sdk::Parameter>& parameters,
                           const project::Project& project) {
    sdk::Values values;
    for (const sdk::Parameter& parameter : parameters) {
        if (parameter.name == "common-cause" && parameter.type == sdk::ParameterType::flag &&
            !project.commonCauses.empty())
            values.set(parameter.name, true);
        if (parameter.name == "limit" && parameter.type == sdk::ParameterType::integer)
            values.set(parameter.name, kRows);
    }
    return values;
}

std::vector<std::pair<std::string, std::string>>
shownValues(const std::vector<sdk::Parameter>& parameters, const sdk::Values& values) {
    std::vector<std::pair<std::string, std::string>> shown;
    for (const sdk::Parameter& parameter : parameters) {
        const sdk::Value* const value = values.find(parameter.name);
        if (!value || (std::holds_alternative<bool>(*value) && !std::get<bool>(*value))) continue;
        std::string text = words(*value);
        if (!parameter.unit.empty()) text += " " + parameter.unit;
        shown.emplace_back(parameter.name, std::move(text));
    }
    return shown;
}

std::string methodOf(const sdk::PluginFacts& facts) {
    return fmt::format("{}, version {} ({})", facts.title, facts.version, facts.id);
}

sdk::Answer<sdk::ReportPart> computePart(const sdk::Analysis& analysis,
                                         const sdk::PluginFacts& facts,
                                         const project::Project& project, const sdk::Values& given,
                                         const sdk::Job& job) {
    using Answer = sdk::Answer<sdk::ReportPart>;
    const auto parameters = sdk::parametersOf(analysis, facts, &project);
    if (!parameters) return Answer::failed(parameters.problems());
    const auto values = sdk::complete(*parameters, given);
    if (!values) return Answer::failed(values.problems());
    auto answer = sdk::runGuarded(analysis, facts, project, *values, job);
    if (!answer.content) return {answer.ending, {}, std::move(answer.problems)};
    sdk::ReportPart part;
    part.title = answer.content->title;
    part.result = std::move(*answer.content);
    part.method = methodOf(facts);
    part.parameters = shownValues(*parameters, *values);
    return Answer::of(std::move(part));
}

sdk::Answer<std::vector<sdk::ReportDrawing>>
drawTrees(const project::Project& project, const sdk::Layout& layout, const sdk::Job& job) {
    using Answer = sdk::Answer<std::vector<sdk::ReportDrawing>>;
    const auto lettering = drawing::findLettering();
    if (!lettering) return Answer::failed(lettering.problems());
    drawing::Wishes wishes;
    const project::Index index(project);
    for (const project::Event& event : project.events)
        if (event.kind != project::EventKind::house)
            if (const auto p = reliability::probabilityOf(project, index, event, std::nullopt))
                wishes.values[event.id] = fmt::format("{:.2e}", p->value);
    wishes.valuesRemark = "number: probability of the event, an estimate with wide limits";
    std::vector<sdk::ReportDrawing> drawings;
    for (const project::TopEvent& top : project.tops) {
        const auto diagram = drawing::draw(project, top, wishes, *lettering, layout, job);
        if (!diagram.content) return {diagram.ending, {}, diagram.problems};
        for (const drawing::Sheet& sheet : diagram.content->sheets)
            drawings.push_back({fmt::format("{} {}, sheet {} of {}", top.id, top.name, sheet.number,
                                            diagram.content->sheets.size()),
                                drawing::toSvg(sheet.picture), sheet.picture.width,
                                sheet.picture.height});
    }
    return Answer::of(std::move(drawings));
}

} // namespace cutwater::paper
