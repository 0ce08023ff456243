// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/file_guard.h"

#include <QFile>
#include <QFileInfo>
#include <QTimer>

namespace cutwater::editor {

FileGuard::FileGuard(Session& session, QObject* parent) : QObject(parent), m_session(session) {
    connect(&m_session, &Session::pathChanged, this, &FileGuard::follow);
    connect(&m_session, &Session::saved, this, [this] {
        m_known = m_told = factsOf(m_path);
        // The file was replaced: the old one is what was watched.
        if (!m_path.isEmpty()) m_watcher.addPath(m_path);
    });
    connect(&m_watcher, &QFileSystemWatcher::fileChanged, this, [this] {
        // Who replaces a file removes it first: look when that is over.
        QTimer::singleShot(200, this, &FileGuard::look);
    });
    follow();
}

QString FileGuard::lockPath(const QString& path) {
    const QFileInfo facts(
        QFileInfo(path).canonicalFilePath().isEmpty() ? path : QFileInfo(path).canonicalFilePath());
    return facts.absolutePath() + QStringLiteral("/.") + facts.fileName() + QStringLiteral(".lock");
}

QString FileGuard::holder(const QLockFile& lock) {
    qint64 process = 0;
    QString host, program;
    if (!lock.getLockInfo(&process, &host, &program)) return tr("another editor");
    return tr("another editor (process %1 on %2)").arg(process).arg(host);
}

FileGuard::Facts FileGuard::factsOf(const QString& path) {
    const QFileInfo facts(path);
    if (path.isEmpty() || !facts.exists()) return {};
    return {facts.lastModified(), facts.size()};
}

void FileGuard::follow() {
    if (!m_watcher.files().isEmpty()) m_watcher.removePaths(m_watcher.files());
    m_known = m_told = factsOf(m_session.path());
    if (!m_session.path().isEmpty() && QFile::exists(m_session.path()))
        m_watcher.addPath(m_session.path());
    if (m_session.path() == m_path) return;
    m_path = m_session.path();
    m_lock.reset();
    m_other.clear();
    if (!m_path.isEmpty()) {
        m_lock = std::make_unique<QLockFile>(lockPath(m_path));
        m_lock->setStaleLockTime(0); // only a process that is gone loses it
        if (!m_lock->tryLock(0) && m_lock->error() == QLockFile::LockFailedError)
            m_other = holder(*m_lock);
        // In a folder that cannot be written there is no lock, and nothing to save either.
    }
    emit otherEditorChanged();
}

bool FileGuard::isChangedOutside() const {
    // What we are writing ourselves is known when it is done.
    return m_known.size >= 0 && !m_session.isSaving() && factsOf(m_path) != m_known;
}

void FileGuard::acceptOutside() {
    m_known = m_told = factsOf(m_path);
    if (QFile::exists(m_path)) m_watcher.addPath(m_path);
}

void FileGuard::look() {
    const Facts now = factsOf(m_path);
    if (QFile::exists(m_path)) m_watcher.addPath(m_path);
    if (!isChangedOutside() || now == m_told) return;
    m_told = now;
    emit changedOutside();
}

QString FileGuard::whyNot(const QString& path) const {
    if (path == m_path)
        return m_other.isEmpty() ? QString()
                                 : tr("%1 is open in %2; save under another name.")
                                       .arg(QFileInfo(path).fileName(), m_other);
    QLockFile lock(lockPath(path));
    lock.setStaleLockTime(0);
    if (lock.tryLock(0) || lock.error() != QLockFile::LockFailedError) return {};
    return tr("%1 is open in %2; choose another name.")
        .arg(QFileInfo(path).fileName(), holder(lock));
}

} // namespace cutwater::editor
