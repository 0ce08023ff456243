// SPDX-License-Identifier: GPL-3.0-or-later
// From a formula to its solution: simplify, find modules, write each down, solve each shape once,
// put the parts together.
#include "models/logic/describe.h"
#include "models/logic/flat_index.h"
#include "models/logic/prepare.h"
#include "models/logic/recall_data.h"
#include "models/logic/solution_data.h"
#include "models/logic/workers.h"

#include <algorithm>
#include <new>

namespace cutwater::logic {

namespace {

constexpr std::size_t kChunk = 256; // modules that one task writes down

class Solver {
public:
    Solver(const Formula& formula, Literal top, const Limits& limits, Account& account)
        : m_limits(limits), m_account(account), m_budget(account),
          m_prepared(prepare(formula, top, m_budget)), m_data(std::make_shared<SolutionData>()) {
        m_data->variableCount = formula.variableCount();
        m_data->effort.events = m_prepared.events;
        m_data->effort.gates = m_prepared.gates;
        m_budget.take(m_prepared.simple.formula.bytes());
    }

    Solution run() {
        if (m_prepared.simple.top.node() == 0) {
            m_data->constant = m_prepared.simple.top.negated();
        } else {
            makeTasks();
            solveShapes();
            makeParts();
            if (m_limits.sets) makeSets();
        }
        finish();
        return SolutionData::wrap(m_data);
    }

private:
    unsigned workers(std::size_t tasks) const {
        return std::max(1u, std::min(m_limits.threads,
                                     static_cast<unsigned>(std::min<std::size_t>(tasks, 64))));
    }
    Bench& bench(unsigned worker) {
        if (!m_benches[worker]) m_benches[worker] = std::make_unique<Bench>(m_account);
        return *m_benches[worker];
    }
    void progress(double share) const {
        if (m_limits.progress) m_limits.progress(share);
    }

    // Every module written down; equal ones are one shape.
    void makeTasks() {
        const std::size_t count = m_prepared.modules.size();
        m_benches.resize(workers(count));
        m_describer = std::make_unique<Describer>(m_prepared.simple.formula, m_prepared.isModule);
        m_described.resize((count + kChunk - 1) / kChunk);
        forEachTask(
            m_described.size(), workers(m_described.size()), m_account,
            [&](unsigned, std::size_t chunk) {
                Budget budget(m_account);
                for (std::size_t i = chunk * kChunk; i < std::min(count, (chunk + 1) * kChunk); ++i)
                    m_describer->describe(m_prepared.modules[i], m_described[chunk], budget);
                budget.take(m_described[chunk].bytes());
            });
        progress(0.05);
        m_budget.take(count * (sizeof(std::uint32_t) + sizeof(Part)));
        m_shapeOf.resize(count);
        for (std::size_t i = 0; i < count; ++i)
            m_shapeOf[i] =
                shapeFor(m_described[i / kChunk], m_described[i / kChunk].items[i % kChunk]);
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

    // From the bottom upwards. A module that turned out to be a constant is not a part: those above
    // are written anew.
    void makeParts() {
        std::vector<std::uint32_t> partOf(m_prepared.simple.formula.nodeCount(), 0);
        Descriptions again;
        for (std::size_t i = 0; i < m_prepared.modules.size(); ++i) {
            m_budget.step();
            const auto isKnown = [&](const Leaf& leaf) {
                return leaf.isPart && m_describer->isConstant(leaf.index);
            };
            const Descriptions& chunk = m_described[i / kChunk];
            std::span<const Leaf> leaves = chunk.leavesOf(chunk.items[i % kChunk]);
            if (m_anyConstant && std::any_of(leaves.begin(), leaves.end(), isKnown)) {
                m_describer->describe(m_prepared.modules[i], again, m_budget);
                m_shapeOf[i] = shapeFor(again, again.items.back());
                if (!m_data->shapes[m_shapeOf[i]].shape) solveShape(m_shapeOf[i], bench(0));
                leaves = again.leavesOf(again.items.back());
            }
            const Shape& shape = *m_data->shapes[m_shapeOf[i]].shape;
            const Edge root = shape.diagram.root;
            if (Bdd::isConstant(root)) {
                m_describer->setConstant(m_prepared.modules[i], root == kAlways);
                m_anyConstant = true;
                if (i + 1 < m_prepared.modules.size()) continue;
            }
            partOf[m_prepared.modules[i]] = static_cast<std::uint32_t>(m_data->parts.size());
            Part part;
            part.shape = m_shapeOf[i];
            part.firstLeaf = m_data->leaves.size();
            part.leafCount = static_cast<std::uint32_t>(leaves.size());
            for (const std::uint32_t leaf : shape.leafAt)
                m_data->leaves.push_back(
                    leaves[leaf].isPart
                        ? Leaf{partOf[leaves[leaf].index], true}
                        : Leaf{m_prepared.simple.variableOf[leaves[leaf].index], false});
            m_data->parts.push_back(part);
        }
        const Edge root = m_data->diagramOf(m_data->parts.back()).root;
        m_data->topNegated = m_prepared.simple.top.negated();
        if (Bdd::isConstant(root)) m_data->constant = (root == kAlways) != m_data->topNegated;
    }

    // From the top downwards: only those polarities of a part are solved that the sets above really
    // contain.
    void makeSets() {
        std::vector<Part>& parts = m_data->parts;
        parts.back().needed[m_data->topNegated] = true;
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

    const Limits& m_limits;
    Account& m_account;
    Budget m_budget;
    Prepared m_prepared;
    std::shared_ptr<SolutionData> m_data;
    std::unique_ptr<Describer> m_describer;
    std::vector<Descriptions> m_described; // kChunk modules each
    bool m_anyConstant = false;            // a module turned out to be one
    std::vector<std::uint32_t> m_shapeOf;  // of each module
    FlatIndex m_shapes;
    std::vector<Program> m_programs; // of each shape
    std::vector<std::unique_ptr<Bench>> m_benches;
};

} // namespace

SolveOutcome solve(const Formula& formula, Literal top, const Limits& limits) {
    try {
        if (limits.stop.stop_requested()) return {{}, Stop::cancelled};
        Account account(limits);
        return {Solver(formula, top, limits, account).run(), Stop::none};
    } catch (const Stopped& stopped) {
        return {{}, stopped.why};
    } catch (const std::bad_alloc&) {
        return {{}, Stop::memory};
    }
}

} // namespace cutwater::logic
