// SPDX-License-Identifier: GPL-3.0-or-later
// M(f), the characteristic function of the minimal solutions of f over all variables from f's own
// level downwards. With x the top variable of f and f1, f0 the halves (f0 implies f1):
//   M(f) = not x and M(f0), or x and (M(f1) and not f0),
// where a variable between the level of f and that of a half must be 0: in a minimal solution an
// event that does not matter has not happened.
#include "tests/bench/buddy_sets.h"

#include <bdd.h>
#undef bdd_init
#undef bdd_ithvar
#undef bdd_nithvar

#include <unordered_map>
#include <vector>

namespace bench {

using cutwater::logic::Count;

namespace {

class Minimal {
public:
    std::optional<Count> run(BDD top) {
        m_variables = bdd_varnum();
        // m_zeros[l]: all variables from level l on are 0.
        m_zeros.assign(static_cast<std::size_t>(m_variables) + 1, 1);
        for (int level = m_variables; level-- > 0;)
            zerosAt(level) =
                bdd_addref(bdd_apply(bdd_nithvar(level), zerosAt(level + 1), bddop_and));
        std::vector<BDD> stack{top};
        while (!stack.empty()) {
            const BDD node = stack.back();
            if (node < 2 || m_minimal.contains(node)) {
                stack.pop_back();
                continue;
            }
            const BDD high = bdd_high(node), low = bdd_low(node);
            const bool ready = known(high) && known(low);
            if (!ready) {
                if (!known(high)) stack.push_back(high);
                if (!known(low)) stack.push_back(low);
                continue;
            }
            stack.pop_back();
            const int level = bdd_var(node);
            const BDD without = bdd_addref(from(low, level + 1));
            const BDD with = bdd_addref(from(high, level + 1));
            const BDD rest = bdd_addref(bdd_apply(with, low, bddop_diff));
            m_minimal[node] = bdd_addref(bdd_ite(bdd_ithvar(level), rest, without));
            for (const BDD done : {without, with, rest})
                bdd_delref(done);
        }
        return count(bdd_addref(from(top, 0)));
    }

private:
    BDD& zerosAt(int level) { return m_zeros[static_cast<std::size_t>(level)]; }
    bool known(BDD node) const { return node < 2 || m_minimal.contains(node); }

    // M(f) with the variables from `level` to that of f set to 0.
    BDD from(BDD node, int level) {
        if (node == 0) return 0;
        if (node == 1) return zerosAt(level);
        BDD result = bdd_addref(m_minimal.at(node));
        for (int l = bdd_var(node); l-- > level;) {
            const BDD next = bdd_addref(bdd_ite(bdd_ithvar(l), 0, result));
            bdd_delref(result);
            result = next;
        }
        bdd_delref(result); // nothing is made before the caller holds it
        return result;
    }

    // Solutions of a diagram that tests every variable on each way to 1.
    std::optional<Count> count(BDD top) {
        std::unordered_map<BDD, Count> counts{{0, Count{0, false}}, {1, Count{1, false}}};
        std::vector<BDD> stack{top};
        while (!stack.empty()) {
            const BDD node = stack.back();
            if (counts.contains(node)) {
                stack.pop_back();
                continue;
            }
            const BDD high = bdd_high(node), low = bdd_low(node);
            const auto one = counts.find(high), two = counts.find(low);
            if (one != counts.end() && two != counts.end()) {
                counts[node] = Count(one->second) + Count(two->second);
                stack.pop_back();
                continue;
            }
            if (one == counts.end()) stack.push_back(high);
            if (two == counts.end()) stack.push_back(low);
        }
        return counts.at(top);
    }

    int m_variables = 0;
    std::vector<BDD> m_zeros;
    std::unordered_map<BDD, BDD> m_minimal;
};

} // namespace

std::optional<Count> minimalSetsOf(int top) {
    return Minimal().run(top);
}

} // namespace bench
