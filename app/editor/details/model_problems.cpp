// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/details/model_problems.h"

#include "app/editor/session/session.h"

#include <QCoreApplication>
#include <QStringList>

namespace cutwater::editor {

// validate() on a project of nothing but this: its sentences, without the place.
QString problemsOf(const project::FailureModel& model,
                   const std::vector<project::Parameter>& parameters) {
    project::Project small;
    small.parameters = parameters;
    project::Event event;
    event.id = "event";
    event.model = model;
    small.events = {event};
    project::TopEvent top;
    top.id = "T";
    top.node.id = "event";
    small.tops = {top};
    QStringList sentences;
    for (const auto& problem : project::validate(small)) {
        if (problem.where.find("event") == std::string::npos) continue; // of a parameter
        QString text = sentence(problem);
        text.remove(QStringLiteral(" of event event")).remove(QStringLiteral("event event: "));
        text.replace(QStringLiteral("Event event"),
                     QCoreApplication::translate("ModelProblems", "This event"));
        sentences << text;
    }
    return sentences.join(QStringLiteral("\n"));
}

} // namespace cutwater::editor
