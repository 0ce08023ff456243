// SPDX-License-Identifier: GPL-3.0-or-later
// Common-cause failures: parts that one cause takes together. Each member of a group is replaced by
// "its own part or one of the causes that take it with others", in the formula and not in the
// project: docs/decisions/common-causes-in-the-formula.md. Formulas: NUREG/CR-4780 (1988) and
// NUREG/CR-5485 (1998), from memory.
#pragma once

#include "models/project/index.h"
#include "models/reliability/tree_formula.h"

#include <span>
#include <string>
#include <vector>

namespace cutwater::reliability {

// shares[k-1] is Q_k / Q: the chance that one particular set of k members is lost to one cause, by
// the chance that a member is lost at all. The sum over k of C(m-1, k-1) shares[k-1] is 1.
//   beta                Q_1 = (1-b) Q, Q_m = b Q, all others 0
//   greek letters       Q_k = rho_1 .. rho_k (1 - rho_k+1) / C(m-1,k-1) Q, rho_1 = 1, rho_m+1 = 0;
//                       letters that are not given count as 1: what takes that many takes all
//   alpha               Q_k = k / C(m-1,k-1) a_k / (sum of j a_j) Q (all tested together)
//   alpha, staggered    Q_k = a_k / (C(m-1,k-1) (sum of a_j)) Q
// Alpha factors are divided by their sum, so that ones rounded in print still share out the whole.
// Preconditions: members >= 2, factors in 0..1 and as many as validate() asks for; alphas not all
// 0.
std::vector<double> commonCauseShares(project::CommonCauseKind kind,
                                      std::span<const double> factors, std::size_t members);

enum class CauseKind {
    event,  // an event of the tree that is in no group
    alone,  // what is left of a member: lost by itself
    common, // one cause that takes several members
};

// A variable of the expanded formula.
struct Cause {
    CauseKind kind = CauseKind::event;
    std::vector<std::size_t> events; // positions in project.events; more than one where common
    std::size_t group = 0;           // where common: position in CommonCauseFormula::groups
    std::string id;                  // "e1", "e1 [alone]", "e1 + e2 [common]"
};

struct CommonCauseFormula {
    logic::Formula formula;
    logic::Literal top;
    std::vector<Cause> causes;       // of every variable
    std::vector<std::size_t> groups; // those that count: positions in project.commonCauses
};

// Expands every group of which at least two members are in the tree. A cause that takes members
// outside the tree as well keeps them in its id. Problems: a group that would need more causes than
// the tool can hold (2^members with Greek letters or alpha factors).
project::Outcome<CommonCauseFormula> withCommonCauses(const project::Project& project,
                                                      const project::Index& index,
                                                      const TreeFormula& tree);

// What Q is where the members of a group are not equally bad.
enum class UnequalRule {
    geometricMean, // of the members taken; never above what the best of them can give away
    smallest,      // of the members taken: a cause cannot be more frequent than its rarest victim
};

// The factors of a group, shared ones followed. Precondition: validate() found no errors.
std::vector<double> factorsOf(const project::Index& index, const project::CommonCauseGroup& group);

// Probabilities of the causes from those of the events. Holds references to what it was made of;
// may be used by several threads at once.
class CauseProbabilities {
public:
    CauseProbabilities(const project::Project& project, const CommonCauseFormula& expanded,
                       UnequalRule rule);

    // Events whose probability is needed: those of the tree and members outside it; ascending.
    const std::vector<std::size_t>& events() const { return m_events; }

    // shares[g] are those of groups[g]; ofEvent is indexed by position in project.events; q gets
    // one number per cause. Members that would give away more than they have (in two groups, or
    // unequal) keep nothing of their own; answers how many these are.
    std::size_t fill(std::span<const std::vector<double>> shares, std::span<const double> ofEvent,
                     std::span<double> q) const;

private:
    double together(const Cause& cause, double alone, std::span<const double> ofEvent) const;

    const CommonCauseFormula& m_expanded;
    UnequalRule m_rule;
    std::vector<std::size_t> m_events;
    std::vector<std::size_t> m_common;                 // variables of common causes
    std::vector<std::vector<std::size_t>> m_ofMembers; // per common cause: the "alone" variables
};

} // namespace cutwater::reliability
