// SPDX-License-Identifier: GPL-3.0-or-later
// Family 4: many copies of one boiler.
#include "tests/bench/maker.h"

namespace bench {

namespace {

// 60 events, "no steam from this boiler". Two electrical lines and one control voltage are shared
// by fuel, air, water and flame. Probabilities are small so that 10,000 boilers still leave a
// number to look at. The low four bits of `variant` change the structure, never the events.
Literal boiler(Maker& make, std::uint32_t variant) {
    const auto fault = [&] { return make.event(1e-7, 1e-5); };
    const auto faults = [&](std::uint32_t n) {
        std::vector<Literal> all;
        for (std::uint32_t i = 0; i < n; ++i)
            all.push_back(fault());
        return all;
    };
    const auto with = [](std::vector<Literal> inputs, std::initializer_list<Literal> more) {
        inputs.insert(inputs.end(), more);
        return inputs;
    };
    // Supplies: 10 events.
    const Literal feeder = fault();
    const Literal lineA = make.any(with(faults(2), {feeder}));
    const Literal lineB = make.any(with(faults(2), {feeder}));
    const Literal battery = make.any(faults(2));
    const Literal bothLines = make.all({lineA, lineB});
    const Literal control = make.any(with(
        faults(3), {variant & 1u ? make.all({lineA, battery}) : make.all({bothLines, battery})}));
    // Fuel: 14 events.
    const Literal fuelA = make.any(with(faults(4), {lineA}));
    const Literal fuelB = make.any(with(faults(4), {lineB}));
    const Literal heater =
        make.all({make.any(with(faults(2), {lineA})), make.any(with(faults(2), {lineB}))});
    const Literal fuel = make.any(with(faults(2), {make.all({fuelA, fuelB}), heater, control}));
    // Air: 7 events.
    const Literal fan = make.any(with(faults(3), {lineA}));
    const Literal damper = make.all({make.any(with(faults(2), {control})), fault()});
    const Literal air = make.any({fan, damper, fault()});
    // Water: 15 events.
    const Literal pumpA = make.any(with(faults(4), {lineA}));
    const Literal pumpB = make.any(with(faults(4), {lineB}));
    const Literal level = make.atLeast(variant & 2u ? 3 : 2, faults(3));
    const Literal water =
        make.any(with(faults(2), {make.all({pumpA, pumpB}), make.any({level, control}),
                                  variant & 4u ? make.all(faults(2)) : make.any(faults(2))}));
    // Flame: 14 events.
    const Literal eyes =
        make.all({make.any(with(faults(3), {control})), make.any(with(faults(3), {control}))});
    const Literal spark = make.any(with(faults(4), {variant & 8u ? lineA : lineB}));
    const Literal pilot = make.any(with(faults(3), {fuel}));
    const Literal flame = make.any({eyes, make.all({spark, pilot}), fault()});
    return make.any({fuel, air, water, flame});
}

} // namespace

Instance boilers(std::uint32_t copies, std::uint32_t k, bool varied) {
    Maker make(0x400);
    std::vector<Literal> all;
    for (std::uint32_t i = 0; i < copies; ++i) // every fourth boiler is built a little differently
        all.push_back(boiler(make, varied && i % 4 == 3 ? 1 + i / 4 % 15 : 0));
    return make.finish(k == 1 ? make.any(all) : make.atLeast(k, all));
}

} // namespace bench
