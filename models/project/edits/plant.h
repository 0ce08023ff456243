// SPDX-License-Identifier: GPL-3.0-or-later
// The plant breakdown edited: components, their failure modes, and their order.
#pragma once

#include "models/project/edits/changed.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace cutwater::project::edits {

// Where a component or a failure mode shall stand: as a part (a mode) of `parent`, before
// `before`; with `before` empty behind all others. An empty parent: at the top of the breakdown.
struct PartPlace {
    Id parent;
    Id before;
    bool operator==(const PartPlace&) const = default;
};

// What is typed for a component in one line: "FP-1 fuel pump" has the tag FP-1. A tag is a first
// word that begins with a letter and has a digit in it, and a capital letter or a '-'; or capital
// letters alone, two or more, with a name behind them: "ERB engine-room board".
struct PartWords {
    std::string tag;
    std::string name;
};
PartWords splitPartWords(std::string_view text);
// The line back: "FP-1 fuel pump"; the id where it has neither tag nor name.
std::string partWords(const Component& component);

// The id that a component of that tag (or, without one, of that name) would get.
Id proposedPartId(const Project& project, const std::string& tag, const std::string& name);

// A new component, its id made from the tag, else from the name. Refused: empty text, no such
// parent.
Result addPart(const Project& project, const PartPlace& place, const std::string& text);
// A new failure mode with the id COMPONENT.NAME. Refused: empty text, no such component.
Result addMode(const Project& project, const PartPlace& place, const std::string& name);

// Tag and name from one line. A tag that is there already stays where the line begins with it.
Result setPartWords(const Project& project, const Id& component, const std::string& text);
Result renameMode(const Project& project, const Id& mode, const std::string& name);
Result setModeModel(const Project& project, const Id& mode, const FailureModel& model);
// Tag, name, type, function, location, suppliers, failure rate and remark of `facts.id`. Refused:
// no such component; a supplier that does not exist, is named twice, or is the component itself.
Result setPart(const Project& project, const Component& facts);

// Components (with all below them) and failure modes, moved to the place in the order given.
// Refused: a component would become a part of itself; a mode at the top of the breakdown.
Result moveParts(const Project& project, const std::vector<Id>& ids, const PartPlace& place);

// Another id, carried to everything that refers to it. The ids of the component's modes follow
// where they begin with the old one and a dot. Refused: not an id, or taken.
Result renameComponentId(const Project& project, const Id& component, const Id& id);
Result renameModeId(const Project& project, const Id& mode, const Id& id);

// What is lost with components (and all below them) and failure modes.
struct Loss {
    std::size_t components = 0, modes = 0; // the chosen ones and those below, together
    std::vector<Id> events;                // that are one of the modes
    std::size_t supplied = 0;              // other components that lose a supplier
    std::size_t connections = 0;           // of the supply network
    std::size_t logEntries = 0;            // that speak of them
    std::size_t exposures = 0;
    bool anything() const { // that stands elsewhere
        return !events.empty() || supplied || connections || logEntries || exposures;
    }
};
Loss lossOf(const Project& project, const std::vector<Id>& ids);

// Takes them away. Events that were one of the modes keep their place, their text and their
// numbers; entries of the log keep their words and say in the remark what they spoke of.
Result removeParts(const Project& project, const std::vector<Id>& ids);

} // namespace cutwater::project::edits
