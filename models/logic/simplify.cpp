// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/logic/simplify.h"

#include "models/logic/flat_index.h"
#include "models/logic/propagate.h"
#include "models/logic/regroup.h"
#include "models/logic/uses.h"

#include <algorithm>
#include <unordered_map>

namespace cutwater::logic {

namespace {

constexpr std::uint32_t kNone = 0xffffffff;

Literal operator^(Literal literal, bool negate) {
    return negate ? ~literal : literal;
}

// The inputs of an `and` or `or` that waits for its only parent, as a linked list: joining two is
// one step, so that a chain of 100,000 nested gates is merged in linear time.
struct Group {
    std::uint32_t first = kNone, last = kNone; // cells
};
struct Cell {
    Literal literal;
    std::uint32_t next = kNone;
};

// Equal for every order of the inputs.
std::uint64_t hashOfGate(Op op, std::span<const Literal> inputs, std::int64_t k) {
    std::uint64_t hash =
        static_cast<std::uint64_t>(op) * 0x9e3779b97f4a7c15u + static_cast<std::uint64_t>(k);
    for (const Literal input : inputs) {
        const std::uint64_t mixed = (input.code() + 1) * 0xbf58476d1ce4e5b9u;
        hash += (mixed ^ (mixed >> 29)) * 0x94d049bb133111ebu;
    }
    return hash ^ hash >> 32;
}

class Simplifier {
public:
    Simplifier(const Formula& formula, Literal top, Budget& budget)
        : m_in(formula), m_top(top), m_budget(budget), m_charge(budget, workBytes(formula)),
          m_uses(findUses(formula, top, budget)), m_map(formula.nodeCount(), kFalse),
          m_groupOf(formula.nodeCount(), kNone) {}

    Simplified run() {
        m_out.formula.reserve(m_in);
        m_cells.reserve(m_in.inputCount());
        m_marks.reserve(2 * std::size_t{m_in.nodeCount()});
        m_usedOnce.reserve(m_in.nodeCount());
        for (std::uint32_t node = 1; node < m_in.nodeCount(); ++node) {
            m_budget.step();
            if (m_uses[node].parents == 0) continue;
            if (m_in.op(node) == Op::variable) {
                m_map[node] = m_out.formula.addVariable();
                m_out.variableOf.push_back(m_in.variable(node));
                grow();
                m_usedOnce[m_map[node].node()] = m_uses[node].parents == 1;
            } else {
                build(node);
            }
        }
        m_out.top = settled(m_top);
        return dropUnused();
    }

private:
    // --- one gate of the input
    // ---------------------------------------------------------------------------------

    void build(std::uint32_t node) {
        const bool flip = m_uses[node].flipped();
        Op op = m_in.op(node);
        const auto inputs = m_in.inputs(node);
        std::int64_t k = op == Op::atLeast ? m_in.k(node) : 0;
        const auto count = static_cast<std::int64_t>(inputs.size());
        if (flip && op == Op::atLeast)
            k = count - k + 1; // not at least k of n = at least n-k+1 of the negated
        if (op == Op::atLeast && k == 1)
            op = flip ? Op::conjunction : Op::disjunction;
        else if (op == Op::atLeast && k == count)
            op = flip ? Op::disjunction : Op::conjunction;

        if (op == Op::conjunction || op == Op::disjunction) {
            const Op built =
                flip ? (op == Op::conjunction ? Op::disjunction : Op::conjunction) : op;
            buildGroup(node, built, inputs, flip);
            return;
        }
        m_work.clear();
        const bool negateInputs = flip && op == Op::atLeast;
        for (const Literal input : inputs)
            m_work.push_back(settled(input) ^ negateInputs);
        const Literal result = op == Op::atLeast ? makeVote(m_work, k) : makeExactlyOne(m_work);
        m_map[node] = result ^ negateInputs;
    }

    // `and` and `or`: collected as a group; made into a gate at once only where several parents
    // need it.
    void buildGroup(std::uint32_t node, Op op, std::span<const Literal> inputs, bool flip) {
        Group group;
        for (const Literal input : inputs) {
            const std::uint32_t child = input.node();
            const std::uint32_t waiting = m_groupOf[child];
            // The child's map entry is negated where the child was built flipped.
            const bool negated = (input ^ m_uses[child].flipped() ^ flip).negated();
            if (waiting != kNone && m_opOfGroup[waiting] == op && !negated) {
                join(group, m_groups[waiting]);
                m_groupOf[child] = kNone;
                continue;
            }
            append(group, settled(input) ^ flip);
        }
        if (m_uses[node].parents == 1) {
            m_groupOf[node] = static_cast<std::uint32_t>(m_groups.size());
            m_groups.push_back(group);
            m_opOfGroup.push_back(op);
            return;
        }
        m_map[node] = makeGate(op, group) ^ flip;
    }

