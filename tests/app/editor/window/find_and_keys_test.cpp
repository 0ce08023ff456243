// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/window/room.h"

#include "app/editor/window/finder.h"
#include "app/editor/window/shortcuts_dialog.h"

#include <QKeySequenceEdit>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTreeWidget>

#include <map>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Finding : public Room {
protected:
    void find(const QString& text) {
        trigger("edit.find");
        finder = window->findChild<Finder*>();
        ASSERT_TRUE(finder->isVisible());
        QTest::keyClicks(finder->findChild<QLineEdit*>(), text);
    }
    void enter() { QTest::keyClick(finder->findChild<QLineEdit*>(), Qt::Key_Return); }
    QListWidget& list() { return *finder->findChild<QListWidget*>(); }
    Finder* finder = nullptr;
};

class Keys : public Room {};

} // namespace

TEST_F(Finding, OpensByItsKeys) {
    open(smallTree());
    QTest::keyClick(window.get(), Qt::Key_K, Qt::ControlModifier);
    EXPECT_TRUE(window->findChild<Finder*>()->isVisible());
}

TEST_F(Finding, AnEventByAnyPartOfItsWords) {
    open(smallTree());
    find("b pump");
    EXPECT_TRUE(list().item(0)->text().startsWith("pump B stops"))
        << list().item(0)->text().toStdString();
    enter();
    EXPECT_FALSE(finder->isVisible());
    EXPECT_EQ(window->selection().current().node, "pump-b");
}

TEST_F(Finding, AFailureModeByTheTagOfItsPart) {
    open(smallTree());
    find("FAN fan");
    enter();
    EXPECT_EQ(window->selection().current().node, "fan");
}

TEST_F(Finding, ACommandIsDone) {
    open(smallTree());
    window->selection().select({"fuel"});
    find("gate exclusive");
    enter();
    EXPECT_EQ(gateOf(project(), "fuel")->kind, GateKind::exactlyOne);
}

TEST_F(Finding, TheArrowsWalkAndNothingIsSaid) {
    open(smallTree());
    find("stops");
    QTest::keyClick(finder->findChild<QLineEdit*>(), Qt::Key_Down);
    EXPECT_EQ(list().currentRow(), 1);
    finder->findChild<QLineEdit*>()->setText("no such thing anywhere");
    EXPECT_EQ(list().item(0)->text(), "Nothing is called so.");
    enter();
    EXPECT_TRUE(finder->isVisible());
}

TEST_F(Keys, EveryCommandHasATextANameOfItsOwnAndKeysOfItsOwn) {
    std::map<QString, int> names;
    EXPECT_GT(window->commands().all().size(), 50);
    for (const Command& command : window->commands().all()) {
        EXPECT_EQ(++names[command.action->objectName()], 1)
            << command.action->objectName().toStdString();
        EXPECT_FALSE(command.action->text().isEmpty());
        const Command* other = window->commands().clash(command.action->shortcut(), command.action);
        EXPECT_EQ(other, nullptr) << command.action->shortcut().toString().toStdString()
                                  << " is used twice: "
                                  << command.action->objectName().toStdString() << " and "
                                  << (other ? other->action->objectName().toStdString() : "");
    }
}

TEST_F(Keys, AreChangedInTheListAndKept) {
    ShortcutsDialog dialog(window->commands(), window.get());
    dialog.show();
    dialog.findChild<QLineEdit*>()->setText("Gate: or");
    auto* list = dialog.findChild<QTreeWidget*>();
    ASSERT_GE(list->topLevelItemCount(), 1);
    list->setCurrentItem(list->topLevelItem(0));
    auto* keys = dialog.findChild<QKeySequenceEdit*>();
    const auto press = [&](const QKeySequence& sequence) {
        keys->setKeySequence(sequence);
        emit keys->editingFinished();
    };
    const Command* command = window->commands().find("outline.kind-or");
    press(QKeySequence("Ctrl+S")); // those of Save
    EXPECT_EQ(command->action->shortcut(), QKeySequence("O"));
    const auto labels = dialog.findChildren<QLabel*>();
    EXPECT_TRUE(std::any_of(labels.begin(), labels.end(), [](const QLabel* label) {
        return label->text().contains("are the keys of \"Save\"");
    }));
    press(QKeySequence("Ctrl+Alt+O"));
    EXPECT_EQ(command->action->shortcut(), QKeySequence("Ctrl+Alt+O"));
    MainWindow later(host, nullptr, folder.filePath("copies3"));
    EXPECT_EQ(later.commands().find("outline.kind-or")->action->shortcut(),
              QKeySequence("Ctrl+Alt+O"));
    later.commands().resetKeys();
    EXPECT_EQ(later.commands().find("outline.kind-or")->action->shortcut(), QKeySequence("O"));
    EXPECT_TRUE(QSettings().allKeys().filter("keys/").isEmpty());
}
