// SPDX-License-Identifier: GPL-3.0-or-later
// A table from a spreadsheet into the worksheet: headings are matched to columns, every row is
// judged before anything changes, and a row that is not taken says why.
#pragma once

#include "models/project/project.h"
#include "models/worksheet/columns.h"
#include "models/worksheet/delimited.h"

#include <string>
#include <utility>
#include <vector>

namespace cutwater::worksheet {

// Which column of the worksheet each column of the table is.
struct Matching {
    std::vector<std::string> columns; // by column of the table: a column's id; empty: not taken
    std::vector<std::string> ignored; // headings that were not taken, and why: "RPN: is worked out"
};

// Headings are compared without regard to capitals, blanks and punctuation, with ids, titles and
// the usual other names. `wishes` (heading, id of a column or "-" for none) come first. Problems:
// a wish for a heading or a column that is not there; two headings for one column; nothing that
// says which component a row is of.
project::Outcome<Matching>
matchColumns(const std::vector<std::string>& header,
             const std::vector<std::pair<std::string, std::string>>& wishes);

// The column that a heading means by itself; null where it means none.
const Column* columnCalled(const std::string& heading);
// Whether a column of a table can be this one.
bool isImported(const Column& column);

struct CellChange {
    std::string column; // id
    std::string before, after;
};

struct ImportRow {
    int line = 0;
    bool taken = false;
    bool isNew = false;              // makes a failure mode
    project::Id mode;                // of the row, where one was found or made
    std::vector<CellChange> changes; // of a row that is taken; may be empty: all is as it was
    std::string why;                 // of a row that is not: a sentence
};

struct Import {
    project::Project project; // with the rows that were taken
    std::vector<ImportRow> rows;
    std::vector<project::Id> newComponents;
    Matching matching;
    std::size_t taken() const;
    std::size_t rejected() const { return rows.size() - taken(); }
};

struct ImportWish {
    std::vector<std::pair<std::string, std::string>> matching;
    bool makeComponents = false; // a tag that is not in the plant makes a component
    char separator = 0;
};

// A row belongs to the failure mode whose id it names or, without an id, to the one of that name of
// that component (by id, tag or name); where there is none it makes one. An empty cell leaves the
// fact as it is. A row with one bad cell is not taken at all.
project::Outcome<Import> importRows(const project::Project& project, const std::string& text,
                                    const ImportWish& wish);

} // namespace cutwater::worksheet
