// SPDX-License-Identifier: GPL-3.0-or-later
// Projects to draw, made in memory. All invented.
#pragma once

#include "app/drawing/diagram.h"
#include "models/project/project.h"

#include <cstdint>
#include <string>
#include <vector>

namespace cutwater::test {

project::Event event(const std::string& id, const std::string& name,
                     project::EventKind kind = project::EventKind::basic);
project::Gate gate(const std::string& id, project::GateKind kind, const std::string& name,
                   const std::vector<std::string>& inputs);

// One sheet with every gate and every event, and characters that XML must escape.
project::Project everySymbol();

// `events` basic events below random gates, some of them shared between gates; long and short
// names. Top event T1.
project::Project randomProject(std::uint64_t seed, std::size_t events);

// T1: an or gate with `inputs` events.
project::Project wideGate(std::size_t inputs);

// T1: gates one below the other, each with one event beside.
project::Project chainOfGates(std::size_t gates);

// Draws T1 with the layout plug-in's code and the font of this machine.
sdk::Answer<drawing::Diagram> drawTop(const project::Project& project,
                                      const drawing::Wishes& wishes = {});

} // namespace cutwater::test
