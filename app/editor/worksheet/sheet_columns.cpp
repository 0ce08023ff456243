// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/sheet_columns.h"

#include "models/worksheet/scales.h"

#include <QCoreApplication>

#include <algorithm>

namespace cutwater::editor {

namespace {

using enum CellEditor;

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::SheetColumns)
};

SheetColumn made(std::string_view id, const QString& title, CellEditor editor, int width,
                 const QString& tip) {
    SheetColumn column;
    column.id = id;
    column.title = title;
    column.tip = tip;
    column.editor = editor;
    column.width = width;
    column.column = worksheet::findColumn(id);
    if (column.column) column.kind = column.column->kind;
    return column;
}

QString after() {
    return Words::tr("When the actions work. Empty: as before.");
}

void addRow(std::vector<SheetColumn>& all) {
    all.push_back(made("id", Words::tr("Row"), none, 18,
                       Words::tr("The id of the failure mode. It never changes.")));
    all.push_back(made("component", Words::tr("Component"), component, 12,
                       Words::tr("The tag of the component that fails.")));
    all.push_back(made("place", Words::tr("Where it sits"), none, 24,
                       Words::tr("From the plant breakdown; change it on the plant page.")));
    all.push_back(made("function", Words::tr("Function"), none, 22,
                       Words::tr("Of the component; change it on the plant page.")));
    all.push_back(made("location", Words::tr("Location"), none, 16,
                       Words::tr("Of the component; change it on the plant page.")));
    all.push_back(made("supplied-by", Words::tr("Supplied by"), none, 16,
                       Words::tr("Of the component; change it on the plant page.")));
    all.push_back(made("operating-mode", Words::tr("Operating mode"), text, 18,
                       Words::tr("Of the plant, where it differs from that of the worksheet.")));
    all.push_back(made("mode", Words::tr("Failure mode"), text, 24, Words::tr("What fails.")));
    all.push_back(made("causes", Words::tr("Causes"), lines, 26,
                       Words::tr("One cause a line: Alt+Enter begins the next one.")));
    all.push_back(made("local-effect", Words::tr("Local effect"), text, 26,
                       Words::tr("On the component itself.")));
    all.push_back(made("next-effect", Words::tr("Next higher effect"), text, 26,
                       Words::tr("On what the component belongs to.")));
    all.push_back(
        made("end-effect", Words::tr("End effect"), text, 26,
             Words::tr("On the plant. Rows with the same words here have the same effect.")));
    all.push_back(made("detection", Words::tr("Detected by"), text, 24,
                       Words::tr("How it is noticed: which alarm, and where.")));
    all.push_back(made("compensation", Words::tr("Compensating provision"), text, 24,
                       Words::tr("What makes up for it.")));
    all.push_back(made("proved-by", Words::tr("Proved by"), text, 22,
                       Words::tr("The test that proves the compensating provision.")));
    all.push_back(made("proved-on", Words::tr("Proved on"), date, 15,
                       Words::tr("When that test last did; a date like 2026-02-28.")));
    all.push_back(made("dormant", Words::tr("Dormant"), yesNo, 9,
                       Words::tr("Nobody sees it until a test or a demand.")));
    all.push_back(made("test-interval", Words::tr("Tested every"), interval, 14,
                       Words::tr("Time between two tests of a dormant part, like 4 wk. Its failure "
                                 "model has to be of the tested kind.")));
    all.push_back(
        made("last-test", Words::tr("Last test"), date, 15, Words::tr("A date like 2026-02-28.")));
    all.push_back(made("next-test", Words::tr("Next test"), none, 15,
                       Words::tr("Worked out: the last test and the interval.")));
}

