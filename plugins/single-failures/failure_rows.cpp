// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/single-failures/failure_rows.h"

#include "plugins/sdk/cells.h"
#include "plugins/sdk/tree/target.h"

#include <fmt/format.h>

#include <algorithm>
#include <cstdint>

namespace cutwater::single_failures {
namespace {

using sdk::Cell;
using sdk::Column;
using sdk::ColumnType;
using sdk::textCell;

constexpr std::size_t kDeepest = 100; // of a plant breakdown; deeper ones are cut at the top

struct Part {
    const project::FailureMode* mode = nullptr;
    const project::Component* component = nullptr;
};

Part partOf(const project::Index& index, const project::Event& event) {
    Part part;
    part.mode = index.mode(event.mode);
    if (part.mode) part.component = index.component(part.mode->component);
    return part;
}

const std::string& shortName(const project::Component& component) {
    return component.name.empty() ? component.tag : component.name;
}

std::vector<Column> commonColumns() {
    return {{"top", "Top", ColumnType::reference, ""},
            {"event", "Event", ColumnType::reference, ""},
            {"tag", "Tag", ColumnType::text, ""},
            {"component", "Component", ColumnType::text, ""},
            {"failure", "What fails", ColumnType::text, ""},
            {"place", "Where it sits", ColumnType::text, ""},
            {"location", "Location", ColumnType::text, ""}};
}

std::vector<Cell> commonCells(const Part& part, const std::string& top, const project::Event& event,
                              const project::Index& index, bool negated) {
    const std::string prefix = negated ? "not " : "";
    return {top,
            prefix + event.id,
            part.component ? textCell(part.component->tag) : Cell(),
            part.component ? textCell(part.component->name) : Cell(),
            prefix + (part.mode && !part.mode->name.empty()
                          ? part.mode->name
                          : sdk::tree::readableName(index, event)),
            part.component ? textCell(placeOf(index, *part.component)) : Cell(),
            part.component ? textCell(part.component->location) : Cell()};
}

std::string intervalOf(const project::Index& index, const project::Event& event) {
    const project::FailureModel* const model = index.modelOf(event);
    const project::Quantity* interval = model ? model->find(project::Role::interval) : nullptr;
    if (interval) interval = index.resolved(*interval);
    if (!interval) return {};
    return fmt::format("{} {}", interval->value, project::facts(interval->unit).symbol);
}

} // namespace

std::string placeOf(const project::Index& index, const project::Component& component) {
    std::vector<std::string> names{shortName(component)};
    const project::Component* parent = index.component(component.parent);
    while (parent && names.size() < kDeepest) {
        names.push_back(shortName(*parent));
        parent = index.component(parent->parent);
    }
    if (parent) names.emplace_back("...");
    std::reverse(names.begin(), names.end());
    return fmt::format("{}", fmt::join(names, " > "));
}

std::string checksOf(const project::FailureMode& mode) {
    std::vector<std::string> checks;
    for (const project::Check& check : mode.checks) {
        std::string text = check.look;
        if (check.minutes) text += fmt::format(" ({} min)", *check.minutes);
        if (!check.tells.empty()) text += ": " + check.tells;
        if (!text.empty()) checks.push_back(std::move(text));
    }
    return fmt::format("{}", fmt::join(checks, "; "));
}

Cell minutesOf(const project::FailureMode& mode) {
    Cell minutes;
    for (const project::Check& check : mode.checks) {
        if (!check.minutes) continue;
        const double* const before = std::get_if<double>(&minutes);
        minutes = *check.minutes + (before ? *before : 0.0);
    }
    return minutes;
}

bool isDormant(const project::Index& index, const project::Event& event) {
    const project::FailureMode* const mode = index.mode(event.mode);
    if (mode && mode->dormant) return true;
    const project::FailureModel* const model = index.modelOf(event);
    return model && model->kind == project::ModelKind::tested;
}

sdk::Table seenTable() {
    sdk::Table table{"single-failures", "Failures that show at once", commonColumns()};
    table.columns.push_back({"shows", "How it shows", ColumnType::text, ""});
    table.columns.push_back({"check", "What to check", ColumnType::text, ""});
    table.columns.push_back({"minutes", "All checks take", ColumnType::number, "min"});
    table.columns.push_back({"probability", "Probability", ColumnType::probability, ""});
    return table;
}

sdk::Table dormantTable() {
    sdk::Table table{"dormant", "Failures that nobody sees until a test or a demand",
                     commonColumns()};
    table.columns.push_back({"tested-every", "Tested every", ColumnType::text, ""});
    table.columns.push_back({"last-test", "Last test", ColumnType::text, ""});
    table.columns.push_back({"proved-by", "Proved by", ColumnType::text, ""});
    table.columns.push_back({"shows", "How it shows", ColumnType::text, ""});
    table.columns.push_back({"check", "What to check", ColumnType::text, ""});
    table.columns.push_back({"minutes", "All checks take", ColumnType::number, "min"});
    table.columns.push_back({"probability", "Probability", ColumnType::probability, ""});
    return table;
}

std::vector<Cell> seenRow(const project::Index& index, const std::string& top,
                          const project::Event& event, bool negated, Cell probability) {
    const Part part = partOf(index, event);
    std::vector<Cell> row = commonCells(part, top, event, index, negated);
    row.push_back(part.mode ? textCell(part.mode->detection) : Cell());
    row.push_back(part.mode ? textCell(checksOf(*part.mode)) : Cell());
    row.push_back(part.mode ? minutesOf(*part.mode) : Cell());
    row.push_back(std::move(probability));
    return row;
}

std::vector<Cell> dormantRow(const project::Index& index, const std::string& top,
                             const project::Event& event, bool negated, Cell probability) {
    const Part part = partOf(index, event);
    const project::FailureModel* const model = index.modelOf(event);
    std::vector<Cell> row = commonCells(part, top, event, index, negated);
    row.push_back(textCell(intervalOf(index, event)));
    row.push_back(model ? textCell(model->lastTest) : Cell());
    row.push_back(part.mode ? textCell(part.mode->provedBy) : Cell());
    row.push_back(part.mode ? textCell(part.mode->detection) : Cell());
    row.push_back(part.mode ? textCell(checksOf(*part.mode)) : Cell());
    row.push_back(part.mode ? minutesOf(*part.mode) : Cell());
    row.push_back(std::move(probability));
    return row;
}

} // namespace cutwater::single_failures
