// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/draw_risk_command.h"

#include "app/cli/delivery.h"
#include "app/cli/progress.h"
#include "app/drawing/paint.h"
#include "app/drawing/risk_drawing.h"
#include "app/drawing/svg.h"
#include "models/project/index.h"

#include <fmt/format.h>

#include <cctype>

namespace cutwater::cli {
namespace {

std::string typeOf(const Call& call, const std::string& output) {
    if (const auto type = call.values.text("type")) return *type;
    const std::size_t dot = output.rfind('.');
    if (output.empty()) return "svg";
    std::string word = dot == std::string::npos ? "" : output.substr(dot + 1);
    for (char& c : word)
        c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return word;
}

int run(const Call& call, Context& context) {
    const std::string type = typeOf(call, context.globals.output);
    if (type != "svg" && type != "png" && type != "pdf")
        return usageError(fmt::format("--output {}: the name does not say what to draw; let it end "
                                      "in .svg, .png or .pdf, or give --type",
                                      context.globals.output),
                          context);
    const std::string& path = call.operands.front();
    const auto project = readProject(path, context);
    if (!project) return kFileHasErrors;
    const auto lettering = drawing::findLettering();
    if (!lettering) return reportEnding(sdk::Ending::failed, lettering.problems(), {}, context);
    const project::Index index(*project);
    worksheet::RiskPicture risks;
    {
        Progress progress(!context.globals.quiet);
        worksheet::RiskWish wish;
        const std::string what = call.values.text("what").value_or("both");
        wish.modes = what != "tops";
        wish.tops = what != "modes";
        wish.limits = {context.globals.memoryBytes, context.stop};
        wish.progress = [&](double share, const std::string& words) {
            progress.show(share, words);
        };
        risks = worksheet::placeRisks(*project, index, wish);
    }
    if (risks.cancelled)
        return reportEnding(sdk::Ending::cancelled,
                            {{project::Severity::error,
                              "cancelled while a top event was computed",
                              "start it again when there is time",
                              {},
                              0}},
                            shownName(path), context);
    const drawing::Picture picture = drawing::drawRisks(*project, risks, *lettering);
    if (type == "svg") return deliver(drawing::toSvg(picture), context);
    const auto bytes =
        type == "png"
            ? drawing::toPng(picture, static_cast<int>(call.values.integer("dpi").value_or(200)))
            : drawing::toPdf({picture}, picture.title);
    if (!bytes) return reportEnding(sdk::Ending::failed, bytes.problems(), {}, context);
    return deliver(*bytes, context);
}

} // namespace

Command drawRiskCommand() {
    Command command;
    command.name = "draw-risk";
    command.summary = "draw the risk matrix with what stands in it: SVG, PNG or PDF";
    command.operands = "FILE";
    command.details = "One sheet of A4. The same figures as `cutwater risk-matrix FILE`.";
    sdk::Parameter type;
    type.name = "type";
    type.type = sdk::ParameterType::choice;
    type.choices = {"svg", "png", "pdf"};
    type.sentence = "what to write; without it, the end of the name after --output says it";
    sdk::Parameter what;
    what.name = "what";
    what.type = sdk::ParameterType::choice;
    what.choices = {"both", "modes", "tops"};
    what.sentence = "place failure modes, top events, or both";
    sdk::Parameter dpi;
    dpi.name = "dpi";
    dpi.type = sdk::ParameterType::integer;
    dpi.minimum = drawing::kMinDpi;
    dpi.maximum = drawing::kMaxDpi;
    dpi.sentence = "dots per inch of a PNG; 200 where it is not given";
    command.options = {type, what, dpi};
    command.run = run;
    return command;
}

} // namespace cutwater::cli
