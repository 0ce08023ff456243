// SPDX-License-Identifier: GPL-3.0-or-later
// FileGuard: sees to it that two editors do not write one file, and that a change from outside is
// noticed.
#pragma once

#include "app/editor/session/session.h"

#include <QDateTime>
#include <QFileSystemWatcher>
#include <QLockFile>
#include <QObject>

#include <memory>

namespace cutwater::editor {

class FileGuard : public QObject {
    Q_OBJECT
public:
    explicit FileGuard(Session& session, QObject* parent = nullptr);

    // Who has the file open, in words; empty where it is ours.
    const QString& otherEditor() const { return m_other; }
    // The file is not as it was when it was read or saved here. Looks at the disk.
    bool isChangedOutside() const;
    // What is there now is known: no more warning about it.
    void acceptOutside();

    // Whether `path` may be written: a sentence why not, or empty.
    QString whyNot(const QString& path) const;

signals:
    void otherEditorChanged();
    void changedOutside();

private:
    struct Facts {
        QDateTime modified;
        qint64 size = -1; // no such file
        bool operator==(const Facts&) const = default;
    };
    static Facts factsOf(const QString& path);
    static QString lockPath(const QString& path);
    static QString holder(const QLockFile& lock);

    void follow(); // the session has another file
    void look();

    Session& m_session;
    std::unique_ptr<QLockFile> m_lock;
    QFileSystemWatcher m_watcher;
    QString m_path;
    QString m_other;
    Facts m_known;
    Facts m_told;
};

} // namespace cutwater::editor
