// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/recall_data.h"

namespace cutwater::logic {

namespace {

std::size_t sizeOf(const Program& program, const SolvedShape& solved) {
    std::size_t bytes = program.code.size() * sizeof(std::uint32_t) + sizeof(RecallData::Entry);
    if (solved.shape) bytes += solved.shape->diagram.nodes.size() * sizeof(BddNode);
    for (const auto& sets : solved.sets)
        if (sets) bytes += sets->nodes.size() * sizeof(ZddNode);
    return bytes;
}

} // namespace

std::optional<SolvedShape> RecallData::find(const Program& program) {
    const std::lock_guard lock(mutex);
    const auto found = entries.find(program);
    if (found == entries.end()) return {};
    found->second.lastRound = round;
    return found->second.solved;
}

void RecallData::keep(const Program& program, const SolvedShape& solved) {
    const std::lock_guard lock(mutex);
    Entry& entry = entries[program];
    bytes -= entry.bytes;
    entry = {solved, round, sizeOf(program, solved)};
    bytes += entry.bytes;
}

void RecallData::nextRound() {
    const std::lock_guard lock(mutex);
    if (bytes > maxBytes) {
        for (auto entry = entries.begin(); entry != entries.end();) {
            if (entry->second.lastRound + 1 >= round) {
                ++entry;
                continue;
            }
            bytes -= entry->second.bytes;
            entry = entries.erase(entry);
        }
        if (bytes >
            4 * maxBytes) { // the last trees alone are too much: better slow than without memory
            entries.clear();
            bytes = 0;
        }
    }
    ++round;
}

Recall::Recall(std::size_t maxBytes) : m_data(std::make_unique<RecallData>()) {
    m_data->maxBytes = maxBytes;
}
Recall::~Recall() = default;

std::size_t Recall::bytes() const {
    const std::lock_guard lock(m_data->mutex);
    return m_data->bytes;
}

RecallData& dataOf(Recall& recall) {
    return *recall.m_data;
}

} // namespace cutwater::logic
