// SPDX-License-Identifier: GPL-3.0-or-later
// Families 1 and 2: plants whose trains stand on the same support systems.
#include "tests/bench/maker.h"

#include <array>

namespace bench {

namespace {

// One line of each support system. Every one stands on others: power on fuel, control on power,
// cooling on power and control, air on all of them.
struct Line {
    Literal fuel, power, control, cooling, air;
};

Line makeLine(Maker& make, Literal seaChest, Literal shore) {
    const auto fault = [&] { return make.event(1e-4, 2e-2); };
    Line line;
    line.fuel = make.any({fault(), fault()});
    const Literal generator = make.any({fault(), fault(), line.fuel});
    line.power = make.any({fault(), make.all({generator, shore})});
    line.control = make.any({fault(), make.all({fault(), line.power})});
    line.cooling = make.any({fault(), fault(), line.power, line.control, seaChest});
    line.air = make.any({fault(), line.power, line.cooling});
    return line;
}

Literal pick(Random& random, const Line& line) {
    return std::array{line.fuel, line.power, line.control, line.cooling, line.air}[random.below(5)];
}

} // namespace

Instance plant(const PlantPlan& plan) {
    Maker make(plan.seed);
    const Literal seaChest = make.event(1e-6, 1e-5);
    const Literal shore = make.event(1e-2, 1e-1);
    std::vector<Line> lines;
    for (std::uint32_t i = 0; i < plan.lines; ++i)
        lines.push_back(makeLine(make, seaChest, shore));

    std::vector<std::vector<Literal>> before(plan.trains); // components of the function before
    std::vector<Literal> functions;
    for (std::uint32_t f = 0; f < plan.functions; ++f) {
        std::vector<Literal> trains;
        for (std::uint32_t t = 0; t < plan.trains; ++t) {
            std::vector<Literal> components;
            for (std::uint32_t c = 0; c < plan.components; ++c) {
                if (c < before[t].size() && make.random.chance(plan.reuse)) {
                    components.push_back(before[t][c]);
                    continue;
                }
                std::vector<Literal> inputs;
                for (std::uint32_t m = 0; m < plan.modes; ++m)
                    inputs.push_back(make.event(1e-4, 5e-2));
                if (make.random.chance(plan.supported))
                    inputs.push_back(pick(make.random, lines[t % plan.lines]));
                components.push_back(make.any(inputs));
            }
            trains.push_back(make.any(components));
            before[t] = components;
        }
        // The function is lost where fewer trains are left than are needed.
        functions.push_back(make.atLeast(plan.trains - plan.needed + 1, trains));
    }
    return make.finish(make.any(functions));
}

} // namespace bench
