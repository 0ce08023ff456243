// SPDX-License-Identifier: GPL-3.0-or-later
// GateFigures: how probable the gates of a tree are, from the exact solution of each, with the
// common causes counted as the live answers count them. Takes its time in pieces, so that the
// picture need not wait. One thread.
#pragma once

#include "app/editor/diagram/tree.h"
#include "models/logic/recall.h"

#include <chrono>
#include <map>
#include <memory>
#include <stop_token>
#include <string>
#include <vector>

namespace cutwater::editor {

class GateFigures {
public:
    // Forgets what was known where it is another tree.
    void begin(std::shared_ptr<const Tree> tree);
    // Goes on for about so long (one gate may take longer, up to the engine's limits); true where
    // there is nothing left to do.
    bool goOn(std::chrono::milliseconds patience, const std::stop_token& stop);
    bool isDone() const { return !m_tree || m_next >= m_gates.size(); }
    // "3.20e-05"; an upper bound with a sign before it; gates with events without a number, and
    // those that are too large, are missing.
    const std::map<project::Id, std::string>& words() const { return m_words; }

private:
    std::string wordsOf(const project::Id& gate, const std::stop_token& stop);

    std::shared_ptr<const Tree> m_tree;
    std::vector<project::Id> m_gates; // the lowest first
    std::size_t m_next = 0;
    std::map<project::Id, std::string> m_words;
    std::shared_ptr<logic::Recall> m_recall = std::make_shared<logic::Recall>();
};

} // namespace cutwater::editor
