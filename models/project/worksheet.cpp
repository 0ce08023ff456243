// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/worksheet.h"

#include "models/project/words.h"

namespace cutwater::project {

namespace {

constexpr WordTable<5> kStateWords = {"open", "under-way", "done", "proved", "dropped"};

} // namespace

std::string_view word(ActionState state) {
    return wordOf(kStateWords, state);
}

std::optional<ActionState> actionStateFromWord(std::string_view word) {
    return valueOf<ActionState>(kStateWords, word);
}

} // namespace cutwater::project
