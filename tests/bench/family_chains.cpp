// SPDX-License-Identifier: GPL-3.0-or-later
// Family 5: chains and ladders, as deep as anybody likes.
#include "tests/bench/maker.h"

namespace bench {

namespace {

constexpr double kLow = 0.05, kHigh = 0.95; // so that the far end still counts a little

Op alternate(std::uint32_t i) {
    return i % 2 ? Op::conjunction : Op::disjunction;
}

} // namespace

Instance chain(std::uint32_t depth, std::uint32_t pool) {
    Maker make(0x500);
    const std::uint32_t count = pool > 0 ? pool : depth + 1;
    std::vector<Literal> events;
    for (std::uint32_t i = 0; i < count; ++i)
        events.push_back(make.event(kLow, kHigh));
    Literal below = events[depth % count];
    for (std::uint32_t i = depth; i-- > 0;)
        below = make.gate(alternate(i), {events[i % count], below});
    return make.finish(below);
}

// `distance` must be odd: then the event that is used again meets a gate of the other kind, and
// knowing it only takes it out there. With an even one everything below would be decided by it.
Instance echoingChain(std::uint32_t depth, std::uint32_t distance) {
    Maker make(0x510);
    std::vector<Literal> events;
    for (std::uint32_t i = 0; i <= depth + distance; ++i)
        events.push_back(make.event(kLow, kHigh));
    Literal below = events[depth + distance];
    for (std::uint32_t i = depth; i-- > 0;) {
        const Literal pair = make.gate(alternate(i + 1), {events[i + distance], below});
        below = make.gate(alternate(i), {events[i], pair});
    }
    return make.finish(below);
}

Instance ladder(std::uint32_t depth, bool repeats) {
    Maker make(0x520);
    Literal left = make.event(kLow, kHigh), right = make.event(kLow, kHigh);
    for (std::uint32_t i = 0; i < depth; ++i) {
        const Literal a = make.event(kLow, kHigh), b = make.event(kLow, kHigh);
        Literal nextLeft, nextRight;
        if (repeats) { // both events of the step stand on both rails
            nextLeft = make.all({make.any({a, left}), make.any({b, right})});
            nextRight = make.any({make.all({b, left}), make.all({a, right})});
        } else {
            nextLeft = make.all({a, make.any({left, right})});
            nextRight = make.any({b, make.all({left, right})});
        }
        left = nextLeft;
        right = nextRight;
    }
    return make.finish(make.any({left, right}));
}

} // namespace bench
