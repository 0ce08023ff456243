// SPDX-License-Identifier: GPL-3.0-or-later
// The inside of Recall; private to the folder.
#pragma once

#include "models/logic/recall.h"
#include "models/logic/shape.h"

#include <cstdint>
#include <mutex>
#include <optional>
#include <unordered_map>

namespace cutwater::logic {

struct ProgramHash {
    std::size_t operator()(const Program& program) const {
        return static_cast<std::size_t>(hashOf(program.code));
    }
};

struct RecallData {
    struct Entry {
        SolvedShape solved;
        std::uint64_t lastRound = 0;
        std::size_t bytes = 0;
    };
    std::mutex mutex;
    std::unordered_map<Program, Entry, ProgramHash> entries;
    std::size_t maxBytes = 0, bytes = 0;
    std::uint64_t round = 0;

    std::optional<SolvedShape> find(const Program& program);
    void keep(const Program& program, const SolvedShape& solved);
    void nextRound(); // a solve is finished
};

} // namespace cutwater::logic
