// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/gate_figures.h"

#include "plugins/sdk/tree/figures.h"

#include <fmt/format.h>

namespace cutwater::editor {

namespace {
// A caption is no reason to work for minutes: what needs more stays blank.
constexpr std::uint64_t kNodesPerModule = 300'000;
constexpr std::size_t kMemory = std::size_t{512} << 20;
} // namespace

void GateFigures::begin(std::shared_ptr<const Tree> tree) {
    if (m_tree == tree) return;
    m_tree = std::move(tree);
    m_gates.clear();
    m_words.clear();
    m_next = 0;
    // A tree with errors is drawn, but there is nothing to be computed.
    for (const project::Problem& problem : project::validate(*m_tree->project))
        if (problem.severity == project::Severity::error) return;
    // An item stands behind its parent: from the end, the lowest come first.
    const std::vector<drawing::Item>& items = m_tree->unfolded.items;
    for (std::size_t i = items.size(); i-- > 0;)
        if (m_tree->isHomeGate(i)) m_gates.push_back(items[i].node);
}

bool GateFigures::goOn(std::chrono::milliseconds patience, const std::stop_token& stop) {
    const auto end = std::chrono::steady_clock::now() + patience;
    while (!isDone() && !stop.stop_requested()) {
        const project::Id& gate = m_gates[m_next];
        std::string words = wordsOf(gate, stop);
        if (stop.stop_requested()) break;
        if (!words.empty()) m_words[gate] = std::move(words);
        ++m_next;
        if (std::chrono::steady_clock::now() > end) break;
    }
    return isDone();
}

std::string GateFigures::wordsOf(const project::Id& gate, const std::stop_token& stop) {
    const project::Project& project = *m_tree->project;
    sdk::tree::Target target;
    target.id = target.node = gate;
    sdk::tree::Circumstances circumstances;
    circumstances.commonCauses = true;
    auto formula = sdk::tree::formulaOf(project, m_tree->index, target, circumstances);
    if (!formula) return {};
    logic::Limits limits;
    limits.stop = stop;
    limits.memoryBytes = kMemory;
    limits.nodesPerModule = kNodesPerModule;
    limits.recall = m_recall;
    logic::SolveOutcome outcome = logic::solve(formula->formula(), formula->top(), limits);
    if (!outcome.solution) return {};
    sdk::tree::FigureBook book(project, m_tree->index, {});
    const sdk::tree::Solved solved(std::move(*formula), target, std::move(*outcome.solution));
    const sdk::tree::Figures figures = book.of(solved);
    if (!figures.complete()) return {};
    return fmt::format("{}{:.2e}", solved.tree.hasPriorityAnd ? "\u2264 " : "",
                       solved.solution.probability(figures.q).occurs);
}

} // namespace cutwater::editor
