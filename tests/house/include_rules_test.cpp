// SPDX-License-Identifier: GPL-3.0-or-later
// The real tree keeps the rules; and each rule is seen to fail on a tree with one planted breach.
#include "tests/house/include_rules.h"
#include "tests/house/source_tree.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using house::breaches;
using testing::AllOf;
using testing::Contains;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

namespace {

const house::QtModules& qt() {
    static const house::QtModules modules(CUTWATER_QT_INCLUDE_FOLDER);
    return modules;
}

// A small tree without a breach, to plant one in.
class Planted : public testing::Test {
protected:
    Planted() {
        tree.plant("models/project/project.h", "#include <string>\n");
        tree.plant("models/logic/formula.h", "#include <vector>\n");
        tree.plant("models/reliability/event.h", "#include \"models/project/project.h\"\n"
                                                 "#include \"models/logic/formula.h\"\n");
        tree.plant("plugins/sdk/host.h",
                   "#include \"models/project/project.h\"\n#include <QtPlugin>\n");
        tree.plant("plugins/sums/sums.cpp", "#include \"plugins/sdk/host.h\"\n#include <QObject>\n"
                                            "#include \"sums.moc\"\n");
        tree.plant("app/cli/main.cpp",
                   "#include \"plugins/sdk/host.h\"\n#include <QCoreApplication>\n");
    }
    // Plants one file and expects a breach in its first line that says `sentence`.
    void expectBreach(const std::string& file, const std::string& text,
                      const std::string& sentence) {
        ASSERT_THAT(breaches(tree.path(), qt()), IsEmpty());
        tree.plant(file, text + "\n");
        EXPECT_THAT(breaches(tree.path(), qt()),
                    Contains(AllOf(HasSubstr(file + ":1: "), HasSubstr(sentence))));
    }
    house::TemporaryFolder tree;
};

} // namespace

TEST(IncludeRules, TheTreeKeepsThem) {
    EXPECT_THAT(breaches(CUTWATER_SOURCE_DIR, qt()), IsEmpty());
}

TEST(IncludeRules, TheTreeIsReallyRead) {
    const std::string file = "models/reliability/tree_formula.h";
    const auto includes =
        house::includesOf(file, house::readText(std::filesystem::path(CUTWATER_SOURCE_DIR) / file));
    EXPECT_FALSE(includes.empty());
}

TEST_F(Planted, ModelIncludesAForbiddenModel) {
    expectBreach("models/logic/a.cpp", "#include \"models/project/project.h\"",
                 "models/logic may not include models/project");
}

TEST_F(Planted, ModelIncludesAPlugin) {
    expectBreach("models/project/a.cpp", "#include \"plugins/sdk/host.h\"",
                 "models/project may not include plugins/sdk");
}

TEST_F(Planted, TheWorksheetReadsNoFiles) {
    tree.plant("models/document/document.h", "#include \"models/project/project.h\"\n");
    tree.plant("models/worksheet/rows.h", "#include \"models/reliability/event.h\"\n"
                                          "#include \"models/logic/formula.h\"\n");
    expectBreach("models/worksheet/a.cpp", "#include \"models/document/document.h\"",
                 "models/worksheet may not include models/document");
}

TEST_F(Planted, TheLibraryIsReadByTheDocumentAndNotTheOtherWay) {
    tree.plant("models/library/library.h", "#include \"models/project/project.h\"\n");
    tree.plant("models/document/document.h", "#include \"models/library/library.h\"\n");
    expectBreach("models/library/a.cpp", "#include \"models/logic/formula.h\"",
                 "models/library may not include models/logic");
}

TEST_F(Planted, UnknownModelMayIncludeNothing) {
    expectBreach("models/new-room/a.h", "#include \"models/project/project.h\"",
                 "models/new-room may not include models/project");
}

TEST_F(Planted, PluginIncludesAnother) {
    tree.plant("plugins/other/other.h", "\n");
    expectBreach("plugins/sums/a.cpp", "#include \"plugins/other/other.h\"",
                 "plugins/sums may not include plugins/other");
}

TEST_F(Planted, PluginIncludesAFace) {
    tree.plant("app/drawing/sheet.h", "\n");
    expectBreach("plugins/sums/a.cpp", "  #  include \"app/drawing/sheet.h\"",
                 "plugins/sums may not include app/drawing");
}

TEST_F(Planted, SdkIncludesAPlugin) {
    tree.plant("plugins/sums/sums.h", "\n");
    expectBreach("plugins/sdk/a.cpp", "#include \"plugins/sums/sums.h\"",
                 "plugins/sdk may not include plugins/sums");
}

TEST_F(Planted, ProgramIncludesATest) {
    tree.plant("tests/help.h", "\n");
    expectBreach("app/cli/a.cpp", "#include \"tests/help.h\"", "app/cli may not include tests");
}

TEST_F(Planted, BracketsDoNotHideOurHeader) {
    expectBreach("models/logic/a.cpp", "#include <models/project/project.h>",
                 "models/logic may not include models/project");
}

