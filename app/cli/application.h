// SPDX-License-Identifier: GPL-3.0-or-later
// The Qt application object that a command needs.
#pragma once

#include <QCoreApplication>

#include <memory>

namespace cutwater::cli {

// Drawing needs fonts, and Qt has them only in a QGuiApplication, which takes longer to start: made
// where one of the words is a command that draws. It opens no window and needs no display.
std::unique_ptr<QCoreApplication> makeApplication(int& argc, char** argv);

} // namespace cutwater::cli
