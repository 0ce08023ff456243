// SPDX-License-Identifier: GPL-3.0-or-later
// Family 6: exclusive or, not, and, or.
#include "tests/bench/maker.h"

#include <deque>

namespace bench {

// Neighbours in a row are combined until one is left; some stay in the row to be used once more.
Instance mixed(std::uint64_t seed, std::uint32_t events, double reuse) {
    Maker make(seed);
    Random& random = make.random;
    std::deque<Literal> row;
    for (std::uint32_t i = 0; i < events; ++i) {
        const Literal event = make.event(1e-2, 5e-1);
        row.push_back(random.chance(0.2) ? ~event : event);
    }
    while (row.size() > 1) {
        std::vector<Literal> inputs;
        const std::size_t wanted = random.between(2, 3);
        while (inputs.size() < wanted && !row.empty()) {
            inputs.push_back(row.front());
            row.pop_front();
        }
        // At most every other gate, so that the row gets shorter.
        if (inputs.size() == 3 && random.chance(reuse)) row.push_front(inputs.back());
        const double dice = random.unit();
        const Op op = dice < 0.35   ? Op::conjunction
                      : dice < 0.70 ? Op::disjunction
                                    : Op::exactlyOne;
        const Literal gate = make.gate(op, inputs);
        row.push_back(random.chance(0.15) ? ~gate : gate);
    }
    return make.finish(row.front());
}

} // namespace bench