    // The literal of the output that stands for `literal` of the input; makes the gate where it was
    // still waiting.
    Literal settled(Literal literal) {
        const std::uint32_t node = literal.node();
        if (m_groupOf[node] != kNone) {
            const std::uint32_t waiting = m_groupOf[node];
            m_groupOf[node] = kNone;
            m_map[node] =
                makeGate(m_opOfGroup[waiting], m_groups[waiting]) ^ m_uses[node].flipped();
        }
        return m_map[node] ^ literal.negated();
    }

    void append(Group& group, Literal literal) {
        m_cells.push_back({literal, kNone});
        const auto cell = static_cast<std::uint32_t>(m_cells.size() - 1);
        join(group, {cell, cell});
    }
    void join(Group& group, Group more) {
        if (more.first == kNone) return;
        if (group.first == kNone)
            group = more;
        else {
            m_cells[group.last].next = more.first;
            group.last = more.last;
        }
    }

    // --- one gate of the output
    // --------------------------------------------------------------------------------

    Literal makeGate(Op op, Group group) {
        m_inputs.clear();
        for (std::uint32_t cell = group.first; cell != kNone; cell = m_cells[cell].next)
            m_inputs.push_back(m_cells[cell].literal);
        return makeAndOr(op, m_inputs);
    }

    Literal makeAndOr(Op op, std::vector<Literal>& inputs) {
        const Literal neutral = op == Op::conjunction ? kTrue : kFalse;
        std::size_t kept = 0;
        ++m_stamp;
        for (const Literal input : inputs) {
            m_budget.step();
            if (input == neutral || seen(input)) continue;
            if (input == ~neutral || seen(~input)) return ~neutral;
            see(input);
            inputs[kept++] = input;
        }
        inputs.resize(kept);
        if (inputs.empty()) return neutral;
        if (inputs.size() == 1) return inputs.front();
        return shared(op, inputs, 0);
    }

    Literal makeVote(std::vector<Literal>& inputs, std::int64_t k) {
        // Known inputs count at once; x together with not x counts as one, whatever x is.
        ++m_stamp;
        std::vector<Literal> kept;
        for (const Literal input : inputs) {
            if (input == kTrue) --k;
            if (input == kTrue || input == kFalse) continue;
            if (const auto opposite = std::find(kept.begin(), kept.end(), ~input);
                seen(~input) && opposite != kept.end()) {
                kept.erase(opposite);
                --k;
                continue;
            }
            see(input);
            kept.push_back(input);
        }
        const auto count = static_cast<std::int64_t>(kept.size());
        if (k <= 0) return kTrue;
        if (k > count) return kFalse;
        if (k == 1) return makeAndOr(Op::disjunction, kept);
        if (k == count) return makeAndOr(Op::conjunction, kept);
        return shared(Op::atLeast, kept, k);
    }

    Literal makeExactlyOne(std::vector<Literal>& inputs) {
        std::vector<Literal> open, never; // `never`: must be false, because they would make two
        bool one = false;                 // one is true for certain
        std::unordered_map<std::uint32_t, std::uint32_t> times;
        for (const Literal input : inputs) {
            if (input == kFalse) continue;
            if (input == kTrue) {
                if (one) return kFalse;
                one = true;
                continue;
            }
            ++times[input.code()];
        }
        for (const Literal input : inputs) {
            if (input == kTrue || input == kFalse) continue;
            const std::uint32_t mine = times[input.code()];
            if (mine == 0) continue; // dealt with
            const auto opposite = times.find((~input).code());
            const std::uint32_t theirs = opposite == times.end() ? 0 : opposite->second;
            times[input.code()] = 0;
            if (theirs > 0) opposite->second = 0;
            if (theirs > 0) { // of x and not x one is true
                if (one) return kFalse;
                if (mine > 1 && theirs > 1) return kFalse;
                one = true;
                if (mine > 1) never.push_back(input);
                if (theirs > 1) never.push_back(~input);
            } else if (mine > 1) {
                never.push_back(input);
            } else {
                open.push_back(input);
            }
        }
        std::vector<Literal> factors;
        for (const Literal literal : never)
            factors.push_back(~literal);
        if (one) {
            for (const Literal literal : open)
                factors.push_back(~literal);
        } else if (open.empty()) {
            return kFalse;
        } else if (open.size() == 1) {
            factors.push_back(open.front());
        } else {
            factors.push_back(shared(Op::exactlyOne, open, 0));
        }
        return makeAndOr(Op::conjunction, factors);
    }

