// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/project/judge.h"

#include <algorithm>
#include <cmath>
#include <fmt/format.h>
#include <limits>
#include <utility>

namespace cutwater::project {

namespace {

bool contains(const std::vector<Dimension>& dimensions, Dimension dimension) {
    return std::find(dimensions.begin(), dimensions.end(), dimension) != dimensions.end();
}

std::string symbolsOf(const std::vector<Dimension>& dimensions) {
    std::string symbols;
    for (const UnitFacts& unit : allUnits())
        if (!unit.symbol.empty() && contains(dimensions, unit.dimension))
            symbols += (symbols.empty() ? "" : ", ") + std::string(unit.symbol);
    return symbols;
}

// What is wrong with a distribution's parameters, and the remedy; empty where nothing is.
struct Fault {
    std::string what, remedy;
};

// Each limit is asked as "not (x > 0)", so that NaN is caught too.
Fault faultOf(std::monostate) {
    return {};
}
Fault faultOf(const Lognormal& d) {
    if (!(d.median > 0) || std::isinf(d.median))
        return {fmt::format("the median is {}", d.median), "enter a median above 0"};
    if (!(d.errorFactor > 1) || std::isinf(d.errorFactor))
        return {fmt::format("the error factor is {}", d.errorFactor),
                "enter an error factor above 1"};
    return {};
}
Fault faultOf(const Gamma& d) {
    if (!(d.shape > 0) || !(d.rate > 0) || std::isinf(d.shape) || std::isinf(d.rate))
        return {fmt::format("shape and rate are {} and {}", d.shape, d.rate),
                "enter numbers above 0"};
    return {};
}
Fault faultOf(const Beta& d) {
    if (!(d.alpha > 0) || !(d.beta > 0) || std::isinf(d.alpha) || std::isinf(d.beta))
        return {fmt::format("alpha and beta are {} and {}", d.alpha, d.beta),
                "enter numbers above 0"};
    return {};
}
Fault faultOf(const Uniform& d) {
    if (!(d.low < d.high) || std::isinf(d.low) || std::isinf(d.high))
        return {fmt::format("the limits are {} and {}", d.low, d.high),
                "enter a low limit below the high one"};
    return {};
}
Fault faultOf(const Triangular& d) {
    if (!(d.low < d.high) || !(d.low <= d.mode) || !(d.mode <= d.high) || std::isinf(d.low) ||
        std::isinf(d.high))
        return {fmt::format("low, mode and high are {}, {} and {}", d.low, d.mode, d.high),
                "enter them in ascending order"};
    return {};
}

// The least and the largest value that can come out.
std::pair<double, double> spanOf(const Distribution& distribution) {
    constexpr double infinity = std::numeric_limits<double>::infinity();
    if (const auto* uniform = std::get_if<Uniform>(&distribution))
        return {uniform->low, uniform->high};
    if (const auto* triangular = std::get_if<Triangular>(&distribution))
        return {triangular->low, triangular->high};
    if (std::holds_alternative<Beta>(distribution)) return {0, 1};
    // The long tails of these two are cut by whoever samples; only the middle is judged.
    if (const auto* lognormal = std::get_if<Lognormal>(&distribution))
        return {0, lognormal->median};
    if (const auto* gamma = std::get_if<Gamma>(&distribution))
        return {0, gamma->shape / gamma->rate};
    return {0, infinity};
}

} // namespace

bool Judge::unit(const Quantity& quantity, const Place& place,
                 const std::vector<Dimension>& dimensions) {
    if (dimensions.empty()) return true;
    const UnitFacts& facts = project::facts(quantity.unit);
    if (contains(dimensions, facts.dimension)) return true;
    if (quantity.unit == Unit::unstated)
        error(place, fmt::format("{} has no unit", place.words()),
              fmt::format("state one of {}", symbolsOf(dimensions)));
    else
        error(place,
              fmt::format("{} is given in {} ({}), which does not fit", place.words(), facts.symbol,
                          facts.words),
              fmt::format("use one of {}", symbolsOf(dimensions)));
    return false;
}

void Judge::distribution(const Quantity& quantity, const Place& place, Range range) {
    const Fault fault =
        std::visit([](const auto& its) { return faultOf(its); }, quantity.uncertainty);
    if (!fault.what.empty()) {
        error(place,
              fmt::format("the distribution of {} is impossible: {}", place.words(), fault.what),
              fault.remedy);
        return;
    }
    if (std::holds_alternative<std::monostate>(quantity.uncertainty)) return;
    const auto [low, high] = spanOf(quantity.uncertainty);
    if (range != Range::any && low < 0)
        error(place, fmt::format("the distribution of {} reaches below 0", place.words()),
              "enter a low limit of 0 or more");
    if (range == Range::chance && high > 1)
        error(place, fmt::format("the distribution of {} reaches above 1", place.words()),
              "enter numbers from 0 to 1");
    if (std::holds_alternative<Beta>(quantity.uncertainty) && range != Range::chance &&
        range != Range::any)
        error(place,
              fmt::format("{} has a beta distribution, which is for chances from 0 to 1",
                          place.words()),
              "use another distribution, such as gamma or lognormal");
}

void Judge::quantity(const Quantity& quantity, const Place& place,
                     const std::vector<Dimension>& dimensions, Range range) {
    const Quantity* counted = &quantity;
    if (!quantity.parameter.empty()) {
        if (!reference(Target::parameter, quantity.parameter,
                       place.with(place.part, quantity.line.number)))
            return;
        counted = index.resolved(quantity);
    }
    if (unit(*counted, place, dimensions) && value(counted->value, place, range))
        distribution(*counted, place, range);
    source(quantity.source, place);
}

} // namespace cutwater::project
