// SPDX-License-Identifier: GPL-3.0-or-later
// FileDesk: everything between the project and the disk that a person has to do with. What can wait
// is told in the message bar; only what would lose work is asked.
#pragma once

#include "app/editor/session/file_guard.h"
#include "app/editor/session/recovery.h"
#include "app/editor/session/session.h"
#include "app/editor/window/message_bar.h"

#include <QObject>
#include <QSettings>

#include <functional>

namespace cutwater::editor {

enum class Leaving { save, discard, stay };

// The dialogs, so that tests can answer in their place.
struct Questions {
    std::function<QString(QWidget*, const QString& folder)> whatToOpen; // empty: nothing
    std::function<QString(QWidget*, const QString& proposed)> whereToSave;
    std::function<Leaving(QWidget*, const QString& name)> unsaved;
};
Questions standardQuestions();

class FileDesk : public QObject {
    Q_OBJECT
public:
    FileDesk(Session& session, MessageBar& bar, QSettings& settings, const QString& recoveryFolder,
             QWidget* window);

    Questions questions = standardQuestions();

    void startEmpty();
    void startFrom(const QString& path); // a template or the demo: a copy without a file
    void openDemo();
    void ask(); // which file to open
    void open(const QString& path);
    // Both write in a worker; false where nothing is written: the bar says why, or it was given up.
    bool save();
    bool saveAs();
    // Asks where there is something unsaved, and waits for what is being written; false: stay.
    bool mayLeave();
    // Offers what a crash left behind; false: there is nothing.
    bool offerLeftovers();
    // The window came to the front again: look whether the file changed meanwhile.
    void lookAgain();

    QStringList recent() const;
    // Title and path of each template.
    static QList<QPair<QString, QString>> templates();
    QString name() const; // of the document, for people

signals:
    void recentChanged();
    void fileProblems(const QString& path, const cutwater::project::Problems& problems);
    void showProblems(); // the list is asked for

private:
    bool saveTo(const QString& path);
    void saved(const QString& path);
    bool waitForSaves(); // false: something is unsaved still
    void tellChangedOutside();
    void opened(const QString& path, const project::Problems& problems);
    void openFailed(const QString& path, const project::Problems& problems);
    bool isFresh() const;

    Session& m_session;
    MessageBar& m_bar;
    QSettings& m_settings;
    QString m_recoveryFolder;
    QWidget* m_window;
    FileGuard m_guard;
    Recovery m_recovery;
};

} // namespace cutwater::editor
