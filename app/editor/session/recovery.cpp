// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/session/recovery.h"

#include "models/document/document.h"

#include <QCoreApplication>
#include <QDir>
#include <QFile>
#include <QJsonDocument>
#include <QJsonObject>
#include <QPointer>
#include <QSaveFile>
#include <QStandardPaths>
#include <QThreadPool>
#include <QUuid>

#include <algorithm>

namespace cutwater::editor {

namespace {

bool writeWhole(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    return file.open(QIODevice::WriteOnly) && file.write(bytes) == bytes.size() && file.commit();
}

std::unique_ptr<QLockFile> lockOf(const QString& base) {
    auto lock = std::make_unique<QLockFile>(base + QStringLiteral(".lock"));
    lock->setStaleLockTime(0); // only a process that is gone loses it
    return lock;
}

} // namespace

Recovery::Recovery(Session& session, const QString& folder, int interval, QObject* parent)
    : QObject(parent), m_session(session) {
    QDir().mkpath(folder);
    m_base = QDir(folder).filePath(QUuid::createUuid().toString(QUuid::WithoutBraces));
    m_lock = lockOf(m_base);
    m_lock->tryLock(0);
    m_timer.setInterval(interval);
    connect(&m_timer, &QTimer::timeout, this, &Recovery::copyIfNeeded);
    connect(&m_session, &Session::dirtyChanged, this, [this](bool dirty) {
        if (!dirty) removeCopy();
    });
    m_timer.start();
}

Recovery::~Recovery() {
    QThreadPool::globalInstance()->waitForDone();
    removeCopy();
}

void Recovery::removeCopy() {
    m_copied = 0;
    if (m_writing) return; // removed when it is done, see below
    QFile::remove(m_base + QStringLiteral(".cutwater"));
    QFile::remove(m_base + QStringLiteral(".json"));
}

void Recovery::copyIfNeeded() {
    if (m_writing || !m_session.isDirty() || m_copied == m_session.revision()) return;
    m_writing = true;
    const Snapshot snapshot = m_session.project();
    const quint64 revision = m_session.revision();
    QJsonObject facts;
    facts["path"] = m_session.path();
    facts["name"] = QString::fromStdString(snapshot->name);
    const QString base = m_base;
    QPointer<Recovery> self(this);
    QThreadPool::globalInstance()->start([self, snapshot, revision, facts, base] {
        const auto text = document::write(*snapshot);
        const bool good =
            text && writeWhole(base + QStringLiteral(".json"), QJsonDocument(facts).toJson()) &&
            writeWhole(base + QStringLiteral(".cutwater"), QByteArray::fromStdString(*text));
        QMetaObject::invokeMethod(QCoreApplication::instance(), [self, revision, good] {
            if (!self) return;
            self->m_writing = false;
            if (!self->m_session.isDirty()) return self->removeCopy(); // saved meanwhile
            if (!good && !self->m_told)
                emit self->failed(tr("No recovery copy can be written; save often, and look for "
                                     "room on the disk."));
            self->m_told = !good;
            if (!good) return;
            self->m_copied = revision;
            emit self->copied();
        });
    });
}

QString Recovery::standardFolder() {
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
           QStringLiteral("/recovery");
}

QList<Leftover> Recovery::leftovers(const QString& folder) {
    QList<Leftover> found;
    const QDir dir(folder);
    for (const QFileInfo& copy : dir.entryInfoList({QStringLiteral("*.cutwater")}, QDir::Files)) {
        const QString base = dir.filePath(copy.completeBaseName());
        // Whoever still holds the lock is alive.
        const auto lock = lockOf(base);
        if (!lock->tryLock(0)) continue;
        QFile file(base + QStringLiteral(".json"));
        QJsonObject facts;
        if (file.open(QIODevice::ReadOnly))
            facts = QJsonDocument::fromJson(file.readAll()).object();
        found.push_back({copy.filePath(), facts["path"].toString(), facts["name"].toString(),
                         copy.lastModified()});
    }
    std::sort(found.begin(), found.end(),
              [](const Leftover& a, const Leftover& b) { return a.when > b.when; });
    return found;
}

void Recovery::discard(const Leftover& leftover) {
    const QString base = leftover.copy.chopped(QStringLiteral(".cutwater").size());
    for (const char* suffix : {".cutwater", ".json", ".lock"})
        QFile::remove(base + QLatin1String(suffix));
}

} // namespace cutwater::editor
