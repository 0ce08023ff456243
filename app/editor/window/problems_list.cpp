// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/problems_list.h"

#include "models/project/index.h"

#include <QCoreApplication>
#include <QHeaderView>
#include <QPointer>
#include <QRegularExpression>
#include <QStyle>
#include <QThreadPool>
#include <QTimer>

#include <algorithm>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostShown = 500;

} // namespace

project::Id nodeOf(const project::Problem& problem, const project::Project& project) {
    const project::Index index(project);
    static const QRegularExpression blanks(QStringLiteral("[\\s,;\"]+"));
    for (const std::string& text : {problem.where, problem.what}) {
        const QStringList words = QString::fromStdString(text).split(blanks, Qt::SkipEmptyParts);
        for (const QString& word : words) {
            const std::string id = word.toStdString();
            if (index.event(id) || index.gate(id)) return id;
            if (const project::TopEvent* top = index.top(id)) return top->node.id;
            if (!index.mode(id)) continue;
            for (const project::Event& event : project.events)
                if (event.mode == id) return event.id;
        }
    }
    return {};
}

ProblemsList::ProblemsList(Session& session, Selection& selection, QWidget* parent)
    : QTreeWidget(parent), m_session(session), m_selection(selection), m_timer(new QTimer(this)) {
    setObjectName("problems");
    setAccessibleName(tr("Problems"));
    setHeaderLabels({tr("What"), tr("How to mend it"), tr("Line")});
    setRootIsDecorated(false);
    setUniformRowHeights(true);
    setAlternatingRowColors(true);
    header()->setStretchLastSection(false);
    header()->setSectionResizeMode(0, QHeaderView::Stretch);
    header()->setSectionResizeMode(1, QHeaderView::Stretch);
    m_timer->setSingleShot(true);
    m_timer->setInterval(200);
    connect(m_timer, &QTimer::timeout, this, &ProblemsList::judge);
    connect(&m_session, &Session::projectChanged, this, [this] {
        m_ofFile = false;
        m_timer->start();
    });
    connect(this, &QTreeWidget::itemActivated, this, &ProblemsList::go);
    connect(this, &QTreeWidget::itemClicked, this, &ProblemsList::go);
    m_timer->start();
}

void ProblemsList::judge() {
    if (m_judging) return m_timer->start();
    m_judging = true;
    const Snapshot project = m_session.project();
    const quint64 revision = m_session.revision();
    QPointer<ProblemsList> self(this);
    QThreadPool::globalInstance()->start([self, project, revision] {
        auto problems = std::make_shared<project::Problems>(project::validate(*project));
        QMetaObject::invokeMethod(QCoreApplication::instance(), [self, problems, revision] {
            if (!self) return;
            self->m_judging = false;
            if (revision != self->m_session.revision()) return self->m_timer->start();
            if (!self->m_ofFile) self->show(*problems);
        });
    });
}

void ProblemsList::showFile(const QString& path, const project::Problems& problems) {
    m_ofFile = true;
    show(problems);
    setToolTip(path);
}

void ProblemsList::show(const project::Problems& problems) {
    clear();
    setToolTip({});
    m_errors = 0;
    int warnings = 0;
    QList<QTreeWidgetItem*> items;
    for (const auto wanted : {project::Severity::error, project::Severity::warning})
        for (const project::Problem& problem : problems) {
            if (problem.severity != wanted) continue;
            const bool error = wanted == project::Severity::error;
            ++(error ? m_errors : warnings);
            if (static_cast<std::size_t>(items.size()) >= kMostShown) continue;
            auto* item =
                new QTreeWidgetItem({(error ? tr("Error: %1") : tr("Warning: %1"))
                                         .arg(QString::fromStdString(problem.what)),
                                     QString::fromStdString(problem.remedy),
                                     problem.line > 0 ? QString::number(problem.line) : QString()});
            item->setIcon(0, style()->standardIcon(error ? QStyle::SP_MessageBoxCritical
                                                         : QStyle::SP_MessageBoxWarning));
            item->setToolTip(0, sentence(problem));
            item->setToolTip(1, sentence(problem));
            item->setData(0, Qt::UserRole, QString::fromStdString(problem.where));
            item->setData(0, Qt::UserRole + 1, QString::fromStdString(problem.what));
            items << item;
        }
    addTopLevelItems(items);
    emit counted(m_errors, warnings);
}

void ProblemsList::go(const QTreeWidgetItem* item) {
    if (!item || m_ofFile) return;
    project::Problem problem;
    problem.where = item->data(0, Qt::UserRole).toString().toStdString();
    problem.what = item->data(0, Qt::UserRole + 1).toString().toStdString();
    const project::Id node = nodeOf(problem, *m_session.project());
    if (!node.empty()) m_selection.select({node});
}

} // namespace cutwater::editor
