// SPDX-License-Identifier: GPL-3.0-or-later
// The small pieces that every value of a project is made of: ids, the line a value came from, and
// what we keep of a newer file without understanding it.
#pragma once

#include <string>
#include <utility>
#include <vector>

namespace cutwater::project {

// A name that never changes when the thing is renamed. 1 to 128 of the characters A-Z a-z 0-9 _ - .
// : / and it starts with a letter, a digit or '_'. Unique among things of one kind (events and
// gates together are one kind: "node").
using Id = std::string;

// True where `id` has the form described above.
bool isWellFormedId(const Id& id);

// Where a value stood in the file it was read from: 1 and up, 0 for "not from a file". It is not
// part of the value: two values that differ only in their line are equal.
struct SourceLine {
    int number = 0;
    friend bool operator==(const SourceLine&, const SourceLine&) { return true; }
};

// What a newer minor version of the file said about this value and we do not understand: kept in
// order, written back unchanged.
struct Kept {
    std::vector<std::pair<std::string, std::string>> attributes; // name, value
    std::vector<std::string> elements;                           // each one whole, as XML text
    bool empty() const { return attributes.empty() && elements.empty(); }
    bool operator==(const Kept&) const = default;
};

// A reference to another value by id, with the line it was written on.
struct Reference {
    Id id;
    SourceLine line;
    bool operator==(const Reference&) const = default;
};

} // namespace cutwater::project
