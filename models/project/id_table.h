// SPDX-License-Identifier: GPL-3.0-or-later
// From ids to positions in a list. Half empty and without a chain in it: to find an id takes a look
// at one or two neighbouring places and at the value itself.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace cutwater::project {

class IdTable {
public:
    static constexpr std::uint32_t kNone = 0xFFFFFFFF;
    static std::uint32_t hash(std::string_view id);

    // Of values that have an `id`; where it stands twice the first one is found. The values must
    // stay as they are. Precondition: fewer than 2^32 - 1 values.
    template <typename Value>
    explicit IdTable(const std::vector<Value>& values) {
        std::size_t size = 4;
        while (size < 2 * values.size())
            size *= 2;
        m_slots.resize(size);
        for (std::uint32_t i = 0; i < values.size(); ++i) {
            const std::uint32_t its = hash(values[i].id);
            Slot& slot = m_slots[place(values, values[i].id, its)];
            if (slot.position == kNone) slot = {its, i};
        }
    }

    // Null where there is none; `hash` is that of the id.
    template <typename Value>
    const Value* find(const std::vector<Value>& values, std::string_view id,
                      std::uint32_t hash) const {
        const std::uint32_t position = m_slots[place(values, id, hash)].position;
        return position == kNone ? nullptr : &values[position];
    }

private:
    struct Slot {
        std::uint32_t hash = 0, position = kNone;
    };

    // Where the id stands, or the empty slot where it would have to stand.
    template <typename Value>
    std::size_t place(const std::vector<Value>& values, std::string_view id,
                      std::uint32_t hash) const {
        const std::size_t mask = m_slots.size() - 1;
        for (std::size_t at = hash & mask;; at = (at + 1) & mask) {
            const Slot& slot = m_slots[at];
            if (slot.position == kNone || (slot.hash == hash && values[slot.position].id == id))
                return at;
        }
    }

    std::vector<Slot> m_slots;
};

} // namespace cutwater::project
