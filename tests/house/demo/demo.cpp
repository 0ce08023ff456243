// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/house/demo/demo.h"

#include "models/document/document.h"
#include "models/reliability/event_model.h"
#include "models/reliability/tree_formula.h"

#include <algorithm>
#include <cstdlib>
#include <iostream>

namespace demo {

using namespace cutwater;
using project::EventKind;
using project::GateKind;

namespace {

project::Project loadOrDie() {
    auto loaded = document::load(path());
    if (loaded) return loaded->project;
    for (const auto& problem : loaded.problems())
        std::cerr << project::toSentence(problem, "sandpiper-bay.cutwater") << '\n';
    std::exit(1);
}

// Truth of every node below one top event, each once.
class Walk {
public:
    Walk(const Names& events, const Forced& forced) : m_events(events), m_forced(forced) {}

    bool of(const std::string& id) {
        if (const auto known = m_known.find(id); known != m_known.end()) return known->second;
        const auto* event = index().event(id);
        return m_known[id] = event ? ofEvent(*event) : ofGate(*index().gate(id));
    }

private:
    bool ofEvent(const project::Event& event) const {
        if (const auto forced = m_forced.find(event.id); forced != m_forced.end())
            return forced->second;
        return event.kind == EventKind::house ? event.state : m_events.contains(event.id);
    }
    bool ofGate(const project::Gate& gate) {
        int count = 0;
        for (const auto& input : gate.inputs)
            count += of(input.id) ? 1 : 0;
        const int all = static_cast<int>(gate.inputs.size());
        switch (gate.kind) {
        case GateKind::orGate: return count > 0;
        case GateKind::vote: return count >= gate.k.value();
        case GateKind::exactlyOne: return count == 1;
        case GateKind::notGate: return count == 0;
        case GateKind::inhibit: return count == all && of(gate.condition.id);
        case GateKind::andGate:
        case GateKind::priorityAnd: return count == all;
        }
        return false;
    }

    const Names& m_events;
    const Forced& m_forced;
    std::map<std::string, bool> m_known;
};

} // namespace

std::string path() {
    return CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater";
}

const project::Project& project() {
    static const project::Project loaded = loadOrDie();
    return loaded;
}

const project::Index& index() {
    static const project::Index made(project());
    return made;
}

const std::string& nodeOf(const std::string& top) {
    return index().top(top)->node.id;
}

Solved solved(const std::string& top, const Forced& forced) {
    auto tree = reliability::toFormula(project(), index(), nodeOf(top), forced);
    auto outcome = logic::solve(tree.formula, tree.top);
    Solved result{outcome.solution.value(), {}, {}};
    for (const std::size_t position : tree.eventOfVariable) {
        const auto& event = project().events[position];
        const auto q = reliability::probabilityOf(project(), index(), event, {});
        result.events.push_back(event.id);
        result.q.push_back(q ? q->value : -1);
    }
    return result;
}

std::set<Names> Solved::setsOfOrder(std::uint32_t order) const {
    logic::ListingWish wish;
    wish.maxOrder = order;
    std::set<Names> found;
    auto listing = solution.list(q, wish);
    while (const auto set = listing.next()) {
        if (set->literals.size() != order) continue;
        Names names;
        for (const auto& literal : set->literals)
            names.insert((literal.negated ? "not " : "") + events[literal.variable]);
        found.insert(names);
    }
    return found;
}

Names Solved::singles() const {
    Names names;
    for (const auto& set : setsOfOrder(1))
        names.insert(*set.begin());
    return names;
}

Names Solved::relevant() const {
    Names names;
    for (const auto variable : solution.relevantVariables())
        names.insert(events[variable]);
    return names;
}

double Solved::probability() const {
    return solution.probability(q).occurs;
}

bool holds(const std::string& node, const Names& events, const Forced& forced) {
    return Walk(events, forced).of(node);
}

Names eventsBelow(const std::string& node) {
    Names events, seen;
    std::vector<std::string> open{node};
    while (!open.empty()) {
        const std::string id = open.back();
        open.pop_back();
        if (!seen.insert(id).second) continue;
        const auto* gate = index().gate(id);
        if (!gate) {
            events.insert(id);
            continue;
        }
        for (const auto& input : gate->inputs)
            open.push_back(input.id);
        if (!gate->condition.id.empty()) open.push_back(gate->condition.id);
    }
    return events;
}

} // namespace demo
