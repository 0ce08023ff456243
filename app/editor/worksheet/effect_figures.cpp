// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/worksheet/effect_figures.h"

#include "models/worksheet/coverage.h"
#include "models/worksheet/top_figures.h"

#include <QCoreApplication>
#include <QPointer>
#include <QThreadPool>

namespace cutwater::editor {

namespace {

constexpr int kDelay = 500;                                 // ms after the last change
constexpr std::size_t kMostMemory = std::size_t{512} << 20; // of one tree

} // namespace

EffectFigures effectFiguresOf(const project::Project& project, std::stop_token stop) {
    EffectFigures figures;
    const project::Index index(project);
    const worksheet::Coverage coverage = worksheet::coverageOf(project, index);
    for (const worksheet::EndEffect& effect : coverage.effects) {
        if (stop.stop_requested()) return figures;
        if (effect.answeredBy.empty()) continue;
        const project::TopEvent& top = project.tops[effect.answeredBy.front()];
        worksheet::TopLimits limits;
        limits.memoryBytes = kMostMemory;
        limits.stop = stop;
        const worksheet::TopFigures found = worksheet::topFiguresOf(project, index, top, limits);
        figures[worksheet::plainEffect(effect.text)] = {top.id, found.probability, found.perYear,
                                                        found.how, found.lowerBound};
    }
    return figures;
}

EffectWorker::EffectWorker(QObject* parent) : QObject(parent) {
    m_delay.setSingleShot(true);
    m_delay.setInterval(kDelay);
    connect(&m_delay, &QTimer::timeout, this, &EffectWorker::begin);
}

EffectWorker::~EffectWorker() {
    if (m_stop) m_stop->request_stop();
}

void EffectWorker::work(Snapshot project) {
    if (project == m_project) return;
    m_project = std::move(project);
    if (m_stop) m_stop->request_stop();
    m_stop.reset();
    m_delay.start();
    if (!std::exchange(m_working, true)) emit workingChanged(true);
}

void EffectWorker::begin() {
    m_stop = std::make_shared<std::stop_source>();
    QPointer<EffectWorker> self(this);
    QThreadPool::globalInstance()->start([self, project = m_project, stop = m_stop] {
        auto figures =
            std::make_shared<EffectFigures>(effectFiguresOf(*project, stop->get_token()));
        QMetaObject::invokeMethod(QCoreApplication::instance(), [self, stop, figures] {
            if (!self || self->m_stop != stop) return; // a newer one is on its way
            self->m_working = false;
            emit self->done(*figures);
            emit self->workingChanged(false);
        });
    });
}

} // namespace cutwater::editor
