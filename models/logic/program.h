// SPDX-License-Identifier: GPL-3.0-or-later
// Program: what one module computes, in numbers of its own, so that two modules of the same
// structure have equal programs.
#pragma once

#include "models/logic/formula.h"

#include <cstdint>
#include <span>
#include <vector>

namespace cutwater::logic {

// What a module stands on: a variable of the original formula, or a part.
struct Leaf {
    std::uint32_t index;
    bool isPart;
    bool operator==(const Leaf&) const = default;
};

// Gates in the order in which they can be computed, as plain numbers: [op, k, n, input 1 .. n] for
// each; an input is index << 2 | isGate << 1 | negated, or one of the two constants; the index is
// that of a leaf or of an earlier gate. The last gate is the module itself.
struct Program {
    std::vector<std::uint32_t> code;
    std::uint32_t leaves = 0;
    bool monotone = true; // no negation and no exactly-one gate in it
    bool operator==(const Program&) const = default;

    static constexpr std::uint32_t kFalseInput = 0xfffffffc, kTrueInput = 0xfffffffd;
};

inline std::uint64_t hashOf(std::span<const std::uint32_t> code) {
    std::uint64_t hash = code.size();
    for (const std::uint32_t word : code)
        hash = (hash ^ word) * 0x9e3779b97f4a7c15u ^ hash >> 31;
    return hash ^ hash >> 29;
}

// One gate of a program, for walking through it: for (GateView g(p, 0); !g.atEnd(); g.advance()).
class GateView {
public:
    GateView(const Program& program, std::size_t at) : m_code(program.code), m_at(at) {}
    GateView(std::span<const std::uint32_t> code, std::size_t at) : m_code(code), m_at(at) {}
    bool atEnd() const { return m_at >= m_code.size(); }
    void advance() { m_at += 3 + count(); }
    Op op() const { return static_cast<Op>(m_code[m_at]); }
    std::uint32_t k() const { return m_code[m_at + 1]; }
    std::uint32_t count() const { return m_code[m_at + 2]; }
    std::uint32_t input(std::uint32_t i) const { return m_code[m_at + 3 + i]; }

    static bool isConstant(std::uint32_t input) {
        return input == Program::kFalseInput || input == Program::kTrueInput;
    }
    static bool isGate(std::uint32_t input) { return (input & 2u) != 0; }
    static bool isNegated(std::uint32_t input) { return (input & 1u) != 0; }
    static std::uint32_t index(std::uint32_t input) { return input >> 2; }

private:
    std::span<const std::uint32_t> m_code;
    std::size_t m_at;
};

} // namespace cutwater::logic
