// SPDX-License-Identifier: GPL-3.0-or-later
// What is said about one event, gate, top event or failure mode.
#pragma once

#include "models/project/edits/changed.h"

#include <optional>
#include <string>

namespace cutwater::project::edits {

// The text of an event or gate; ids stay. A top event whose name was the same text follows.
Result rename(const Project& project, const Id& node, const std::string& name);

// A gate of another kind; what the old kind alone had (k, the condition) is put away: a condition
// becomes the last input, and a conditioning event among the inputs the condition. A gate that gets
// to vote needs two of its inputs, until setK. An event that is no more than a name becomes a gate.
Result setGateKind(const Project& project, const Id& node, GateKind kind);
// k of a vote gate, 1 to its number of inputs; a gate of another kind becomes a vote gate.
Result setK(const Project& project, const Id& gate, int k);
// An event of another kind. A gate that has no inputs becomes an event.
Result setEventKind(const Project& project, const Id& node, EventKind kind);
// What a house event is set to.
Result setState(const Project& project, const Id& event, bool state);
// The failure mode that the event is; empty: none. It brings its failure model: the event's own is
// put away.
Result setMode(const Project& project, const Id& event, const Id& mode);
// The failure model: that of the event's failure mode where it has one, else its own. What the kind
// of model has no place for is refused by validate(), not here.
Result setModel(const Project& project, const Id& event, const FailureModel& model);
Result setRemark(const Project& project, const Id& node, const std::string& remark);

// The gate or event becomes a top event, or is one no longer (it stays where else it is used).
Result makeTop(const Project& project, const Id& node);

// Name, operating mode, severity, end effects, how often it is asked, and remark of a top event.
Result setTopFacts(const Project& project, const TopEvent& facts);

// Name, plant, description ... of the project: all but the vectors of `facts`.
Result setProjectFacts(const Project& project, const Project& facts);

} // namespace cutwater::project::edits