TEST_F(Planted, IncludeFromBeside) {
    tree.plant("models/logic/b.h", "\n");
    expectBreach("models/logic/a.cpp", "#include \"b.h\"", "start at the top of the tree");
}

TEST_F(Planted, IncludeOfAFileThatIsNotThere) {
    expectBreach("models/logic/a.cpp", "#include \"models/logic/gone.h\"", "there is no such file");
}

TEST_F(Planted, QtInAModel) {
    expectBreach("models/project/a.h", "#include <QString>", "models/project may not use QtCore");
}

TEST_F(Planted, QtInAModelByItsFile) {
    expectBreach("models/project/a.h", "#include <qstring.h>", "models/project may not use QtCore");
}

TEST_F(Planted, QtModuleThatIsNotInstalled) {
    expectBreach("models/project/a.h", "#include <QtNowhere/QThing>",
                 "models/project may not use QtNowhere");
}

TEST_F(Planted, GuiInTheSdk) {
    expectBreach("plugins/sdk/a.h", "#include <QImage>", "plugins/sdk may not use QtGui");
}

TEST_F(Planted, WidgetsInAPlugin) {
    expectBreach("plugins/sums/a.cpp", "#include <QWidget>", "plugins/sums may not use QtWidgets");
}

TEST_F(Planted, WidgetsInTheShellProgram) {
    expectBreach("app/cli/a.cpp", "#include <QtWidgets>", "app/cli may not use QtWidgets");
}

TEST_F(Planted, WidgetsInTheSession) {
    expectBreach("app/editor/session/a.cpp", "#include <QWidget>",
                 "app/editor/session may not use QtWidgets");
}

TEST_F(Planted, RoomOfTheEditorIncludesALaterOne) {
    tree.plant("app/editor/window/main_window.h", "\n");
    expectBreach("app/editor/outline/a.cpp", "#include \"app/editor/window/main_window.h\"",
                 "app/editor/outline may not include app/editor/window");
}

TEST_F(Planted, UnknownRoomOfTheEditor) {
    tree.plant("app/editor/session/session.h", "\n");
    expectBreach("app/editor/attic/a.cpp", "#include \"app/editor/session/session.h\"",
                 "app/editor/attic may not include app/editor/session");
}

TEST_F(Planted, TheShellProgramIncludesTheEditor) {
    tree.plant("app/editor/session/session.h", "\n");
    expectBreach("app/cli/a.cpp", "#include \"app/editor/session/session.h\"",
                 "app/cli may not include app/editor/session");
}

TEST_F(Planted, FilesInAModel) {
    expectBreach("models/logic/a.cpp", "#include <fstream>",
                 "models/logic reads and writes nothing");
}

TEST_F(Planted, XmlOutsideTheDocument) {
    expectBreach("models/project/a.cpp", "#include <pugixml.hpp>", "only models/document");
}

TEST_F(Planted, WhatIsAllowedPasses) {
    tree.plant("models/document/document.cpp", "#include \"models/project/project.h\"\n"
                                               "#include <fstream>\n#include <pugixml.hpp>\n");
    tree.plant("app/editor/session/session.h",
               "#include <QUndoStack>\n#include \"models/logic/formula.h\"\n");
    tree.plant("app/editor/window/window.h",
               "#include <QMainWindow>\n#include \"app/editor/session/session.h\"\n");
    tree.plant("app/editor/main.cpp", "#include \"app/editor/window/window.h\"\n");
    tree.plant("app/drawing/sheet.cpp", "#include <QPainter>\n");
    EXPECT_THAT(breaches(tree.path(), qt()), IsEmpty());
}

TEST_F(Planted, FilesInACircle) {
    tree.plant("models/logic/a.h", "#include \"models/logic/b.h\"\n");
    tree.plant("models/logic/b.h", "#include \"models/logic/a.h\"\n");
    EXPECT_THAT(
        breaches(tree.path(), qt()),
        ElementsAre("files include each other in a circle: models/logic/a.h -> models/logic/b.h -> "
                    "models/logic/a.h"));
}

TEST_F(Planted, FoldersInACircle) {
    tree.plant("app/drawing/a.h", "#include \"app/cli/b.h\"\n");
    tree.plant("app/drawing/c.h", "\n");
    tree.plant("app/cli/b.h", "\n");
    tree.plant("app/cli/d.h", "#include \"app/drawing/c.h\"\n");
    EXPECT_THAT(
        breaches(tree.path(), qt()),
        ElementsAre(HasSubstr("folders include each other in a circle: app/cli -> app/drawing")));
}

TEST(IncludeRules, CircleBehindASharedPartIsFound) {
    EXPECT_THAT(house::findCircle({{"a", {"b", "c"}}, {"b", {"d"}}, {"c", {"d"}}, {"d", {}}}),
                IsEmpty());
    EXPECT_THAT(house::findCircle(
                    {{"a", {"b", "c"}}, {"b", {"d"}}, {"c", {"d"}}, {"d", {"e"}}, {"e", {"d"}}}),
                ElementsAre("d", "e", "d"));
}
