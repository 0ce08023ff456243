// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/drop.h"

#include <QCoreApplication>

#include <algorithm>

namespace cutwater::editor {

namespace edits = project::edits;

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(cutwater::editor::Drop)
};

QString text(const project::Id& id) {
    return QString::fromStdString(id);
}

} // namespace

edits::Use useOf(const Tree& tree, const PageBox& box) {
    edits::Use use{box.node, box.parent, edits::kLoose};
    if (box.beside && !box.parent.empty()) {
        use.row = edits::kCondition;
    } else if (!box.parent.empty()) {
        use.row = box.input >= 0 ? static_cast<std::size_t>(box.input) : 0;
    } else {
        const std::vector<project::TopEvent>& tops = tree.project->tops;
        for (std::size_t i = 0; i < tops.size(); ++i)
            if (tops[i].node.id == box.node &&
                (use.row == edits::kLoose || tops[i].id == tree.top.id))
                use.row = i;
    }
    return use;
}

DropPlan planPlace(const Page& page, std::size_t target, bool rightHalf) {
    DropPlan plan;
    if (target == kNoBox) {
        plan.sentence = Words::tr("Drop it on a gate, or beside an event");
        return plan;
    }
    const PageBox& on = page.boxes[target];
    plan.allowed = true;
    if (on.isGate && !on.transfer) {
        plan.place = {on.node, edits::kLast};
    } else if (on.parent.empty() || on.beside) {
        plan.allowed = false;
        plan.sentence = Words::tr("%1 takes no inputs").arg(text(on.node));
    } else {
        plan.beside = true;
        plan.after = rightHalf;
        plan.place = {on.parent,
                      static_cast<std::size_t>(std::max(on.input, 0)) + (rightHalf ? 1U : 0U)};
    }
    return plan;
}

DropPlan planDrop(const Tree& tree, const Page& page, std::size_t source, std::size_t target,
                  bool rightHalf, bool share) {
    const PageBox& box = page.boxes[source];
    DropPlan plan = planPlace(page, target, rightHalf);
    plan.shares = share;
    plan.use = useOf(tree, box);
    if (target == kNoBox) return plan;
    if (target == source) {
        plan.allowed = false;
        plan.sentence = Words::tr("Drop it on another gate");
        return plan;
    }
    if (!plan.allowed) return plan;
    plan.allowed = false;
    const PageBox& on = page.boxes[target];
    const project::Id& gate = plan.place.parent;
    if (gate == box.node || tree.reaches(box.node, gate)) {
        plan.sentence = Words::tr("%1 would stand below itself").arg(text(box.node));
        return plan;
    }
    const project::Gate* found = tree.index.gate(gate);
    const bool isThere =
        found && std::any_of(found->inputs.begin(), found->inputs.end(),
                             [&](const project::Reference& input) { return input.id == box.node; });
    if (isThere && (share || gate != box.parent || box.beside)) {
        plan.sentence = Words::tr("%1 is an input of %2 already").arg(text(box.node), text(gate));
        return plan;
    }
    if (isThere && !plan.beside && gate == box.parent && !share &&
        found->inputs.back().id == box.node) {
        plan.sentence =
            Words::tr("%1 is the last input of %2 already").arg(text(box.node), text(gate));
        return plan;
    }
    plan.allowed = true;
    if (plan.beside && gate == box.parent)
        plan.sentence = Words::tr("Reorder: %1 beside %2").arg(text(box.node), text(on.node));
    else
        plan.sentence = (share ? Words::tr("Share %1 with %2") : Words::tr("Move %1 to %2"))
                            .arg(text(box.node), text(gate));
    return plan;
}

} // namespace cutwater::editor
