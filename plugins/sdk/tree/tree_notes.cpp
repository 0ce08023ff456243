// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/tree/tree_notes.h"

#include <fmt/format.h>

namespace cutwater::sdk::tree {

void addTreeNotes(std::vector<Note>& notes, const std::vector<Solved>& all, Side side) {
    const bool fails = side == Side::fails;
    for (const Solved& solved : all) {
        const std::string& id = solved.target.id;
        if (solved.tree.hasPriorityAnd)
            notes.push_back(
                {NoteKind::warning,
                 fmt::format("{} has a priority-and gate: the order of its failures was "
                             "ignored, it was taken as a plain and.",
                             id)});
        if (const auto constant = solved.solution.constant())
            notes.push_back({NoteKind::warning,
                             fmt::format("{} {} happens, whatever the events do: look at the house "
                                         "events below it.",
                                         id, *constant == fails ? "always" : "never")});
        else if (!solved.solution.coherent())
            notes.push_back(
                {NoteKind::method,
                 fmt::format(
                     "{} is not coherent (an event that does not occur can bring it about): "
                     "its sets are prime implicants, and \"{}\" stands before an event "
                     "that must {}occur.",
                     id, fails ? "not" : "occurs:", fails ? "not " : "")});
    }
}

void addFigureNotes(std::vector<Note>& notes, const project::Project& project,
                    const FigureBook& book) {
    addCommonCauseNotes(notes, project, book.events(), book.commonCauses());
    book.addGroupWarnings(notes);
    notes.push_back({NoteKind::assumption,
                     fmt::format("{}: what one supply, pipe or controller takes away together must "
                                 "stand in the tree as an event of its own.",
                                 book.commonCauses().counted.empty()
                                     ? "Events are independent of each other"
                                     : "Apart from the common causes that are counted, events are "
                                       "independent of each other")});
    book.addAssumptions(notes);
    book.addWarnings(notes);
    for (const std::string& own : project.assumptions)
        notes.push_back({NoteKind::assumption, own});
}

} // namespace cutwater::sdk::tree
