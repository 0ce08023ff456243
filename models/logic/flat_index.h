// SPDX-License-Identifier: GPL-3.0-or-later
// FlatIndex: finds numbers by the hash of what they stand for.
#pragma once

#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <utility>
#include <vector>

namespace cutwater::logic {

// Open addressing with the hash beside the number: a look that finds nothing touches one line of
// memory. The things themselves are kept, and compared, by the caller.
class FlatIndex {
public:
    // The number with this hash for which isIt(number) says yes.
    template <typename IsIt>
    std::optional<std::uint32_t> find(std::uint64_t hash, IsIt isIt) const {
        if (m_slots.empty()) return {};
        const auto mark = static_cast<std::uint32_t>(hash >> 32);
        for (std::size_t at = hash & (m_slots.size() - 1); m_slots[at].number != kFree;
             at = (at + 1) & (m_slots.size() - 1))
            if (m_slots[at].mark == mark && isIt(m_slots[at].number)) return m_slots[at].number;
        return {};
    }
    // Precondition: it is not there yet; number < 2^32 - 1.
    void add(std::uint64_t hash, std::uint32_t number) {
        if (2 * (m_count + 1) > m_slots.size()) grow();
        put({static_cast<std::uint32_t>(hash >> 32), static_cast<std::uint32_t>(hash), number});
        ++m_count;
    }

private:
    static constexpr std::uint32_t kFree = 0xffffffff;
    struct Slot {
        std::uint32_t mark = 0, place = 0; // the two halves of the hash
        std::uint32_t number = kFree;
    };

    void put(const Slot& slot) {
        std::size_t at = slot.place & (m_slots.size() - 1);
        while (m_slots[at].number != kFree)
            at = (at + 1) & (m_slots.size() - 1);
        m_slots[at] = slot;
    }
    void grow() {
        const std::vector<Slot> old = std::move(m_slots);
        m_slots.assign(std::max<std::size_t>(16, 2 * old.size()), {});
        for (const Slot& slot : old)
            if (slot.number != kFree) put(slot);
    }

    std::vector<Slot> m_slots; // a power of two
    std::size_t m_count = 0;
};

} // namespace cutwater::logic