void addRatings(std::vector<SheetColumn>& all) {
    all.push_back(made("severity", Words::tr("Severity"), severity, 13,
                       Words::tr("A word of the risk matrix.")));
    all.push_back(made("severity-rating", Words::tr("S"), severityRating, 5,
                       Words::tr("Severity, from 1 to 10.")));
    all.push_back(made("occurrence-rating", Words::tr("O"), occurrenceRating, 5,
                       Words::tr("Occurrence, from 1 to 10.")));
    all.push_back(made("detection-rating", Words::tr("D"), detectionRating, 5,
                       Words::tr("Detection, from 1 to 10: 10 is not seen at all.")));
    all.push_back(made("rpn", Words::tr("RPN"), none, 7, QLatin1String(worksheet::kRpnWarning)));
    all.push_back(made("computed-occurrence", Words::tr("O by frequency"), none, 15,
                       Words::tr("Worked out: the rating that the computed frequency has on the "
                                 "scale.")));
    all.push_back(made("frequency", Words::tr("Frequency [/y]"), none, 15,
                       Words::tr("Worked out from the failure model, per year of the calendar.")));
    all.push_back(made("frequency-how", Words::tr("From"), none, 24,
                       Words::tr("How the frequency was worked out, or why there is none.")));
    all.push_back(made("effect-chance", Words::tr("beta"), share, 8,
                       Words::tr("The chance that the end effect follows, from 0 to 1. Empty: 1 is "
                                 "taken, the worst.")));
    all.push_back(made("mode-ratio", Words::tr("alpha"), share, 8,
                       Words::tr("The mode's share of its component's failures, from 0 to 1.")));
    all.push_back(made("criticality", Words::tr("Cm"), none, 10,
                       Words::tr("Worked out: the criticality number of the mode, beta x alpha x "
                                 "lambda x t. An expected number, not a probability.")));
    all.push_back(made("item-criticality", Words::tr("Cr"), none, 10,
                       Words::tr("Worked out: the sum of Cm of the component's modes of the same "
                                 "severity.")));
    all.push_back(made("level", Words::tr("Level"), none, 7,
                       Words::tr("Worked out: A to E by the mode's share of its component.")));
    all.push_back(made("frequency-index", Words::tr("FI"), none, 5,
                       Words::tr("Worked out: the frequency index of the risk matrix.")));
    all.push_back(made("severity-index", Words::tr("SI"), none, 5,
                       Words::tr("Worked out: the severity index of the risk matrix.")));
    all.push_back(made("risk-index", Words::tr("RI"), none, 5,
                       Words::tr("Worked out: FI + SI. Who signs decides what it means.")));
}

void addTrees(std::vector<SheetColumn>& all) {
    all.push_back(made("trees", Words::tr("In trees"), none, 16,
                       Words::tr("Worked out: the top events in whose tree it is.")));
    all.push_back(made("effect-tree", Words::tr("Tree of the end effect"), none, 21,
                       Words::tr("Worked out: the top event that answers for the end effect.")));
    all.push_back(made("effect-probability", Words::tr("End effect: probability"), none, 22,
                       Words::tr("Worked out from the tree of the end effect. Compare it with the "
                                 "severity of the row.")));
    all.push_back(made("effect-frequency", Words::tr("End effect [/y]"), none, 15,
                       Words::tr("Worked out from the tree of the end effect, per year of the "
                                 "calendar. Compare it with the severity of the row.")));
    for (auto column = all.end() - 2; column != all.end(); ++column)
        column->kind = worksheet::ColumnKind::number;
}

void addActions(std::vector<SheetColumn>& all) {
    all.push_back(made("action", Words::tr("Recommended action"), lines, 28,
                       Words::tr("One action a line: Alt+Enter begins the next one. Owner, date "
                                 "and state stand in the same order.")));
    all.push_back(made("owner", Words::tr("Owner"), lines, 14,
                       Words::tr("Who does it, one a line: a role.")));
    all.push_back(made("due", Words::tr("Due"), date, 15, Words::tr("A date like 2026-02-28.")));
    all.push_back(made("state", Words::tr("State"), states, 12,
                       Words::tr("Done is not proved: somebody has to show that it helped.")));
    all.push_back(
        made("done-on", Words::tr("Done on"), date, 15, Words::tr("A date like 2026-02-28.")));
    all.push_back(
        made("proof", Words::tr("How it was proved"), lines, 24,
             Words::tr("How it was shown that the action helped, or why it was dropped.")));
    all.push_back(made("severity-after", Words::tr("S after"), severityRating, 8, after()));
    all.push_back(made("occurrence-after", Words::tr("O after"), occurrenceRating, 8, after()));
    all.push_back(made("detection-after", Words::tr("D after"), detectionRating, 8, after()));
    all.push_back(
        made("rpn-after", Words::tr("RPN after"), none, 8, QLatin1String(worksheet::kRpnWarning)));
    all.push_back(made("remark", Words::tr("Remark"), text, 24, Words::tr("Anything else.")));
    all.push_back(made("gaps", Words::tr("Missing"), none, 24,
                       Words::tr("Worked out: what the row still lacks.")));
}

} // namespace

const std::vector<SheetColumn>& sheetColumns() {
    static const std::vector<SheetColumn> all = [] {
        std::vector<SheetColumn> columns;
        addRow(columns);
        addRatings(columns);
        addTrees(columns);
        addActions(columns);
        return columns;
    }();
    return all;
}

int sheetColumn(std::string_view id) {
    const auto& all = sheetColumns();
    const auto found = std::find_if(all.begin(), all.end(),
                                    [&](const SheetColumn& each) { return each.id == id; });
    return found == all.end() ? -1 : static_cast<int>(found - all.begin());
}

} // namespace cutwater::editor
