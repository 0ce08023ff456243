// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/document.h"

#include "models/document/disk.h"

#include <iterator>

namespace cutwater::document {

project::Outcome<Loaded> load(const std::string& path) {
    project::Outcome<std::string> text = readFile(path, kMaxFileBytes);
    if (!text) return text.problems();
    project::Outcome<Loaded> loaded = parse(*text);
    text->clear();
    text->shrink_to_fit();
    if (!loaded) return loaded;
    project::Problems found = project::validate(loaded->project);
    if (project::hasErrors(found)) return found;
    loaded->warnings.insert(loaded->warnings.end(), std::make_move_iterator(found.begin()),
                            std::make_move_iterator(found.end()));
    return loaded;
}

project::Problems save(const project::Project& project, const std::string& path) {
    const project::Outcome<std::string> text = write(project);
    if (!text) return text.problems();
    return replaceFile(path, *text);
}

} // namespace cutwater::document
