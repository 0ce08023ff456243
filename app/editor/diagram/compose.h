// SPDX-License-Identifier: GPL-3.0-or-later
// Compose: pages from a tree. Runs in the worker.
#pragma once

#include "app/drawing/diagram.h"
#include "app/editor/diagram/captions.h"
#include "app/editor/diagram/folds.h"
#include "app/editor/diagram/page.h"

#include <unordered_map>

namespace cutwater::editor {

// Breaking texts into lines takes most of the time; an edit changes few of them.
class LabelCache {
public:
    const drawing::Label& label(const drawing::Item& item, const project::Index& index,
                                const drawing::Lettering& lettering);

private:
    std::unordered_map<std::string, drawing::Label> m_labels;
};

// The whole tree as far as it is unfolded. A node with several parents is drawn in full at its
// first place, folded or not; the others refer to it.
sdk::Answer<Page> composeTree(const Tree& tree, const Folds& folds, const Captions& captions,
                              const drawing::Lettering& lettering, LabelCache& labels,
                              const sdk::Layout& layout, const sdk::Job& job);

// A sheet as it is printed.
Page composeSheet(const Tree& tree, const drawing::Sheet& sheet, std::size_t count);

} // namespace cutwater::editor
