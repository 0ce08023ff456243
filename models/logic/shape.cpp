// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/shape.h"

#include "models/logic/extract.h"
#include "models/logic/implicants.h"
#include "models/logic/race.h"

namespace cutwater::logic {

namespace {
// Small shapes share the tables and what the caches know; a table this large is emptied first.
constexpr std::uint32_t kForgetAbove = 1u << 18;
} // namespace

void Bench::tidy() {
    if (m_bdd.size() > kForgetAbove) m_bdd.clear();
    if (m_zdd.size() > kForgetAbove) m_zdd.clear();
}

std::shared_ptr<const Shape> Bench::solve(const Program& program, std::uint64_t mostNodes) {
    tidy();
    std::optional<Built> raced = buildByRace(program, m_bdd, m_budget, mostNodes);
    if (!raced) throw Stopped{Stop::memory};
    Built& built = *raced;
    auto shape = std::make_shared<Shape>();
    shape->diagram = std::move(built.diagram);
    shape->leafAt = std::move(built.leafAt);
    shape->monotone = program.monotone;
    shape->made = built.made;
    m_budget.take(shape->diagram.nodes.size() * sizeof(BddNode));
    return shape;
}

std::shared_ptr<const Families> Bench::sets(const Shape& shape, bool negated) {
    tidy();
    const Family root = shape.monotone && !negated
                            ? minimalSets(shape.diagram, m_zdd, m_budget)
                            : primeImplicants(putBack(shape.diagram, m_bdd) ^ (negated ? 1u : 0u),
                                              m_bdd, m_zdd, m_budget);
    auto families = std::make_shared<Families>(extract(m_zdd, root, m_budget));
    m_budget.take(families->nodes.size() * sizeof(ZddNode));
    return families;
}

} // namespace cutwater::logic
