// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/draw_command.h"

#include "app/cli/delivery.h"
#include "app/cli/drawing_files.h"
#include "app/cli/progress.h"
#include "app/drawing/diagram.h"
#include "app/drawing/paint.h"
#include "models/project/index.h"
#include "models/reliability/event_model.h"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <ostream>
#include <variant>

namespace cutwater::cli {
namespace {

using project::Project;
using project::TopEvent;
using sdk::Parameter;
using sdk::ParameterType;

constexpr std::int64_t kStandardSheets = 500;

// A value, or the sentence of a usage error.
template <typename T>
using OrMistake = std::variant<T, std::string>;

OrMistake<DrawingType> typeOf(const Call& call, const std::string& output) {
    std::string word;
    if (const auto type = call.values.text("type")) {
        word = *type;
    } else if (const std::size_t dot = output.rfind('.');
               dot != std::string::npos && output.find('/', dot) == std::string::npos) {
        word = output.substr(dot + 1);
        for (char& c : word)
            c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    }
    if (word == "svg" || (word.empty() && output.empty())) return DrawingType::svg;
    if (word == "pdf") return DrawingType::pdf;
    if (word == "png") return DrawingType::png;
    return fmt::format("--output {}: the name does not say what to draw; let it end in .svg, .pdf "
                       "or .png, or give --type",
                       output);
}

OrMistake<std::vector<TopEvent>> topsOf(const Call& call, const Project& project) {
    const project::Index index(project);
    const auto wanted = call.values.text("top");
    if (!wanted) {
        if (project.tops.empty())
            return std::string("the file has no top event; name a gate with --top ID");
        return project.tops;
    }
    if (const TopEvent* top = index.top(*wanted)) return std::vector<TopEvent>{*top};
    const project::Gate* gate = index.gate(*wanted);
    const project::Event* event = index.event(*wanted);
    if (gate || event) {
        TopEvent made;
        made.id = *wanted;
        made.name = gate ? gate->name : event->name;
        made.node.id = *wanted;
        return std::vector<TopEvent>{made};
    }
    std::vector<std::string> known;
    for (const TopEvent& top : project.tops)
        known.push_back(top.id);
    for (const project::Gate& one : project.gates)
        known.push_back(one.id);
    const std::string near = sdk::nearest(*wanted, known);
    return fmt::format("--top {}: there is no such top event, gate or event{}", *wanted,
                       near.empty() ? "; `cutwater list FILE` shows the top events"
                                    : fmt::format("; did you mean {}?", near));
}

OrMistake<std::set<project::Id>> markedOf(const Call& call, const Project& project) {
    const project::Index index(project);
    std::set<project::Id> marked;
    std::string id;
    for (const char c : call.values.text("mark").value_or("") + ",") {
        if (c != ',' && c != ' ') {
            id += c;
            continue;
        }
        if (!id.empty() && !index.gate(id) && !index.event(id))
            return fmt::format("--mark {}: there is no such event or gate", id);
        if (!id.empty()) marked.insert(id);
        id.clear();
    }
    return marked;
}

void addProbabilities(const Call& call, const Project& project, drawing::Wishes& wishes,
                      Context& context) {
    const project::Index index(project);
    std::optional<double> mission;
    if (call.values.has("mission")) mission = call.values.number("mission");
    std::size_t blank = 0;
    for (const project::Event& event : project.events) {
        if (event.kind == project::EventKind::house) continue; // its state stands in it
        const auto probability = reliability::probabilityOf(project, index, event, mission);
        if (probability)
            wishes.values[event.id] = fmt::format("{:.2e}", probability->value);
        else
            ++blank;
    }
    wishes.valuesRemark = "number: probability of the event, an estimate with wide limits";
    if (mission) wishes.valuesRemark += fmt::format(", mission {:g} h", *mission);
    if (blank > 0 && !context.globals.quiet)
        context.err << fmt::format("{} event{} no probability and stay{} without a number; the "
                                   "analysis `probability` says why.\n",
                                   blank, blank == 1 ? " has" : "s have", blank == 1 ? "s" : "");
}

OrMistake<drawing::Wishes> wishesOf(const Call& call, const Project& project, Context& context) {
    drawing::Wishes wishes;
    if (call.values.text("paper").value_or("A4") == "A3") wishes.paper = drawing::Paper::a3;
    const std::string orientation = call.values.text("orientation").value_or("auto");
    if (orientation == "portrait") wishes.orientation = drawing::Orientation::portrait;
    if (orientation == "landscape") wishes.orientation = drawing::Orientation::landscape;
    wishes.maxSheets =
        static_cast<std::size_t>(call.values.integer("max-sheets").value_or(kStandardSheets));
    auto marked = markedOf(call, project);
    if (const auto* mistake = std::get_if<std::string>(&marked)) return *mistake;
    wishes.marked = std::get<std::set<project::Id>>(std::move(marked));
    if (call.values.flag("probabilities")) addProbabilities(call, project, wishes, context);
    return wishes;
}

std::string unknownLayout(const std::string& id, const sdk::Host& host) {
    std::vector<std::string> known;
    for (const sdk::PluginFacts& facts : host.plugins())
        if (facts.kind == sdk::PluginKind::layout) known.push_back(facts.id);
    if (known.empty())
        return fmt::format("--layout {}: no layout plug-in is there; install the program whole",
                           id);
    return fmt::format("--layout {}: there is no such layout; there is {}", id,
                       fmt::join(known, ", "));
}

// Keeps the one sheet that was asked for.
std::string keepSheet(const Call& call, std::vector<drawing::Diagram>& diagrams) {
    if (!call.values.has("sheet")) return {};
    const std::int64_t wanted = call.values.integer("sheet").value_or(1);
    if (diagrams.size() > 1) return "--sheet needs one tree: name it with --top ID";
    std::vector<drawing::Sheet>& sheets = diagrams.front().sheets;
    if (wanted < 1 || static_cast<std::size_t>(wanted) > sheets.size())
        return fmt::format("--sheet {}: the tree of {} has {} sheet{}", wanted,
                           diagrams.front().top, sheets.size(), sheets.size() == 1 ? "" : "s");
    sheets = {std::move(sheets[static_cast<std::size_t>(wanted) - 1])};
    return {};
}

int run(const Call& call, Context& context) {
    const auto type = typeOf(call, context.globals.output);
    if (const auto* mistake = std::get_if<std::string>(&type)) return usageError(*mistake, context);
    const std::string layoutId = call.values.text("layout").value_or("graphviz-layout");
    if (!context.host.find(sdk::PluginKind::layout, layoutId))
        return usageError(unknownLayout(layoutId, context.host), context);
    const sdk::Layout* layout = context.host.layout(layoutId);
    if (!layout) {
        if (!context.host.rejected().empty())
            context.err << "cutwater: " << context.host.rejected().back().sentence << '\n';
        return kFileHasErrors;
    }
    const std::string& path = call.operands.front();
    const auto project = readProject(path, context);
    if (!project) return kFileHasErrors;
    const auto tops = topsOf(call, *project);
    if (const auto* mistake = std::get_if<std::string>(&tops)) return usageError(*mistake, context);
    const auto wishes = wishesOf(call, *project, context);
    if (const auto* mistake = std::get_if<std::string>(&wishes))
        return usageError(*mistake, context);
    const auto lettering = drawing::findLettering();
    if (!lettering) return reportEnding(sdk::Ending::failed, lettering.problems(), {}, context);

    std::vector<drawing::Diagram> diagrams;
    {
        Progress progress(!context.globals.quiet);
        sdk::Job job;
        job.stop = context.stop;
        job.memoryBytes = context.globals.memoryBytes;
        job.progress = [&](double share, const std::string& what) { progress.show(share, what); };
        for (const TopEvent& top : std::get<std::vector<TopEvent>>(tops)) {
            auto answer = drawing::draw(*project, top, std::get<drawing::Wishes>(wishes),
                                        *lettering, *layout, job);
            if (!answer.content)
                return reportEnding(answer.ending, answer.problems, shownName(path), context);
            diagrams.push_back(std::move(*answer.content));
        }
    }
    if (const std::string mistake = keepSheet(call, diagrams); !mistake.empty())
        return usageError(mistake, context);
    const DrawingType kind = std::get<DrawingType>(type);
    const std::vector<DrawingFile> files = drawingFiles(context.globals.output, kind, diagrams);
    if (context.globals.output.empty() && files.size() != 1)
        return usageError(fmt::format("this makes {} files; say where they go with --output "
                                      "NAME.pdf, or pick one with --top ID and --sheet N",
                                      files.size()),
                          context);
    const int dpi = static_cast<int>(call.values.integer("dpi").value_or(200));
    return writeDrawings(files, kind, dpi, project->name, context);
}

Parameter choice(std::string name, std::vector<std::string> choices, std::string sentence) {
    Parameter parameter;
    parameter.name = std::move(name);
    parameter.type = ParameterType::choice;
    parameter.choices = std::move(choices);
    parameter.sentence = std::move(sentence);
    return parameter;
}

Parameter whole(std::string name, double minimum, double maximum, std::string sentence) {
    Parameter parameter;
    parameter.name = std::move(name);
    parameter.type = ParameterType::integer;
    parameter.minimum = minimum;
    parameter.maximum = maximum;
    parameter.sentence = std::move(sentence);
    return parameter;
}

Parameter other(std::string name, ParameterType type, std::string sentence) {
    Parameter parameter;
    parameter.name = std::move(name);
    parameter.type = type;
    parameter.sentence = std::move(sentence);
    return parameter;
}

std::vector<Parameter> options() {
    Parameter mission = other("mission", ParameterType::number,
                              "with --probabilities: the mission time of models that have none of "
                              "their own");
    mission.unit = "h";
    mission.minimum = 0;
    return {
        other("top", ParameterType::topEvent,
              "draw this top event, or the tree below this gate; without it, all top events"),
        choice("type", {"svg", "pdf", "png"},
               "what to write; without it, the end of the name after --output says it"),
        choice("paper", {"A4", "A3"}, "size of the sheets; A4 where it is not given"),
        choice("orientation", {"auto", "portrait", "landscape"},
               "auto takes the one that needs fewer sheets"),
        whole("dpi", drawing::kMinDpi, drawing::kMaxDpi,
              "dots per inch of a PNG; 200 where it is not given"),
        whole("sheet", 1, 1e6, "only this sheet"),
        other("probabilities", ParameterType::flag, "write each event's probability under it"),
        std::move(mission),
        other("mark", ParameterType::text,
              "events and gates to draw heavy, by id, with commas: a cut set"),
        whole("max-sheets", 1, 20000, "refuse a tree that needs more sheets; 500 where not given"),
        other("layout", ParameterType::text,
              "the layout plug-in; graphviz-layout where it is not given"),
    };
}

} // namespace

Command drawCommand() {
    Command command;
    command.name = "draw";
    command.summary = "draw the fault trees on sheets that can be printed: SVG, PDF or PNG";
    command.operands = "FILE";
    command.details =
        "Draws every top event, or the one named by --top, with the distinctive shapes of IEC "
        "61025. A tree that is too large for one sheet goes on on others: a triangle with a number "
        "says on which. Printed type is never below 6.5 points.\n\n"
        "With several sheets, SVG and PNG become numbered files (x-1.svg, x-2.svg); a PDF holds "
        "all sheets of its tree. With several trees the id of the top event becomes part of the "
        "name (x-T1.pdf). The names are printed. Without --output a single file goes to standard "
        "output.";
    command.options = options();
    command.run = run;
    return command;
}

} // namespace cutwater::cli
