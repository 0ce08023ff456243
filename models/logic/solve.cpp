// SPDX-License-Identifier: GPL-3.0-or-later
// From a formula to its solution: simplify, find modules, solve each shape once, then the sets that
// the top needs.
#include "models/logic/implicants.h"
#include "models/logic/modules.h"
#include "models/logic/simplify.h"
#include "models/logic/solution_data.h"

#include <algorithm>
#include <new>
#include <unordered_map>

namespace cutwater::logic {

namespace {

// A table this large is emptied before the next module is solved.
constexpr std::uint32_t kForgetAbove = 1u << 20;

struct ProgramHash {
    std::size_t operator()(const Program& program) const {
        std::uint64_t hash = program.levels;
        for (const std::uint32_t word : program.code)
            hash = (hash ^ word) * 0x100000001b3u ^ hash >> 29;
        return static_cast<std::size_t>(hash);
    }
};

class Solver {
public:
    Solver(const Formula& formula, Literal top, const Limits& limits)
        : m_budget(limits), m_simple(simplify(formula, top, m_budget)), m_bdd(m_budget),
          m_zdd(m_budget), m_data(std::make_shared<SolutionData>()) {
        m_data->variableCount = formula.variableCount();
    }

    Solution run() {
        const Literal top = m_simple.top;
        if (top.node() == 0) {
            m_data->constant = top.negated();
        } else {
            makeParts(top);
            const Edge root = m_data->shapes[m_data->parts.back().shape].diagram.root;
            if (Bdd::isConstant(root)) m_data->constant = (root == kAlways) != top.negated();
            m_data->topNegated = top.negated();
            makeSets();
        }
        Effort& effort = m_data->effort;
        effort.events = m_simple.formula.variableCount();
        effort.gates = m_simple.formula.nodeCount() - 1 - effort.events;
        effort.modules = static_cast<std::uint32_t>(m_data->parts.size());
        effort.memoryBytes = m_budget.peak();
        return SolutionData::wrap(m_data);
    }

private:
    // --- parts ---

    void makeParts(Literal top) {
        const Formula& formula = m_simple.formula;
        m_isModule = findModules(formula, top);
        m_local.assign(formula.nodeCount(), kUnseen);
        m_partOf.assign(formula.nodeCount(), kUnseen);
        if (formula.op(top.node()) == Op::variable) { // a top event that is an event
            Program program{{static_cast<std::uint32_t>(Op::disjunction), 0, 1, 0}, 1, true};
            addPart(std::move(program),
                    {{m_simple.variableOf[formula.variable(top.node())], false}});
            return;
        }
        for (std::uint32_t node = 1; node < formula.nodeCount(); ++node) {
            if (!m_isModule[node]) continue;
            m_budget.look();
            m_budget.progress(0.9 * node / formula.nodeCount());
            std::vector<Leaf> leaves;
            Program program = describe(node, leaves);
            m_partOf[node] = addPart(std::move(program), std::move(leaves));
        }
    }

    std::uint32_t addPart(Program program, std::vector<Leaf> leaves) {
        Part part;
        part.firstLeaf = m_data->leaves.size();
        part.leafCount = static_cast<std::uint32_t>(leaves.size());
        m_data->leaves.insert(m_data->leaves.end(), leaves.begin(), leaves.end());
        const auto [place, isNew] =
            m_shapeOf.try_emplace(std::move(program), m_data->shapes.size());
        if (isNew) m_data->shapes.push_back(solveShape(place->first));
        part.shape = place->second;
        m_data->parts.push_back(part);
        return static_cast<std::uint32_t>(m_data->parts.size() - 1);
    }

