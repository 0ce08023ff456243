// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/worksheet/skeleton.h"

#include <algorithm>
#include <fmt/format.h>
#include <unordered_map>
#include <unordered_set>

namespace cutwater::worksheet {

namespace {

using project::Id;
using project::Problem;
using project::Severity;

Problem problem(std::string what, std::string remedy) {
    return {Severity::error, std::move(what), std::move(remedy), "proposals", 0};
}

class Accepting {
public:
    Accepting(const Skeleton& skeleton, const std::set<std::string>& accepted)
        : m_skeleton(skeleton) {
        for (std::size_t i = 0; i < skeleton.proposals.size(); ++i) {
            m_gates[skeleton.proposals[i].gate.id] = i;
            m_accepted.push_back(accepted.contains(skeleton.proposals[i].id));
        }
    }

    // The inputs of an accepted gate, those of the refused ones below it in their place.
    std::vector<project::Reference> inputsOf(std::size_t gate) const {
        std::vector<project::Reference> inputs;
        std::unordered_set<std::string> taken;
        std::unordered_set<std::size_t> opened;
        // Last one first, so that the order stays that of the proposal.
        std::vector<Id> left;
        const auto open = [&](std::size_t at) {
            if (!opened.insert(at).second) return;
            const auto& all = m_skeleton.proposals[at].gate.inputs;
            for (auto it = all.rbegin(); it != all.rend(); ++it)
                left.push_back(it->id);
        };
        open(gate);
        while (!left.empty()) {
            const Id id = left.back();
            left.pop_back();
            const auto found = m_gates.find(id);
            if (found != m_gates.end() && !m_accepted[found->second]) {
                // Refused: an "and" cannot be dissolved into an "or" without changing what it says.
                if (m_skeleton.proposals[found->second].gate.kind == project::GateKind::orGate)
                    open(found->second);
                continue;
            }
            const Id& kept =
                found != m_gates.end() ? m_skeleton.proposals[found->second].gate.id : id;
            if (taken.insert(kept).second) inputs.push_back({kept, {}});
        }
        return inputs;
    }

private:
    const Skeleton& m_skeleton;
    std::unordered_map<std::string_view, std::size_t> m_gates;
    std::vector<bool> m_accepted;
};

} // namespace

project::Outcome<project::Project> acceptProposals(const project::Project& project,
                                                   const Skeleton& skeleton,
                                                   const std::set<std::string>& accepted) {
    std::set<std::string> known;
    for (const Proposal& proposal : skeleton.proposals)
        known.insert(proposal.id);
    for (const std::string& id : accepted)
        if (!known.contains(id))
            return problem(fmt::format("there is no proposal {:.40}", id),
                           fmt::format("name some of P1 to P{}", skeleton.proposals.size()));
    if (!accepted.contains(skeleton.proposals.front().id))
        return problem(fmt::format("the proposal {}, the top of the tree, is not accepted",
                                   skeleton.proposals.front().id),
                       "accept it, too: without it there is no tree");

    project::Project made = project;
    const Accepting accepting(skeleton, accepted);
    std::unordered_set<std::string> used; // ids below what is accepted
    std::vector<std::size_t> gates{0};
    std::unordered_map<std::string_view, std::size_t> gateOf;
    for (std::size_t i = 0; i < skeleton.proposals.size(); ++i)
        gateOf[skeleton.proposals[i].gate.id] = i;
    std::unordered_set<std::size_t> seen{0};
    for (std::size_t next = 0; next < gates.size(); ++next) {
        project::Gate gate = skeleton.proposals[gates[next]].gate;
        gate.inputs = accepting.inputsOf(gates[next]);
        gate.remark = skeleton.proposals[gates[next]].reason;
        for (const project::Reference& input : gate.inputs) {
            used.insert(input.id);
            if (const auto found = gateOf.find(input.id);
                found != gateOf.end() && seen.insert(found->second).second)
                gates.push_back(found->second);
        }
        made.gates.push_back(std::move(gate));
    }
    for (const project::Event& event : skeleton.events)
        if (used.contains(event.id)) made.events.push_back(event);
    made.tops.push_back(skeleton.top);
    project::Problems problems = validate(made);
    std::erase_if(problems, [](const Problem& one) { return one.severity != Severity::error; });
    if (!problems.empty()) return problems;
    return made;
}

} // namespace cutwater::worksheet
