// SPDX-License-Identifier: GPL-3.0-or-later
// A stack of plain values for the innermost loops: std::vector's growth check costs a tenth of the
// time there.
#pragma once

#include <algorithm>
#include <cstddef>
#include <memory>
#include <type_traits>

namespace cutwater::logic {

template <typename T>
class PlainStack {
    static_assert(std::is_trivially_copyable_v<T>);

public:
    std::size_t size() const { return m_size; }
    T& top() { return m_items[m_size - 1]; }
    void pop() { --m_size; }
    void clear() { m_size = 0; }
    void push(const T& item) {
        if (m_size == m_capacity) [[unlikely]]
            grow();
        m_items[m_size++] = item;
    }

private:
    void grow() {
        const std::size_t capacity = std::max<std::size_t>(256, 2 * m_capacity);
        std::unique_ptr<T[]> items(new T[capacity]);
        std::copy_n(m_items.get(), m_size, items.get());
        m_items = std::move(items);
        m_capacity = capacity;
    }

    std::unique_ptr<T[]> m_items;
    std::size_t m_size = 0, m_capacity = 0;
};

} // namespace cutwater::logic
