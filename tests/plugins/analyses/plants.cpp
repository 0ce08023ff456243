// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/plugins/analyses/plants.h"

#include <stdexcept>

namespace plants {

project::Event event(const std::string& id, std::optional<double> probability) {
    project::Event made;
    made.id = id;
    made.name = "the " + id;
    if (probability) {
        made.model.kind = project::ModelKind::probability;
        project::Quantity quantity;
        quantity.value = *probability;
        quantity.unit = project::Unit::number;
        quantity.source.document = "invented for the test";
        made.model.set(project::Role::probability, quantity);
    }
    return made;
}

project::Gate gate(const std::string& id, project::GateKind kind,
                   std::initializer_list<const char*> inputs, std::optional<int> k) {
    project::Gate made;
    made.id = id;
    made.kind = kind;
    made.k = k;
    for (const char* input : inputs)
        made.inputs.push_back({input, {}});
    return made;
}

project::TopEvent top(const std::string& id, const std::string& node) {
    project::TopEvent made;
    made.id = id;
    made.name = "top " + id;
    made.node.id = node;
    return made;
}

project::Project twoPumps() {
    project::Project plant;
    plant.events = {event("pump-a", 0.1), event("pump-b", 0.2), event("panel", 0.05)};
    plant.gates = {gate("stops", project::GateKind::orGate, {"no-flow", "panel"}),
                   gate("no-flow", project::GateKind::andGate, {"pump-a", "pump-b"})};
    plant.tops = {top("T1", "stops")};
    return plant;
}

sdk::Answer<sdk::Result> ask(const std::string& analysis, const project::Project& project,
                             const sdk::Values& values, const sdk::Job& job) {
    static sdk::Host host({CUTWATER_PLUGINS});
    const sdk::PluginFacts* const facts = host.find(sdk::PluginKind::analysis, analysis);
    sdk::Analysis* const plugin = host.analysis(analysis);
    if (!facts || !plugin) throw std::runtime_error("no plug-in " + analysis);
    const auto completed = sdk::complete(plugin->parameters(&project), values);
    if (!completed) return sdk::Answer<sdk::Result>::failed(completed.problems());
    return sdk::runGuarded(*plugin, *facts, project, *completed, job);
}

const sdk::Table& table(const sdk::Result& result, const std::string& id) {
    for (const sdk::Table& table : result.tables)
        if (table.id == id) return table;
    throw std::runtime_error("no table " + id);
}

const sdk::Cell& cell(const sdk::Table& table, std::size_t row, const std::string& column) {
    for (std::size_t c = 0; c < table.columns.size(); ++c)
        if (table.columns[c].id == column) return table.rows.at(row).at(c);
    throw std::runtime_error("no column " + column);
}

std::string text(const sdk::Table& table, std::size_t row, const std::string& column) {
    return std::get<std::string>(cell(table, row, column));
}

double number(const sdk::Table& table, std::size_t row, const std::string& column) {
    const sdk::Cell& found = cell(table, row, column);
    if (const auto* whole = std::get_if<std::int64_t>(&found)) return static_cast<double>(*whole);
    return std::get<double>(found);
}

bool empty(const sdk::Table& table, std::size_t row, const std::string& column) {
    return std::holds_alternative<std::monostate>(cell(table, row, column));
}

std::string notes(const sdk::Result& result, sdk::NoteKind kind) {
    std::string all;
    for (const sdk::Note& note : result.notes)
        if (note.kind == kind) all += note.sentence + '\n';
    return all;
}

} // namespace plants
