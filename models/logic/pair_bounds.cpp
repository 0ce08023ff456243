// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/pair_bounds.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace cutwater::logic {

namespace {

// What is used of independent basic events (Harris 1960, FKG 1971; from memory): increasing events
// A, B and a decreasing event D have
//   P(A and B) >= P(A) P(B)   and   P(A | D) <= P(A).

// log(1 - p), also for a p that rounding has taken over 1.
double logOfNot(double p) {
    return p < 1 ? std::log1p(-p) : -INFINITY;
}

// Groups of members are joined, with a bound of P(union) for each. Of two groups G and H, whose
// unions are increasing, P(G and H) is at least P(i and j) for every i of G and j of H, and at
// least P(G) P(H). So
//   P(G or H) = P(G) + P(H) - P(G and H) <= U(G) + U(H) - max(P(i and j), U(G) U(H)):
// for the first of the two this is plain; for the second, 1 - (1 - g)(1 - h) grows with g and h.
// Joined only by the first it is Hunter's bound (Hunter 1976, Worsley 1982), only by the second the
// product bound (Esary and Proschan 1963). Those who overlap most beyond chance are joined first,
// and what is left over by the second.
double upperBound(const Members& members) {
    struct Link {
        double excess;
        std::uint32_t i, j;
    };
    const auto count = static_cast<std::uint32_t>(members.count());
    std::vector<Link> links;
    for (std::uint32_t j = 0; j < count; ++j)
        for (std::uint32_t i = 0; i < j; ++i)
            if (members.dependent(i, j))
                links.push_back(
                    {members.pair(i, j).lower - members.single(i) * members.single(j), i, j});
    std::stable_sort(links.begin(), links.end(),
                     [](const Link& a, const Link& b) { return a.excess > b.excess; });
    std::vector<std::uint32_t> parent(count);
    std::iota(parent.begin(), parent.end(), 0);
    std::vector<double> upper(count);
    for (std::uint32_t i = 0; i < count; ++i)
        upper[i] = members.single(i);
    const auto groupOf = [&](std::uint32_t i) {
        for (; parent[i] != i; i = parent[i])
            parent[i] = parent[parent[i]];
        return i;
    };
    for (const Link& link : links) {
        const std::uint32_t g = groupOf(link.i), h = groupOf(link.j);
        const double both = members.pair(link.i, link.j).lower;
        if (g == h || both <= upper[g] * upper[h]) continue;
        upper[g] += upper[h] - both;
        parent[h] = g;
    }
    double logOfNone = 0;
    for (std::uint32_t i = 0; i < count; ++i)
        if (parent[i] == i) logOfNone += logOfNot(upper[i]);
    return -std::expm1(logOfNone);
}

// Members are taken one after the other: P(none) is the product of 1 - P(i | none before i). Of
// those before i let N be the ones that may have basic events in common with it, E that none of N
// occurs and D that none of the others does; i is independent of D. Then
//   P(i | D E) = P(i E | D) / P(E | D), and
//   P(i E | D) >= P(i | D) - sum over j of N of P(i j | D) >= P(i) - sum of P(i j) =: c(i)
// since i is independent of D and "i and j" is increasing while D is decreasing. That much, with
// P(E | D) <= 1, is how the inequalities of Janson are proven (Boppana and Spencer 1989; Riordan
// and Warnke 2015 for increasing events). Here P(E | D) is bounded better:
//   P(union of N | D) = sum over j of N of P(j and none of N before j | D)
//                    >= sum of [P(j | D) - sum over k of N before j of P(j k | D)]+
// where P(j | D) >= P(j) - sum of P(j k) over those k behind D that may have basic events in
// common with j, by the same steps as above, and P(j k | D) <= P(j k).
double lowerBound(const Members& members, const std::vector<std::uint32_t>& order) {
    // A smaller bound of P(union of N | D) than the one found is one too; near 1 rounding would
    // count.
    constexpr double kMostBefore = 0.999;
    const std::size_t count = members.count();
    double logOfNone = 0;
    for (std::size_t place = 0; place < count; ++place) {
        const std::uint32_t i = order[place];
        double rest = members.single(i); // c(i)
        double before = 0;               // at most P(union of N | D)
        for (std::size_t at = 0; at < place; ++at) {
            const std::uint32_t j = order[at];
            if (!members.dependent(i, j)) continue;
            rest -= members.pair(i, j).upper;
            double alone = members.single(j);
            for (std::size_t other = 0; other < place && alone > 0; ++other) {
                const std::uint32_t k = order[other];
                const bool counts = members.dependent(i, k) ? other < at : members.dependent(j, k);
                if (counts) alone -= members.pair(j, k).upper;
            }
            before += std::max(0.0, alone);
        }
        logOfNone += logOfNot(std::max(0.0, rest) / (1 - std::min(before, kMostBefore)));
    }
    return -std::expm1(logOfNone);
}

} // namespace

Interval boundUnion(const Members& members) {
    std::vector<std::uint32_t> order(members.count());
    std::iota(order.begin(), order.end(), 0);
    double lower = lowerBound(members, order);
    std::stable_sort(order.begin(), order.end(), [&](std::uint32_t a, std::uint32_t b) {
        return members.single(a) > members.single(b);
    });
    lower = std::min(1.0, std::max(lower, lowerBound(members, order)));
    return {lower, std::clamp(upperBound(members), lower, 1.0)};
}

} // namespace cutwater::logic
