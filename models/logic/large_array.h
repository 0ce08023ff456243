// SPDX-License-Identifier: GPL-3.0-or-later
// LargeArray: an array for tables of up to gigabytes that are read at random places all the time.
// Making, growing and giving back such a table takes a moment, so that whoever cancels need not
// wait for it.
#pragma once

#include <cstddef>
#include <cstdlib>
#include <cstring>
#include <new>
#include <type_traits>
#include <utility>

#ifdef __linux__
#include <sys/mman.h>
#endif

namespace cutwater::logic {

// On Linux large arrays come from the system as pages that are cleared when they are first touched,
// grow by moving pages instead of bytes, and are given back at once; pages of 2 MB are asked for,
// in which the processor finds its way quicker.
template <typename T>
class LargeArray {
    static_assert(std::is_trivially_copyable_v<T>);

public:
    LargeArray() = default;
    explicit LargeArray(std::size_t size) { resize(size); }
    ~LargeArray() { release(); }
    LargeArray(const LargeArray&) = delete;
    LargeArray& operator=(const LargeArray&) = delete;
    LargeArray(LargeArray&& other) noexcept { swap(other); }
    LargeArray& operator=(LargeArray&& other) noexcept {
        LargeArray gone(std::move(other));
        swap(gone);
        return *this;
    }
    void swap(LargeArray& other) noexcept {
        std::swap(m_data, other.m_data);
        std::swap(m_size, other.m_size);
        std::swap(m_bytes, other.m_bytes);
    }

    T& operator[](std::size_t i) { return m_data[i]; }
    const T& operator[](std::size_t i) const { return m_data[i]; }
    std::size_t size() const { return m_size; }
    T* begin() { return m_data; }
    T* end() { return m_data + m_size; }

    void reserve(std::size_t count) {
        if (count * sizeof(T) > m_bytes) grow(count * sizeof(T));
    }
    // What is added is zero where the array was never longer.
    void resize(std::size_t size) {
        reserve(size);
        if (size > m_size && !isMapped()) // the system's pages are
            std::memset(static_cast<void*>(m_data + m_size), 0, (size - m_size) * sizeof(T));
        m_size = size;
    }
    void push_back(const T& value) {
        if ((m_size + 1) * sizeof(T) > m_bytes) {
            const T copy = value;
            grow(2 * m_bytes + 16 * sizeof(T));
            m_data[m_size++] = copy;
            return;
        }
        m_data[m_size++] = value;
    }

private:
#ifdef __linux__
    static constexpr std::size_t kPage = std::size_t{2} << 20;
    static constexpr std::size_t kMapped = 8 * kPage; // from this size on
    bool isMapped() const {
        return m_bytes >= kMapped;
    }

    void grow(std::size_t bytes) {
        if (bytes < kMapped) return growSmall(bytes);
        bytes = (bytes + kPage - 1) / kPage * kPage;
        void* got = nullptr;
        if (isMapped()) {
            got = mremap(m_data, m_bytes, bytes, MREMAP_MAYMOVE);
            if (got == MAP_FAILED) throw std::bad_alloc();
        } else {
            got = mmap(nullptr, bytes, PROT_READ | PROT_WRITE, MAP_PRIVATE | MAP_ANONYMOUS, -1, 0);
            if (got == MAP_FAILED) throw std::bad_alloc();
            if (m_size > 0) std::memcpy(got, m_data, m_size * sizeof(T));
            std::free(m_data);
        }
        madvise(got, bytes, MADV_HUGEPAGE); // a wish: without it all is slower, no more
        m_data = static_cast<T*>(got);
        m_bytes = bytes;
    }
    void release() {
        if (isMapped())
            munmap(m_data, m_bytes);
        else
            std::free(m_data);
    }
#else
    bool isMapped() const {
        return false;
    }
    void grow(std::size_t bytes) {
        growSmall(bytes);
    }
    void release() {
        std::free(m_data);
    }
#endif
    void growSmall(std::size_t bytes) {
        void* got = std::realloc(m_data, bytes);
        if (!got) throw std::bad_alloc();
        m_data = static_cast<T*>(got);
        m_bytes = bytes;
    }

    T* m_data = nullptr;
    std::size_t m_size = 0, m_bytes = 0; // that there is room for
};

} // namespace cutwater::logic
