// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/file_desk.h"

#include "app/editor/session/recent_files.h"

#include <QDir>
#include <QEventLoop>
#include <QFileInfo>
#include <QLocale>
#include <QProgressDialog>

#include <algorithm>

namespace cutwater::editor {

FileDesk::FileDesk(Session& session, MessageBar& bar, QSettings& settings,
                   const QString& recoveryFolder, QWidget* window)
    : QObject(window), m_session(session), m_bar(bar), m_settings(settings),
      m_recoveryFolder(recoveryFolder), m_window(window), m_guard(session),
      m_recovery(session, recoveryFolder) {
    connect(&m_session, &Session::opened, this, &FileDesk::opened);
    connect(&m_session, &Session::openFailed, this, &FileDesk::openFailed);
    connect(&m_session, &Session::saved, this, &FileDesk::saved);
    connect(&m_session, &Session::saveFailed, this,
            [this](const QString&, const project::Problems& problems) {
                m_bar.tell(sentence(problems.front()), {{tr("Save as ..."), [this] { saveAs(); }}});
            });
    connect(&m_guard, &FileGuard::changedOutside, this, &FileDesk::tellChangedOutside);
    connect(&m_guard, &FileGuard::otherEditorChanged, this, [this] {
        if (!m_guard.otherEditor().isEmpty())
            m_bar.tell(tr("%1 is open in %2. You can look at it here, and save it under another "
                          "name.")
                           .arg(name(), m_guard.otherEditor()),
                       {{tr("Save as ..."), [this] { saveAs(); }}});
    });
    connect(&m_recovery, &Recovery::failed, this,
            [this](const QString& sentence) { m_bar.tell(sentence); });
}

QString FileDesk::name() const {
    if (!m_session.path().isEmpty()) return QFileInfo(m_session.path()).fileName();
    const QString name = QString::fromStdString(m_session.project()->name);
    return name.isEmpty() ? tr("New project") : name;
}

bool FileDesk::mayLeave() {
    if (m_session.isSaving()) waitForSaves();
    if (!m_session.isDirty()) return true;
    switch (questions.unsaved(m_window, name())) {
    case Leaving::save: return save() && waitForSaves();
    case Leaving::discard: return true;
    case Leaving::stay: break;
    }
    return false;
}

void FileDesk::startEmpty() {
    if (!mayLeave()) return;
    m_bar.putAway();
    m_session.start({});
}

void FileDesk::startFrom(const QString& path) {
    if (!mayLeave()) return;
    m_bar.putAway();
    m_session.openCopy(path);
}

void FileDesk::openDemo() {
    startFrom(QStringLiteral(":/demo/sandpiper-bay.cutwater"));
}

QList<QPair<QString, QString>> FileDesk::templates() {
    return {{tr("A burner that must start"), QStringLiteral(":/templates/burner-start.cutwater")},
            {tr("A pair of pumps, one on standby"),
             QStringLiteral(":/templates/standby-pair.cutwater")}};
}

void FileDesk::ask() {
    const QString folder = m_session.path().isEmpty()
                               ? m_settings.value("files/folder", QDir::homePath()).toString()
                               : QFileInfo(m_session.path()).absolutePath();
    const QString path = questions.whatToOpen(m_window, folder);
    if (!path.isEmpty()) open(path);
}

void FileDesk::open(const QString& path) {
    if (!mayLeave()) return;
    m_bar.putAway();
    m_session.open(path);
}

void FileDesk::opened(const QString& path, const project::Problems& problems) {
    if (path == m_session.path()) {
        noteRecent(m_settings, path);
        m_settings.setValue("files/folder", QFileInfo(path).absolutePath());
        emit recentChanged();
    }
    const auto errors = std::count_if(problems.begin(), problems.end(), [](const auto& each) {
        return each.severity == project::Severity::error;
    });
    if (errors > 0)
        m_bar.tell(tr("%1 has %n error(s): until they are mended, nothing can be computed.",
                      nullptr, static_cast<int>(errors))
                       .arg(name()),
                   {{tr("Show them"), [this] { emit showProblems(); }}});
}

void FileDesk::openFailed(const QString& path, const project::Problems& problems) {
    QString text = sentence(problems.front());
    if (problems.front().line > 0)
        text = tr("%1, line %2: %3")
                   .arg(QFileInfo(path).fileName())
                   .arg(problems.front().line)
                   .arg(text);
    if (problems.size() > 1)
        text += QStringLiteral(" ") +
                tr("And %n more.", nullptr, static_cast<int>(problems.size()) - 1);
    emit fileProblems(path, problems);
    m_bar.tell(text, {{tr("Show them"), [this] { emit showProblems(); }},
                      {tr("Try again"), [this, path] { open(path); }}});
}

bool FileDesk::save() {
    const QString path = m_session.path();
    if (path.isEmpty()) return saveAs();
    if (m_guard.isChangedOutside()) {
        m_bar.tell(tr("%1 was changed by somebody else since it was read here. Saving would write "
                      "over that.")
                       .arg(name()),
                   {{tr("Save over it"),
                     [this, path] {
                         m_guard.acceptOutside();
                         saveTo(path);
                     }},
                    {tr("Save as ..."), [this] { saveAs(); }}});
        return false;
    }
    return saveTo(path);
}

bool FileDesk::saveAs() {
    QString proposed = m_session.path();
    if (proposed.isEmpty())
        proposed = QDir(m_settings.value("files/folder", QDir::homePath()).toString())
                       .filePath(tr("plant") + QStringLiteral(".cutwater"));
    QString path = questions.whereToSave(m_window, proposed);
    if (path.isEmpty()) return false;
    if (QFileInfo(path).suffix().isEmpty()) path += QStringLiteral(".cutwater");
    return saveTo(QFileInfo(path).absoluteFilePath());
}

bool FileDesk::saveTo(const QString& path) {
    if (const QString why = m_guard.whyNot(path); !why.isEmpty()) {
        m_bar.tell(why, {{tr("Save as ..."), [this] { saveAs(); }}});
        return false;
    }
    m_bar.putAway();
    m_session.save(path);
    return true;
}

void FileDesk::saved(const QString& path) {
    noteRecent(m_settings, path);
    m_settings.setValue("files/folder", QFileInfo(path).absolutePath());
    emit recentChanged();
}

bool FileDesk::waitForSaves() {
    QEventLoop loop;
    QProgressDialog progress(tr("Writing %1 ...").arg(name()), {}, 0, 0, m_window);
    progress.setWindowModality(Qt::WindowModal);
    progress.setMinimumDuration(400);
    progress.setValue(0);
    connect(&m_session, &Session::savingChanged, &loop, [&loop](bool saving) {
        if (!saving) loop.quit();
    });
    if (m_session.isSaving()) loop.exec();
    return !m_session.isDirty();
}

void FileDesk::tellChangedOutside() {
    const QString path = m_session.path();
    QString text = tr("%1 was changed by somebody else.").arg(name());
    if (!QFileInfo::exists(path)) {
        m_bar.tell(tr("%1 is gone from the disk.").arg(name()),
                   {{tr("Save it again"), [this, path] {
                         m_guard.acceptOutside();
                         saveTo(path);
                     }}});
        return;
    }
    if (m_session.isDirty())
        text += QStringLiteral(" ") + tr("Reading it again drops what you have not saved.");
    m_bar.tell(text, {{tr("Read it again"), [this, path] { m_session.open(path); }},
                      {tr("Keep mine"), [this] { m_guard.acceptOutside(); }}});
}

void FileDesk::lookAgain() {
    if (m_guard.isChangedOutside() && !m_bar.isVisible()) tellChangedOutside();
}

bool FileDesk::offerLeftovers() {
    const QList<Leftover> leftovers = Recovery::leftovers(m_recoveryFolder);
    if (leftovers.isEmpty()) return false;
    const Leftover first = leftovers.front();
    const QString what = !first.path.isEmpty()   ? QFileInfo(first.path).fileName()
                         : !first.name.isEmpty() ? first.name
                                                 : tr("a new project");
    m_bar.tell(tr("The editor did not end in order. There is a copy of %1 of %2 with what was not "
                  "saved.")
                   .arg(what, QLocale().toString(first.when, QLocale::ShortFormat)),
               {{tr("Bring it back"),
                 [this, first] {
                     if (!mayLeave()) return;
                     // The leftover goes when its content is here, and not before.
                     connect(
                         &m_session, &Session::opened, this,
                         [this, first](const QString& path) {
                             if (path == first.copy) {
                                 Recovery::discard(first);
                                 offerLeftovers(); // the next one, if any
                             }
                         },
                         Qt::SingleShotConnection);
                     m_session.openRecovered(first.copy, first.path);
                 }},
                {tr("Throw it away"), [this, first] {
                     Recovery::discard(first);
                     offerLeftovers();
                 }}});
    return true;
}

QStringList FileDesk::recent() const {
    return recentFiles(m_settings);
}

} // namespace cutwater::editor
