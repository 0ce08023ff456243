// SPDX-License-Identifier: GPL-3.0-or-later
// Drop: what it would mean to let go of a dragged box here.
#pragma once

#include "app/editor/diagram/page.h"
#include "app/editor/diagram/tree.h"
#include "models/project/edits/place.h"

#include <QString>

namespace cutwater::editor {

struct DropPlan {
    bool allowed = false;
    bool shares = false;                // used once more, instead of moved
    QString sentence;                   // what will happen, or why nothing can
    project::edits::Use use;            // what is dragged
    project::edits::Place place;        // where it goes
    bool beside = false, after = false; // next to the target instead of into it
};

// The use of a node that a box shows.
project::edits::Use useOf(const Tree& tree, const PageBox& box);

// Where something would go that is let go over `target`: into the gate, or beside the event; the
// sentence says why it cannot.
DropPlan planPlace(const Page& page, std::size_t target, bool rightHalf);

// `target` may be kNoBox: over nothing. On a gate that is drawn here the node becomes its last
// input; on anything else its neighbour, behind it where `rightHalf` says so.
DropPlan planDrop(const Tree& tree, const Page& page, std::size_t source, std::size_t target,
                  bool rightHalf, bool share);

} // namespace cutwater::editor
