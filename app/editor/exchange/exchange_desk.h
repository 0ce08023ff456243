// SPDX-License-Identifier: GPL-3.0-or-later
// ExchangeDesk: import and export through the exchange plug-ins of the host. Files are read and
// written in a worker; a failed import leaves the document as it was.
#pragma once

#include "app/editor/answers/worker.h"
#include "app/editor/exchange/import_dialog.h"
#include "app/editor/session/session.h"

#include <QObject>

#include <functional>
#include <vector>

class QAction;
class QProgressDialog;

namespace cutwater::editor {

class ExchangeDesk : public QObject {
    Q_OBJECT
public:
    // `host` lives longer. `mayLeave` asks about what is unsaved before another project comes.
    ExchangeDesk(sdk::Host& host, Session& session, std::function<bool()> mayLeave,
                 QWidget* window);

    // One action for each plug-in that can read, or write, named "file.import-ID".
    const std::vector<QAction*>& imports() const { return m_imports; }
    const std::vector<QAction*>& exports() const { return m_exports; }

    void importFrom(const std::string& id, const QString& path);
    void exportTo(const std::string& id, const QString& path);

    // Dialogs, so that tests can answer in their place.
    std::function<QString(QWidget*, const QString& title, const QString& filter)> whatToOpen;
    std::function<QString(QWidget*, const QString& title, const QString& filter,
                          const QString& proposed)>
        whereToSave;
    std::function<Into(QWidget*, const Incoming&, const project::Project& current)> decide;

signals:
    void said(const QString& sentence); // what came of it
    void failed(const QString& sentence);
    void finished(); // whatever came of it

private:
    struct Format {
        sdk::PluginFacts facts;
        sdk::Exchange* exchange = nullptr;
        QString filter;
        QString suffix;
    };
    const Format* find(const std::string& id) const;
    QProgressDialog* showProgress(const QString& words);
    void take(const Incoming& incoming);

    Session& m_session;
    std::function<bool()> m_mayLeave;
    QWidget* m_window;
    std::vector<Format> m_formats;
    std::vector<QAction*> m_imports, m_exports;
    quint64 m_run = 0;
    Worker m_worker; // last: its end waits
};

} // namespace cutwater::editor
