// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/paper-report/chapters.h"

#include "models/project/index.h"
#include "plugins/sdk/tree/cautions.h"
#include "plugins/sdk/tree/target.h"

#include <fmt/format.h>

#include <algorithm>
#include <map>
#include <set>

namespace cutwater::paper_report {
namespace {

using project::Project;

std::string joined(const std::vector<std::string>& words, const char* between) {
    return fmt::format("{}", fmt::join(words, between));
}

std::string numbered(int number, const char* title) {
    return heading(2, fmt::format("{}  {}", number, title));
}

std::string number(const project::Quantity& quantity) {
    const std::string_view symbol = project::facts(quantity.unit).symbol;
    const bool unit = quantity.unit != project::Unit::unstated &&
                      quantity.unit != project::Unit::number && !symbol.empty();
    return fmt::format("{:.6g}{}{}", quantity.value, unit && symbol.front() != '/' ? " " : "",
                       unit ? symbol : "");
}

// Probability and what it is, by top event, of the first result that has them.
std::map<std::string, std::pair<std::string, std::string>>
figuresOf(const sdk::ReportContent& content) {
    for (const sdk::ReportPart& part : content.parts)
        for (const sdk::Table& table : part.result.tables) {
            std::map<std::string, std::size_t> at;
            for (std::size_t c = 0; c < table.columns.size(); ++c)
                at[table.columns[c].id] = c;
            if (table.id != "top-events" || !at.count("top") || !at.count("probability")) continue;
            std::map<std::string, std::pair<std::string, std::string>> figures;
            for (const auto& row : table.rows) {
                const auto words = [&](const char* column) {
                    const auto found = at.find(column);
                    return found == at.end()
                               ? std::string()
                               : cellWords(row[found->second], table.columns[found->second]);
                };
                figures[words("top")] = {words("probability"), words("kind")};
            }
            return figures;
        }
    return {};
}

std::string topName(const Project& project, const project::TopEvent& top) {
    if (!top.name.empty()) return top.name;
    for (const project::Gate& gate : project.gates)
        if (gate.id == top.node.id) return gate.name;
    return {};
}

} // namespace

std::string titleChapter(const Order& order) {
    const Project& project = order.project;
    std::string out = heading(1, project.name.empty() ? "Fault tree report" : project.name);
    out += facts({{"Plant", project.plant},
                  {"What this is about", project.description},
                  {"State of the plant", project.operatingMode},
                  {"Revision", project.revision},
                  {"Date of the project", project.date},
                  {"Prepared by", project.preparedBy},
                  {"Checked by", project.checkedBy},
                  {"Worked to", joined(project.rules, "; ")},
                  {"File", order.content.file},
                  {"Report made on", order.content.date}});
    out += paragraph("This report helps people to think. It replaces no class rule, flag-state "
                     "rule, code, maker's manual or permit, and no person who is licensed or "
                     "appointed to decide; where they differ from it, they are right. "
                     "Probabilities are estimates with wide limits, and what is not in the trees "
                     "can still happen. Who signs decides.",
                     "notice");
    std::size_t errors = 0;
    for (const project::Problem& problem : project::validate(project))
        if (problem.severity == project::Severity::error) ++errors;
    if (errors > 0)
        out += paragraph(fmt::format("The project has {} error{}: what follows is incomplete. "
                                     "`cutwater check` lists {}.",
                                     errors, errors == 1 ? "" : "s", errors == 1 ? "it" : "them"),
                         "warning");
    return out;
}

std::string topChapter(const Order& order, int number) {
    const Project& project = order.project;
    std::string out = numbered(number, "The top events");
    if (project.tops.empty()) return out + paragraph("The project has no top event.");
    const auto figures = figuresOf(order.content);
    std::vector<std::vector<std::string>> rows;
    for (const project::TopEvent& top : project.tops) {
        const auto figure = figures.find(top.id);
        rows.push_back({top.id, topName(project, top), top.operatingMode, top.severity,
                        top.asked ? paper_report::number(*top.asked) : "",
                        figure == figures.end() ? "" : figure->second.first,
                        figure == figures.end() ? "" : figure->second.second});
    }
    out += table({"Top event", "What must not happen", "State of the plant", "Severity",
                  "How often asked", "Probability", "What it is"},
                 rows, {false, false, false, false, true, true, false});
    if (figures.empty())
        out += paragraph("No result in this report has the probability of the top events.");
    for (const project::TopEvent& top : project.tops)
        if (!top.remark.empty()) out += paragraph(top.id + ": " + top.remark, "remark");
    return out;
}

std::string assumptionChapter(const Order& order, int number) {
    std::vector<std::string> all;
    std::set<std::string> seen;
    const auto take = [&](const std::string& text) {
        if (!text.empty() && seen.insert(text).second) all.push_back(text);
    };
    for (const std::string& own : order.project.assumptions)
        take(own);
    for (const sdk::ReportPart& part : order.content.parts)
        for (const sdk::Note& note : part.result.notes)
            if (note.kind == sdk::NoteKind::assumption) take(note.sentence);
    return numbered(number, "Assumptions") +
           (all.empty() ? paragraph("None is written down.") : list(all));
}

std::string sourceChapter(const Order& order, int number) {
    const Project& project = order.project;
    const project::Index index(project);
    std::string out = numbered(number, "Where the numbers come from");
    std::vector<std::vector<std::string>> rows;
    std::size_t without = 0;
    for (const project::Event& event : project.events) {
        const project::FailureModel* const model = index.modelOf(event);
        if (!model) continue;
        for (const project::Assignment& one : model->numbers) {
            const project::Quantity* const quantity = index.resolved(one.quantity);
            if (!quantity) continue;
            const project::SourceNote& source =
                one.quantity.source.empty() ? quantity->source : one.quantity.source;
            std::vector<std::string> where;
            for (const std::string* part : {&source.document, &source.edition, &source.place})
                if (!part->empty()) where.push_back(*part);
            if (where.empty()) ++without;
            rows.push_back({event.id, sdk::tree::readableName(index, event),
                            std::string(project::facts(one.role).word),
                            paper_report::number(*quantity),
                            where.empty() ? "no source given" : joined(where, ", "), source.tag});
        }
    }
    if (rows.empty()) return out + paragraph("No event has a number.");
    const std::size_t all = rows.size();
    if (all > order.rows) rows.resize(order.rows);
    out += table({"Event", "Name", "Number", "Value", "Source", "How far to trust it"}, rows,
                 {false, false, false, true, false, false});
    if (all > order.rows)
        out += paragraph(fmt::format("{} of {} numbers are shown.", order.rows, all), "remark");
    if (without > 0)
        out += paragraph(
            fmt::format("{} of {} numbers have no source: nobody can check them.", without, all),
            "warning");
    return out;
}

std::string cautionChapter(const Order& order, int number) {
    std::vector<sdk::Note> notes;
    sdk::tree::addCautions(notes, sdk::tree::CautionScope::machine, order.project);
    std::vector<std::string> texts;
    for (const sdk::Note& note : notes)
        texts.push_back(note.sentence);
    return numbered(number, "Cautions") + list(texts) +
           paragraph("Class rules, flag-state rules, codes and the makers' instructions are to be "
                     "looked up in their valid editions by those who are responsible for the "
                     "plant. This report quotes none of them and stands for none of them.");
}

std::string signatureChapter(int number) {
    return numbered(number, "Signatures") +
           table({"", "Name and position", "Place and date", "Signature"},
                 {{"Prepared", " ", " ", " "},
                  {"Checked", " ", " ", " "},
                  {"Approved", " ", " ", " "}}) +
           paragraph("A signature says that a competent person has checked this report against "
                     "the plant and its documents.",
                     "remark");
}

std::string drawingChapter(const Order& order, int number) {
    std::string out = numbered(number, "The drawn trees");
    if (order.content.drawings.empty()) return out + paragraph("None was asked for.");
    int sheet = 0;
    for (const sdk::ReportDrawing& drawing : order.content.drawings) {
        std::string svg = drawing.svg;
        // Within a page: no declaration before it, and ids that no other sheet has.
        if (const std::size_t start = svg.find("<svg"); start != std::string::npos)
            svg.erase(0, start);
        const std::string prefix = fmt::format("sheet{}-", ++sheet);
        for (const char* attribute : {" id=\"", "aria-labelledby=\"", "href=\"#", "url(#"})
            for (std::size_t at = svg.find(attribute); at != std::string::npos;
                 at = svg.find(attribute, at + 1))
                svg.insert(at + std::string_view(attribute).size(), prefix);
        out += fmt::format("<figure class=\"sheet\">\n{}\n<figcaption>{}</figcaption>\n</figure>\n",
                           svg, escaped(drawing.title));
    }
    return out;
}

} // namespace cutwater::paper_report
