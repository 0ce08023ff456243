// SPDX-License-Identifier: GPL-3.0-or-later
// Best-first search over the families: a state is what has been chosen and a list of families still
// to be chosen from; its bound is the best that can come of it, which the families know node by
// node.
#include "models/logic/listing.h"

#include "models/logic/solution_data.h"

#include <algorithm>
#include <queue>

namespace cutwater::logic {

namespace {

constexpr std::uint32_t kNil = 0xffffffff;
// Products are rounded in another order than their bounds; a cut-off allows for that and the set
// itself decides.
constexpr double kRounding = 1 + 1e-9;

// The best that a family, or a list of families, has to offer.
struct Bound {
    std::uint32_t order = 0;     // of its smallest set
    double probabilityThere = 1; // the most probable one of that order
    double probability = 1;      // the most probable one of any order
};

Bound joined(const Bound& a, const Bound& b) {
    return {a.order + b.order, a.probabilityThere * b.probabilityThere,
            a.probability * b.probability};
}

Bound better(const Bound& a, const Bound& b) {
    Bound best = a.order < b.order ? a : b;
    if (a.order == b.order)
        best.probabilityThere = std::max(a.probabilityThere, b.probabilityThere);
    best.probability = std::max(a.probability, b.probability);
    return best;
}

struct AgendaCell { // still to be chosen from: a node of a part's families, and then the rest
    std::uint32_t part;
    Family node;
    std::uint32_t next;
    bool negated;
    Bound bound; // of this cell and all that follow
};

struct ChosenCell {
    SetLiteral literal;
    std::uint32_t next;
};

struct Candidate {
    std::uint32_t agenda = kNil, chosen = kNil;
    std::uint32_t order = 0;
    double probability = 1;
    Bound bound; // of the finished set at best
    std::uint64_t number = 0;
};

} // namespace

struct Listing::State {
    std::shared_ptr<const SolutionData> data;
    std::vector<double> q;
    ListingWish wish;
    std::vector<std::array<std::vector<Bound>, 2>> bounds; // [part][negated][node]
    std::vector<AgendaCell> agenda;
    std::vector<ChosenCell> chosen;
    std::vector<Candidate> heap;
    std::uint64_t nextNumber = 0;
    bool outOfMemory = false;

    bool after(const Candidate& a, const Candidate& b) const { // a comes after b
        if (wish.sorting == Sorting::byOrder) {
            if (a.bound.order != b.bound.order) return a.bound.order > b.bound.order;
            if (a.bound.probabilityThere != b.bound.probabilityThere)
                return a.bound.probabilityThere < b.bound.probabilityThere;
        } else {
            if (a.bound.probability != b.bound.probability)
                return a.bound.probability < b.bound.probability;
            if (a.bound.order != b.bound.order) return a.bound.order > b.bound.order;
        }
        return a.number > b.number;
    }
    auto comparison() const {
        return [this](const Candidate& a, const Candidate& b) { return after(a, b); };
    }

    double weight(const Leaf& leaf, bool negated) const {
        return negated ? 1.0 - q[leaf.index] : q[leaf.index];
    }

    Bound boundOf(const Leaf& leaf, bool negated) const {
        if (leaf.isPart) return bounds[leaf.index][negated][data->setsOf(leaf.index, negated).root];
        const double p = weight(leaf, negated);
        return {1, p, p};
    }

    void computeBounds() {
        bounds.resize(data->parts.size());
        forEachNeeded(*data, [&](std::size_t part, bool negated, const Families& families) {
            const auto leaves = data->leavesOf(data->parts[part]);
            std::vector<Bound>& own = bounds[part][negated];
            own.resize(families.nodes.size());
            for (std::size_t i = 2; i < families.nodes.size(); ++i) {
                const ZddNode& node = families.nodes[i];
                const Bound with =
                    joined(boundOf(leaves[node.element >> 1], node.element & 1u), own[node.with]);
                own[i] = node.without == kNoSets ? with : better(with, own[node.without]);
            }
        });
    }

    // Puts a family in front of an agenda; the empty set asks for nothing more.
    std::uint32_t inFront(std::uint32_t part, bool negated, Family node, std::uint32_t next) {
        if (node == kEmptySet) return next;
        Bound bound = bounds[part][negated][node];
        if (next != kNil) bound = joined(bound, agenda[next].bound);
        agenda.push_back({part, node, next, negated, bound});
        return static_cast<std::uint32_t>(agenda.size() - 1);
    }

