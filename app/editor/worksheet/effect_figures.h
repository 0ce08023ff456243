// SPDX-License-Identifier: GPL-3.0-or-later
// EffectWorker: works out, in a thread of its own, how probable the end effects are whose top
// events the project names.
#pragma once

#include "app/editor/session/session.h"
#include "app/editor/worksheet/sheet_data.h"

#include <QObject>
#include <QTimer>

#include <memory>
#include <stop_token>

namespace cutwater::editor {

// Top events that answer for an end effect of the worksheet; several for one: the first.
EffectFigures effectFiguresOf(const project::Project& project, std::stop_token stop);

class EffectWorker : public QObject {
    Q_OBJECT
public:
    explicit EffectWorker(QObject* parent = nullptr);
    ~EffectWorker() override;

    // Begins shortly after the last call, and drops what is under way.
    void work(Snapshot project);
    bool isWorking() const { return m_working; }

signals:
    void workingChanged(bool working);
    void done(const cutwater::editor::EffectFigures& figures);

private:
    void begin();

    QTimer m_delay;
    Snapshot m_project;
    std::shared_ptr<std::stop_source> m_stop;
    bool m_working = false;
};

} // namespace cutwater::editor
