// SPDX-License-Identifier: GPL-3.0-or-later
// Which facts of a value stand in the file, under which name and in which order. One description
// for each kind of value serves the reader and the writer alike: `Io` is Reader or Writer.
#pragma once

#include "models/project/project.h"

#include <array>

namespace cutwater::document {

// The reader gets at a value that it may change, the writer at one that it may not.
template <typename Io, typename Value>
using Of = typename Io::template Access<Value>;

enum class Need { required, optional }; // an optional one is left out where it has its usual value

template <typename Io>
void describe(Io& io, Of<Io, project::SourceNote>& source) {
    io.attribute("tag", source.tag, Need::optional);
    io.fact("document", source.document);
    io.fact("edition", source.edition);
    io.fact("place", source.place);
    io.fact("remark", source.remark);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Lognormal>& distribution) {
    io.attribute("median", distribution.median, Need::required);
    io.attribute("error-factor", distribution.errorFactor, Need::required);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Gamma>& distribution) {
    io.attribute("shape", distribution.shape, Need::required);
    io.attribute("rate", distribution.rate, Need::required);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Beta>& distribution) {
    io.attribute("alpha", distribution.alpha, Need::required);
    io.attribute("beta", distribution.beta, Need::required);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Uniform>& distribution) {
    io.attribute("low", distribution.low, Need::required);
    io.attribute("high", distribution.high, Need::required);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Triangular>& distribution) {
    io.attribute("low", distribution.low, Need::required);
    io.attribute("mode", distribution.mode, Need::required);
    io.attribute("high", distribution.high, Need::required);
}

// In the order of the variant's alternatives, the first of which is "none".
inline constexpr std::array<const char*, 6> kDistributionNames = {
    "", "lognormal", "gamma", "beta", "uniform", "triangular"};

template <typename Io>
void describe(Io& io, Of<Io, project::Quantity>& quantity) {
    io.attribute("parameter", quantity.parameter, Need::optional);
    io.attribute("value", quantity.value,
                 quantity.parameter.empty() ? Need::required : Need::optional);
    io.attribute("unit", quantity.unit, Need::optional);
    io.oneOf(kDistributionNames, quantity.uncertainty);
    io.element("source", quantity.source);
}

template <typename Io>
void describe(Io& io, Of<Io, project::FailureModel>& model) {
    io.attribute("kind", model.kind, Need::required);
    io.attribute("clock", model.clock, Need::optional);
    io.numbers(model.numbers);
    io.fact("last-test", model.lastTest);
}

template <typename Io>
void describe(Io& io, Of<Io, project::Parameter>& parameter) {
    io.attribute("id", parameter.id, Need::required);
    io.fact("name", parameter.name);
    io.element("quantity", parameter.quantity, Need::required);
}

} // namespace cutwater::document
