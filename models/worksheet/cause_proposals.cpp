// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/cause_proposals.h"

#include "models/worksheet/column_texts.h"
#include "models/worksheet/reach.h"

#include <algorithm>
#include <fmt/format.h>
#include <map>
#include <set>
#include <unordered_map>

namespace cutwater::worksheet {

namespace {

using project::GateKind;

constexpr std::size_t kMostEvents = 4000; // below one gate

bool needsSeveral(const project::Gate& gate) {
    switch (gate.kind) {
    case GateKind::andGate:
    case GateKind::priorityAnd:
    case GateKind::inhibit: return gate.inputs.size() > 1;
    case GateKind::vote: return gate.k.value_or(1) > 1;
    case GateKind::orGate:
    case GateKind::exactlyOne:
    case GateKind::notGate: return false;
    }
    return false;
}

using Key = std::pair<CauseKind, std::string>; // what is shared, as it is compared
struct Fact {
    Key key;
    std::string shown;
};

class Facts {
public:
    Facts(const project::Project& project, const project::Index& index)
        : m_project(project), m_index(index) {
        for (const project::Connection& connection : project.connections) {
            const std::string medium = lowered(connection.medium);
            if (medium.find("fuel") == std::string::npos && medium.find("oil") == std::string::npos)
                continue;
            m_fuels[connection.to].insert({connection.medium, connection.from});
            for (const project::Reference& device : connection.through)
                m_fuels[device.id].insert({connection.medium, connection.from});
        }
    }

    std::vector<Fact> of(const project::Event& event) const {
        std::vector<Fact> facts;
        const project::FailureMode* mode = m_index.mode(event.mode);
        const project::Component* component = mode ? m_index.component(mode->component) : nullptr;
        if (!component) return facts;
        for (const project::Reference& source : component->suppliedBy)
            facts.push_back({{CauseKind::supply, source.id}, shown(source.id)});
        if (!component->location.empty())
            facts.push_back({{CauseKind::location, lowered(trimmed(component->location))},
                             component->location});
        if (!component->type.empty() && !mode->name.empty())
            facts.push_back({{CauseKind::type, lowered(component->type + ": " + mode->name)},
                             component->type + ": " + mode->name});
        if (const auto found = m_fuels.find(component->id); found != m_fuels.end())
            for (const auto& [medium, from] : found->second)
                facts.push_back({{CauseKind::fuel, medium + '\n' + from},
                                 fmt::format("{} from {}", medium, shown(from))});
        for (const Fact& fact : maintenanceOf(*mode))
            facts.push_back(fact);
        return facts;
    }

private:
    // The same test on the same day, or the same check by the same words.
    std::vector<Fact> maintenanceOf(const project::FailureMode& mode) const {
        std::vector<Fact> facts;
        const project::Quantity* interval = mode.model.find(project::Role::interval);
        interval = interval ? m_index.resolved(*interval) : nullptr;
        if (interval && !mode.model.lastTest.empty())
            facts.push_back(
                {{CauseKind::maintenance,
                  fmt::format("{}\n{}", inBaseUnits(*interval), mode.model.lastTest)},
                 fmt::format("tested every {} {}, last on {}", interval->value,
                             project::facts(interval->unit).symbol, mode.model.lastTest)});
        if (!mode.provedBy.empty())
            facts.push_back({{CauseKind::maintenance, lowered(mode.provedBy)}, mode.provedBy});
        return facts;
    }

    std::string shown(const project::Id& id) const {
        const project::Component* component = m_index.component(id);
        return component && !component->tag.empty() ? component->tag : id;
    }

