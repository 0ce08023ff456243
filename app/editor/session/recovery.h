// SPDX-License-Identifier: GPL-3.0-or-later
// Recovery: while the project is dirty a copy of it is written every few seconds, so that a crash
// takes no more than that. The file itself is never touched.
#pragma once

#include "app/editor/session/session.h"

#include <QDateTime>
#include <QList>
#include <QLockFile>
#include <QObject>
#include <QTimer>

#include <memory>

namespace cutwater::editor {

// What an editor that ended by force left behind.
struct Leftover {
    QString copy; // the .cutwater file of the copy
    QString path; // the file that was edited; empty: it had none
    QString name; // of the project
    QDateTime when;
};

class Recovery : public QObject {
    Q_OBJECT
public:
    // Copies go to `folder`, which is made; a copy is at most `interval` milliseconds and the time
    // of one writing behind.
    Recovery(Session& session, const QString& folder, int interval = 4000,
             QObject* parent = nullptr);
    // A session that ends in order leaves no copy.
    ~Recovery() override;

    // Copies whose editor is gone, the newest first.
    static QList<Leftover> leftovers(const QString& folder);
    static void discard(const Leftover& leftover);
    // Where copies of this user's editors are.
    static QString standardFolder();

    quint64 copiedRevision() const { return m_copied; } // of the session; 0: none

signals:
    void copied();
    void failed(const QString& sentence); // told once, until it works again

private:
    void copyIfNeeded();
    void removeCopy();

    Session& m_session;
    QString m_base; // path of the copy without its suffix
    std::unique_ptr<QLockFile> m_lock;
    QTimer m_timer;
    quint64 m_copied = 0;
    bool m_writing = false;
    bool m_told = false;
};

} // namespace cutwater::editor
