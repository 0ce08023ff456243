// SPDX-License-Identifier: GPL-3.0-or-later
// One top event, solved within the limits of a job.
#pragma once

#include "models/logic/solution.h"
#include "models/reliability/top_variables.h"
#include "models/reliability/tree_formula.h"
#include "plugins/sdk/tree/circumstances.h"
#include "plugins/sdk/tree/target.h"

namespace cutwater::sdk::tree {

enum class Side {
    fails, // minimal cut sets of the top event
    works, // minimal path sets: cut sets of the dual; a literal there means "does not occur"
};

// A target's formula before it is solved.
struct Unsolved {
    reliability::TreeFormula tree; // as it is drawn: without common causes
    reliability::TopVariables variables;

    // What is solved: with the common causes where they are counted.
    const logic::Formula& formula() const {
        return variables.groups().empty() ? tree.formula : variables.causes().formula;
    }
    logic::Literal top() const {
        return variables.groups().empty() ? tree.top : variables.causes().top;
    }
};

struct Solved : Unsolved {
    Target target;
    logic::Solution solution; // of the variables; of the dual formula where Side::works was asked

    Solved(Unsolved formula, Target of, logic::Solution solved)
        : Unsolved(std::move(formula)), target(std::move(of)), solution(std::move(solved)) {}
    // Without common causes.
    Solved(Target of, reliability::TreeFormula drawn, logic::Solution solved)
        : Unsolved{drawn, reliability::TopVariables(drawn)}, target(std::move(of)),
          solution(std::move(solved)) {}

    // Whether the event can stand for the variable in tables: false for a common cause.
    bool isEvent(std::uint32_t variable) const {
        return variables.kind(variable) != reliability::CauseKind::common;
    }
};

// For the columns of a table: the event's id and readable name; of a common cause the ids that it
// takes and its group's name.
std::string idOf(const project::Project& project, const Solved& solved, std::uint32_t variable);
std::string nameOf(const project::Project& project, const project::Index& index,
                   const Solved& solved, std::uint32_t variable);
// Ids of the events that a variable stands for, for marks.
std::vector<std::string> nodesOf(const project::Project& project, const Solved& solved,
                                 std::uint32_t variable);

// Problems: a common-cause group that is too large to be expanded.
project::Outcome<Unsolved> formulaOf(const project::Project& project, const project::Index& index,
                                     const Target& target, const Circumstances& circumstances);

// Solves targets one after another, each with its share of the progress. Stops at the first one
// that is cancelled or runs over the memory, and says which. Problems: those of formulaOf().
Answer<std::vector<Solved>> solveAll(const project::Project& project, const project::Index& index,
                                     const std::vector<Target>& targets, Side side, const Job& job,
                                     const Circumstances& circumstances = {});

// The problem for an ending before the end.
project::Problem cancelledAt(const Target& target);
project::Problem overMemoryAt(const Target& target, std::size_t memoryBytes);

// "252" as a whole number where it fits, otherwise as text.
Cell countCell(const logic::Count& count);
// The number, or an empty cell where it is not known.
Cell numberCell(bool known, double value);

} // namespace cutwater::sdk::tree
