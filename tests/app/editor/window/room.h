// SPDX-License-Identifier: GPL-3.0-or-later
// A whole window with the real plug-ins, its files in a folder of its own.
#pragma once

#include "app/editor/window/main_window.h"
#include "app/editor/window/message_bar.h"
#include "models/document/document.h"
#include "tests/models/project/edits/small_tree.h"

#include <QApplication>
#include <QPushButton>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

namespace cutwater::test {

class Room : public testing::Test {
protected:
    Room() {
        QSettings().clear();
        window = std::make_unique<editor::MainWindow>(host, nullptr, folder.filePath("copies"));
        window->desk().questions.unsaved = [this](QWidget*, const QString&) {
            ++asked;
            return leaving;
        };
        window->desk().questions.whereToSave = [this](QWidget*, const QString&) { return saveAs; };
        window->show();
        QApplication::setActiveWindow(window.get());
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
    }
    // Writes a project to a file and opens it.
    QString open(const Project& project, const char* name = "plant.cutwater") {
        const QString path = folder.filePath(name);
        EXPECT_TRUE(document::save(project, path.toStdString()).empty());
        openPath(path);
        return path;
    }
    void openPath(const QString& path) {
        QSignalSpy opened(&session(), &editor::Session::opened);
        window->openFile(path);
        EXPECT_TRUE(opened.wait(10000)) << path.toStdString();
    }
    editor::Session& session() { return window->session(); }
    const Project& project() { return *session().project(); }
    QString told() {
        auto* bar = window->findChild<editor::MessageBar*>();
        return bar->isVisible() ? bar->sentence() : QString();
    }
    bool press(const QString& offer) {
        for (QPushButton* button :
             window->findChild<editor::MessageBar*>()->findChildren<QPushButton*>())
            if (button->isVisible() && button->text() == offer) {
                QTest::mouseClick(button, Qt::LeftButton);
                return true;
            }
        return false;
    }
    void trigger(const char* command) {
        const editor::Command* found = window->commands().find(QLatin1String(command));
        ASSERT_NE(found, nullptr) << command;
        found->action->trigger();
    }

    QTemporaryDir folder;
    sdk::Host host{{std::string(CUTWATER_BINARY_DIR) + "/plugins-out"}};
    editor::Leaving leaving = editor::Leaving::stay;
    QString saveAs;
    int asked = 0;
    std::unique_ptr<editor::MainWindow> window;
};

} // namespace cutwater::test
