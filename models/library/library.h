// SPDX-License-Identifier: GPL-3.0-or-later
// A library of component types: how parts of a kind fail, what to look at, and the rates that
// public sources give. A value; files are read and written by models/document.
#pragma once

#include "models/project/project.h"

#include <string>
#include <vector>

namespace cutwater::library {

// A failure mode of a type. `facts` is a mode whose id is unique in the type ("fouled") and which
// has no component. Either its failure model has numbers with their source, or `noRate` says why it
// has none: a rate without a public source is left empty, not invented.
struct Mode {
    project::FailureMode facts;
    std::string noRate;
    project::SourceLine line;
    project::Kept kept;
    bool operator==(const Mode&) const = default;
};

struct ComponentType {
    project::Id id;       // "solenoid-valve"
    std::string name;     // "solenoid valve"
    std::string group;    // "burner", "fuel", "water and steam", "air", "control"
    std::string function; // what such a part is there for
    std::string revision; // raised whenever anything about the type changes
    std::string remark;
    std::vector<Mode> modes;
    project::SourceLine line;
    project::Kept kept;
    bool operator==(const ComponentType&) const = default;
};

struct Library {
    project::Id id; // "cutwater-burner"; unique among the libraries of one user
    std::string name;
    std::string description;
    std::string revision;
    std::vector<ComponentType> types;
    project::Kept kept;
    std::vector<std::pair<std::string, project::Kept>> keptInSections;
    int newerMinorVersion = 0;
    bool operator==(const Library&) const = default;
};

const ComponentType* findType(const Library& library, std::string_view id);
const Mode* findMode(const ComponentType& type, std::string_view id);

// Every problem at once. Errors: ids, ratings, impossible numbers. Warnings: a mode that has
// neither a rate nor a word why; a number without a source.
project::Problems validate(const Library& library);

// What a reader has to know of a number: "from memory: to be checked against the source" and the
// like. Empty where the source was read.
std::string trustOf(const project::SourceNote& source);

} // namespace cutwater::library
