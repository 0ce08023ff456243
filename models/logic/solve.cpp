// SPDX-License-Identifier: GPL-3.0-or-later
// From a formula to its solution: cut it into units, prepare each different one, solve each shape
// once, put the parts together.
#include "models/logic/flat_index.h"
#include "models/logic/pieces.h"
#include "models/logic/recall_data.h"
#include "models/logic/solution_data.h"
#include "models/logic/trim.h"
#include "models/logic/unit.h"
#include "models/logic/workers.h"

#include <algorithm>
#include <new>

namespace cutwater::logic {

namespace {

class Solver {
public:
    Solver(const Formula& formula, Literal top, const Limits& limits, Account& account)
        : m_formula(formula), m_top(top), m_limits(limits), m_account(account), m_budget(account),
          m_data(std::make_shared<SolutionData>()) {
        m_data->variableCount = formula.variableCount();
    }

    Solution run() {
        m_benches.resize(std::max(1u, std::min(m_limits.threads, kMostWorkers)));
        if (m_top.node() == 0) {
            m_data->constant = m_top.negated();
        } else {
            makeUnits();
            solveShapes();
            assemble();
            if (m_limits.sets && !m_data->constant) makeSets();
        }
        finish();
        return SolutionData::wrap(m_data);
    }

private:
    static constexpr unsigned kMostWorkers = 64;

    unsigned workers(std::size_t tasks) const {
        return static_cast<unsigned>(
            std::clamp<std::size_t>(tasks, 1, static_cast<std::size_t>(m_benches.size())));
    }
    Bench& bench(unsigned worker) {
        if (!m_benches[worker]) m_benches[worker] = std::make_unique<Bench>(m_account);
        return *m_benches[worker];
    }
    void progress(double share) const {
        if (m_limits.progress) m_limits.progress(share);
    }

    // --- units ---------------------------------------------------------------------------------

    void makeUnits() {
        m_pieces.emplace(m_formula, m_top, m_limits, workers(kMostWorkers), m_account, m_budget);
        m_units.resize(m_pieces->unitCount());
        forEachTask(m_units.size(), workers(m_units.size()), m_account,
                    [&](unsigned, std::size_t unit) { prepareOne(unit); });
        for (Unit& unit : m_units)
            findShapes(unit);
        progress(0.05);
    }

    void prepareOne(std::size_t unit) {
        Budget budget(m_account);
        if (m_pieces->isWhole()) {
            m_units[unit] = prepareUnit(m_formula, m_top, budget);
        } else {
            const Formula formula = m_pieces->formulaOf(static_cast<std::uint32_t>(unit));
            m_units[unit] = prepareUnit(formula, {formula.nodeCount() - 1, false}, budget);
        }
        budget.take(m_units[unit].prepared.simple.formula.bytes() + m_units[unit].modules.bytes());
    }

    // --- shapes --------------------------------------------------------------------------------

    void findShapes(Unit& unit) {
        unit.shapeOf.clear();
        for (const Descriptions::Item& item : unit.modules.items)
            unit.shapeOf.push_back(shapeFor(unit.modules, item));
    }

    // The number of the program's shape; a new one is filled from what is recalled, or left to be
    // solved.
    std::uint32_t shapeFor(const Descriptions& descriptions, const Descriptions::Item& item) {
        m_budget.step();
        const auto code = descriptions.codeOf(item);
        const auto known = m_shapes.find(item.hash, [&](std::uint32_t shape) {
            const std::vector<std::uint32_t>& other = m_programs[shape].code;
            return std::equal(code.begin(), code.end(), other.begin(), other.end());
        });
        if (known) return *known;
        const auto shape = static_cast<std::uint32_t>(m_programs.size());
        m_shapes.add(item.hash, shape);
        m_budget.take(item.words * sizeof(std::uint32_t));
        m_programs.push_back(descriptions.programOf(item));
        std::optional<SolvedShape> recalled;
        if (m_limits.recall) recalled = dataOf(*m_limits.recall).find(m_programs.back());
        m_data->shapes.push_back(recalled ? *recalled : SolvedShape{});
        return shape;
    }

