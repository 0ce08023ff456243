// SPDX-License-Identifier: GPL-3.0-or-later
// Families of minimal sets added, multiplied and cut: what is needed to work with cut sets where no
// decision diagram fits.
#pragma once

#include "models/logic/zdd.h"

#include <span>
#include <vector>

namespace cutwater::logic {

// The recursion goes one step down per element.
constexpr std::uint32_t kMostElements = 5000;

// Works on one table. Every family given must be minimal (no set contains another), and every
// answer is. Precondition: elements are below kMostElements.
class FamilyAlgebra {
public:
    FamilyAlgebra(Zdd& zdd, Budget& budget);
    ~FamilyAlgebra();
    FamilyAlgebra(const FamilyAlgebra&) = delete;
    FamilyAlgebra& operator=(const FamilyAlgebra&) = delete;

    Family sum(Family a, Family b); // the minimal ones among the sets of both
    Family product(Family a,
                   Family b); // the minimal ones among all unions of a set of a and a set of b
    Family withoutSupersets(Family a, Family b); // the sets of a that contain no set of b

private:
    enum class Operation : std::uint32_t { sum = 1, product, withoutSupersets };
    struct Entry {
        Operation operation{};
        Family a = 0, b = 0, result = 0;
    };
    Entry& slot(Operation operation, Family a, Family b);
    template <typename Compute>
    Family remembered(Operation operation, Family a, Family b, Compute compute);

    Zdd& m_zdd;
    Budget& m_budget;
    std::vector<Entry> m_cache;
};

// Sum over the sets of the product of the weights of their elements.
double sumOfProducts(const Zdd& zdd, Family family, std::span<const double> weights,
                     Budget& budget);

// The largest product of the weights of a set's elements; 0 where there is no set.
double largestProduct(const Zdd& zdd, Family family, std::span<const double> weights,
                      Budget& budget);

// Leaves out sets whose product of weights is below `cutOff`. Some of them may stay: a node stays
// where any set through it is large enough.
Family withoutSmallSets(Zdd& zdd, Family family, std::span<const double> weights, double cutOff,
                        Budget& budget);

} // namespace cutwater::logic
