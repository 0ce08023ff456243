// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/bench/table.h"

#include <fmt/format.h>

namespace bench {

namespace {

std::string quoted(const std::string& text) {
    std::string result = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') result += '\\';
        result += c;
    }
    return result + '"';
}

class Object {
public:
    Object& add(const char* name, const std::string& json) {
        m_text += fmt::format("{}\"{}\": {}", m_text.empty() ? "" : ", ", name, json);
        return *this;
    }
    Object& text(const char* name, const std::string& value) { return add(name, quoted(value)); }
    template <typename Number>
    Object& number(const char* name, Number value) {
        return add(name, fmt::format("{}", value)); // shortest digits that give the same again
    }
    std::string done() const { return "{" + m_text + "}"; }

private:
    std::string m_text;
};

std::string list(const std::vector<std::string>& items) {
    return fmt::format("[{}]", fmt::join(items, ",\n "));
}

std::string word(Ending ending, const ChildLimits& limits) {
    return ending == Ending::answered ? "answered" : sentence(ending, limits);
}

std::string json(const Ours& ours, const ChildLimits& limits) {
    Object object;
    object.text("ending", word(ours.ending, limits));
    if (ours.ending != Ending::answered) return object.done();
    return object.number("processorSeconds", ours.processorSeconds)
        .number("wallSeconds", ours.wallSeconds)
        .number("peakMB", ours.peakMB)
        .number("engineMB", ours.engineMB)
        .number("events", ours.events)
        .number("gates", ours.gates)
        .number("modules", ours.modules)
        .number("diagramNodes", ours.diagramNodes)
        .number("setNodes", ours.setNodes)
        .text("sets", toDecimal(ours.sets))
        .number("probability", ours.probability)
        .number("complement", ours.complement)
        .done();
}

std::string json(const BuddyRun& run, const ChildLimits& limits) {
    Object object;
    object.text("variant", run.variant).text("ending", word(run.ending, limits));
    if (run.ending != Ending::answered) return object.done();
    const BuddyResult& result = run.result;
    object.number("processorSeconds", result.processorSeconds)
        .number("wallSeconds", result.wallSeconds)
        .number("initSeconds", result.initSeconds)
        .number("peakMB", run.peakMB)
        .number("tableMB", result.tableMB)
        .number("nodes", result.finalNodes)
        .number("made", result.producedNodes)
        .number("collections", result.collections)
        .number("probability", result.probability);
    if (run.hasSets) object.text("sets", toDecimal(*result.sets));
    return object.done();
}

std::string json(const Row& row, const ChildLimits& limits) {
    std::vector<std::string> buddy, wrong;
    for (const BuddyRun& run : row.measured.buddy)
        buddy.push_back(json(run, limits));
    for (const std::string& sentence : row.wrong)
        wrong.push_back(quoted(sentence));
    const Census& size = row.measured.census;
    return Object()
        .text("family", bench::word(row.recipe->family))
        .text("instance", row.recipe->name)
        .number("events", size.events)
        .number("gates", size.gates)
        .number("sharedGates", size.sharedGates)
        .number("sharedEvents", size.sharedEvents)
        .number("depth", size.depth)
        .add("ours", json(row.measured.ours, limits))
        .add("oursWithSets", json(row.measured.withSets, limits))
        .add("buddy", list(buddy))
        .number("quickestBuddy", row.measured.best)
        .add("wrong", list(wrong))
        .done();
}

} // namespace

std::string asJson(const std::vector<Row>& rows, const Conditions& conditions) {
    const ChildLimits& limits = conditions.wish.limits;
    std::vector<std::string> all;
    for (const Row& row : rows)
        all.push_back(json(row, limits));
    return Object()
               .text("machine", conditions.machine)
               .text("build", conditions.build)
               .text("when", conditions.when)
               .number("runs", conditions.wish.runs)
               .number("threads", conditions.wish.threads)
               .number("limitSeconds", limits.seconds)
               .number("limitMB", limits.memoryBytes >> 20)
               .add("rows", list(all))
               .done() +
           "\n";
}

} // namespace bench
