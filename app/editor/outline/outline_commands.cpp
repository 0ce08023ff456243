// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/outline_commands.h"

#include "app/editor/outline/node_icons.h"
#include "app/editor/outline/node_words.h"

#include <QCoreApplication>

namespace cutwater::editor {

namespace {

struct OutlineWords {
    Q_DECLARE_TR_FUNCTIONS(OutlineWords)
};

class Maker {
public:
    explicit Maker(OutlineView& view) : m_view(view) {}

    template <typename Do>
    QAction* make(const char* name, const QString& text, const QKeySequence& keys, Do what,
                  const QString& tip = {}) {
        auto* action = new QAction(text, &m_view);
        action->setObjectName(QStringLiteral("outline.") + QLatin1String(name));
        action->setShortcut(keys);
        action->setShortcutContext(Qt::WidgetShortcut);
        if (!tip.isEmpty()) action->setStatusTip(tip);
        QObject::connect(action, &QAction::triggered, &m_view, what);
        m_view.addAction(action);
        return action;
    }

    QAction* kind(const char* name, project::GateKind kind, Qt::Key key) {
        QAction* action = make(
            name, OutlineWords::tr("Gate: %1").arg(words(kind)), QKeySequence(key),
            [view = &m_view, kind] { view->setKind(kind); }, meaning(kind));
        action->setIcon(nodeIcon(drawing::symbolOf(kind), m_view.palette().text().color()));
        return action;
    }
    QAction* kind(const char* name, project::EventKind kind, Qt::Key key) {
        QAction* action = make(
            name, OutlineWords::tr("Event: %1").arg(words(kind)), QKeySequence(key),
            [view = &m_view, kind] { view->setKind(kind); }, meaning(kind));
        action->setIcon(nodeIcon(drawing::symbolOf(kind), m_view.palette().text().color()));
        return action;
    }

private:
    OutlineView& m_view;
};

} // namespace

QList<CommandGroup> makeOutlineCommands(OutlineView& view) {
    Maker maker(view);
    OutlineView* v = &view;
    CommandGroup edit{OutlineWords::tr("Edit"), {}};
    QAction* again =
        maker.make("copy", OutlineWords::tr("Copy"), QKeySequence::Copy, [v] { v->copy(); });
    edit.actions = {
        maker.make("cut", OutlineWords::tr("Cut"), QKeySequence::Cut, [v] { v->cut(); }),
        again,
        maker.make(
            "paste", OutlineWords::tr("Paste below"), QKeySequence::Paste, [v] { v->paste(); },
            OutlineWords::tr("puts what was copied, or indented lines of text, below the row")),
        maker.make(
            "delete", OutlineWords::tr("Delete"), QKeySequence(Qt::Key_Delete),
            [v] { v->removeChosen(); },
            OutlineWords::tr("takes the row away; what is used elsewhere stays there")),
    };
    CommandGroup tree{OutlineWords::tr("Tree"), {}};
    tree.actions = {
        maker.make(
            "add-beside", OutlineWords::tr("Add beside"), QKeySequence(Qt::Key_Return),
            [v] { v->addBeside(); },
            OutlineWords::tr("types a new event below the row, on its level")),
        maker.make(
            "add-below", OutlineWords::tr("Add below"), QKeySequence(Qt::Key_Tab),
            [v] { v->addBelow(); },
            OutlineWords::tr("types a new input; an event becomes an or gate")),
        maker.make("rename", OutlineWords::tr("Change the text"), QKeySequence(Qt::Key_F2),
                   [v] { v->editText(); }),
        nullptr,
        maker.make("move-up", OutlineWords::tr("Move up"), QKeySequence(Qt::ALT | Qt::Key_Up),
                   [v] { v->moveChosen(-1); }),
        maker.make("move-down", OutlineWords::tr("Move down"), QKeySequence(Qt::ALT | Qt::Key_Down),
                   [v] { v->moveChosen(1); }),
        nullptr,
        maker.make(
            "insert-gate", OutlineWords::tr("Put a gate above"), QKeySequence(Qt::CTRL | Qt::Key_G),
            [v] { v->insertGate(); }, OutlineWords::tr("one new gate above the chosen rows")),
        maker.make(
            "dissolve-gate", OutlineWords::tr("Dissolve the gate"),
            QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_G), [v] { v->dissolve(); },
            OutlineWords::tr("its inputs take its place")),
        maker.make(
            "separate", OutlineWords::tr("Separate from the other places"),
            QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_D), [v] { v->separate(); },
            OutlineWords::tr("a shared gate becomes one of its own here; its events stay shared")),
        maker.make("make-top", OutlineWords::tr("Make it a top event"),
                   QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T), [v] { v->makeTop(); }),
        nullptr,
        maker.make("unfold-all", OutlineWords::tr("Unfold all below"),
                   QKeySequence(Qt::Key_Asterisk), [v] { v->unfoldBelow(); }),
        maker.make("fold-all", OutlineWords::tr("Fold all"), QKeySequence(Qt::Key_Slash),
                   [v] { v->collapseAll(); }),
        maker.make("show-models", OutlineWords::tr("Show or hide the failure models"), {},
                   [v] {
                       const int column = OutlineModel::modelColumn;
                       v->setColumnHidden(column, !v->isColumnHidden(column));
                   }),
    };
    CommandGroup kind{OutlineWords::tr("Kind"), {}};
    using project::EventKind;
    using project::GateKind;
    kind.actions = {
        maker.kind("kind-or", GateKind::orGate, Qt::Key_O),
        maker.kind("kind-and", GateKind::andGate, Qt::Key_A),
        maker.kind("kind-vote", GateKind::vote, Qt::Key_V),
        maker.kind("kind-inhibit", GateKind::inhibit, Qt::Key_I),
        maker.kind("kind-xor", GateKind::exactlyOne, Qt::Key_X),
        maker.kind("kind-not", GateKind::notGate, Qt::Key_N),
        maker.kind("kind-priority-and", GateKind::priorityAnd, Qt::Key_P),
        nullptr,
        maker.kind("kind-basic", EventKind::basic, Qt::Key_B),
        maker.kind("kind-undeveloped", EventKind::undeveloped, Qt::Key_U),
        maker.kind("kind-house", EventKind::house, Qt::Key_H),
        maker.kind("kind-condition", EventKind::conditioning, Qt::Key_C),
        maker.make("switch", OutlineWords::tr("Switch the house event"), QKeySequence(Qt::Key_S),
                   [v] { v->toggleState(); }),
    };
    return {edit, tree, kind};
}

} // namespace cutwater::editor
