// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/pieces.h"

#include "models/logic/workers.h"

#include <algorithm>

namespace cutwater::logic {

namespace {
constexpr std::size_t kChunk = 256; // pieces that one task writes down
} // namespace

Pieces::Pieces(const Formula& formula, Literal top, const Limits& limits, unsigned workers,
               Account& account, Budget& budget) {
    const bool worthCutting = formula.nodeCount() >= 4 * std::size_t{limits.leastPiece};
    if (worthCutting && !formula.inputs(top.node()).empty())
        m_division = divide(formula, top, limits.leastPiece, budget);
    const std::size_t count = std::max<std::size_t>(1, m_division.gates.size());
    m_unitOf.assign(count, 0);
    if (count == 1) return;
    budget.take(formula.nodeCount() * (sizeof(std::uint32_t) + 1) +
                count * (sizeof(std::uint32_t) + sizeof(Place)));
    m_describer = std::make_unique<Describer>(formula, m_division.isCut, m_division.turned);
    describeAll(workers, account);
    m_placeOf.resize(count);
    for (std::size_t piece = 0; piece < count; ++piece) {
        budget.step();
        m_placeOf[piece] = {static_cast<std::uint32_t>(piece / kChunk),
                            static_cast<std::uint32_t>(piece % kChunk)};
        m_unitOf[piece] = unitAt(m_placeOf[piece]);
    }
    m_described.emplace_back();
}

void Pieces::describeAll(unsigned workers, Account& account) {
    const std::vector<std::uint32_t>& gates = m_division.gates;
    m_described.resize((gates.size() + kChunk - 1) / kChunk);
    forEachTask(m_described.size(), workers, account, [&](unsigned, std::size_t chunk) {
        Budget budget(account);
        const std::size_t end = std::min(gates.size(), (chunk + 1) * kChunk);
        for (std::size_t piece = chunk * kChunk; piece < end; ++piece)
            m_describer->describe(gates[piece], m_described[chunk], budget);
        budget.take(m_described[chunk].bytes());
    });
}

std::uint32_t Pieces::unitAt(Place place) {
    const auto code = codeAt(place);
    const std::uint64_t hash = itemAt(place).hash;
    const auto known = m_units.find(hash, [&](std::uint32_t unit) {
        const auto other = codeAt(m_firstOf[unit]);
        return std::equal(code.begin(), code.end(), other.begin(), other.end());
    });
    if (known) return *known;
    const auto unit = static_cast<std::uint32_t>(m_firstOf.size());
    m_units.add(hash, unit);
    m_firstOf.push_back(place);
    return unit;
}

Formula Pieces::formulaOf(std::uint32_t unit) const {
    const Place place = m_firstOf[unit];
    Formula formula;
    std::vector<Literal> leaves, gates, inputs;
    for (std::uint32_t leaf = 0; leaf < itemAt(place).leaves; ++leaf)
        leaves.push_back(formula.addVariable());
    for (GateView gate(codeAt(place), 0); !gate.atEnd(); gate.advance()) {
        inputs.clear();
        for (std::uint32_t i = 0; i < gate.count(); ++i) {
            const std::uint32_t input = gate.input(i);
            Literal literal = kFalse;
            if (!GateView::isConstant(input))
                literal = (GateView::isGate(input) ? gates : leaves)[GateView::index(input)];
            inputs.push_back(GateView::isNegated(input) ? ~literal : literal);
        }
        gates.push_back(formula.addGate(gate.op(), inputs, gate.k()));
    }
    return formula;
}

bool Pieces::standsOnConstant(std::size_t piece) const {
    const auto leaves = leavesOf(piece);
    return std::any_of(leaves.begin(), leaves.end(), [&](const Leaf& leaf) {
        return leaf.isPart && m_describer->isConstant(leaf.index);
    });
}

void Pieces::describeAgain(std::size_t piece, Budget& budget) {
    Descriptions& again = m_described.back();
    m_describer->describe(gate(piece), again, budget);
    m_placeOf[piece] = {static_cast<std::uint32_t>(m_described.size() - 1),
                        static_cast<std::uint32_t>(again.items.size() - 1)};
    m_unitOf[piece] = unitAt(m_placeOf[piece]);
}

} // namespace cutwater::logic
