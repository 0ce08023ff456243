// SPDX-License-Identifier: GPL-3.0-or-later
// SheetData: the worksheet of one snapshot, with the texts of its cells. A value that never
// changes; making it for 5,000 rows takes some 10 ms.
#pragma once

#include "app/editor/session/session.h"
#include "app/editor/worksheet/sheet_columns.h"
#include "models/project/index.h"
#include "models/worksheet/rows.h"

#include <QString>

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <unordered_map>

namespace cutwater::editor {

// Of the top event that answers for an end effect; worked out elsewhere, since it takes its time.
struct EffectFigure {
    std::string top; // its id
    std::optional<double> probability, perYear;
    std::string how; // of `perYear`, or why there is none
    bool lowerBound = false;
};
using EffectFigures = std::map<std::string, EffectFigure>; // by plainEffect()

class SheetData {
public:
    explicit SheetData(Snapshot snapshot);

    const Snapshot snapshot;
    const project::Index index;
    const worksheet::Sheet sheet; // its rows in the order of the project's failure modes

    std::size_t rows() const { return sheet.rows.size(); }
    const worksheet::Row& row(std::size_t at) const { return sheet.rows[at]; }
    const project::Id& id(std::size_t at) const { return sheet.rows[at].facts->id; }
    int rowOf(const project::Id& id) const; // -1 where there is none

    // `column` is a place in sheetColumns().
    worksheet::Cell cell(std::size_t row, int column, const EffectFigures& figures) const;
    // Exact: what can be typed back.
    QString text(std::size_t row, int column, const EffectFigures& figures) const;

private:
    std::unordered_map<std::string_view, std::size_t> m_places;
};

// For eyes: numbers with four figures.
QString shownNumber(double value);

} // namespace cutwater::editor
