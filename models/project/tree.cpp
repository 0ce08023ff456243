// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/tree.h"

#include "models/project/words.h"

namespace cutwater::project {

namespace {

constexpr WordTable<4> kEventWords = {"basic", "undeveloped", "house", "conditioning"};
constexpr WordTable<7> kGateWords = {"and", "or", "vote", "inhibit", "xor", "not", "priority-and"};

} // namespace

std::string_view word(EventKind kind) {
    return wordOf(kEventWords, kind);
}
std::string_view word(GateKind kind) {
    return wordOf(kGateWords, kind);
}

std::optional<EventKind> eventKindFromWord(std::string_view word) {
    return valueOf<EventKind>(kEventWords, word);
}
std::optional<GateKind> gateKindFromWord(std::string_view word) {
    return valueOf<GateKind>(kGateWords, word);
}

} // namespace cutwater::project
