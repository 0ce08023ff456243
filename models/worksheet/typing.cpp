// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/typing.h"

#include "models/project/nearest.h"
#include "models/worksheet/column_texts.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <optional>
#include <unordered_map>
#include <utility>

namespace cutwater::worksheet {

namespace {

std::size_t orderOf(std::string_view column) {
    const auto& all = columns();
    return static_cast<std::size_t>(
        std::find_if(all.begin(), all.end(),
                     [&](const Column& each) { return each.id == column; }) -
        all.begin());
}

bool ofActions(std::string_view column) {
    return column == "owner" || column == "due" || column == "state" || column == "done-on" ||
           column == "proof";
}

class Typist {
public:
    Typist(const project::Project& project, const project::Index& index)
        : m_project(project), m_index(index) {}

    // The clause why it is not taken; `changed` says whether it makes a difference.
    Fault type(const TypedCell& cell, project::FailureMode& mode, bool& changed) {
        const Column* column = findColumn(cell.column);
        if (!column) return "stands in no column of the worksheet";
        if (cell.text == shownText(*column, m_index, mode)) return {};
        if (column->id == "component") return move(cell.text, mode, changed);
        if (!column->write) return "would change what is worked out from other facts";
        if (column->id == "mode" && trimmed(cell.text).empty())
            return "cannot be empty: say what fails, or remove the row";
        if (ofActions(column->id) && mode.actions.empty())
            return "belongs to an action, and there is none: type the action first";
        project::FailureMode made = mode;
        if (Fault fault = column->write(cell.text, made)) return fault;
        if (std::any_of(made.actions.begin(), made.actions.end(),
                        [](const project::Action& action) { return action.what.empty(); }))
            return "leaves an action without words: remove what stands beside it first";
        if (column->id == "dormant" && made == mode &&
            mode.model.kind == project::ModelKind::tested)
            return "stays \"yes\": its failure model is found by tests only";
        changed = !(made == mode);
        mode = std::move(made);
        return {};
    }

private:
    Fault move(const std::string& text, project::FailureMode& mode, bool& changed) {
        if (trimmed(text).empty()) return "cannot be empty: each row is of a component";
        auto known = m_components.find(text);
        if (known == m_components.end())
            known = m_components.emplace(text, componentMeant(m_project, text)).first;
        if (!known->second) return known->second.problems().front().what;
        changed = mode.component != *known->second;
        mode.component = *known->second;
        return {};
    }

    const project::Project& m_project;
    const project::Index& m_index;
    std::map<std::string, project::Outcome<project::Id>> m_components;
};

} // namespace

std::string shownText(const Column& column, const project::Index& index,
                      const project::FailureMode& mode) {
    Row row;
    row.facts = &mode;
    row.component = index.component(mode.component);
    row.dormant = mode.dormant || mode.model.kind == project::ModelKind::tested;
    return toText(column.read({}, row));
}

project::Outcome<project::Id> componentMeant(const project::Project& project,
                                             const std::string& typed) {
    const std::string text = trimmed(typed);
    const auto problem = [&](std::string what) {
        return project::Problem{project::Severity::error, std::move(what),
                                "choose one from the list", "component", 0};
    };
    std::vector<const project::Component*> byTag, byName;
    std::vector<std::string_view> known;
    const std::string name = lowered(text);
    for (const project::Component& component : project.components) {
        if (component.id == text) return component.id;
        if (component.tag == text) byTag.push_back(&component);
        if (lowered(component.name) == name) byName.push_back(&component);
        known.push_back(component.id);
        if (!component.tag.empty()) known.push_back(component.tag);
    }
    if (byTag.size() == 1) return byTag.front()->id;
    if (byTag.empty() && byName.size() == 1) return byName.front()->id;
    if (byTag.size() + byName.size() > 1) return problem("means several components: use the id");
    const std::string_view near = project::nearestWord(text, known);
    return problem(near.empty()
                       ? "is no component of the plant"
                       : fmt::format("is no component of the plant; did you mean {}?", near));
}

Typing typeInto(const project::Project& project, const project::Index& index,
                const std::vector<TypedCell>& cells) {
    Typing typing;
    std::map<std::size_t, std::vector<std::size_t>> byMode; // by place in the project
    for (std::size_t i = 0; i < cells.size(); ++i) {
        if (const project::FailureMode* mode = index.mode(cells[i].mode))
            byMode[static_cast<std::size_t>(mode - project.modes.data())].push_back(i);
        else
            typing.refused.push_back({i, "belongs to a row that is not there"});
    }
    std::unordered_map<std::string_view, std::size_t> order;
    for (const TypedCell& cell : cells)
        if (!order.contains(cell.column)) order.emplace(cell.column, orderOf(cell.column));
    Typist typist(project, index);
    for (auto& [at, positions] : byMode) {
        std::stable_sort(positions.begin(), positions.end(), [&](std::size_t a, std::size_t b) {
            return order.at(cells[a].column) < order.at(cells[b].column);
        });
        project::FailureMode mode = project.modes[at];
        bool any = false;
        for (const std::size_t i : positions) {
            bool changed = false;
            if (auto fault = typist.type(cells[i], mode, changed))
                typing.refused.push_back({i, std::move(*fault)});
            typing.cells += changed;
            any = any || changed;
        }
        if (any) typing.changed.push_back(std::move(mode));
    }
    std::sort(typing.refused.begin(), typing.refused.end(),
              [](const RefusedCell& a, const RefusedCell& b) { return a.cell < b.cell; });
    return typing;
}

} // namespace cutwater::worksheet