    // Writes the module down in numbers of its own. Events are numbered in the order in which a
    // depth-first walk meets them, a gate's own events before those of the gates below it: in a
    // chain each gate then only adds a node on top.
    Program describe(std::uint32_t module, std::vector<Leaf>& leaves) {
        const Formula& formula = m_simple.formula;
        Program program;
        std::uint32_t gates = 0;
        struct Step {
            std::uint32_t node, next;
        };
        std::vector<Step> stack;
        const auto enter = [&](std::uint32_t node) {
            stack.push_back({node, 0});
            for (const Literal input : formula.inputs(node)) {
                const std::uint32_t child = input.node();
                const bool isVariable = formula.op(child) == Op::variable;
                if ((!isVariable && !m_isModule[child]) || m_local[child] != kUnseen ||
                    constantPart(child))
                    continue;
                m_local[child] = static_cast<std::uint32_t>(leaves.size()) << 2;
                leaves.push_back(isVariable
                                     ? Leaf{m_simple.variableOf[formula.variable(child)], false}
                                     : Leaf{m_partOf[child], true});
            }
        };
        enter(module);
        while (!stack.empty()) {
            m_budget.step();
            Step& step = stack.back();
            const auto inputs = formula.inputs(step.node);
            if (step.next < inputs.size()) {
                const std::uint32_t child = inputs[step.next++].node();
                if (m_local[child] == kUnseen && !constantPart(child)) enter(child);
                continue;
            }
            const std::uint32_t node = step.node;
            stack.pop_back();
            const Op op = formula.op(node);
            program.code.push_back(static_cast<std::uint32_t>(op));
            program.code.push_back(op == Op::atLeast ? formula.k(node) : 0);
            program.code.push_back(static_cast<std::uint32_t>(inputs.size()));
            program.monotone &= op != Op::exactlyOne;
            for (const Literal input : inputs) {
                if (const auto constant = constantPart(input.node())) {
                    program.code.push_back(*constant != input.negated() ? Program::kTrueInput
                                                                        : Program::kFalseInput);
                    continue;
                }
                program.code.push_back(m_local[input.node()] | (input.negated() ? 1u : 0u));
                program.monotone &= !input.negated();
            }
            if (node != module) m_local[node] = gates++ << 2 | 2u;
        }
        program.levels = static_cast<std::uint32_t>(leaves.size());
        // From outside the module is a leaf that nobody has numbered yet.
        m_local[module] = kUnseen;
        return program;
    }

    // A module that turned out to be always true or never.
    std::optional<bool> constantPart(std::uint32_t node) const {
        if (m_partOf[node] == kUnseen) return {};
        const Edge root = m_data->shapes[m_data->parts[m_partOf[node]].shape].diagram.root;
        if (!Bdd::isConstant(root)) return {};
        return root == kAlways;
    }

    // --- shapes ---

    Shape solveShape(const Program& program) {
        if (m_bdd.size() > kForgetAbove) m_bdd.clear();
        Shape shape;
        shape.monotone = program.monotone;
        const std::uint32_t before = m_bdd.size();
        shape.diagram = takeOut(compute(program, m_bdd));
        m_data->effort.diagramNodes += m_bdd.size() - before;
        return shape;
    }

    Diagram takeOut(Edge root) {
        const std::vector<std::uint32_t>& reached =
            reachable(root >> 1, 1, [&](std::uint32_t index, auto&& see) {
                see(m_bdd.node(index).high >> 1);
                see(m_bdd.node(index).low >> 1);
            });
        m_budget.take(reached.size() * sizeof(BddNode));
        Diagram diagram;
        diagram.nodes.reserve(reached.size() + 1);
        diagram.nodes.push_back({kTerminalLevel, 0, 0});
        const auto moved = [&](Edge edge) {
            return edge <= 1 ? edge : m_place[edge >> 1] << 1 | (edge & 1u);
        };
        for (const std::uint32_t index : reached) {
            const BddNode& node = m_bdd.node(index);
            m_place[index] = static_cast<std::uint32_t>(diagram.nodes.size());
            diagram.nodes.push_back({node.level, moved(node.high), moved(node.low)});
        }
        diagram.root = moved(root);
        return diagram;
    }

    Families takeOutSets(Family root) {
        const std::vector<std::uint32_t>& reached =
            reachable(root, 2, [&](std::uint32_t index, auto&& see) {
                see(m_zdd.node(index).with);
                see(m_zdd.node(index).without);
            });
        m_budget.take(reached.size() * sizeof(ZddNode));
        Families families;
        families.solved = true;
        families.nodes.reserve(reached.size() + 2);
        families.nodes.assign(2, {kNoElement, kNoSets, kNoSets});
        const auto moved = [&](Family family) {
            return family <= kEmptySet ? family : m_place[family];
        };
        for (const std::uint32_t index : reached) {
            const ZddNode& node = m_zdd.node(index);
            m_place[index] = static_cast<std::uint32_t>(families.nodes.size());
            families.nodes.push_back({node.element, moved(node.with), moved(node.without)});
        }
        families.root = moved(root);
        return families;
    }

