// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/import.h"

#include "models/project/index.h"
#include "models/project/nearest.h"
#include "models/worksheet/column_texts.h"
#include "models/worksheet/columns.h"

#include <algorithm>
#include <cctype>
#include <fmt/format.h>
#include <map>
#include <set>

namespace cutwater::worksheet {

namespace {

using project::Problem;
using project::Severity;

Problem problem(std::string what, std::string remedy, int line = 1) {
    return {Severity::error, std::move(what), std::move(remedy), "table", line};
}

// "End-effect" and "end effect " are one heading.
std::string plain(std::string_view heading) {
    std::string text;
    for (const char c : heading)
        if (std::isalnum(static_cast<unsigned char>(c)) || static_cast<unsigned char>(c) >= 0x80)
            text += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return text;
}

bool namesTheRow(std::string_view id) {
    return id == "id" || id == "component";
}

const char* cannotBe(const Column& column) {
    return column.ofModel ? "part of the failure model, which a table does not bring"
                          : "worked out from other facts";
}

std::string slug(const std::string& text) {
    std::string id;
    for (const char c : text) {
        if (std::isalnum(static_cast<unsigned char>(c)))
            id += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
        else if (!id.empty() && id.back() != '-')
            id += '-';
    }
    while (!id.empty() && id.back() == '-')
        id.pop_back();
    return id.empty() ? "row" : id.substr(0, 40);
}

class Importer {
public:
    Importer(const project::Project& project, const ImportWish& wish) : m_wish(wish) {
        m_import.project = project;
        for (std::size_t i = 0; i < project.components.size(); ++i) {
            const project::Component& component = project.components[i];
            m_components[component.id] = i;
            m_byTag.emplace(component.tag, i);
            m_byName.emplace(lowered(component.name), i);
        }
        for (std::size_t i = 0; i < project.modes.size(); ++i) {
            m_modes[project.modes[i].id] = i;
            m_byModeName[{project.modes[i].component, lowered(project.modes[i].name)}] = i;
        }
    }

    project::Outcome<Import> run(const std::vector<Record>& records) {
        auto matching = matchColumns(records.front().cells, m_wish.matching);
        if (!matching) return matching.problems();
        m_import.matching = std::move(*matching);
        for (std::size_t i = 1; i < records.size(); ++i) {
            ImportRow row;
            row.line = records[i].line;
            m_made.clear();
            row.why = take(records[i], row);
            row.taken = row.why.empty();
            if (!row.taken) row.changes.clear();
            m_import.rows.push_back(std::move(row));
        }
        return std::move(m_import);
    }

private:
    // The sentence why it is not taken, or empty.
    std::string take(const Record& record, ImportRow& row) {
        const auto& columnIds = m_import.matching.columns;
        for (std::size_t i = columnIds.size(); i < record.cells.size(); ++i)
            if (!trimmed(record.cells[i]).empty())
                return fmt::format("it has a cell \"{:.40}\" beyond the last heading",
                                   record.cells[i]);
        std::map<std::string_view, std::string> cells;
        for (std::size_t i = 0; i < columnIds.size() && i < record.cells.size(); ++i)
            if (!columnIds[i].empty()) cells[columnIds[i]] = asTyped(record.cells[i]);
        project::FailureMode mode;
        if (std::string why = find(cells, row, mode); !why.empty()) return why;
        if (!m_done.insert(mode.id).second)
            return fmt::format("an earlier row of the table is of the failure mode {}, too",
                               mode.id);
        const project::FailureMode before = mode;
        const std::string why = row.isNew && mode.name.empty() && trimmed(cells["mode"]).empty()
                                    ? std::string("it does not say what fails")
                                    : change(cells, row, mode);
        if (!why.empty()) {
            m_done.erase(mode.id);
            return why;
        }
        keep(row, std::move(mode));
        return {};
    }

