// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/library/accept.h"

#include <algorithm>
#include <fmt/format.h>

namespace cutwater::library {

namespace {

project::Problem problem(std::string what, std::string remedy) {
    return {project::Severity::error, std::move(what), std::move(remedy), "library", 0};
}

void takeFact(project::FailureMode& here, const std::string& fact,
              const project::FailureMode& there) {
    if (fact == "name") here.name = there.name;
    if (fact == "causes") here.causes = there.causes;
    if (fact == "local effect") here.localEffect = there.localEffect;
    if (fact == "detection") here.detection = there.detection;
    if (fact == "checks") here.checks = there.checks;
    if (fact == "dormant") here.dormant = there.dormant;
    if (fact == "failure model") here.model = there.model;
}

} // namespace

project::Outcome<project::Project> acceptNews(const project::Project& project,
                                              const std::vector<Library>& libraries,
                                              const project::Id& id,
                                              const std::vector<News>& accepted) {
    project::Project made = project;
    const auto component =
        std::find_if(made.components.begin(), made.components.end(),
                     [&](const project::Component& each) { return each.id == id; });
    if (component == made.components.end())
        return problem(fmt::format("there is no component {:.128}", id),
                       "choose one that is there");
    if (!component->origin)
        return problem(fmt::format("component {} came from no library", id), "choose another one");
    const auto library = std::find_if(libraries.begin(), libraries.end(), [&](const Library& each) {
        return each.id == component->origin->library;
    });
    const ComponentType* type =
        library == libraries.end() ? nullptr : findType(*library, component->origin->type);
    if (!type)
        return problem(fmt::format("type {} of library {} is not at hand", component->origin->type,
                                   component->origin->library),
                       "add the library's file");
    const auto position = static_cast<std::size_t>(component - made.components.begin());
    for (const News& news : accepted) {
        if (news.component != position) continue;
        if (news.kind == NewsKind::modeAdded) {
            const Mode* mode = findMode(*type, news.mode);
            if (!mode) continue;
            project::FailureMode copy = copyOf(*mode, id);
            if (std::any_of(made.modes.begin(), made.modes.end(),
                            [&](const project::FailureMode& each) { return each.id == copy.id; }))
                return problem(fmt::format("there is a failure mode {} already", copy.id),
                               "change its id first");
            made.modes.push_back(std::move(copy));
            continue;
        }
        const auto mode =
            std::find_if(made.modes.begin(), made.modes.end(),
                         [&](const project::FailureMode& each) { return each.id == news.mode; });
        if (mode == made.modes.end()) continue;
        if (news.kind == NewsKind::modeGone) mode->libraryMode.clear();
        if (news.kind == NewsKind::differs)
            if (const Mode* there = findMode(*type, mode->libraryMode))
                takeFact(*mode, news.fact, there->facts);
    }
    component->origin->revision = type->revision;
    return made;
}

} // namespace cutwater::library