    // The nodes at or above `first` that can be reached, ascending: children come before parents.
    template <typename Children>
    const std::vector<std::uint32_t>& reachable(std::uint32_t root, std::uint32_t first,
                                                Children children) {
        m_reached.clear();
        const auto see = [&](std::uint32_t index) {
            if (index < first) return;
            if (index >= m_place.size())
                m_place.resize(std::max<std::size_t>(index + 1, m_place.size() * 2), kUnseen);
            if (m_place[index] == m_round) return;
            m_place[index] = m_round;
            m_reached.push_back(index);
        };
        --m_round;
        see(root);
        for (std::size_t next = 0; next < m_reached.size(); ++next) {
            m_budget.step();
            children(m_reached[next], see);
        }
        std::sort(m_reached.begin(), m_reached.end());
        return m_reached;
    }

    // --- sets ---

    // From the top downwards: only those polarities of a part are solved that the sets above really
    // contain.
    void makeSets() {
        std::vector<Part>& parts = m_data->parts;
        parts.back().needed[m_data->topNegated] = true;
        for (std::size_t index = parts.size(); index-- > 0;) {
            for (const bool negated : {false, true}) {
                if (!parts[index].needed[negated]) continue;
                m_budget.look();
                const Families& families = solveSets(m_data->shapes[parts[index].shape], negated);
                const auto leaves = m_data->leavesOf(parts[index]);
                for (std::size_t i = 2; i < families.nodes.size(); ++i) {
                    const std::uint32_t element = families.nodes[i].element;
                    const Leaf leaf = leaves[element >> 1];
                    if (leaf.isPart)
                        parts[leaf.index].needed[element & 1u] = true;
                    else if (element & 1u)
                        m_data->coherent = false;
                }
            }
            m_budget.progress(1.0 -
                              0.1 * static_cast<double>(index) / static_cast<double>(parts.size()));
        }
    }

    const Families& solveSets(Shape& shape, bool negated) {
        Families& families = shape.sets[negated];
        if (families.solved) return families;
        if (m_zdd.size() > kForgetAbove) m_zdd.clear();
        if (m_bdd.size() > kForgetAbove) m_bdd.clear();
        const std::uint32_t before = m_zdd.size();
        const Family root =
            shape.monotone && !negated
                ? minimalSets(shape.diagram, m_zdd)
                : primeImplicants(putBack(shape.diagram) ^ (negated ? 1u : 0u), m_bdd, m_zdd);
        families = takeOutSets(root);
        m_data->effort.setNodes += m_zdd.size() - before;
        return families;
    }

    Edge putBack(const Diagram& diagram) {
        std::vector<Edge> edges(diagram.nodes.size(), kNever);
        const auto moved = [&](Edge edge) { return edges[edge >> 1] ^ (edge & 1u); };
        for (std::size_t i = 1; i < diagram.nodes.size(); ++i) {
            const BddNode& node = diagram.nodes[i];
            edges[i] = m_bdd.make(node.level, moved(node.high), moved(node.low));
        }
        return moved(diagram.root);
    }

    static constexpr std::uint32_t kUnseen = 0xffffffff;

    Budget m_budget;
    Simplified m_simple;
    Bdd m_bdd;
    Zdd m_zdd;
    std::shared_ptr<SolutionData> m_data;
    std::vector<bool> m_isModule;
    std::vector<std::uint32_t> m_local;  // node -> its input code in its module's program
    std::vector<std::uint32_t> m_partOf; // module -> part
    std::unordered_map<Program, std::uint32_t, ProgramHash> m_shapeOf;
    // Of the nodes of a table: the round that saw it (large numbers), then its place in what is
    // taken out.
    std::vector<std::uint32_t> m_place, m_reached;
    std::uint32_t m_round = kUnseen;
};

} // namespace

SolveOutcome solve(const Formula& formula, Literal top, const Limits& limits) {
    try {
        if (limits.stop.stop_requested()) return {{}, Stop::cancelled};
        return {Solver(formula, top, limits).run(), Stop::none};
    } catch (const Stopped& stopped) {
        return {{}, stopped.why};
    } catch (const std::bad_alloc&) {
        return {{}, Stop::memory};
    }
}

} // namespace cutwater::logic
