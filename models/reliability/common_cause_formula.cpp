// SPDX-License-Identifier: GPL-3.0-or-later
// Puts "alone, or one of the common causes" in the place of every member of a group.
#include "models/reliability/common_cause.h"

#include <algorithm>
#include <fmt/format.h>
#include <numeric>
#include <optional>

namespace cutwater::reliability {

namespace {

using logic::Literal;
using logic::Op;

constexpr std::size_t kMostCauses = 4096; // of one group
constexpr std::size_t kNone = static_cast<std::size_t>(-1);

std::string commonId(const project::Project& project, const std::vector<std::size_t>& events) {
    std::string id;
    for (const std::size_t event : events)
        id += (id.empty() ? "" : " + ") + project.events[event].id;
    return id + " [common]";
}

bool isUncertain(const project::Index& index, const project::CommonCauseGroup& group) {
    return std::any_of(group.factors.begin(), group.factors.end(), [&](const auto& factor) {
        const project::Quantity* const quantity = index.resolved(factor);
        return quantity && quantity->uncertainty.index() != 0;
    });
}

// The sizes of set that the group's factors leave a chance, 2 and up.
std::vector<std::size_t> possibleSizes(const project::Index& index,
                                       const project::CommonCauseGroup& group) {
    const std::size_t members = group.members.size();
    std::vector<std::size_t> sizes;
    if (group.kind == project::CommonCauseKind::beta) {
        sizes.push_back(members);
        return sizes;
    }
    const std::vector<double> factors = factorsOf(index, group);
    const std::vector<double> shares = commonCauseShares(group.kind, factors, members);
    const bool uncertain = isUncertain(index, group);
    for (std::size_t k = 2; k <= members; ++k) {
        // Letters that were left out make these sizes impossible for good.
        const bool never = group.kind == project::CommonCauseKind::multipleGreekLetters &&
                           k > factors.size() && k < members;
        if (!never && (shares[k - 1] > 0 || uncertain)) sizes.push_back(k);
    }
    return sizes;
}

double subsets(std::size_t members, const std::vector<std::size_t>& sizes) {
    double total = 0;
    for (const std::size_t size : sizes) {
        double count = 1;
        for (std::size_t i = 1; i <= size; ++i)
            count = count * static_cast<double>(members - size + i) / static_cast<double>(i);
        total += count;
    }
    return total;
}

// The next set of positions in lexicographic order; false after the last.
bool advance(std::vector<std::size_t>& picked, std::size_t members) {
    const std::size_t size = picked.size();
    for (std::size_t i = size; i-- > 0;) {
        if (picked[i] == members - size + i) continue;
        ++picked[i];
        for (std::size_t j = i + 1; j < size; ++j)
            picked[j] = picked[j - 1] + 1;
        return true;
    }
    return false;
}

class Expander {
public:
    Expander(const project::Project& project, const project::Index& index, const TreeFormula& tree)
        : m_project(project), m_index(index), m_tree(tree),
          m_variableOf(project.events.size(), kNone), m_literals(tree.eventOfVariable.size()) {
        for (std::size_t v = 0; v < tree.eventOfVariable.size(); ++v)
            m_variableOf[tree.eventOfVariable[v]] = v;
    }

    project::Outcome<CommonCauseFormula> run() {
        project::Problems problems;
        std::vector<std::vector<std::size_t>> members;
        std::vector<bool> grouped(m_tree.eventOfVariable.size(), false);
        for (std::size_t g = 0; g < m_project.commonCauses.size(); ++g) {
            auto events = membersOf(m_project.commonCauses[g]);
            const auto inTree = std::count_if(events.begin(), events.end(), [&](std::size_t event) {
                return m_variableOf[event] != kNone;
            });
            if (inTree < 2) continue;
            if (auto problem = tooMany(m_project.commonCauses[g])) {
                problems.push_back(*problem);
                continue;
            }
            for (const std::size_t event : events)
                if (m_variableOf[event] != kNone) grouped[m_variableOf[event]] = true;
            m_result.groups.push_back(g);
            members.push_back(std::move(events));
        }
        if (!problems.empty()) return problems;
        // A variable's causes stand beside each other, as the engine's first order is this one.
        for (std::size_t v = 0; v < grouped.size(); ++v) {
            const std::size_t event = m_tree.eventOfVariable[v];
            const std::string& id = m_project.events[event].id;
            if (grouped[v])
                addCause({CauseKind::alone, {event}, 0, id + " [alone]"});
            else
                addCause({CauseKind::event, {event}, 0, id});
            if (!grouped[v]) continue;
            for (std::size_t g = 0; g < members.size(); ++g)
                addCommon(g, members[g], event);
        }
        copyGates();
        return std::move(m_result);
    }

private:
    std::vector<std::size_t> membersOf(const project::CommonCauseGroup& group) const {
        std::vector<std::size_t> events;
        for (const project::Reference& member : group.members)
            if (const project::Event* const event = m_index.event(member.id))
                events.push_back(static_cast<std::size_t>(event - m_project.events.data()));
        return events;
    }

