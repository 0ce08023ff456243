// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/plant.h"

#include "models/project/words.h"

namespace cutwater::project {

namespace {

constexpr WordTable<2> kPathWords = {"feed", "return"};

} // namespace

std::string_view word(SupplyPath path) {
    return wordOf(kPathWords, path);
}

std::optional<SupplyPath> supplyPathFromWord(std::string_view word) {
    return valueOf<SupplyPath>(kPathWords, word);
}

} // namespace cutwater::project
