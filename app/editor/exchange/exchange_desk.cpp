// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/exchange/exchange_desk.h"

#include "app/editor/answers/own_words.h"

#include "models/document/document.h"
#include "plugins/sdk/guard.h"

#include <QAction>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QProgressDialog>
#include <QSaveFile>

namespace cutwater::editor {

namespace {

project::Problem unreadable(const QString& path, const QString& why) {
    project::Problem problem;
    problem.what = QStringLiteral("%1 cannot be read: %2").arg(path, why).toStdString();
    problem.remedy = "choose another file";
    return problem;
}

Incoming read(const QString& path, const sdk::Exchange& exchange, const sdk::PluginFacts& facts,
              const project::Project& current, const sdk::Job& job) {
    QFile file(path);
    Incoming incoming;
    incoming.path = path;
    if (!file.open(QIODevice::ReadOnly)) {
        incoming.problems = {unreadable(path, file.errorString())};
        return incoming;
    }
    if (file.size() > static_cast<qint64>(document::kMaxFileBytes)) {
        incoming.problems = {unreadable(path, QStringLiteral("it is larger than any project"))};
        return incoming;
    }
    return readIncoming(path, file.readAll().toStdString(), exchange, facts, current, job);
}

} // namespace

ExchangeDesk::ExchangeDesk(sdk::Host& host, Session& session, std::function<bool()> mayLeave,
                           QWidget* window)
    : QObject(window), m_session(session), m_mayLeave(std::move(mayLeave)), m_window(window) {
    whatToOpen = [](QWidget* parent, const QString& title, const QString& filter) {
        return QFileDialog::getOpenFileName(parent, title, {}, filter);
    };
    whereToSave = [](QWidget* parent, const QString& title, const QString& filter,
                     const QString& proposed) {
        return QFileDialog::getSaveFileName(parent, title, proposed, filter);
    };
    decide = [](QWidget* parent, const Incoming& incoming, const project::Project& current) {
        ImportDialog dialog(incoming, current, parent);
        dialog.exec();
        return dialog.choice();
    };
    for (const sdk::PluginFacts& facts : host.plugins()) {
        if (facts.kind != sdk::PluginKind::exchange) continue;
        sdk::Exchange* const exchange = host.exchange(facts.id);
        if (!exchange) continue;
        Format format{facts, exchange, {}, {}};
        QStringList globs;
        for (const std::string& suffix : exchange->suffixes())
            globs << QStringLiteral("*.") + QString::fromStdString(suffix);
        if (!globs.isEmpty()) format.suffix = globs.constFirst().mid(2);
        const QString title = inOwnWords(facts.title);
        format.filter = QStringLiteral("%1 (%2)").arg(title, globs.join(' '));
        const QString id = QString::fromStdString(facts.id);
        if (exchange->canRead()) {
            auto* const action = new QAction(tr("%1 ...").arg(title), this);
            action->setObjectName(QStringLiteral("file.import-") + id);
            action->setStatusTip(inOwnWords(facts.summary));
            connect(action, &QAction::triggered, this, [this, at = facts.id] {
                const QString path = whatToOpen(m_window, tr("Import"), find(at)->filter);
                if (!path.isEmpty()) importFrom(at, path);
            });
            m_imports.push_back(action);
        }
        if (exchange->canWrite()) {
            auto* const action = new QAction(tr("%1 ...").arg(title), this);
            action->setObjectName(QStringLiteral("file.export-") + id);
            action->setStatusTip(inOwnWords(facts.summary));
            connect(action, &QAction::triggered, this, [this, at = facts.id] {
                const Format& chosen = *find(at);
                const QString base = m_session.path().isEmpty()
                                         ? tr("plant")
                                         : QFileInfo(m_session.path()).completeBaseName();
                const QString path = whereToSave(m_window, tr("Export"), chosen.filter,
                                                 base + QLatin1Char('.') + chosen.suffix);
                if (!path.isEmpty()) exportTo(at, path);
            });
            m_exports.push_back(action);
        }
        m_formats.push_back(std::move(format));
    }
}

const ExchangeDesk::Format* ExchangeDesk::find(const std::string& id) const {
    for (const Format& format : m_formats)
        if (format.facts.id == id) return &format;
    return nullptr;
}

QProgressDialog* ExchangeDesk::showProgress(const QString& words) {
    auto* const progress = new QProgressDialog(words, tr("Cancel"), 0, 0, m_window);
    progress->setAttribute(Qt::WA_DeleteOnClose);
    progress->setMinimumDuration(700);
    progress->setValue(0);
    connect(progress, &QProgressDialog::canceled, this, [this] {
        ++m_run;
        m_worker.stop();
        emit said(tr("Cancelled; nothing was changed."));
        emit finished();
    });
    connect(this, &ExchangeDesk::finished, progress, [progress] {
        progress->disconnect();
        progress->close();
        progress->deleteLater();
    });
    return progress;
}

void ExchangeDesk::importFrom(const std::string& id, const QString& path) {
    const Format* const format = find(id);
    if (!format) return;
    const quint64 run = ++m_run;
    showProgress(tr("Reading %1 ...").arg(QFileInfo(path).fileName()));
    m_worker.start([this, run, path, exchange = format->exchange, facts = format->facts,
                    current = m_session.project()](const std::stop_token& stop) {
        sdk::Job job;
        job.stop = stop;
        auto incoming =
            std::make_shared<const Incoming>(read(path, *exchange, facts, *current, job));
        QMetaObject::invokeMethod(
            this,
            [this, run, incoming] {
                if (run == m_run) take(*incoming);
            },
            Qt::QueuedConnection);
    });
}

void ExchangeDesk::take(const Incoming& incoming) {
    emit finished();
    if (incoming.cancelled) return;
    const QString name = QFileInfo(incoming.path).fileName();
    const Into into = decide(m_window, incoming, *m_session.project());
    if (!incoming.project) {
        emit failed(incoming.problems.empty() ? tr("%1 cannot be imported.").arg(name)
                                              : sentence(incoming.problems.front()));
        return;
    }
    if (into == Into::newProject && m_mayLeave()) {
        m_session.start(*incoming.project, {}, true);
        emit said(tr("%1 was imported as a new project.").arg(name));
    } else if (into == Into::thisProject) {
        // Made anew: the project may have changed while the question was there.
        const std::string about = name.toStdString();
        if (m_session.apply([&](const project::Project& current) {
                return mergeInto(current, *incoming.project, about);
            }))
            emit said(tr("%1 was imported.").arg(name));
    }
}

void ExchangeDesk::exportTo(const std::string& id, const QString& path) {
    const Format* const format = find(id);
    if (!format) return;
    const quint64 run = ++m_run;
    showProgress(tr("Writing %1 ...").arg(QFileInfo(path).fileName()));
    m_worker.start([this, run, path, exchange = format->exchange, facts = format->facts,
                    project = m_session.project()](const std::stop_token& stop) {
        sdk::Job job;
        job.stop = stop;
        const auto answer =
            sdk::guarded<std::string>(facts, [&] { return exchange->write(*project, {}, job); });
        QString mistake;
        if (!answer.content) {
            mistake = sentence(answer.problems.front());
        } else if (!stop.stop_requested()) {
            QSaveFile file(path);
            if (!file.open(QIODevice::WriteOnly) ||
                file.write(answer.content->data(), static_cast<qint64>(answer.content->size())) !=
                    static_cast<qint64>(answer.content->size()) ||
                !file.commit())
                mistake = tr("%1 cannot be written (%2); choose another place.")
                              .arg(path, file.errorString());
        }
        QMetaObject::invokeMethod(
            this,
            [this, run, mistake, path] {
                if (run != m_run) return;
                emit finished();
                if (mistake.isEmpty())
                    emit said(tr("Exported to %1.").arg(path));
                else
                    emit failed(mistake);
            },
            Qt::QueuedConnection);
    });
}

} // namespace cutwater::editor
