// SPDX-License-Identifier: GPL-3.0-or-later
// The screens, light and dark: drawn without a complaint; and nothing that takes the keyboard is
// without a name. With CUTWATER_SHOTS=FOLDER the pictures are written there, to be looked at.
#include "tests/app/editor/window/room.h"

#include "app/editor/outline/outline_view.h"
#include "app/editor/report/report_page.h"
#include "app/editor/window/finder.h"
#include "app/editor/window/shortcuts_dialog.h"

#include <QDialog>
#include <QDir>
#include <QDockWidget>
#include <QLineEdit>
#include <QTimer>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Screens : public Room {
protected:
    void shoot(QWidget& widget, const QString& name) {
        QTest::qWait(50);
        const QPixmap picture = widget.grab();
        EXPECT_FALSE(picture.isNull());
        const QString shots = qEnvironmentVariable("CUTWATER_SHOTS");
        if (!shots.isEmpty()) picture.save(QDir(shots).filePath(name + ".png"));
    }
    QAction* action(const char* name) {
        const Command* found = window->commands().find(QLatin1String(name));
        return found ? found->action : nullptr;
    }
    void shootDialog(const char* command, const QString& name) {
        QTimer::singleShot(100, window.get(), [this, name] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            ASSERT_NE(dialog, nullptr);
            shoot(*dialog, name);
            dialog->reject();
        });
        trigger(command);
    }
    void all(const QString& look) {
        window->resize(1360, 860);
        shoot(*window, "welcome-" + look);
        openPath(QStringLiteral(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater"));
        QTest::qWait(qEnvironmentVariableIsSet("CUTWATER_SHOTS") ? 3000 : 50); // the answers
        window->selection().select({"BAT.no-output"});
        QTest::qWait(qEnvironmentVariableIsSet("CUTWATER_SHOTS") ? 1500 : 20);
        shoot(*window, "window-" + look);
        // Every page, with something on it where that takes no more than a click.
        if (QAction* analysis = action("analysis-probability")) analysis->trigger();
        if (auto* run = window->findChild<QPushButton*>("run")) run->click();
        for (int page = 0; page < window->pages().count(); ++page) {
            window->pages().setCurrentIndex(page);
            if (auto* preview =
                    window->pages().widget(page)->findChild<QPushButton*>("reportPreview"))
                preview->click();
            if (qEnvironmentVariableIsSet("CUTWATER_SHOTS")) {
                const auto made = [this] {
                    return !window->findChild<ReportPage*>()->run().isRunning();
                };
                EXPECT_TRUE(QTest::qWaitFor(made, 60000));
            }
            QTest::qWait(qEnvironmentVariableIsSet("CUTWATER_SHOTS") ? 6000 : 20); // to be computed
            const QString name = window->pages().widget(page)->objectName();
            shoot(*window, "page-" + (name.isEmpty() ? QString::number(page) : name) + "-" + look);
        }
        window->pages().setCurrentIndex(0);
        for (const char* facts : {"edit.top-facts", "file.facts"})
            shootDialog(facts, QString(facts).section('.', 1) + "-" + look);
        QApplication::setActiveWindow(window.get());
        EXPECT_TRUE(QTest::qWaitForWindowActive(window.get()));
        window->selection().select({"G-T1-1"});
        auto* outline = window->findChild<OutlineView*>();
        outline->setFocus();
        outline->addBelow();
        QTest::keyClicks(QApplication::focusWidget(), "fuel");
        shoot(*window, "typing-" + look);
        if (QWidget* list = QApplication::activePopupWidget()) shoot(*list, "reuse-" + look);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        QTest::keyClick(QApplication::focusWidget(), Qt::Key_Escape);
        trigger("edit.find");
        auto* finder = window->findChild<Finder*>();
        QTest::keyClicks(finder->findChild<QLineEdit*>(), "pump");
        shoot(*finder, "finder-" + look);
        finder->close();
        ShortcutsDialog keys(window->commands(), window.get());
        keys.show();
        shoot(keys, "keys-" + look);
        trigger("help.guide");
        shoot(*window->findChild<QWidget*>("help"), "guide-" + look);
    }
};

} // namespace

TEST_F(Screens, Light) {
    trigger("view.look-1");
    all("light");
}

TEST_F(Screens, Dark) {
    trigger("view.look-2");
    all("dark");
    trigger("view.look-1");
}

TEST_F(Screens, WhatTakesTheKeyboardHasAName) {
    open(smallTree());
    window->selection().select({"fan"});
    for (const char* name : {"outlineDock", "detailsDock", "problemsDock"}) {
        auto* dock = window->findChild<QDockWidget*>(name);
        dock->show();
        for (const QWidget* widget : dock->widget()->findChildren<QWidget*>()) {
            if (!widget->isVisible() || !(widget->focusPolicy() & Qt::TabFocus)) continue;
            if (widget->objectName().startsWith("qt_")) continue; // parts of fields
            if (widget->inherits("QHeaderView")) continue;
            EXPECT_FALSE(widget->accessibleName().isEmpty())
                << widget->metaObject()->className() << ' ' << widget->objectName().toStdString();
        }
    }
}
