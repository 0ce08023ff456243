// SPDX-License-Identifier: GPL-3.0-or-later
// Which columns are shown, in which order, how wide, and how many of them stay in sight: a matter
// of the person, not of the project.
#pragma once

#include <QSettings>
#include <QString>

#include <map>
#include <vector>

namespace cutwater::editor {

struct ColumnChoice {
    QString set;               // id of a set; empty: a choice of one's own
    std::vector<int> shown;    // places in sheetColumns(), in order
    std::map<int, int> widths; // pixels, where somebody changed them
    int frozen = 2;
    int lines = 2; // of text in a row
    bool operator==(const ColumnChoice&) const = default;
};

struct ColumnSet {
    QString id;
    QString title;
    std::vector<int> columns;
    bool dormantOnly = false; // made for dormant failures: the others are put away with it
};

// Sets for a purpose: the first one is the usual one.
const std::vector<ColumnSet>& columnSets();
const ColumnSet* columnSet(const QString& id);

ColumnChoice usualChoice();
// What cannot be understood (another version wrote it) is left out.
ColumnChoice loadChoice(QSettings& settings);
void saveChoice(QSettings& settings, const ColumnChoice& choice);

} // namespace cutwater::editor