    std::optional<project::Problem> tooMany(const project::CommonCauseGroup& group) const {
        if (subsets(group.members.size(), possibleSizes(m_index, group)) <= kMostCauses) return {};
        return project::Problem{
            project::Severity::error,
            fmt::format("common-cause group {} of {} members would need more than {} causes",
                        group.id, group.members.size(), kMostCauses),
            "split it, or give it a beta factor", fmt::format("common-cause group {}", group.id),
            group.line.number};
    }

    void addCause(Cause cause) {
        const Literal literal = m_result.formula.addVariable();
        for (const std::size_t event : cause.events)
            if (m_variableOf[event] != kNone) m_literals[m_variableOf[event]].push_back(literal);
        m_result.causes.push_back(std::move(cause));
    }

    // The causes of a group in which `first` is the first member of the tree.
    void addCommon(std::size_t g, const std::vector<std::size_t>& members, std::size_t first) {
        const auto& group = m_project.commonCauses[m_result.groups[g]];
        if (std::find(members.begin(), members.end(), first) == members.end()) return;
        for (const std::size_t size : possibleSizes(m_index, group)) {
            std::vector<std::size_t> picked(size);
            std::iota(picked.begin(), picked.end(), 0);
            do {
                std::vector<std::size_t> events;
                std::size_t earliest = kNone; // in the order of the variables
                for (const std::size_t at : picked) {
                    events.push_back(members[at]);
                    earliest = std::min(earliest, m_variableOf[members[at]]);
                }
                if (earliest != m_variableOf[first]) continue;
                std::string id = commonId(m_project, events);
                addCause({CauseKind::common, std::move(events), g, std::move(id)});
            } while (advance(picked, members.size()));
        }
    }

    void copyGates() {
        const logic::Formula& old = m_tree.formula;
        std::vector<Literal> made(old.nodeCount(), logic::kFalse);
        std::vector<Literal> inputs;
        const auto mapped = [&](Literal literal) {
            const Literal to = made[literal.node()];
            return literal.negated() ? ~to : to;
        };
        for (std::uint32_t node = 1; node < old.nodeCount(); ++node) {
            if (old.op(node) == Op::variable) {
                const auto& causes = m_literals[old.variable(node)];
                made[node] = causes.size() == 1 ? causes.front()
                                                : m_result.formula.addGate(Op::disjunction, causes);
                continue;
            }
            inputs.clear();
            for (const Literal input : old.inputs(node))
                inputs.push_back(mapped(input));
            made[node] = m_result.formula.addGate(old.op(node), inputs,
                                                  old.op(node) == Op::atLeast ? old.k(node) : 0);
        }
        m_result.top = mapped(m_tree.top);
    }

    const project::Project& m_project;
    const project::Index& m_index;
    const TreeFormula& m_tree;
    std::vector<std::size_t> m_variableOf;        // per event; kNone where it is not in the tree
    std::vector<std::vector<Literal>> m_literals; // per variable of the tree: its causes
    CommonCauseFormula m_result;
};

} // namespace

project::Outcome<CommonCauseFormula> withCommonCauses(const project::Project& project,
                                                      const project::Index& index,
                                                      const TreeFormula& tree) {
    return Expander(project, index, tree).run();
}

} // namespace cutwater::reliability
