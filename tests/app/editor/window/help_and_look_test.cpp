// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/editor/window/room.h"

#include "app/editor/diagram/look.h"
#include "app/editor/diagram/panel.h"
#include "app/editor/outline/outline_view.h"
#include "app/editor/window/clear_style.h"
#include "app/editor/window/help_window.h"
#include "app/editor/window/problems_dock.h"
#include "app/editor/window/problems_list.h"

#include <QAction>
#include <QCheckBox>
#include <QDockWidget>
#include <QFile>
#include <QTextBlock>
#include <QTextBrowser>
#include <QToolButton>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

class Help : public Room {};

QString guide() {
    QFile file(QStringLiteral(CUTWATER_SOURCE_DIR "/docs/guide/editor.md"));
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    return QString::fromUtf8(file.readAll());
}

} // namespace

TEST_F(Help, F1OpensTheGuideAtWhatIsLookedAt) {
    open(smallTree());
    window->findChild<OutlineView*>()->setFocus();
    QTest::keyClick(QApplication::focusWidget(), Qt::Key_F1);
    auto* help = window->findChild<HelpWindow*>();
    ASSERT_TRUE(help && help->isVisible());
    EXPECT_EQ(help->findChild<QTextBrowser*>()->textCursor().block().text(), "The outline");
}

TEST_F(Help, EveryHeadingThatIsAskedForIsInTheGuide) {
    for (const char* name : {"outline", "details", "answersDock", "problems", "finder", "shortcuts",
                             "welcome", "diagram", "analysesPage"}) {
        QWidget widget;
        widget.setObjectName(name);
        QWidget inner(&widget);
        const QString heading = helpFor(&inner).second;
        EXPECT_FALSE(heading.isEmpty()) << name;
        EXPECT_TRUE(guide().contains("\n## " + heading + "\n")) << heading.toStdString();
    }
    EXPECT_TRUE(helpFor(nullptr).second.isEmpty());
}

TEST_F(Help, TheGuideNamesTheKeysThatTheOutlineHas) {
    const std::pair<const char*, const char*> all[] = {{"outline.insert-gate", "Ctrl+G"},
                                                       {"outline.dissolve-gate", "Ctrl+Shift+G"},
                                                       {"outline.separate", "Ctrl+Shift+D"},
                                                       {"edit.find", "Ctrl+K"},
                                                       {"outline.rename", "F2"},
                                                       {"outline.move-up", "Alt+Up"},
                                                       {"outline.unfold-all", "*"},
                                                       {"outline.switch", "S"}};
    for (const auto& [name, keys] : all) {
        EXPECT_EQ(window->commands().find(QLatin1String(name))->action->shortcut().toString(),
                  keys);
        EXPECT_TRUE(guide().contains(keys)) << keys;
    }
}

TEST(Themes, TextsHaveEnoughContrastInLightAndDark) {
    // WCAG 2.1, success criterion 1.4.3: 4.5 : 1.
    for (const auto look : {Theme::light, Theme::dark}) {
        const QPalette p = paletteOf(look, QPalette());
        for (const auto group : {QPalette::Active, QPalette::Inactive}) {
            const auto c = [&](QPalette::ColorRole role) { return p.color(group, role); };
            EXPECT_GE(contrast(c(QPalette::WindowText), c(QPalette::Window)), 4.5);
            EXPECT_GE(contrast(c(QPalette::Text), c(QPalette::Base)), 4.5);
            EXPECT_GE(contrast(c(QPalette::Text), c(QPalette::AlternateBase)), 4.5);
            EXPECT_GE(contrast(c(QPalette::PlaceholderText), c(QPalette::Base)), 4.5);
            EXPECT_GE(contrast(c(QPalette::ButtonText), c(QPalette::Button)), 4.5);
            EXPECT_GE(contrast(c(QPalette::HighlightedText), c(QPalette::Highlight)), 4.5);
            EXPECT_GE(contrast(c(QPalette::Link), c(QPalette::Base)), 4.5);
            EXPECT_GE(contrast(c(QPalette::ToolTipText), c(QPalette::ToolTipBase)), 4.5);
        }
    }
    EXPECT_NEAR(contrast(Qt::black, Qt::white), 21, 1e-9);
    // #767676 on white is the usual example of just enough: 4.54.
    EXPECT_NEAR(contrast(QColor(0x76, 0x76, 0x76), Qt::white), 4.54, 0.005);
}