    std::string change(const std::map<std::string_view, std::string>& cells, ImportRow& row,
                       project::FailureMode& mode) {
        // "action" first: the other columns of actions hang on it; the order of the worksheet.
        for (const Column& column : columns()) {
            const auto cell = cells.find(column.id);
            if (cell == cells.end() || !column.write || trimmed(cell->second).empty()) continue;
            const project::FailureMode old = mode;
            if (const auto fault = column.write(cell->second, mode))
                return fmt::format("{} \"{:.60}\" {}", column.title, cell->second, *fault);
            if (mode == old) continue;
            row.changes.push_back(
                {std::string(column.id), textOf(column, old), textOf(column, mode)});
        }
        for (const project::Action& action : mode.actions)
            if (action.what.empty()) return "it has an owner, a date or a state, but no action";
        return {};
    }

    // The failure mode of the row, as it is now.
    std::string find(const std::map<std::string_view, std::string>& cells, ImportRow& row,
                     project::FailureMode& mode) {
        const auto cell = [&](std::string_view id) {
            const auto found = cells.find(id);
            return found == cells.end() ? std::string() : trimmed(found->second);
        };
        const std::string id = cell("id"), part = cell("component"), name = cell("mode");
        if (const auto found = m_modes.find(id); !id.empty() && found != m_modes.end()) {
            mode = m_import.project.modes[found->second];
            row.mode = mode.id;
            if (part.empty()) return {};
            const auto component = componentOf(part);
            if (component && *component == mode.component) return {};
            return fmt::format("the failure mode {} is one of {}, not of {}", id, mode.component,
                               part);
        }
        if (part.empty()) return "it does not say which component it is of";
        std::optional<project::Id> component = componentOf(part);
        if (!component && m_wish.makeComponents) component = make(part);
        if (!component) return unknown(part);
        if (id.empty())
            if (const auto found = m_byModeName.find({*component, lowered(name)});
                found != m_byModeName.end()) {
                mode = m_import.project.modes[found->second];
                row.mode = mode.id;
                return {};
            }
        if (!id.empty() && !project::isWellFormedId(id))
            return fmt::format("\"{:.60}\" is not an id", id);
        mode.component = *component;
        mode.id = !id.empty() ? id : freeId(*component + "." + slug(name));
        row.mode = mode.id;
        row.isNew = true;
        return {};
    }

    std::optional<project::Id> componentOf(const std::string& part) const {
        if (const auto found = m_components.find(part); found != m_components.end()) return part;
        if (m_byTag.count(part) == 1)
            return m_import.project.components[m_byTag.find(part)->second].id;
        const std::string name = lowered(part);
        if (m_byName.count(name) == 1)
            return m_import.project.components[m_byName.find(name)->second].id;
        return {};
    }

    std::string unknown(const std::string& part) {
        if (m_byTag.count(part) > 1 || m_byName.count(lowered(part)) > 1)
            return fmt::format("several components are called \"{:.60}\": use the id", part);
        // Looking for the nearest word takes its time: a table of strangers gets it for the first.
        if (m_proposalsLeft == 0) return fmt::format("there is no component \"{:.60}\"", part);
        --m_proposalsLeft;
        std::vector<std::string_view> known;
        for (const auto& component : m_import.project.components) {
            known.push_back(component.id);
            if (!component.tag.empty()) known.push_back(component.tag);
        }
        const std::string_view near = project::nearestWord(part, known);
        return fmt::format("there is no component \"{:.60}\"{}", part,
                           near.empty() ? "" : fmt::format("; did you mean {}?", near));
    }

    // Only in the row at hand until it is kept.
    project::Id make(const std::string& part) {
        project::Component component;
        component.id = project::isWellFormedId(part) ? part : slug(part);
        for (int n = 2; m_components.contains(component.id); ++n)
            component.id = fmt::format("{}-{}", slug(part), n);
        component.tag = part;
        m_made.push_back(component);
        return component.id;
    }

    project::Id freeId(const std::string& wanted) const {
        project::Id id = wanted.substr(0, 120);
        for (int n = 2; m_modes.contains(id); ++n)
            id = fmt::format("{}-{}", wanted.substr(0, 120), n);
        return id;
    }

    void keep(const ImportRow& row, project::FailureMode mode) {
        auto& project = m_import.project;
        for (project::Component& component : m_made) {
            const std::size_t at = project.components.size();
            m_components[component.id] = at;
            m_byTag.emplace(component.tag, at);
            m_import.newComponents.push_back(component.id);
            project.components.push_back(std::move(component));
        }
        if (!row.isNew) {
            project.modes[m_modes[mode.id]] = std::move(mode);
            return;
        }
        m_modes[mode.id] = project.modes.size();
        m_byModeName[{mode.component, lowered(mode.name)}] = project.modes.size();
        project.modes.push_back(std::move(mode));
    }

