// SPDX-License-Identifier: GPL-3.0-or-later
// The facts of actions, rating scales and the risk matrix; see facts_values.h.
#pragma once

#include "models/document/facts_values.h"

namespace cutwater::document {

template <typename Io>
void describe(Io& io, Of<Io, project::Action>& action) {
    io.fact("what", action.what);
    io.fact("owner", action.owner);
    io.fact("due", action.due);
    io.fact("state", action.state);
    io.fact("done-on", action.doneOn);
    io.fact("proof", action.proof);
}

template <typename Io>
void describe(Io& io, Of<Io, project::LibraryOrigin>& origin) {
    io.attribute("library", origin.library, Need::required);
    io.attribute("type", origin.type, Need::required);
    io.attribute("revision", origin.revision, Need::optional);
}

template <typename Io>
void describe(Io& io, Of<Io, project::RatingLevel>& level) {
    io.fact("rating", level.rating);
    io.fact("word", level.word);
    io.fact("meaning", level.meaning);
    io.fact("limit", level.limit);
}

template <typename Io>
void describe(Io& io, Of<Io, project::RiskLevel>& level) {
    io.fact("index", level.index);
    io.fact("word", level.word);
    io.fact("meaning", level.meaning);
    io.fact("value", level.value);
}

template <typename Io>
void describe(Io& io, Of<Io, project::RiskBand>& band) {
    io.fact("from", band.from);
    io.fact("word", band.word);
    io.fact("meaning", band.meaning);
}

template <typename Io>
void describe(Io& io, Of<Io, project::RiskMatrix>& matrix) {
    io.fact("name", matrix.name);
    io.elements("frequency-level", matrix.frequencies);
    io.elements("severity-level", matrix.severities);
    io.elements("band", matrix.bands);
    io.element("source", matrix.source);
}

} // namespace cutwater::document