    const project::Project& m_project;
    const project::Index& m_index;
    std::unordered_map<std::string_view, std::set<std::pair<std::string, std::string>>> m_fuels;
};

std::string reasonFor(CauseKind kind, const std::string& shared, std::size_t events,
                      const std::string& gate, std::size_t gates) {
    const std::string counts =
        fmt::format("gate {}{} counts on them failing independently", gate,
                    gates > 1 ? fmt::format(" (and {} more)", gates - 1) : "");
    switch (kind) {
    case CauseKind::supply:
        return fmt::format("{} failure modes sit on parts that {} supplies, and {}.", events,
                           shared, counts);
    case CauseKind::location:
        return fmt::format("{} failure modes sit in one place ({}): heat, water, fire or a falling "
                           "tool may take them together, and {}.",
                           events, shared, counts);
    case CauseKind::type:
        return fmt::format("{} parts of one kind fail in the same way ({}): same make, same age, "
                           "same hand, and {}.",
                           events, shared, counts);
    case CauseKind::fuel:
        return fmt::format(
            "{} failure modes sit on parts that one fuel wets ({}): dirt, water or a "
            "bad batch reaches all, and {}.",
            events, shared, counts);
    case CauseKind::maintenance:
        return fmt::format("{} failure modes hang on one piece of maintenance ({}): the same "
                           "mistake may be made at each, and {}.",
                           events, shared, counts);
    }
    return {};
}

} // namespace

std::string_view word(CauseKind kind) {
    switch (kind) {
    case CauseKind::supply: return "same supply";
    case CauseKind::location: return "same location";
    case CauseKind::type: return "same type";
    case CauseKind::fuel: return "same fuel";
    case CauseKind::maintenance: return "same maintenance";
    }
    return {};
}

CauseProposals proposeCauses(const project::Project& project, const project::Index& index) {
    CauseProposals result;
    const Facts facts(project, index);
    std::unordered_map<std::size_t, std::vector<Fact>> known;
    struct Found {
        std::string shown;
        std::set<std::size_t> events, gates;
    };
    std::map<Key, Found> found;
    for (std::size_t g = 0; g < project.gates.size(); ++g) {
        const project::Gate& gate = project.gates[g];
        if (!needsSeveral(gate)) continue;
        // Fact -> event -> below which inputs.
        std::map<Key, std::map<std::size_t, std::set<std::size_t>>> shared;
        std::map<Key, std::string> shownAs;
        std::size_t count = 0;
        for (std::size_t input = 0; input < gate.inputs.size() && count <= kMostEvents; ++input)
            for (const std::size_t event : eventsBelow(project, index, gate.inputs[input].id)) {
                ++count;
                auto [entry, isNew] = known.try_emplace(event);
                if (isNew) entry->second = facts.of(project.events[event]);
                for (const Fact& fact : entry->second) {
                    shared[fact.key][event].insert(input);
                    shownAs.try_emplace(fact.key, fact.shown);
                }
            }
        if (count > kMostEvents) {
            ++result.gatesLeftOut;
            continue;
        }
        for (const auto& [key, events] : shared) {
            if (events.size() < 2) continue;
            std::set<std::size_t> inputs;
            bool pair = false;
            for (const auto& [event, below] : events) {
                // Two events that stand below different inputs.
                pair = pair || (!inputs.empty() && (below.size() > 1 || inputs.size() > 1 ||
                                                    *below.begin() != *inputs.begin()));
                inputs.insert(below.begin(), below.end());
            }
            if (!pair) continue;
            Found& one = found[key];
            one.shown = shownAs[key];
            one.gates.insert(g);
            for (const auto& [event, below] : events)
                one.events.insert(event);
        }
    }
    for (const auto& [key, one] : found) {
        CauseProposal proposal;
        proposal.kind = key.first;
        proposal.shared = one.shown;
        proposal.events.assign(one.events.begin(), one.events.end());
        proposal.gates.assign(one.gates.begin(), one.gates.end());
        for (const project::CommonCauseGroup& group : project.commonCauses) {
            std::size_t members = 0;
            for (const project::Reference& member : group.members)
                if (const project::Event* event = index.event(member.id))
                    members +=
                        one.events.count(static_cast<std::size_t>(event - project.events.data()));
            if (members > 1) proposal.groups.push_back(group.id);
        }
        proposal.reason =
            reasonFor(proposal.kind, proposal.shared, proposal.events.size(),
                      project.gates[proposal.gates.front()].id, proposal.gates.size());
        result.proposals.push_back(std::move(proposal));
    }
    return result;
}

} // namespace cutwater::worksheet