TEST_F(Help, TheIconsAreThere) {
    for (const char* name : {"file.open", "file.save", "edit.undo", "edit.redo", "edit.find",
                             "outline.add-beside", "outline.add-below", "outline.insert-gate"}) {
        const QIcon icon = window->commands().find(QLatin1String(name))->action->icon();
        const QImage image = icon.pixmap(24, 24).toImage();
        ASSERT_FALSE(image.isNull()) << name << ": is the SVG plug-in of Qt there?";
        int drawn = 0;
        for (int y = 0; y < image.height(); ++y)
            for (int x = 0; x < image.width(); ++x)
                drawn += qAlpha(image.pixel(x, y)) > 100;
        EXPECT_GT(drawn, 20) << name;
    }
}

TEST_F(Help, TheStateOfTheWindowIsKept) {
    window->resize(1333, 777);
    window->findChild<QDockWidget*>("detailsDock")->hide();
    QTest::qWait(20);
    const QSize size = window->size();
    EXPECT_TRUE(window->close());
    MainWindow later(host, nullptr, folder.filePath("copies4"));
    EXPECT_EQ(later.size().height(), size.height());
    EXPECT_TRUE(later.findChild<QDockWidget*>("detailsDock")->isHidden());
    EXPECT_FALSE(later.findChild<QDockWidget*>("outlineDock")->isHidden());
}

TEST_F(Help, F6WalksThroughTheViews) {
    open(smallTree());
    window->selection().select({"fan"});
    window->findChild<OutlineView*>()->setFocus();
    QStringList seen;
    for (int i = 0; i < 6; ++i) {
        QTest::keyClick(window.get(), Qt::Key_F6);
        const QWidget* at = QApplication::focusWidget();
        while (at && !at->objectName().endsWith("Dock") && at->objectName() != "pages")
            at = at->parentWidget();
        if (at) seen << at->objectName();
    }
    for (const char* dock : {"outlineDock", "detailsDock", "answersDock"})
        EXPECT_TRUE(seen.contains(dock)) << dock << " of " << seen.join(' ').toStdString();
}

TEST_F(Help, ProblemsTakeRoomOnlyWhereThereAreSomeAndOnlyWhereTheyAreWanted) {
    auto* dock = window->findChild<ProblemsDock*>();
    auto* list = window->findChild<ProblemsList*>();
    ASSERT_TRUE(dock && list);
    Project good = smallTree(), bad = smallTree();
    bad.gates[1].inputs.clear();
    const auto look = [&](const Project& project) {
        QSignalSpy counted(list, &ProblemsList::counted);
        session().start(project);
        ASSERT_TRUE(counted.wait(5000));
    };
    look(bad);
    EXPECT_GT(list->topLevelItemCount(), 0);
    EXPECT_FALSE(dock->isVisible()) << "nobody asked for it";
    EXPECT_FALSE(dock->counter()->text().isEmpty());
    QTest::mouseClick(dock->counter(), Qt::LeftButton);
    EXPECT_TRUE(dock->isVisible());
    Project none; // nothing, so nothing is wrong with it
    look(none);
    EXPECT_FALSE(dock->isVisible()) << "empty: it takes no room";
    look(bad);
    EXPECT_TRUE(dock->isVisible()) << "it was wanted";
    dock->toggleViewAction()->trigger(); // closed by hand: it stays closed
    look(none);
    look(bad);
    EXPECT_FALSE(dock->isVisible());
    look(none);
    dock->toggleViewAction()->trigger();
    EXPECT_TRUE(dock->isVisible()) << "asked for although it is empty";
}

TEST_F(Help, TheHabitsOfTheDiagramAreKept) {
    auto* diagram = window->findChild<DiagramPanel*>();
    diagram->setCaptions(CaptionKind::gates);
    diagram->setAnimated(false);
    window->close();
    MainWindow next(host, nullptr, folder.filePath("other"));
    EXPECT_EQ(next.findChild<DiagramPanel*>()->habits(), diagram->habits());
    EXPECT_EQ(next.findChild<DiagramPanel*>()->captions(), CaptionKind::gates);
}

TEST_F(Help, ThePaletteKnowsEveryActionOfTheDiagram) {
    for (const QAction* action : window->findChild<DiagramPanel*>()->allActions())
        EXPECT_NE(window->commands().find(action->objectName()), nullptr)
            << action->text().toStdString();
}

TEST(Themes, CheckBoxesAreSeenOnDarkGround) {
    QCheckBox box;
    auto* const style = new ClearStyle;
    style->setParent(&box);
    box.setStyle(style);
    box.setPalette(paletteOf(Theme::dark, QPalette()));
    box.resize(40, 30);
    const QImage picture = box.grab().toImage();
    double best = 1;
    for (int x = 0; x < picture.width(); ++x)
        for (int y = 0; y < picture.height(); ++y)
            best = std::max(
                best, contrast(picture.pixelColor(x, y), box.palette().color(QPalette::Window)));
    EXPECT_GE(best, 4.5); // WCAG asks for 3 : 1 at the parts of controls
}
