// SPDX-License-Identifier: GPL-3.0-or-later
// Probabilities of the events of a tree, and which events have none.
#pragma once

#include "models/reliability/event_model.h"
#include "plugins/sdk/tree/common_causes.h"
#include "plugins/sdk/tree/solved.h"

#include <map>
#include <optional>
#include <string>
#include <vector>

namespace cutwater::sdk::tree {

// Of one solved top: what the engine wants to hear about its variables.
struct Figures {
    std::vector<double> q;               // per variable; 1 where there is no number
    std::vector<bool> known;             // per variable
    std::vector<std::uint32_t> relevant; // variables that are in some set
    std::vector<std::size_t> lacking;    // positions in project.events, relevant ones only
    bool complete() const { return lacking.empty(); }
};

// Computes each event once, however many top events share it. Not thread-safe: one per run.
class FigureBook {
public:
    FigureBook(const project::Project& project, const project::Index& index,
               std::optional<double> mission)
        : m_project(project), m_index(index), m_mission(mission) {}

    Figures of(const Solved& solved);
    // The same for a tree that could not be solved: every event counts.
    Figures of(const reliability::TopVariables& variables);
    Figures of(const reliability::TreeFormula& tree) { return of(reliability::TopVariables(tree)); }

    // Of an event that some of() has asked about; null where it has no number.
    const reliability::EventProbability* find(std::size_t event) const;
    // Why an event has no number.
    const project::Problems& problemsOf(std::size_t event) const;
    // Positions of all events that were asked about and count, ascending.
    std::vector<std::size_t> events() const;
    // What of() has found out about common causes.
    const CommonCauseUse& commonCauses() const { return m_commonCauses; }
    // Warnings about the members of the groups that were counted.
    void addGroupWarnings(std::vector<Note>& notes) const {
        addMemberWarnings(notes, m_project, m_index, m_commonCauses.counted, m_mission,
                          reliability::UnequalRule::geometricMean);
    }

    // Warnings of the events' models, one note each; of more than a few only how many.
    void addWarnings(std::vector<Note>& notes) const;
    // Assumptions about clocks and tests that hold for the events asked about.
    void addAssumptions(std::vector<Note>& notes) const;

private:
    struct Entry {
        std::optional<reliability::EventProbability> probability;
        project::Problems problems;
        bool counts = false; // in some set
    };
    Entry& entry(std::size_t event);
    Figures of(const reliability::TopVariables& variables, std::vector<std::uint32_t> relevant);

    const project::Project& m_project;
    const project::Index& m_index;
    std::optional<double> m_mission;
    std::map<std::size_t, Entry> m_entries;
    CommonCauseUse m_commonCauses;
};

// "e1, e2, e3 and 5 more", for sentences.
std::string idList(const project::Project& project, const std::vector<std::size_t>& events);

} // namespace cutwater::sdk::tree
