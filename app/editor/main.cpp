// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater-editor [FILE]`
#include "app/editor/diagram/layout_worker.h"
#include "app/editor/window/language.h"
#include "app/editor/window/main_window.h"
#include "models/logic/keep_memory.h"

#include <QApplication>
#include <QCommandLineParser>
#include <QSettings>

#include <cstdlib>

int main(int argc, char** argv) {
    cutwater::logic::keepMemory();
    QApplication application(argc, argv);
    QApplication::setApplicationName("cutwater-editor");
    QApplication::setApplicationDisplayName("Cutwater");
    QApplication::setOrganizationName("cutwater");
    QApplication::setApplicationVersion(CUTWATER_VERSION);

    cutwater::editor::installLanguage(cutwater::editor::chosenLanguage(QSettings()));

    QCommandLineParser parser;
    parser.setApplicationDescription(
        QCoreApplication::translate("main", "Draws fault trees and shows what follows from them."));
    parser.addHelpOption();
    parser.addVersionOption();
    parser.addPositionalArgument("FILE",
                                 QCoreApplication::translate("main", "project file to open"));
    parser.process(application);

    cutwater::sdk::Host host({cutwater::sdk::standardPluginFolder(
        QCoreApplication::applicationDirPath().toStdString())});
    int code = 0;
    {
        cutwater::editor::MainWindow window(host);
        if (!parser.positionalArguments().isEmpty())
            window.openFile(parser.positionalArguments().constFirst());
        window.show();
        if (parser.positionalArguments().isEmpty()) window.begin();
        code = QApplication::exec();
    }
    // All that is to be kept is written. A layout cannot be interrupted, and nobody wants to wait
    // for it; the plug-in must not be taken from under it either.
    if (cutwater::editor::LayoutWorker::leftRunning() > 0) std::_Exit(code);
    return code;
}
