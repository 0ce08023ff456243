// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/session/random_edits.h"

#include "models/project/edits/add.h"
#include "models/project/edits/arrange.h"
#include "models/project/edits/facts.h"
#include "models/project/edits/fragment.h"

namespace cutwater::test {

using namespace project;
using namespace project::edits;

namespace {

class Chance {
public:
    Chance(const Project& project, std::mt19937& random) : m_project(project), m_random(random) {}

    std::size_t below(std::size_t count) {
        return std::uniform_int_distribution<std::size_t>(0, count - 1)(m_random);
    }
    Id node() {
        const std::size_t all = m_project.events.size() + m_project.gates.size();
        if (all == 0) return "none";
        const std::size_t i = below(all);
        return i < m_project.events.size() ? m_project.events[i].id
                                           : m_project.gates[i - m_project.events.size()].id;
    }
    Id event() {
        return m_project.events.empty() ? "none"
                                        : m_project.events[below(m_project.events.size())].id;
    }
    Id gate() {
        return m_project.gates.empty() ? Id() : m_project.gates[below(m_project.gates.size())].id;
    }
    Place place() {
        if (below(12) == 0) return {{}, below(m_project.tops.size() + 1)};
        return {below(6) == 0 ? node() : gate(), below(5)};
    }
    Use use() {
        if (m_project.gates.empty()) return {"none", "none", 0};
        const Gate& parent = m_project.gates[below(m_project.gates.size())];
        if (parent.inputs.empty()) return {"none", parent.id, 0};
        const std::size_t row = below(parent.inputs.size());
        return {parent.inputs[row].id, parent.id, row};
    }
    std::string text() { return "failure " + std::to_string(below(100000)); }

private:
    const Project& m_project;
    std::mt19937& m_random;
};

} // namespace

editor::Edit randomEdit(const Project& now, std::mt19937& random) {
    Chance chance(now, random);
    // Trees grow up to a size, and shrink above it.
    const bool small = now.events.size() + now.gates.size() < 150;
    const std::size_t what = small && chance.below(3) == 0 ? 0 : chance.below(19);
    const Place place = chance.place();
    const Use use = chance.use();
    const Id node = chance.node(), event = chance.event(), gate = chance.gate();
    const std::string text = chance.text();
    const std::size_t number = chance.below(10);
    switch (what) {
    case 0:
    case 1: return [=](const Project& p) { return addEvent(p, place, text); };
    case 2: return [=](const Project& p) { return shareNode(p, place, node); };
    case 3:
        return [=](const Project& p) {
            return useMode(p, place,
                           p.modes.empty() ? "none" : p.modes[number % p.modes.size()].id);
        };
    case 4: return [=](const Project& p) { return separate(p, use); };
    case 5:
    case 6: return [=](const Project& p) { return removeUses(p, {use}); };
    case 7: return [=](const Project& p) { return moveUses(p, {use}, place); };
    case 8: return [=](const Project& p) { return reorder(p, use, number % 2 ? 1 : -1); };
    case 9:
        return [=](const Project& p) {
            return insertGateAbove(p, {use}, static_cast<GateKind>(number % 7), text);
        };
    case 10: return [=](const Project& p) { return dissolveGate(p, gate); };
    case 11: return [=](const Project& p) { return rename(p, node, text); };
    case 12:
        return [=](const Project& p) {
            return setGateKind(p, node, static_cast<GateKind>(number % 7));
        };
    case 13: return [=](const Project& p) { return setK(p, gate, static_cast<int>(number % 4)); };
    case 14:
        return [=](const Project& p) {
            return setEventKind(p, node, static_cast<EventKind>(number % 4));
        };
    case 15:
        return [=](const Project& p) {
            return setMode(
                p, event, p.modes.empty() || number < 3 ? "" : p.modes[number % p.modes.size()].id);
        };
    case 16:
        return [=](const Project& p) {
            FailureModel model;
            model.kind = ModelKind::probability;
            Quantity quantity;
            quantity.value = static_cast<double>(number) / 1000;
            quantity.unit = Unit::number;
            model.set(Role::probability, quantity);
            return setModel(p, event, model);
        };
    case 17:
        return [=](const Project& p) -> Result {
            const auto fragment = copyNodes(p, {event});
            if (!fragment) return fragment.problems();
            return paste(p, *fragment, place);
        };
    default:
        return [=](const Project& p) -> Result {
            if (number > 4) return setRemark(p, node, text);
            Project facts = p;
            facts.description = text;
            return setProjectFacts(p, facts);
        };
    }
}

} // namespace cutwater::test
