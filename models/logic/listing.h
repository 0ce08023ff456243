// SPDX-License-Identifier: GPL-3.0-or-later
// Listing: cut sets one after another, best first, straight off the diagrams; what is never asked
// for is never made.
#pragma once

#include <cstdint>
#include <limits>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace cutwater::logic {

struct SetLiteral {
    std::uint32_t variable = 0;
    bool negated =
        false; // the event must *not* occur; prime implicants of non-coherent formulas only
    bool operator==(const SetLiteral&) const = default;
    auto operator<=>(const SetLiteral&) const = default;
};

struct CutSet {
    std::vector<SetLiteral> literals; // ascending
    double probability = 0;           // product of its literals
};

enum class Sorting {
    byOrder,       // smallest first, among equals the most probable first
    byProbability, // most probable first
};

struct ListingWish {
    Sorting sorting = Sorting::byOrder;
    std::uint32_t maxOrder = std::numeric_limits<std::uint32_t>::max();
    double minProbability = 0;                      // sets below are left out
    std::size_t memoryBytes = std::size_t{1} << 30; // for the frontier of the search
};

// Ties are broken by the variables' numbers within what is found together, so a listing is the same
// from run to run.
class Listing {
public:
    struct State; // private to the folder
    explicit Listing(std::unique_ptr<State> state);
    Listing(Listing&&) noexcept;
    Listing& operator=(Listing&&) noexcept;
    ~Listing();

    // The next set, or nothing: then there is none left within the cut-offs, or the memory is used
    // up (see `exhausted`).
    std::optional<CutSet> next();
    bool outOfMemory() const;

private:
    std::unique_ptr<State> m_state;
};

struct SolutionData;
Listing makeListing(std::shared_ptr<const SolutionData> data, std::span<const double> q,
                    const ListingWish& wish);

} // namespace cutwater::logic
