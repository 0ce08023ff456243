// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/library_file.h"

#include "models/document/disk.h"
#include "models/document/document.h"
#include "models/document/facts_library.h"
#include "models/document/writer.h"

namespace cutwater::document {

project::Outcome<LoadedLibrary> loadLibrary(const std::string& path) {
    const project::Outcome<std::string> text = readFile(path, kMaxFileBytes);
    if (!text) return text.problems();
    auto library = parseLibrary(*text);
    if (!library) return library.problems();
    project::Problems found = library::validate(*library);
    if (project::hasErrors(found)) return found;
    return LoadedLibrary{std::move(*library), std::move(found)};
}

project::Outcome<std::string> writeLibrary(const library::Library& library) {
    WriterState state;
    state.text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    Writer root(state, "cutwater-library", 0, &library.kept);
    describe(root, library);
    root.finish();
    if (!state.problems.empty()) return state.problems;
    return std::move(state.text);
}

} // namespace cutwater::document
