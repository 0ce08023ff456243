// SPDX-License-Identifier: GPL-3.0-or-later
// Fault trees (IEC 61025): events, gates, and the gates that are looked at as top events.
#pragma once

#include "models/project/failure_model.h"
#include "models/project/value.h"

#include <optional>
#include <string>
#include <vector>

namespace cutwater::project {

enum class EventKind { basic, undeveloped, house, conditioning };

struct Event {
    Id id; // shares one name space with gates
    std::string name;
    EventKind kind = EventKind::basic;
    Id mode;            // the failure mode that this event is; its failure model is then the mode's
    FailureModel model; // used where `mode` is empty
    bool state = false; // house events: what it is set to
    std::string remark;
    SourceLine line;
    Kept kept;
    bool operator==(const Event&) const = default;
};

enum class GateKind {
    andGate,
    orGate,
    vote,        // at least k of the n inputs occur
    inhibit,     // all inputs occur and the condition holds
    exactlyOne,  // exclusive or: exactly one of the inputs occurs (for two inputs the usual XOR)
    notGate,     // the one input does not occur
    priorityAnd, // all inputs occur, in the order written
};

struct Gate {
    Id id;
    std::string name;
    GateKind kind = GateKind::orGate;
    std::optional<int> k;          // vote only: 1..n
    std::vector<Reference> inputs; // events or gates, in the order drawn
    Reference condition;           // inhibit only: an event
    std::string remark;
    SourceLine line;
    Kept kept;
    bool operator==(const Gate&) const = default;
};

// A gate (or event) that somebody asks about.
struct TopEvent {
    Id id; // "T1"
    std::string name;
    Reference node;            // where the tree starts
    std::string operatingMode; // in which state of the plant it is asked
    std::string severity;
    std::vector<std::string> endEffects; // of the worksheet, that this tree answers for
    // How often the question comes up (starts, stops): the top event then happens this often times
    // its probability. A rate > 0; empty: asked about at a random moment.
    std::optional<Quantity> asked;
    std::string remark;
    SourceLine line;
    Kept kept;
    bool operator==(const TopEvent&) const = default;
};

std::string_view
word(EventKind kind); // as in the file: "basic", "undeveloped", "house", "conditioning"
std::string_view
word(GateKind kind); // "and", "or", "vote", "inhibit", "xor", "not", "priority-and"
std::optional<EventKind> eventKindFromWord(std::string_view word);
std::optional<GateKind> gateKindFromWord(std::string_view word);

} // namespace cutwater::project