    Candidate candidate(std::uint32_t todo, std::uint32_t have, std::uint32_t order,
                        double probability) {
        Bound bound{order, probability, probability};
        if (todo != kNil) bound = joined(bound, agenda[todo].bound);
        return {todo, have, order, probability, bound, nextNumber++};
    }

    bool within(const Candidate& c) const {
        return c.bound.order <= wish.maxOrder &&
               c.bound.probability * kRounding >= wish.minProbability;
    }

    bool hasRoom() const {
        return agenda.size() * sizeof(AgendaCell) + chosen.size() * sizeof(ChosenCell) +
                   heap.size() * sizeof(Candidate) <
               wish.memoryBytes;
    }

    // Goes down along the best choice and leaves the other ones on the heap, until nothing is to be
    // chosen any more. False where the cut-offs ended it.
    bool descend(Candidate& current) {
        while (current.agenda != kNil) {
            const AgendaCell cell = agenda[current.agenda];
            const ZddNode& node = data->setsOf(cell.part, cell.negated).nodes[cell.node];
            const Leaf& leaf = data->leavesOf(data->parts[cell.part])[node.element >> 1];
            const bool negated = node.element & 1u;

            const std::uint32_t afterWith = inFront(cell.part, cell.negated, node.with, cell.next);
            Candidate with;
            if (leaf.isPart) {
                const Family root = data->setsOf(leaf.index, negated).root;
                with = candidate(inFront(leaf.index, negated, root, afterWith), current.chosen,
                                 current.order, current.probability);
            } else {
                chosen.push_back({{leaf.index, negated}, current.chosen});
                with = candidate(afterWith, static_cast<std::uint32_t>(chosen.size() - 1),
                                 current.order + 1, current.probability * weight(leaf, negated));
            }
            if (node.without != kNoSets) {
                Candidate without =
                    candidate(inFront(cell.part, cell.negated, node.without, cell.next),
                              current.chosen, current.order, current.probability);
                if (after(with, without)) std::swap(with, without);
                if (within(without)) {
                    heap.push_back(without);
                    std::push_heap(heap.begin(), heap.end(), comparison());
                }
            }
            current = with;
            if (!within(current)) return false;
        }
        return true;
    }

    std::optional<CutSet> next() {
        while (!heap.empty() && !outOfMemory) {
            if (!hasRoom()) {
                outOfMemory = true;
                break;
            }
            std::pop_heap(heap.begin(), heap.end(), comparison());
            Candidate current = heap.back();
            heap.pop_back();
            if (!descend(current)) continue;
            CutSet set;
            for (std::uint32_t cell = current.chosen; cell != kNil; cell = chosen[cell].next)
                set.literals.push_back(chosen[cell].literal);
            std::sort(set.literals.begin(), set.literals.end());
            set.probability = 1;
            for (const SetLiteral& literal : set.literals)
                set.probability *= weight({literal.variable, false}, literal.negated);
            if (set.probability < wish.minProbability) continue;
            return set;
        }
        return {};
    }
};

Listing::Listing(std::unique_ptr<State> state) : m_state(std::move(state)) {}
Listing::Listing(Listing&&) noexcept = default;
Listing& Listing::operator=(Listing&&) noexcept = default;
Listing::~Listing() = default;

std::optional<CutSet> Listing::next() {
    return m_state->next();
}

bool Listing::outOfMemory() const {
    return m_state->outOfMemory;
}

Listing makeListing(std::shared_ptr<const SolutionData> data, std::span<const double> q,
                    const ListingWish& wish) {
    auto state = std::make_unique<Listing::State>();
    state->wish = wish;
    state->q.assign(q.begin(), q.end());
    state->data = std::move(data);
    const SolutionData& solved = *state->data;
    if (solved.constant) {
        if (*solved.constant) { // the empty set: the top happens by itself
            state->heap.push_back(Candidate{});
        }
        return Listing(std::move(state));
    }
    state->computeBounds();
    const auto top = static_cast<std::uint32_t>(solved.topPart());
    const Family root = solved.setsOf(top, false).root;
    const Candidate first = state->candidate(state->inFront(top, false, root, kNil), kNil, 0, 1.0);
    if (state->within(first)) state->heap.push_back(first);
    return Listing(std::move(state));
}

} // namespace cutwater::logic
