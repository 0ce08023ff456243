// SPDX-License-Identifier: GPL-3.0-or-later
// Result: what an analysis answers, in a form that the shell, the editor and a report can show
// without knowing it.
#pragma once

#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace cutwater::sdk {

enum class ColumnType { text, integer, number, probability, reference };

struct Column {
    std::string id;    // stable, for scripts: "probability"
    std::string title; // for people: "Probability"
    ColumnType type = ColumnType::text;
    std::string unit = {}; // "", "/h", "%"
    bool operator==(const Column&) const = default;
};

// A cell is empty, text, a whole number or a number. A `reference` column holds the text of an
// event's or gate's id.
using Cell = std::variant<std::monostate, std::string, std::int64_t, double>;

struct Table {
    std::string id;
    std::string title;
    std::vector<Column> columns;
    std::vector<std::vector<Cell>> rows = {}; // each as long as `columns`
    std::string remark = {};                  // shown under the table
    bool operator==(const Table&) const = default;
};

enum class PlotKind { line, bar, step };

struct Series {
    std::string id;
    std::string title;
    PlotKind kind = PlotKind::line;
    std::string xTitle, xUnit, yTitle, yUnit;
    bool logY = false;
    std::vector<double> x, y;
    std::vector<std::string> labels; // for bars: one for each x
    bool operator==(const Series&) const = default;
};

enum class NoteKind { assumption, warning, caution, method };

struct Note {
    NoteKind kind = NoteKind::assumption;
    std::string sentence;
    bool operator==(const Note&) const = default;
};

// Ids of events and gates that belong together and may be highlighted in the tree: one mark per row
// of a table.
struct Mark {
    std::string table; // id of the table
    std::size_t row = 0;
    std::vector<std::string> nodes;
    bool operator==(const Mark&) const = default;
};

enum class Exactness {
    exact,   // up to the rounding of the computer
    bounded, // the notes say by how much
};

struct Result {
    std::string title;
    Exactness exactness = Exactness::exact;
    std::vector<Table> tables;
    std::vector<Series> series;
    std::vector<Note> notes;
    std::vector<Mark> marks;
    bool operator==(const Result&) const = default;
};

} // namespace cutwater::sdk
