// SPDX-License-Identifier: GPL-3.0-or-later
// The panel: its actions, with names for menus and the palette of commands.
#include "app/editor/diagram/find_bar.h"
#include "app/editor/diagram/icons.h"
#include "app/editor/diagram/overview.h"
#include "app/editor/diagram/panel.h"

#include <QAction>
#include <QActionGroup>

namespace cutwater::editor {

using project::GateKind;

QAction* DiagramPanel::add(const char* name, const QString& text, const QKeySequence& keys,
                           const std::function<void()>& run) {
    auto* one = new QAction(text, this);
    one->setObjectName(QLatin1String(name));
    one->setIcon(iconFor(one->objectName(), palette()));
    if (!keys.isEmpty()) {
        one->setShortcut(keys);
        one->setToolTip(
            QStringLiteral("%1 (%2)").arg(text, keys.toString(QKeySequence::NativeText)));
    }
    // Only while the diagram has the focus: the outline uses the same keys for the same things.
    one->setShortcutContext(Qt::WidgetShortcut);
    m_view->addAction(one);
    connect(one, &QAction::triggered, this, run);
    m_all.push_back(one);
    return one;
}

void DiagramPanel::makeActions() {
    auto* kinds = new QActionGroup(this);
    QAction* tree = add("showTree", tr("Whole tree"), QKeySequence(tr("Ctrl+Shift+W")),
                        [this] { setKind(ViewKind::tree); });
    QAction* sheets = add("showSheets", tr("Sheets as printed"), QKeySequence(tr("Ctrl+Shift+P")),
                          [this] { setKind(ViewKind::sheets); });
    for (QAction* one : {tree, sheets}) {
        one->setCheckable(true);
        kinds->addAction(one);
    }
    tree->setChecked(true);
    add("previousSheet", tr("Previous sheet"), QKeySequence(Qt::Key_PageUp),
        [this] { showSheet(m_sheet - 1); });
    add("nextSheet", tr("Next sheet"), QKeySequence(Qt::Key_PageDown),
        [this] { showSheet(m_sheet + 1); });

    add("zoomIn", tr("Larger"), QKeySequence(tr("Ctrl++")), [this] {
        m_view->zoomBy(1.25);
    })->setShortcuts({QKeySequence(tr("Ctrl++")), QKeySequence(tr("Ctrl+="))});
    add("zoomOut", tr("Smaller"), QKeySequence(tr("Ctrl+-")), [this] { m_view->zoomBy(0.8); });
    add("zoomNormal", tr("Normal size"), QKeySequence(tr("Ctrl+0")), [this] {
        m_view->setZoom(1);
        if (m_scene->current() != kNoBox) m_view->showBox(m_scene->current());
    });
    add("fit", tr("Show all of it"), QKeySequence(tr("Ctrl+9")), [this] { m_view->fitPage(); });
    add("fitWidth", tr("Fit to the width"), QKeySequence(tr("Ctrl+8")),
        [this] { m_view->fitWidth(); });
    QAction* overview = add("overview", tr("Overview"), QKeySequence(tr("Ctrl+M")),
                            [this] { m_overview->setWanted(!m_overview->isWanted()); });
    overview->setCheckable(true);
    overview->setChecked(true);

    QAction* animate = add("animate", tr("Move boxes smoothly"), {},
                           [this] { setAnimated(action("animate")->isChecked()); });
    animate->setCheckable(true);
    animate->setChecked(true);

    add("find", tr("Find in the tree"), QKeySequence::Find, [this] { m_find->begin(); });
    add("findNext", tr("Next hit"), QKeySequence(Qt::Key_F3), [this] { nextHit(1); });
    add("findPrevious", tr("Previous hit"), QKeySequence(tr("Shift+F3")), [this] { nextHit(-1); });

    add("toggleFold", tr("Fold or unfold"), QKeySequence(Qt::Key_Space), [this] {
        const PageBox* box = currentBox();
        if (box && box->foldable) fold(box->node, !box->folded);
    })->setShortcuts({QKeySequence(Qt::Key_Space), QKeySequence(Qt::Key_Slash)});
    add("foldOne", tr("Fold"), QKeySequence(Qt::Key_Minus), [this] {
        if (const PageBox* box = currentBox(); box && box->foldable) fold(box->node, true);
    });
    add("unfoldOne", tr("Unfold"), QKeySequence(Qt::Key_Plus), [this] {
        if (const PageBox* box = currentBox(); box && box->foldable) fold(box->node, false);
    });
    add("unfoldBelow", tr("Unfold all below"), QKeySequence(Qt::Key_Asterisk), [this] {
        if (const PageBox* box = currentBox(); box && box->foldable) fold(box->node, false, true);
    });
    add("foldBelow", tr("Fold all below"), QKeySequence(Qt::Key_Underscore), [this] {
        if (const PageBox* box = currentBox(); box && box->foldable) fold(box->node, true, true);
    });
    add("unfoldAll", tr("Unfold the whole tree"), QKeySequence(tr("Ctrl+*")), [this] {
        if (m_scene->page()) fold(m_scene->page()->boxes.front().node, false, true);
    });
    add("foldAll", tr("Fold all but the first gate"), QKeySequence(tr("Ctrl+_")), [this] {
        if (!m_scene->page() || !m_answer || !m_answer->tree) return;
        const project::Id root = m_scene->page()->boxes.front().node;
        for (const project::Id& gate : gatesBelow(*m_answer->tree, root))
            m_folds[m_shownTop].insert(gate);
        fold(root, false);
    });
    add("jump", tr("Go where it is drawn"), QKeySequence(tr("Ctrl+Return")), [this] {
        if (const PageBox* box = currentBox(); box && box->transfer) open(m_scene->current());
    });
    add("export", tr("Export the diagram..."), QKeySequence(tr("Ctrl+Shift+E")),
        [this] { askExport(); });
    add("print", tr("Print the diagram..."), {}, [this] { askPrint(); });
}

void DiagramPanel::makeEditActions() {
    add("rename", tr("Rename"), QKeySequence(Qt::Key_F2), [this] {
        if (const PageBox* box = currentBox()) rename(box->node);
    });
    add("addInput", tr("Add an event below"), QKeySequence(Qt::Key_Insert), [this] { addInput(); });
    add("addSibling", tr("Add an event beside"), QKeySequence(Qt::Key_Return), [this] {
        addSibling();
    })->setShortcuts({QKeySequence(Qt::Key_Return), QKeySequence(Qt::Key_Enter)});
    add("insertOr", tr("Or gate above"), QKeySequence(tr("Ctrl+G")),
        [this] { insertGate(GateKind::orGate); });
    add("insertAnd", tr("And gate above"), {}, [this] { insertGate(GateKind::andGate); });
    add("insertVote", tr("Vote gate above"), {}, [this] { insertGate(GateKind::vote); });
    add("dissolve", tr("Dissolve the gate"), QKeySequence(tr("Ctrl+Shift+G")),
        [this] { dissolve(); });
    add("separate", tr("Make it a copy of its own"), QKeySequence(tr("Ctrl+Shift+D")),
        [this] { separateSelected(); });
    add("moveLeft", tr("Move to the left"), QKeySequence(tr("Alt+Left")),
        [this] { reorderCurrent(-1); });
    add("moveRight", tr("Move to the right"), QKeySequence(tr("Alt+Right")),
        [this] { reorderCurrent(1); });
    add("remove", tr("Remove"), QKeySequence(QKeySequence::Delete), [this] { removeSelected(); });
    const auto kind = [this](const char* name, const QString& text, const QKeySequence& keys,
                             GateKind which) {
        add(name, text, keys, [this, which] { setGateKind(which); });
    };
    kind("kindAnd", tr("And"), QKeySequence(Qt::Key_A), GateKind::andGate);
    kind("kindOr", tr("Or"), QKeySequence(Qt::Key_O), GateKind::orGate);
    kind("kindVote", tr("Vote"), QKeySequence(Qt::Key_V), GateKind::vote);
    kind("kindInhibit", tr("Inhibit"), QKeySequence(Qt::Key_I), GateKind::inhibit);
    kind("kindExactlyOne", tr("Exclusive or"), QKeySequence(Qt::Key_X), GateKind::exactlyOne);
    kind("kindNot", tr("Not"), QKeySequence(Qt::Key_N), GateKind::notGate);
    kind("kindPriorityAnd", tr("Priority and"), QKeySequence(Qt::Key_P), GateKind::priorityAnd);
    const auto event = [this](const char* name, const QString& text, const QKeySequence& keys,
                              project::EventKind which) {
        add(name, text, keys, [this, which] { setEventKind(which); });
    };
    using project::EventKind;
    event("kindBasic", tr("Basic event"), QKeySequence(Qt::Key_B), EventKind::basic);
    event("kindUndeveloped", tr("Undeveloped event"), QKeySequence(Qt::Key_U),
          EventKind::undeveloped);
    event("kindHouse", tr("House event"), QKeySequence(Qt::Key_H), EventKind::house);
    event("kindConditioning", tr("Condition"), QKeySequence(Qt::Key_C), EventKind::conditioning);
    add("copy", tr("Copy"), QKeySequence::Copy, [this] { copySelected(); });
    add("cut", tr("Cut"), QKeySequence::Cut, [this] {
        copySelected();
        removeSelected();
    });
    add("paste", tr("Paste below"), QKeySequence::Paste, [this] { pasteBelow(); });
}

void DiagramPanel::enableActions() {
    const PageBox* box = currentBox();
    const bool any = box != nullptr, isTree = m_kind == ViewKind::tree;
    const bool folds = any && box->foldable && isTree;
    const bool hasParent = any && !box->parent.empty();
    const auto set = [this](const char* name, bool on) {
        if (QAction* one = action(name)) one->setEnabled(on);
    };
    set("previousSheet", !isTree && m_sheet > 0);
    set("nextSheet", !isTree && m_sheet + 1 < sheets());
    set("toggleFold", folds);
    set("foldOne", folds && !box->folded);
    set("unfoldOne", folds && box->folded);
    set("foldBelow", folds);
    set("unfoldBelow", folds);
    set("foldAll", isTree && m_scene->page());
    set("unfoldAll", isTree && m_scene->page());
    set("jump", any && box->transfer);
    set("rename", any);
    set("addInput", any);
    set("addSibling", hasParent && !box->beside);
    for (const char* name : {"insertOr", "insertAnd", "insertVote", "remove"})
        set(name, any);
    set("dissolve", any && box->isGate);
    const bool shared = any && m_answer && m_answer->tree &&
                        m_answer->tree->times.count(box->node) > 0 &&
                        m_answer->tree->times.at(box->node) > 1;
    set("separate", shared);
    set("moveLeft", hasParent && !box->beside && box->input > 0);
    set("moveRight", hasParent && !box->beside);
    for (const char* name : {"kindAnd", "kindOr", "kindVote", "kindInhibit", "kindExactlyOne",
                             "kindNot", "kindPriorityAnd", "kindBasic", "kindUndeveloped",
                             "kindHouse", "kindConditioning", "copy", "cut", "paste"})
        set(name, any);
    set("export", m_scene->page());
    set("print", m_scene->page());
}

} // namespace cutwater::editor
