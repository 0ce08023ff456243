// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/redundancy/request.h"

#include <fmt/format.h>

namespace cutwater::redundancy_plugin {
namespace {

using project::Severity;
using sdk::Parameter;

Parameter text(const char* name, const char* sentence) {
    Parameter parameter;
    parameter.name = name;
    parameter.sentence = sentence;
    return parameter;
}

// "a, b c" to its words.
std::vector<std::string> splitList(const std::optional<std::string>& list) {
    std::vector<std::string> parts;
    std::string part;
    for (const char letter : list.value_or("") + ",") {
        if (letter != ',' && letter != ' ') {
            part += letter;
        } else if (!part.empty()) {
            parts.push_back(std::move(part));
            part.clear();
        }
    }
    return parts;
}

template <typename Things>
project::Problem unknown(const char* what, const std::string& id, const Things& things) {
    std::vector<std::string> known;
    for (const auto& thing : things)
        known.push_back(thing.id);
    const std::string near = sdk::nearest(id, known);
    return {Severity::error, fmt::format("there is no {} '{}'", what, id),
            near.empty() ? "name one of the project" : fmt::format("try '{}'", near), "", 0};
}

// By id or by tag; empty where there is none.
project::Id componentNamed(const project::Project& project, const std::string& name) {
    for (const project::Component& component : project.components)
        if (component.id == name) return component.id;
    for (const project::Component& component : project.components)
        if (component.tag == name) return component.id;
    return {};
}

} // namespace

std::vector<Parameter> requestParameters(const project::Project* project) {
    Parameter batteries;
    batteries.name = "batteries";
    batteries.type = sdk::ParameterType::choice;
    batteries.choices = {"carry-on", "run-flat"};
    batteries.standard = std::string("carry-on");
    batteries.sentence =
        "whether a source that is charged from its own medium lives on without its "
        "charger, or is dead with it";
    Parameter limit;
    limit.name = "limit";
    limit.type = sdk::ParameterType::integer;
    limit.minimum = 0;
    limit.maximum = 1e6;
    limit.standard = std::int64_t{20};
    limit.sentence = "path sets that are listed for each load";
    Parameter drawn =
        text("drawn", "the gate that says the same by hand; without it the gate whose "
                      "events are most alike, if any");
    drawn.type = sdk::ParameterType::topEvent;
    if (project)
        for (const project::Gate& gate : project->gates)
            drawn.choices.push_back(gate.id);
    return {text("load", "the component whose supply is traced, by id or tag; without it all that "
                         "are drawn with more than one way of supply"),
            drawn,
            text("breaks", "failure modes that break the path whatever their names say: ids with "
                           "commas between them"),
            text("passes", "failure modes that leave the path whole: ids with commas between them"),
            text("sources", "components that are sources besides those that the drawing shows: ids "
                            "or tags with commas between them"),
            batteries,
            limit};
}

project::Outcome<reliability::SupplyWish>
wishOf(const project::Project& project, const project::Index& index, const sdk::Values& values) {
    reliability::SupplyWish wish;
    project::Problems problems;
    for (const auto& [name, into] :
         {std::pair{"breaks", &wish.modes.breaks}, std::pair{"passes", &wish.modes.passes}})
        for (const std::string& id : splitList(values.text(name))) {
            if (!index.mode(id)) problems.push_back(unknown("failure mode", id, project.modes));
            into->insert(id);
        }
    for (const std::string& name : splitList(values.text("sources"))) {
        const project::Id id = componentNamed(project, name);
        if (id.empty()) problems.push_back(unknown("component", name, project.components));
        wish.sources.insert(id);
    }
    wish.batteriesRunFlat = values.text("batteries") == "run-flat";
    if (!problems.empty()) return problems;
    return wish;
}

project::Outcome<std::vector<reliability::SupplyLoad>>
loadsOf(const project::Project& project, const reliability::SupplyNetwork& network,
        const std::optional<std::string>& wish) {
    if (!wish) {
        auto loads = network.redundantLoads();
        if (loads.empty())
            return project::Problem{Severity::error,
                                    "no load is drawn with more than one way of supply",
                                    "name a load with --load, or draw the connections", "", 0};
        return loads;
    }
    const project::Id id = componentNamed(project, *wish);
    if (id.empty()) return unknown("component", *wish, project.components);
    auto loads = network.loadsAt(id);
    if (loads.empty())
        return project::Problem{Severity::error, fmt::format("nothing feeds {}", *wish),
                                "name a component at which a feed arrives", "component " + id, 0};
    return loads;
}

} // namespace cutwater::redundancy_plugin
