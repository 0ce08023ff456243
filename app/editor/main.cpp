// SPDX-License-Identifier: GPL-3.0-or-later
// `cutwater-editor [FILE]`
#include "app/editor/window/main_window.h"

#include <QApplication>
#include <QCommandLineParser>

int main(int argc, char** argv) {
    QApplication application(argc, argv);
    QApplication::setApplicationName("cutwater-editor");
    QApplication::setApplicationDisplayName("Cutwater");
    QApplication::setOrganizationName("cutwater");
    QApplication::setApplicationVersion(CUTWATER_VERSION);

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
    cutwater::editor::MainWindow window(host);
    if (!parser.positionalArguments().isEmpty())
        window.openFile(parser.positionalArguments().constFirst());
    window.show();
    if (parser.positionalArguments().isEmpty()) window.begin();
    return QApplication::exec();
}
