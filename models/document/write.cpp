// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/document.h"

#include "models/document/facts_project.h"
#include "models/document/writer.h"

namespace cutwater::document {

project::Outcome<std::string> write(const project::Project& project) {
    WriterState state;
    state.text.reserve(4096 +
                       400 * (project.components.size() + project.events.size() +
                              project.gates.size() + project.log.size()) +
                       1000 * project.modes.size());
    state.text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    Writer root(state, "cutwater", 0, &project.kept);
    describe(root, project);
    root.finish();
    if (!state.problems.empty()) return state.problems;
    return std::move(state.text);
}

} // namespace cutwater::document
