// SPDX-License-Identifier: GPL-3.0-or-later
// The window in German: no English is left where there is German, and no label is cut off.
#include "app/editor/window/language.h"
#include "app/editor/window/main_window.h"

#include "models/project/edits/facts.h"
#include "tests/app/editor/window/room.h"

#include <QAbstractButton>
#include <QComboBox>
#include <QDockWidget>
#include <QFile>
#include <QLabel>
#include <QMenu>
#include <QMenuBar>
#include <QTabBar>
#include <QToolButton>
#include <QTranslator>
#include <QXmlStreamReader>

#include <map>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

// The room's window is made after the language is there.
struct Speaks {
    Speaks() { installLanguage("de"); }
    ~Speaks() {
        for (QTranslator* translator : QCoreApplication::instance()->findChildren<QTranslator*>())
            delete translator;
    }
};

class GermanWindow : private Speaks, public Room {};

// English texts whose German differs, wherever they stand.
std::map<QString, QString> dictionary() {
    QFile file(CUTWATER_SOURCE_DIR "/share/translations/cutwater_de.ts");
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&file);
    std::map<QString, QString> words;
    QString source;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        if (xml.name() == QStringLiteral("source"))
            source = xml.readElementText();
        else if (xml.name() == QStringLiteral("translation")) {
            const QString german = xml.readElementText(QXmlStreamReader::IncludeChildElements);
            if (german != source && !source.contains('%')) words[source] = german;
        }
    }
    return words;
}

void expectGerman(const QString& text, const QString& where) {
    static const std::map<QString, QString> words = dictionary();
    const auto found = words.find(text);
    // The same letters may be a word in both ("Text"), or a name.
    EXPECT_TRUE(found == words.end()) << where.toStdString() << ": \"" << text.toStdString()
                                      << "\" should be \"" << found->second.toStdString() << '"';
}

} // namespace

TEST_F(GermanWindow, SpeaksGermanEverywhere) {
    openPath(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater");
    QTest::qWait(300);
    EXPECT_EQ(window->menuBar()->actions().value(0)->text(), "&Datei");
    for (const QAction* action : window->findChildren<QAction*>()) {
        expectGerman(action->text(), action->objectName());
        expectGerman(action->iconText(), action->objectName());
    }
    for (const QLabel* label : window->findChildren<QLabel*>())
        expectGerman(label->text(), label->objectName());
    for (const QAbstractButton* button : window->findChildren<QAbstractButton*>())
        expectGerman(button->text(), button->objectName());
    for (const QDockWidget* dock : window->findChildren<QDockWidget*>())
        expectGerman(dock->windowTitle(), dock->objectName());
    for (const QTabBar* bar : window->findChildren<QTabBar*>())
        for (int tab = 0; tab < bar->count(); ++tab)
            expectGerman(bar->tabText(tab), "tab");
    for (const QComboBox* box : window->findChildren<QComboBox*>())
        for (int i = 0; i < box->count(); ++i)
            expectGerman(box->itemText(i), box->objectName());
    session().apply([](const Project& p) { return edits::rename(p, p.events.front().id, "x"); });
    EXPECT_EQ(session().undoStack()->undoText(), "In x umbenennen");
}

TEST_F(GermanWindow, NoMainLabelIsCutOff) {
    openPath(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater");
    window->resize(1500, 900);
    QTest::qWait(500);
    for (int page = 0; page < window->pages().count(); ++page) {
        window->pages().setCurrentIndex(page);
        QTest::qWait(50);
        for (const QAbstractButton* button : window->findChildren<QAbstractButton*>())
            if (button->isVisible() && !button->text().isEmpty() &&
                qobject_cast<const QToolButton*>(button) == nullptr) {
                EXPECT_GE(button->width() + 2, button->minimumSizeHint().width())
                    << button->text().toStdString();
            }
        for (const QLabel* label : window->findChildren<QLabel*>())
            if (label->isVisible() && !label->wordWrap() && !label->text().isEmpty()) {
                EXPECT_GE(label->width() + 2, label->minimumSizeHint().width())
                    << label->text().toStdString();
            }
    }
    // The menus fit into their bar.
    int wide = 0;
    for (QAction* action : window->menuBar()->actions())
        wide += window->menuBar()->actionGeometry(action).width();
    EXPECT_LE(wide, window->menuBar()->width());
}

TEST(Languages, TheChoiceIsKeptAndNonsenseIsTheSystems) {
    QSettings settings;
    chooseLanguage(settings, "de");
    EXPECT_EQ(chosenLanguage(settings), "de");
    chooseLanguage(settings, "xx");
    EXPECT_EQ(chosenLanguage(settings), "");
    chooseLanguage(settings, {});
    EXPECT_FALSE(settings.contains("window/language"));
}
