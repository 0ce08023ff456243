// SPDX-License-Identifier: GPL-3.0-or-later
// A component of a type from a library into a project, and what the library says today about those
// that were taken.
#pragma once

#include "models/library/library.h"

#include <string>
#include <vector>

namespace cutwater::library {

struct TakeWish {
    project::Id id;       // of the new component; modes become ID.MODE
    std::string tag;      // empty: the id
    std::string name;     // empty: the type's
    std::string location; // may be empty
    project::Id parent;   // may be empty
};

// The project with the component and its failure modes. Each remembers where it came from; numbers
// come with their sources. Problems: the id is no id or taken; there is no such parent; a mode's id
// is taken.
project::Outcome<project::Project> take(const project::Project& project, const Library& library,
                                        const ComponentType& type, const TakeWish& wish);

// A failure mode of the type as one of the component: its id is COMPONENT.MODE.
project::FailureMode copyOf(const Mode& mode, const project::Id& component);

enum class NewsKind {
    libraryMissing, // no library of that id is at hand
    typeGone,       // the library no longer has the type
    revision,       // the type has another revision than the one that was taken
    modeAdded,      // the library has a failure mode that the component has not
    modeGone,       // the component has one from the library that is no longer there
    differs,        // a fact of a mode is not what the library says now
};

struct News {
    NewsKind kind = NewsKind::revision;
    std::size_t component = 0; // position in project.components
    project::Id mode;          // of the project or, where it was added, of the library
    std::string fact;          // "local effect", "failure model"; empty where it is of the whole
    std::string here, there;   // in the project and in the library, in words
};

// What moved on, in the order of the project. A component whose revision is the library's own is
// not held against it fact by fact: what differs there, the user has changed himself.
std::vector<News> newsOf(const project::Project& project, const std::vector<Library>& libraries);

// The failure model in one line: "mission, rate 1e-06 /h, lognormal median 1e-06 EF 3 (WASH-1400,
// from memory)".
std::string inWords(const project::FailureModel& model);

} // namespace cutwater::library
