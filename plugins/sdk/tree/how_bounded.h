// SPDX-License-Identifier: GPL-3.0-or-later
// How a tree was bounded, in words for people.
#pragma once

#include "models/logic/bounded.h"

#include <string>

namespace cutwater::sdk::tree {

// Half a sentence, to stand behind a colon.
std::string howBounded(const logic::Bounds& bounds);

} // namespace cutwater::sdk::tree