    static std::string textOf(const Column& column, const project::FailureMode& mode) {
        Row row;
        row.facts = &mode;
        row.dormant = mode.dormant;
        return toText(column.read({}, row));
    }

    const ImportWish& m_wish;
    Import m_import;
    std::map<std::string, std::size_t> m_components, m_modes;
    std::multimap<std::string, std::size_t> m_byTag, m_byName;
    std::map<std::pair<std::string, std::string>, std::size_t> m_byModeName;
    std::vector<project::Component> m_made;
    std::set<project::Id> m_done;
    std::size_t m_proposalsLeft = 50;
};

} // namespace

const Column* columnCalled(const std::string& heading) {
    // What was exported has the unit behind the id.
    const std::string wanted = plain(heading.substr(0, heading.find(" [")));
    for (const Column& column : columns())
        if (wanted == plain(column.id) || wanted == plain(column.title)) return &column;
    for (const Column& column : columns())
        for (const std::string_view name : column.alsoCalled)
            if (wanted == plain(name)) return &column;
    return nullptr;
}

bool isImported(const Column& column) {
    return (column.write && !column.ofModel) || namesTheRow(column.id);
}

project::Outcome<Matching>
matchColumns(const std::vector<std::string>& header,
             const std::vector<std::pair<std::string, std::string>>& wishes) {
    Matching matching;
    matching.columns.resize(header.size());
    std::vector<bool> wished(header.size());
    project::Problems problems;
    for (const auto& [heading, id] : wishes) {
        const auto found = std::find_if(header.begin(), header.end(), [&](const std::string& one) {
            return plain(one) == plain(heading);
        });
        if (found == header.end()) {
            problems.push_back(problem(fmt::format("the table has no heading \"{:.60}\"", heading),
                                       fmt::format("use one of: {}", fmt::join(header, ", "))));
            continue;
        }
        const auto at = static_cast<std::size_t>(found - header.begin());
        wished[at] = true;
        const Column* column = id == "-" ? nullptr : findColumn(id);
        if (id != "-" && (!column || !isImported(*column)))
            problems.push_back(
                problem(fmt::format("\"{:.60}\" is {}", id,
                                    column ? cannotBe(*column) : "no column of the worksheet"),
                        "take one of those that `cutwater fmea FILE` shows"));
        else if (column)
            matching.columns[at] = id;
        else
            matching.ignored.push_back(header[at] + ": not wanted");
    }
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (wished[i]) continue;
        const Column* column = columnCalled(header[i]);
        if (column && isImported(*column))
            matching.columns[i] = column->id;
        else
            matching.ignored.push_back(fmt::format("{}: {}",
                                                   header[i].empty() ? "(no heading)" : header[i],
                                                   column ? cannotBe(*column) : "no such column"));
    }
    std::set<std::string_view> taken;
    for (std::size_t i = 0; i < header.size(); ++i)
        if (!matching.columns[i].empty() && !taken.insert(matching.columns[i]).second)
            problems.push_back(
                problem(fmt::format("two headings stand for the column {}", matching.columns[i]),
                        fmt::format("say with a matching which one it is: \"{}=-\" leaves it out",
                                    header[i])));
    if (!taken.contains("id") && !taken.contains("component"))
        problems.push_back(
            problem("no heading says which component or row a line is of",
                    "call one \"component\" or \"id\", or match one of yours to it"));
    if (!problems.empty()) return problems;
    return matching;
}

std::size_t Import::taken() const {
    return static_cast<std::size_t>(
        std::count_if(rows.begin(), rows.end(), [](const ImportRow& row) { return row.taken; }));
}

project::Outcome<Import> importRows(const project::Project& project, const std::string& text,
                                    const ImportWish& wish) {
    const auto records = readDelimited(text, wish.separator);
    if (!records) return records.problems();
    if (records->empty())
        return problem("the table is empty", "give it a line of headings and rows below it");
    return Importer(project, wish).run(*records);
}

} // namespace cutwater::worksheet