    void solveShapes() {
        std::vector<std::uint32_t> open;
        for (std::uint32_t shape = 0; shape < m_data->shapes.size(); ++shape)
            if (!m_data->shapes[shape].shape) open.push_back(shape);
        // The longest programs first: the last one to finish should be a short one.
        std::stable_sort(open.begin(), open.end(), [&](std::uint32_t a, std::uint32_t b) {
            return m_programs[a].code.size() > m_programs[b].code.size();
        });
        forEachTask(open.size(), workers(open.size()), m_account,
                    [&](unsigned worker, std::size_t task) {
                        solveShape(open[task], bench(worker));
                        if (worker == 0)
                            progress(0.05 + 0.85 * static_cast<double>(task + 1) /
                                                static_cast<double>(open.size()));
                    });
    }

    void solveShape(std::uint32_t shape, Bench& bench) {
        SolvedShape& solved = m_data->shapes[shape];
        solved.shape = bench.solve(m_programs[shape], m_limits.nodesPerModule);
        // Almost always needed; doing it now lets the threads share the work.
        if (m_limits.sets && solved.shape->monotone)
            solved.sets[false] = bench.sets(*solved.shape, false);
    }

    // --- parts ---------------------------------------------------------------------------------

    void finishUnit(Unit& unit) {
        if (unit.constant) return;
        const auto solvedShapeFor = [this](const Descriptions& descriptions,
                                           const Descriptions::Item& item) {
            const std::uint32_t shape = shapeFor(descriptions, item);
            if (!m_data->shapes[shape].shape) solveShape(shape, bench(0));
            return shape;
        };
        makeParts(unit, m_data->shapes, solvedShapeFor, m_budget);
        unit.prepared = {};
        unit.modules = {};
    }

    void assemble() {
        for (Unit& unit : m_units)
            finishUnit(unit);
        passConstants();
        const std::size_t count = m_pieces->count();
        m_data->constant = unitOf(count - 1).constant;
        if (m_data->constant) return;
        const std::vector<bool> needed = findNeeded();
        std::size_t parts = 0, leaves = 0;
        for (std::size_t piece = 0; piece < count; ++piece) {
            parts += needed[piece] ? unitOf(piece).parts.size() : 0;
            leaves += needed[piece] ? unitOf(piece).leaves.size() : 0;
        }
        m_budget.take(parts * sizeof(Part) + leaves * sizeof(Leaf));
        m_data->parts.reserve(parts);
        m_data->leaves.reserve(leaves);
        std::vector<std::uint32_t> partOf(m_formula.nodeCount()); // by cut gate
        for (std::size_t piece = 0; piece < count; ++piece)
            if (needed[piece]) place(piece, partOf);
    }
    const Unit& unitOf(std::size_t piece) const { return m_units[m_pieces->unitOf(piece)]; }

    // A piece that is a constant is none to those above it: they are made anew.
    void passConstants() {
        const auto isConstant = [](const Unit& unit) { return unit.constant.has_value(); };
        if (m_pieces->isWhole() || std::none_of(m_units.begin(), m_units.end(), isConstant)) return;
        for (std::size_t piece = 0; piece < m_pieces->count(); ++piece) {
            m_budget.step();
            if (m_pieces->standsOnConstant(piece)) {
                m_pieces->describeAgain(piece, m_budget);
                if (m_pieces->unitCount() > m_units.size()) addUnit();
            }
            if (const auto constant = unitOf(piece).constant)
                m_pieces->setConstant(piece, *constant);
        }
    }
    void addUnit() {
        m_units.emplace_back();
        prepareOne(m_units.size() - 1);
        findShapes(m_units.back());
        for (const std::uint32_t shape : m_units.back().shapeOf)
            if (!m_data->shapes[shape].shape) solveShape(shape, bench(0));
        finishUnit(m_units.back());
    }

    // By piece. Reducing a unit may have shown that it does not need all that stands below it.
    std::vector<bool> findNeeded() {
        std::vector<bool> needed(m_pieces->count(), false);
        needed.back() = true;
        if (m_pieces->isWhole()) return needed;
        std::vector<std::uint32_t> pieceOf(m_formula.nodeCount()); // by cut gate
        for (std::size_t piece = 0; piece < needed.size(); ++piece)
            pieceOf[m_pieces->gate(piece)] = static_cast<std::uint32_t>(piece);
        for (std::size_t piece = needed.size(); piece-- > 0;) {
            m_budget.step();
            if (!needed[piece]) continue;
            const auto below = m_pieces->leavesOf(piece);
            for (const Leaf& leaf : unitOf(piece).leaves)
                if (!leaf.isPart && below[leaf.index].isPart)
                    needed[pieceOf[below[leaf.index].index]] = true;
        }
        return needed;
    }

