// SPDX-License-Identifier: GPL-3.0-or-later
// Captions: the short text under each event, on wish.
#pragma once

#include "models/project/index.h"

#include <map>
#include <string>

namespace cutwater::editor {

enum class CaptionKind { none, tags, probabilities, gates }; // gates: probabilities of both

struct Captions {
    std::map<project::Id, std::string> words;
    std::string remark; // what they are, for the legend
};

// Tags: of the component that fails. Probabilities: as the models say; events without one stay
// blank, house events show their state anyway. Those of gates: see gate_figures.h.
Captions captionsFor(const project::Project& project, const project::Index& index,
                     CaptionKind kind);

} // namespace cutwater::editor
