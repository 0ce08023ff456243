// SPDX-License-Identifier: GPL-3.0-or-later
// Family 3: votes.
#include "tests/bench/maker.h"

namespace bench {

namespace {

std::vector<Literal> events(Maker& make, std::uint32_t n) {
    std::vector<Literal> all;
    for (std::uint32_t i = 0; i < n; ++i)
        all.push_back(make.event(1e-2, 3e-1));
    return all;
}

} // namespace

Instance vote(std::uint32_t k, std::uint32_t n) {
    Maker make(0x300 + n);
    const auto inputs = events(make, n);
    return make.finish(make.atLeast(k, inputs));
}

Instance nestedVote(std::uint32_t k, std::uint32_t n, std::uint32_t innerK, std::uint32_t innerN) {
    Maker make(0x310 + n);
    std::vector<Literal> votes;
    for (std::uint32_t i = 0; i < n; ++i) {
        const auto inputs = events(make, innerN);
        votes.push_back(make.atLeast(innerK, inputs));
    }
    return make.finish(make.atLeast(k, votes));
}

Instance ringOfVotes(std::uint32_t k, std::uint32_t n, std::uint32_t innerK, std::uint32_t width) {
    Maker make(0x320 + n);
    const auto ring = events(make, n);
    std::vector<Literal> votes;
    for (std::uint32_t i = 0; i < n; ++i) {
        std::vector<Literal> inputs;
        for (std::uint32_t j = 0; j < width; ++j)
            inputs.push_back(ring[(i + j) % n]);
        votes.push_back(make.atLeast(innerK, inputs));
    }
    return make.finish(make.atLeast(k, votes));
}

} // namespace bench