    // The parts of the piece's unit, standing on what is below the piece.
    void place(std::size_t piece, std::vector<std::uint32_t>& partOf) {
        m_budget.step();
        const Unit& unit = unitOf(piece);
        const auto firstPart = static_cast<std::uint32_t>(m_data->parts.size());
        const std::size_t firstLeaf = m_data->leaves.size();
        for (Part part : unit.parts) {
            part.firstLeaf += firstLeaf;
            m_data->parts.push_back(part);
        }
        std::span<const Leaf> below;
        if (!m_pieces->isWhole()) {
            below = m_pieces->leavesOf(piece);
            partOf[m_pieces->gate(piece)] = static_cast<std::uint32_t>(m_data->parts.size() - 1);
        }
        for (const Leaf& leaf : unit.leaves) {
            Leaf own = leaf;
            if (leaf.isPart)
                own.index += firstPart;
            else if (!below.empty())
                own = below[leaf.index].isPart ? Leaf{partOf[below[leaf.index].index], true}
                                               : below[leaf.index];
            m_data->leaves.push_back(own);
            m_data->effort.events += own.isPart ? 0 : 1;
        }
        m_data->effort.gates += unit.gates;
    }

    // From the top downwards: only those polarities of a part are solved that the sets above really
    // contain.
    void makeSets() {
        std::vector<Part>& parts = m_data->parts;
        parts.back().needed[false] = true;
        for (std::size_t index = parts.size(); index-- > 0;) {
            for (const bool negated : {false, true}) {
                if (!parts[index].needed[negated]) continue;
                m_budget.look();
                SolvedShape& solved = m_data->shapes[parts[index].shape];
                if (!solved.sets[negated])
                    solved.sets[negated] = bench(0).sets(*solved.shape, negated);
                const auto leaves = m_data->leavesOf(parts[index]);
                for (const std::uint32_t element : solved.sets[negated]->elements) {
                    const Leaf leaf = leaves[element >> 1];
                    if (leaf.isPart)
                        parts[leaf.index].needed[element & 1u] = true;
                    else if (element & 1u)
                        m_data->coherent = false;
                }
            }
        }
        progress(1.0);
    }

    void finish() {
        Effort& effort = m_data->effort;
        effort.modules = static_cast<std::uint32_t>(m_data->parts.size());
        for (const SolvedShape& solved : m_data->shapes) {
            effort.diagramNodes += solved.shape->made;
            for (const auto& sets : solved.sets)
                if (sets) effort.setNodes += sets->nodes.size() - 2;
        }
        effort.memoryBytes = m_account.peak;
        if (!m_limits.recall) return;
        RecallData& recall = dataOf(*m_limits.recall);
        for (std::size_t shape = 0; shape < m_data->shapes.size(); ++shape)
            recall.keep(m_programs[shape], m_data->shapes[shape]);
        recall.nextRound();
    }

    const Formula& m_formula;
    const Literal m_top;
    const Limits& m_limits;
    Account& m_account;
    Budget m_budget;
    std::shared_ptr<SolutionData> m_data;
    std::vector<std::unique_ptr<Bench>> m_benches; // by worker

    std::optional<Pieces> m_pieces;
    std::vector<Unit> m_units;

    FlatIndex m_shapes;
    std::vector<Program> m_programs; // of each shape
};

} // namespace

SolveOutcome solve(const Formula& formula, Literal top, const Limits& limits) {
    try {
        if (limits.stop.stop_requested()) return {{}, Stop::cancelled};
        Account account(limits);
        Budget budget(account);
        if (const auto trimmed = trimWhereItPays(formula, top, budget)) {
            const Charge charge(budget, trimmed->formula.bytes());
            return {Solver(trimmed->formula, trimmed->top, limits, account).run(), Stop::none};
        }
        return {Solver(formula, top, limits, account).run(), Stop::none};
    } catch (const Stopped& stopped) {
        return {{}, stopped.why};
    } catch (const std::bad_alloc&) {
        return {{}, Stop::memory};
    }
}

} // namespace cutwater::logic