    // A gate that is made once, however often it is asked for.
    Literal shared(Op op, const std::vector<Literal>& inputs, std::int64_t k) {
        // An event that is used once stands in one gate only, and no other can be equal to it.
        const auto usedOnce = [&](Literal input) { return m_usedOnce[input.node()]; };
        if (std::any_of(inputs.begin(), inputs.end(), usedOnce)) {
            const Literal gate = m_out.formula.addGate(op, inputs, k);
            grow();
            return gate;
        }
        const std::uint64_t hash = hashOfGate(op, inputs, k);
        const auto known = m_gates.find(hash, [&](std::uint32_t node) {
            const auto theirs = m_out.formula.inputs(node);
            return m_out.formula.op(node) == op &&
                   (op != Op::atLeast || m_out.formula.k(node) == k) &&
                   theirs.size() == inputs.size() &&
                   sorted({theirs.begin(), theirs.end()}) == sorted({inputs.begin(), inputs.end()});
        });
        if (known) return {*known, false};
        const Literal gate = m_out.formula.addGate(op, inputs, k);
        grow();
        m_gates.add(hash, gate.node());
        return gate;
    }

    static std::vector<Literal> sorted(std::vector<Literal> literals) {
        std::sort(literals.begin(), literals.end(),
                  [](Literal a, Literal b) { return a.code() < b.code(); });
        return literals;
    }

    // Marks on literals of the output, valid for one gate at a time.
    void grow() {
        m_marks.resize(2 * std::size_t{m_out.formula.nodeCount()}, 0);
        m_usedOnce.resize(m_out.formula.nodeCount(), false);
    }
    bool seen(Literal literal) const {
        return literal.code() < m_marks.size() && m_marks[literal.code()] == m_stamp;
    }
    void see(Literal literal) {
        if (literal.code() >= m_marks.size()) grow();
        m_marks[literal.code()] = m_stamp;
    }

    // Gates that were made before a constant above them was known.
    Simplified dropUnused() {
        const std::vector<Use> uses = findUses(m_out.formula, m_out.top, m_budget);
        if (std::all_of(uses.begin() + 1, uses.end(),
                        [](const Use& use) { return use.parents > 0; }))
            return std::move(m_out);
        Simplified result;
        result.formula.reserve(m_out.formula);
        std::vector<Literal> map(m_out.formula.nodeCount(), kFalse);
        std::vector<Literal> inputs;
        for (std::uint32_t node = 1; node < m_out.formula.nodeCount(); ++node) {
            m_budget.step();
            if (uses[node].parents == 0) continue;
            if (m_out.formula.op(node) == Op::variable) {
                map[node] = result.formula.addVariable();
                result.variableOf.push_back(m_out.variableOf[m_out.formula.variable(node)]);
                continue;
            }
            inputs.clear();
            for (const Literal input : m_out.formula.inputs(node))
                inputs.push_back(map[input.node()] ^ input.negated());
            const Op op = m_out.formula.op(node);
            map[node] =
                result.formula.addGate(op, inputs, op == Op::atLeast ? m_out.formula.k(node) : 0);
        }
        result.top = map[m_out.top.node()] ^ m_out.top.negated();
        return result;
    }

    // What the arrays below hold at most, and the result.
    static std::size_t workBytes(const Formula& in) {
        constexpr std::size_t kPerNode = sizeof(Use) + sizeof(Literal) + 7 * sizeof(std::uint32_t);
        constexpr std::size_t kPerGate =
            sizeof(Group) + sizeof(Op) + 24; // and its place in the table
        const std::size_t gates = in.nodeCount() - in.variableCount();
        return kPerNode * in.nodeCount() + kPerGate * gates + sizeof(Cell) * in.inputCount() +
               in.bytes();
    }

    const Formula& m_in;
    Literal m_top;
    Budget& m_budget;
    Charge m_charge;
    std::vector<Use> m_uses;
    std::vector<Literal> m_map;           // node of the input -> literal of the output
    std::vector<std::uint32_t> m_groupOf; // node of the input -> waiting group
    std::vector<Group> m_groups;
    std::vector<Op> m_opOfGroup;
    std::vector<Cell> m_cells;
    std::vector<Literal> m_work, m_inputs;
    Simplified m_out;
    FlatIndex m_gates;
    std::vector<std::uint32_t> m_marks;
    std::vector<bool> m_usedOnce{false}; // by node of the output: an event with one parent
    std::uint32_t m_stamp = 0;
};

} // namespace

Simplified simplify(const Formula& formula, Literal top, Budget& budget) {
    return Simplifier(formula, top, budget).run();
}

Simplified reduce(const Formula& formula, Literal top, Budget& budget) {
    constexpr int kRounds = 4; // the first finds nearly everything
    Simplified result = simplify(formula, top, budget);
    const auto again = [&](const Formula& changed, Literal newTop) {
        Simplified next = simplify(changed, newTop, budget);
        for (std::uint32_t& variable : next.variableOf)
            variable = result.variableOf[variable];
        result = std::move(next);
    };
    for (int round = 0; round < kRounds; ++round) {
        const std::optional<Formula> propagated =
            propagateEvents(result.formula, result.top, budget);
        if (propagated) again(*propagated, result.top);
        const std::optional<Regrouped> absorbed = absorb(result.formula, result.top, budget);
        if (absorbed) again(absorbed->formula, absorbed->top);
        if (!propagated && !absorbed) break;
    }
    return result;
}

} // namespace cutwater::logic
