// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/fmea/fmea.h"

#include "models/project/dates.h"
#include "plugins/fmea/tables.h"
#include "plugins/sdk/tree/cautions.h"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <unordered_map>

namespace cutwater::fmea_plugin {
namespace {

using project::Problem;
using sdk::NoteKind;
using worksheet::Order;
using worksheet::Row;
using worksheet::Sheet;

constexpr const char* kUsual =
    "id,component,function,mode,causes,local-effect,next-effect,end-effect,"
    "detection,compensation,proved-by,dormant,severity,severity-rating,"
    "occurrence-rating,detection-rating,rpn,frequency,criticality,"
    "risk-index,action,owner,due,state,rpn-after";

Problem wrong(std::string what, std::string remedy) {
    return {project::Severity::error, std::move(what), std::move(remedy), {}, 0};
}

std::vector<std::string> words(const std::string& text) {
    std::vector<std::string> all;
    std::string word;
    for (const char c : text + ",") {
        if (c != ',' && c != ' ') {
            word += c;
            continue;
        }
        if (!word.empty()) all.push_back(word);
        word.clear();
    }
    return all;
}

project::Outcome<std::vector<const worksheet::Column*>> columnsFor(const std::string& wish) {
    std::vector<const worksheet::Column*> chosen;
    if (wish == "all") {
        for (const worksheet::Column& column : worksheet::columns())
            chosen.push_back(&column);
        return chosen;
    }
    std::vector<std::string> known;
    for (const worksheet::Column& column : worksheet::columns())
        known.emplace_back(column.id);
    for (const std::string& id : words(wish == "usual" ? kUsual : wish)) {
        const worksheet::Column* column = worksheet::findColumn(id);
        if (!column) {
            const std::string near = sdk::nearest(id, known);
            return wrong(fmt::format("the worksheet has no column {}", id),
                         near.empty()
                             ? fmt::format("use usual, all, or some of {}", fmt::join(known, ", "))
                             : fmt::format("write {}", near));
        }
        chosen.push_back(column);
    }
    if (chosen.empty()) return wrong("no column is named", "use usual, all, or some of them");
    return chosen;
}

Order orderOf(const std::string& word) {
    if (word == "file") return Order::file;
    if (word == "rpn") return Order::rpn;
    if (word == "criticality") return Order::criticality;
    if (word == "risk") return Order::risk;
    return Order::severity;
}

// Only the component with that id or tag, and what belongs to it.
std::optional<Problem> keepComponent(Sheet& sheet, const project::Project& project,
                                     const project::Index& index, const std::string& wanted) {
    const project::Component* root = index.component(wanted);
    std::vector<std::string> known;
    for (const project::Component& component : project.components) {
        if (!root && component.tag == wanted) root = &component;
        known.push_back(component.tag.empty() ? component.id : component.tag);
    }
    if (!root) {
        const std::string near = sdk::nearest(wanted, known);
        return wrong(fmt::format("there is no component {}", wanted),
                     near.empty() ? "give its id or tag" : fmt::format("write {}", near));
    }
    // Parents stand anywhere in the file: walk up from each, and remember what was found.
    std::set<const project::Component*> inside{root};
    const auto isInside = [&](const project::Component* component) {
        std::set<const project::Component*> seen;
        for (const auto* part = component; part; part = index.component(part->parent)) {
            if (inside.contains(part)) {
                inside.insert(seen.begin(), seen.end());
                return true;
            }
            if (!seen.insert(part).second) return false;
        }
        return false;
    };
    std::erase_if(sheet.rows, [&](const Row& row) { return !isInside(row.component); });
    return {};
}

void addNotes(std::vector<sdk::Note>& notes, const project::Project& project, const Sheet& sheet) {
    const auto note = [&notes](NoteKind kind, std::string sentence) {
        notes.push_back({kind, std::move(sentence)});
    };
    note(
        project.operatingMode.empty() ? NoteKind::warning : NoteKind::assumption,
        project.operatingMode.empty()
            ? "The project does not state the operating mode that this worksheet is for: state it, "
              "or a surveyor will ask."
            : fmt::format("Operating mode, where a row states no other: {}.",
                          project.operatingMode));
    note(NoteKind::warning, worksheet::kRpnWarning);
    note(NoteKind::method,
         fmt::format(
             "Cm = beta x alpha x lambda_p x t (MIL-STD-1629A, 1980, task 102), t = {:.6g} h "
             "of the calendar{}; Cr of an item is the sum of its Cm within one severity. "
             "Where a mode has a rate of its own, that is alpha x lambda_p.",
             sheet.time.hours, sheet.time.given ? "" : ", one year, since the project gives none"));
    std::size_t noBeta = 0, noNumber = 0, assumed = 0, dormantBad = 0;
    for (const Row& row : sheet.rows) {
        noBeta += row.criticality.number && !row.criticality.betaGiven ? 1 : 0;
        noNumber += row.criticality.number ? 0 : 1;
        assumed += row.frequency.assumed ? 1 : 0;
        dormantBad += row.dormant && (row.facts->model.lastTest.empty() ||
                                      !row.facts->model.find(project::Role::interval))
                          ? 1
                          : 0;
    }
    if (noBeta > 0)
        note(NoteKind::assumption,
             fmt::format("{} row{} no beta, the chance that the effect follows: 1 is taken, the "
                         "worst.",
                         noBeta, noBeta == 1 ? " has" : "s have"));
    if (noNumber > 0)
        note(NoteKind::warning,
             fmt::format(
                 "{} row{} no frequency, and so no criticality and no risk index; the column "
                 "frequency-how says why.",
                 noNumber, noNumber == 1 ? " has" : "s have"));
    if (assumed > 0)
        note(NoteKind::assumption,
             fmt::format("For {} row{} a clock or a life had to be taken for granted; the column "
                         "frequency-how says what.",
                         assumed, assumed == 1 ? "" : "s"));
    if (dormantBad > 0)
        note(NoteKind::warning,
             fmt::format("{} dormant failure{} without a test interval or the date of the last "
                         "test: nobody knows since when {} may be there.",
                         dormantBad, dormantBad == 1 ? " is" : "s are",
                         dormantBad == 1 ? "it" : "they"));
    note(NoteKind::method,
         fmt::format("Risk index = frequency index + severity index, matrix: {}{}.",
                     sheet.matrix.name.empty() ? "the project's own" : sheet.matrix.name,
                     sheet.matrix.source.document.empty()
                         ? ""
                         : " (" + sheet.matrix.source.document + ", " + sheet.matrix.source.place +
                               ")"));
}

std::vector<sdk::Parameter> declared() {
    sdk::Parameter columns;
    columns.name = "columns";
    columns.standard = std::string("usual");
    columns.sentence = "usual, all, or ids of columns with commas between them";
    sdk::Parameter sort;
    sort.name = "sort";
    sort.type = sdk::ParameterType::choice;
    sort.choices = {"severity", "risk", "criticality", "rpn", "file"};
    sort.standard = std::string("severity");
    sort.sentence = "what stands first: the worst severity, risk index, criticality or RPN; or the "
                    "order of the file";
    sdk::Parameter component;
    component.name = "component";
    component.sentence = "only this component, by id or tag, and what belongs to it";
    sdk::Parameter dormant;
    dormant.name = "dormant";
    dormant.type = sdk::ParameterType::flag;
    dormant.sentence = "only dormant failures";
    sdk::Parameter open;
    open.name = "open";
    open.type = sdk::ParameterType::flag;
    open.sentence = "only rows with an action that is neither proved nor dropped";
    sdk::Parameter today;
    today.name = "today";
    today.sentence = "the day that due dates are held against, like 2026-02-28; the project's date "
                     "where it is not given";
    return {columns, sort, component, dormant, open, today};
}

} // namespace

std::vector<sdk::Parameter> Fmea::parameters(const project::Project*) const {
    return declared();
}

sdk::Answer<sdk::Result> Fmea::run(const project::Project& project, const sdk::Values& values,
                                   const sdk::Job&) const {
    using Answer = sdk::Answer<sdk::Result>;
    const auto columns = columnsFor(values.text("columns").value_or("usual"));
    if (!columns) return Answer::failed(columns.problems());
    const std::string today = values.text("today").value_or(project.date);
    if (!today.empty() && !project::isIsoDate(today))
        return Answer::failed({wrong(fmt::format("--today is \"{}\", which is not a date", today),
                                     "write it like 2026-02-28")});
    const project::Index index(project);
    Sheet sheet = worksheet::sheetOf(project, index);
    std::vector<worksheet::Criticality> criticalities;
    for (const Row& row : sheet.rows)
        criticalities.push_back(row.criticality);
    auto items = worksheet::itemCriticalities(project, index, criticalities);
    if (const auto component = values.text("component"))
        if (const auto problem = keepComponent(sheet, project, index, *component))
            return Answer::failed({*problem});
    if (values.flag("dormant"))
        std::erase_if(sheet.rows, [](const Row& row) { return !row.dormant; });
    if (values.flag("open"))
        std::erase_if(sheet.rows, [](const Row& row) { return row.openActions == 0; });
    std::set<const project::Component*> shown;
    for (const Row& row : sheet.rows)
        shown.insert(row.component);
    std::erase_if(items, [&](const worksheet::ItemCriticality& item) {
        return !shown.contains(&project.components[item.component]);
    });
    worksheet::sortRows(sheet, orderOf(values.text("sort").value_or("severity")));

    sdk::Result result;
    result.title = "FMEA worksheet";
    result.tables = {worksheetTable(sheet, *columns), dormantTable(sheet, index),
                     itemTable(project, items), actionTable(sheet, today), scaleTable(sheet)};
    std::unordered_map<std::string_view, std::vector<std::string>> eventsOf;
    for (const project::Event& event : project.events)
        if (!event.mode.empty()) eventsOf[event.mode].push_back(event.id);
    for (std::size_t i = 0; i < sheet.rows.size(); ++i)
        if (const auto found = eventsOf.find(sheet.rows[i].facts->id); found != eventsOf.end())
            result.marks.push_back({"worksheet", i, found->second});
    addNotes(result.notes, project, sheet);
    sdk::tree::addCautions(result.notes, sdk::tree::CautionScope::machine, project);
    return Answer::of(std::move(result));
}

} // namespace cutwater::fmea_plugin
