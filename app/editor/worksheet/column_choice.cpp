// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/column_choice.h"

#include "app/editor/worksheet/sheet_columns.h"

#include <QCoreApplication>
#include <QStringList>

#include <algorithm>
#include <initializer_list>
#include <numeric>

namespace cutwater::editor {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::ColumnChoice)
};

constexpr int kNarrowest = 20, kWidest = 2000; // pixels

std::vector<int> places(std::initializer_list<const char*> ids) {
    std::vector<int> all;
    for (const char* id : ids)
        if (const int place = sheetColumn(id); place >= 0) all.push_back(place);
    return all;
}

QString idOf(int place) {
    const std::string_view id = sheetColumns()[static_cast<std::size_t>(place)].id;
    return QString::fromUtf8(id.data(), static_cast<qsizetype>(id.size()));
}

} // namespace

const std::vector<ColumnSet>& columnSets() {
    static const std::vector<ColumnSet> sets = [] {
        std::vector<int> all(sheetColumns().size());
        std::iota(all.begin(), all.end(), 0);
        // "Row" is for files; the component leads.
        std::rotate(all.begin(), all.begin() + 1, all.begin() + 2);
        return std::vector<ColumnSet>{
            {"overview", Words::tr("Overview"),
             places({"component", "mode", "causes", "local-effect", "end-effect", "detection",
                     "compensation", "severity", "severity-rating", "occurrence-rating",
                     "detection-rating", "rpn", "frequency", "risk-index", "action", "owner", "due",
                     "state"}),
             false},
            {"effects", Words::tr("Causes and effects"),
             places({"component", "mode", "function", "operating-mode", "causes", "local-effect",
                     "next-effect", "end-effect", "detection", "compensation", "proved-by",
                     "severity", "remark"}),
             false},
            {"ratings", Words::tr("Ratings"),
             places({"component", "mode", "end-effect", "severity", "severity-rating",
                     "occurrence-rating", "computed-occurrence", "detection-rating", "rpn",
                     "action", "severity-after", "occurrence-after", "detection-after",
                     "rpn-after"}),
             false},
            {"criticality", Words::tr("Criticality and risk"),
             places({"component", "mode", "severity", "frequency", "frequency-how", "effect-chance",
                     "mode-ratio", "criticality", "item-criticality", "level", "frequency-index",
                     "severity-index", "risk-index"}),
             false},
            {"trees", Words::tr("End effects and trees"),
             places({"component", "mode", "end-effect", "severity", "risk-index", "trees",
                     "effect-tree", "effect-probability", "effect-frequency"}),
             false},
            {"actions", Words::tr("Actions"),
             places({"component", "mode", "end-effect", "severity", "action", "owner", "due",
                     "state", "done-on", "proof", "rpn", "rpn-after"}),
             false},
            {"dormant", Words::tr("Dormant failures"),
             places({"component", "mode", "dormant", "test-interval", "last-test", "next-test",
                     "compensation", "proved-by", "proved-on", "end-effect", "gaps"}),
             true},
            {"missing", Words::tr("What is missing"),
             places({"component", "mode", "gaps", "causes", "local-effect", "end-effect",
                     "detection", "compensation", "proved-by", "severity"}),
             false},
            {"everything", Words::tr("Everything"), all, false}};
    }();
    return sets;
}

const ColumnSet* columnSet(const QString& id) {
    const auto& sets = columnSets();
    const auto found = std::find_if(sets.begin(), sets.end(),
                                    [&](const ColumnSet& each) { return each.id == id; });
    return found == sets.end() ? nullptr : &*found;
}

ColumnChoice usualChoice() {
    ColumnChoice choice;
    choice.set = columnSets().front().id;
    choice.shown = columnSets().front().columns;
    return choice;
}

ColumnChoice loadChoice(QSettings& settings) {
    ColumnChoice choice = usualChoice();
    settings.beginGroup("worksheet");
    if (settings.contains("columns")) {
        std::vector<int> shown;
        for (const QString& id : settings.value("columns").toStringList())
            if (const int place = sheetColumn(id.toStdString());
                place >= 0 && std::find(shown.begin(), shown.end(), place) == shown.end())
                shown.push_back(place);
        if (!shown.empty()) {
            choice.shown = shown;
            choice.set = settings.value("set").toString();
            const ColumnSet* set = columnSet(choice.set);
            if (!set || set->columns != shown) choice.set.clear();
        }
    }
    choice.frozen = std::clamp(settings.value("frozen", choice.frozen).toInt(), 0, 10);
    choice.lines = std::clamp(settings.value("lines", choice.lines).toInt(), 1, 10);
    settings.beginGroup("widths");
    for (const QString& id : settings.childKeys())
        if (const int place = sheetColumn(id.toStdString()); place >= 0)
            choice.widths[place] = std::clamp(settings.value(id).toInt(), kNarrowest, kWidest);
    settings.endGroup();
    settings.endGroup();
    return choice;
}

void saveChoice(QSettings& settings, const ColumnChoice& choice) {
    QStringList ids;
    for (const int place : choice.shown)
        ids.append(idOf(place));
    settings.beginGroup("worksheet");
    settings.setValue("columns", ids);
    settings.setValue("set", choice.set);
    settings.setValue("frozen", choice.frozen);
    settings.setValue("lines", choice.lines);
    settings.remove("widths");
    for (const auto& [place, width] : choice.widths)
        settings.setValue(QStringLiteral("widths/") + idOf(place), width);
    settings.endGroup();
}

} // namespace cutwater::editor
