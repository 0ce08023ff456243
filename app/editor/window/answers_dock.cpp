// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/window/answers_dock.h"

#include "app/editor/answers/answer_panel.h"
#include "app/editor/session/session.h"

#include <QCoreApplication>
#include <QDockWidget>
#include <QMainWindow>

namespace cutwater::editor {

QDockWidget* addAnswers(QMainWindow& window, Session& session, Selection& selection) {
    auto* const dock =
        new QDockWidget(QCoreApplication::translate("AnswersDock", "Answers"), &window);
    dock->setObjectName("answersDock");
    auto* const panel = new AnswerPanel(&selection, dock);
    dock->setWidget(panel);
    window.addDockWidget(Qt::RightDockWidgetArea, dock);
    QObject::connect(&session, &Session::projectChanged, panel,
                     [panel, &session] { panel->setProject(session.project()); });
    panel->setProject(session.project());
    return dock;
}

} // namespace cutwater::editor
