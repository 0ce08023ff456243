// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/commands.h"

#include <algorithm>

namespace cutwater::editor {

namespace {

QString keyOf(const QAction* action) {
    return QStringLiteral("keys/") + action->objectName();
}

// Where the keys of an action work: null for the whole window.
const QObject* placeOf(const QAction* action) {
    return action->shortcutContext() == Qt::WidgetShortcut ||
                   action->shortcutContext() == Qt::WidgetWithChildrenShortcut
               ? action->parent()
               : nullptr;
}

} // namespace

Commands::Commands(QSettings& settings, QObject* parent) : QObject(parent), m_settings(settings) {}

void Commands::add(QAction* action, const QString& group) {
    Q_ASSERT(!action->objectName().isEmpty());
    m_all.push_back({action, group, action->shortcut()});
    const QVariant own = m_settings.value(keyOf(action));
    if (own.isValid())
        action->setShortcut(QKeySequence::fromString(own.toString(), QKeySequence::PortableText));
}

const Command* Commands::find(const QString& objectName) const {
    const auto found = std::find_if(m_all.begin(), m_all.end(), [&](const Command& each) {
        return each.action->objectName() == objectName;
    });
    return found == m_all.end() ? nullptr : &*found;
}

const Command* Commands::clash(const QKeySequence& keys, const QAction* action) const {
    if (keys.isEmpty()) return nullptr;
    const auto found = std::find_if(m_all.begin(), m_all.end(), [&](const Command& each) {
        const QObject* here = placeOf(action);
        const QObject* there = placeOf(each.action);
        return each.action != action && each.action->shortcut() == keys &&
               (!here || !there || here == there);
    });
    return found == m_all.end() ? nullptr : &*found;
}

void Commands::setKeys(QAction* action, const QKeySequence& keys) {
    action->setShortcut(keys);
    const Command* command = find(action->objectName());
    if (command && command->standard == keys)
        m_settings.remove(keyOf(action));
    else
        m_settings.setValue(keyOf(action), keys.toString(QKeySequence::PortableText));
}

void Commands::resetKeys() {
    for (const Command& command : m_all)
        setKeys(command.action, command.standard);
}

} // namespace cutwater::editor
