// SPDX-License-Identifier: GPL-3.0-or-later
// victim FILE RECOVERY-FOLDER INTERVAL: edits and saves until it is ended. Prints the number of
// every edit when it is made, and of every save when it is done.
#include "tests/app/editor/session/random_edits.h"

#include "app/editor/session/recovery.h"
#include "models/project/edits/facts.h"

#include <QCoreApplication>
#include <QTimer>

#include <cstdio>

using namespace cutwater;

int main(int argc, char** argv) {
    QCoreApplication application(argc, argv);
    const QStringList words = QCoreApplication::arguments();
    editor::Session session;
    editor::Recovery recovery(session, words.at(2), words.at(3).toInt());
    QObject::connect(&session, &editor::Session::opened, [&] {
        auto* timer = new QTimer(&application);
        auto* random = new std::mt19937(7);
        auto* count = new int(0);
        QObject::connect(timer, &QTimer::timeout, [&session, random, count, path = words.at(1)] {
            session.apply(test::randomEdit(*session.project(), *random));
            // The number of the edit is in the project, to be found again.
            project::Project facts = *session.project();
            facts.revision = std::to_string(++*count);
            session.apply([&](const project::Project& p) {
                return project::edits::setProjectFacts(p, facts);
            });
            std::printf("edit %d\n", *count);
            if (*count % 97 == 0 && session.saveTo(path).empty()) std::printf("saved %d\n", *count);
            std::fflush(stdout);
        });
        timer->start(3);
    });
    session.open(words.at(1));
    return QCoreApplication::exec();
}
