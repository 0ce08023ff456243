// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/application.h"

#include <QGuiApplication>

#include <algorithm>
#include <string_view>

namespace cutwater::cli {
namespace {

// Qt's remarks about the desktop it does not find are no use to somebody who has none.
void sayNothing(QtMsgType, const QMessageLogContext&, const QString&) {}

} // namespace

std::unique_ptr<QCoreApplication> makeApplication(int& argc, char** argv) {
    const bool draws = std::any_of(argv, argv + argc, [](const char* word) {
        return std::string_view(word) == "draw" || std::string_view(word) == "draw-risk" ||
               std::string_view(word) == "report";
    });
    if (!draws) return std::make_unique<QCoreApplication>(argc, argv);
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(sayNothing);
    return std::make_unique<QGuiApplication>(argc, argv);
}

} // namespace cutwater::cli
