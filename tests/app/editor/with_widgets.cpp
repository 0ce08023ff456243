// SPDX-License-Identifier: GPL-3.0-or-later
// Widgets need an application object that outlives every test of the program. Settings and
// recovery copies of tests go to folders of their own.
#include <QApplication>
#include <QFile>
#include <QFontDatabase>
#include <QSettings>
#include <QStandardPaths>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <memory>

namespace {

class Application : public ::testing::Environment {
public:
    void SetUp() override {
        static int count = 1;
        static char name[] = "test";
        static char* words[] = {name, nullptr};
        QStandardPaths::setTestModeEnabled(true);
        qputenv("XDG_CONFIG_HOME", QFile::encodeName(m_settings.path())); // before any settings
        // In test mode they would go to one folder for all: tests that run side by side would clear
        // each other's.
        QSettings::setPath(QSettings::NativeFormat, QSettings::UserScope, m_settings.path());
        m_application = std::make_unique<QApplication>(count, words);
        QApplication::setApplicationName("cutwater-editor");
        QApplication::setOrganizationName("cutwater-test");
        // Without a font every letter is a box, and nothing fails.
        ASSERT_FALSE(QFontDatabase::families().isEmpty()) << "install fonts-dejavu-core";
    }
    void TearDown() override { m_application.reset(); }

private:
    QTemporaryDir m_settings;
    std::unique_ptr<QApplication> m_application;
};

const ::testing::Environment* const theApplication =
    ::testing::AddGlobalTestEnvironment(new Application);

} // namespace
