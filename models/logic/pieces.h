// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces: a formula cut at modules, every piece written down, equal pieces found.
#pragma once

#include "models/logic/describe.h"
#include "models/logic/flat_index.h"
#include "models/logic/modules.h"

#include <memory>
#include <span>
#include <vector>

namespace cutwater::logic {

// Pieces are numbered from the bottom up, the last one is the top. Equal ones are one unit.
class Pieces {
public:
    // `formula` must outlive this. `workers` write down at the same time.
    Pieces(const Formula& formula, Literal top, const Limits& limits, unsigned workers,
           Account& account, Budget& budget);

    std::size_t count() const { return m_unitOf.size(); }
    std::uint32_t unitOf(std::size_t piece) const { return m_unitOf[piece]; }
    // The whole formula is the only piece; its leaves are the variables, and nothing is written
    // down.
    bool isWhole() const { return m_firstOf.empty(); }
    std::size_t unitCount() const { return isWhole() ? 1 : m_firstOf.size(); }

    // Only where the formula is cut. A leaf that is a part is the cut gate of another piece.
    std::uint32_t gate(std::size_t piece) const { return m_division.gates[piece]; }
    std::span<const Leaf> leavesOf(std::size_t piece) const {
        const Place place = m_placeOf[piece];
        return m_described[place.chunk].leavesOf(itemAt(place));
    }
    // What the unit computes: its variables are the leaves of its pieces, its last node is itself.
    Formula formulaOf(std::uint32_t unit) const;

    // From now on the piece counts as this constant.
    void setConstant(std::size_t piece, bool value) {
        m_describer->setConstant(gate(piece), value);
    }
    bool standsOnConstant(std::size_t piece) const;
    // Writes the piece down with the constants that are known; may make a new unit, the last one.
    void describeAgain(std::size_t piece, Budget& budget);

private:
    struct Place { // where a piece is written down
        std::uint32_t chunk, item;
    };
    const Descriptions::Item& itemAt(Place place) const {
        return m_described[place.chunk].items[place.item];
    }
    std::span<const std::uint32_t> codeAt(Place place) const {
        return m_described[place.chunk].codeOf(itemAt(place));
    }
    void describeAll(unsigned workers, Account& account);
    std::uint32_t unitAt(Place place);

    Division m_division;
    std::unique_ptr<Describer> m_describer;
    std::vector<Descriptions> m_described; // the last one: what was done again
    std::vector<Place> m_placeOf;          // by piece
    std::vector<std::uint32_t> m_unitOf;   // by piece
    FlatIndex m_units;
    std::vector<Place> m_firstOf; // by unit
};

} // namespace cutwater::logic
