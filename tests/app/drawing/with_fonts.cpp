// SPDX-License-Identifier: GPL-3.0-or-later
// Fonts need an application object that outlives every test of the program.
#include <QGuiApplication>

#include <gtest/gtest.h>

#include <memory>

namespace {

class Application : public ::testing::Environment {
public:
    void SetUp() override {
        static int count = 1;
        static char name[] = "test";
        static char* words[] = {name, nullptr};
        m_application = std::make_unique<QGuiApplication>(count, words);
    }
    void TearDown() override { m_application.reset(); }

private:
    std::unique_ptr<QGuiApplication> m_application;
};

const ::testing::Environment* const theApplication =
    ::testing::AddGlobalTestEnvironment(new Application);

} // namespace
