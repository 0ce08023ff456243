// SPDX-License-Identifier: GPL-3.0-or-later
// The tests of widgets need an application around them.
#include <QApplication>
#include <QFontDatabase>
#include <QSettings>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <cstdio>

int main(int argc, char** argv) {
    testing::InitGoogleTest(&argc, argv);
    // Also where the build only asks for the names of the tests.
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    // Tests that run side by side must not clear each other's settings, nor anybody's own.
    const QTemporaryDir settings;
    QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, settings.path());
    QApplication application(argc, argv);
    if (QFontDatabase::families().isEmpty()) {
        std::fputs("There is no font: every letter would be a box. Install fonts-dejavu-core.\n",
                   stderr);
        return 1;
    }
    return RUN_ALL_TESTS();
}
