// SPDX-License-Identifier: GPL-3.0-or-later
// Commands: every action of the window in one list, for the palette and for keys of one's own.
#pragma once

#include <QAction>
#include <QKeySequence>
#include <QList>
#include <QObject>
#include <QSettings>

namespace cutwater::editor {

struct Command {
    QAction* action = nullptr; // with an object name, under which its keys are remembered
    QString group;             // "File"
    QKeySequence standard;     // its keys as we give them
};

class Commands : public QObject {
public:
    Commands(QSettings& settings, QObject* parent);

    // Takes the action's own keys as the standard ones; keys of the user's own replace them.
    void add(QAction* action, const QString& group);
    const QList<Command>& all() const { return m_all; }
    const Command* find(const QString& objectName) const;

    // Another command that has these keys, in the same view or in the whole window; null: none.
    // Empty keys clash with nothing.
    const Command* clash(const QKeySequence& keys, const QAction* action) const;
    void setKeys(QAction* action, const QKeySequence& keys);
    void resetKeys();

private:
    QSettings& m_settings;
    QList<Command> m_all;
};

} // namespace cutwater::editor
