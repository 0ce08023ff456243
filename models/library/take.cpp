// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/library/take.h"

#include "models/project/index.h"

#include <fmt/format.h>

namespace cutwater::library {

namespace {

project::Problem problem(std::string what, std::string remedy) {
    return {project::Severity::error, std::move(what), std::move(remedy), "library", 0};
}

} // namespace

project::FailureMode copyOf(const Mode& mode, const project::Id& component) {
    project::FailureMode copy = mode.facts;
    copy.libraryMode = mode.facts.id;
    copy.id = component + "." + mode.facts.id;
    copy.component = component;
    if (!mode.noRate.empty()) {
        if (!copy.remark.empty()) copy.remark += ' ';
        copy.remark += "No rate: " + mode.noRate;
    }
    return copy;
}

project::Outcome<project::Project> take(const project::Project& project, const Library& library,
                                        const ComponentType& type, const TakeWish& wish) {
    const project::Index index(project);
    if (!project::isWellFormedId(wish.id))
        return problem(fmt::format("\"{:.60}\" is not an id", wish.id),
                       "use up to 128 of the characters A-Z a-z 0-9 _ - . : / and start with a "
                       "letter, a digit or _");
    if (index.component(wish.id))
        return problem(fmt::format("there is a component {} already", wish.id),
                       "choose another id");
    if (!wish.parent.empty() && !index.component(wish.parent))
        return problem(
            fmt::format("there is no component {:.60} that it could be part of", wish.parent),
            "name one that is there, or none");
    project::Project made = project;
    project::Component component;
    component.id = wish.id;
    component.tag = wish.tag.empty() ? wish.id : wish.tag;
    component.name = wish.name.empty() ? type.name : wish.name;
    component.type = type.name;
    component.function = type.function;
    component.location = wish.location;
    component.parent = wish.parent;
    component.origin = project::LibraryOrigin{library.id, type.id, type.revision, {}};
    component.remark = type.remark;
    for (const Mode& mode : type.modes) {
        project::FailureMode copy = copyOf(mode, wish.id);
        if (index.mode(copy.id))
            return problem(fmt::format("there is a failure mode {} already", copy.id),
                           "choose another id for the component");
        made.modes.push_back(std::move(copy));
    }
    made.components.push_back(std::move(component));
    return made;
}

} // namespace cutwater::library
