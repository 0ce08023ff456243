// SPDX-License-Identifier: GPL-3.0-or-later
// Every text of the editor has a finished German translation that says the same with the same
// placeholders. lupdate finds the texts, as it does for the translators.
#include "models/document/document.h"
#include "tests/app/editor/translation/plugin_words.h"

#include <QDirIterator>
#include <QFile>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>

#include <gtest/gtest.h>

#include <map>
#include <set>

using namespace cutwater;

namespace {

struct Message {
    QStringList translations;
    bool finished = false, numerus = false;
};
using Catalogue = std::map<std::pair<QString, QString>, Message>; // context and source

Catalogue read(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    QXmlStreamReader xml(&file);
    Catalogue catalogue;
    QString context, source;
    Message message;
    while (!xml.atEnd()) {
        const auto token = xml.readNext();
        if (token == QXmlStreamReader::EndElement && xml.name() == QStringLiteral("message"))
            catalogue[{context, source}] = message;
        if (token != QXmlStreamReader::StartElement) continue;
        const QString name = xml.name().toString();
        if (name == "name") {
            context = xml.readElementText();
        } else if (name == "message") {
            message = {};
            message.numerus = xml.attributes().value("numerus") == QStringLiteral("yes");
        } else if (name == "source") {
            source = xml.readElementText();
        } else if (name == "translation") {
            message.finished = !xml.attributes().hasAttribute("type");
            if (!message.numerus) message.translations << xml.readElementText();
        } else if (name == "numerusform") {
            message.translations << xml.readElementText();
        }
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return catalogue;
}

Catalogue german() {
    return read(CUTWATER_SOURCE_DIR "/share/translations/cutwater_de.ts");
}

QString sourceText(const QString& path) {
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << path.toStdString();
    return QString::fromUtf8(file.readAll());
}

std::multiset<QString> placeholders(const QString& text) {
    static const QRegularExpression pattern(QStringLiteral("%(?:L?\\d+|n)"));
    std::multiset<QString> found;
    for (auto at = pattern.globalMatch(text); at.hasNext();)
        found.insert(at.next().captured());
    return found;
}

} // namespace

TEST(German, EveryTextOfTheEditorIsTranslated) {
    QTemporaryDir folder;
    const QString fresh = folder.filePath("fresh.ts");
    QProcess lupdate;
    lupdate.setWorkingDirectory(CUTWATER_SOURCE_DIR);
    lupdate.start(CUTWATER_LUPDATE, {"-silent", "-locations", "none", "-I", ".", "app/editor",
                                     "share/translations", "-ts", fresh});
    ASSERT_TRUE(lupdate.waitForFinished(60000));
    ASSERT_EQ(lupdate.exitCode(), 0) << lupdate.readAllStandardError().toStdString();
    const Catalogue here = german();
    const Catalogue english = read(CUTWATER_SOURCE_DIR "/share/translations/cutwater_en.ts");
    int missing = 0;
    for (const auto& [key, message] : read(fresh)) {
        const auto found = here.find(key);
        const bool good = found != here.end() && found->second.finished &&
                          !found->second.translations.isEmpty() &&
                          !found->second.translations.contains(QString());
        if (message.numerus) {
            EXPECT_TRUE(english.count(key)) << "English plural: " << key.second.toStdString();
        }
        missing += !good;
        EXPECT_TRUE(good) << key.first.toStdString() << ": " << key.second.toStdString();
    }
    EXPECT_GT(here.size(), 700u);
    if (missing > 0) ADD_FAILURE() << missing << " texts: run share/scripts/translate";
}

TEST(German, PlaceholdersAndMnemonicsAreKept) {
    for (const auto& [key, message] : german()) {
        SCOPED_TRACE(key.second.toStdString());
        EXPECT_EQ(message.translations.size(), message.numerus ? 2 : 1);
        static const QRegularExpression mnemonic(QStringLiteral("&\\p{L}"));
        for (const QString& german : message.translations) {
            EXPECT_EQ(placeholders(german), placeholders(key.second)) << german.toStdString();
            EXPECT_EQ(key.second.count(mnemonic) == 1, german.count(mnemonic) == 1)
                << german.toStdString();
        }
    }
}

TEST(German, TheWordsOfThePluginsAreThere) {
    const auto demo = document::load(CUTWATER_SOURCE_DIR "/share/examples/sandpiper-bay.cutwater");
    ASSERT_TRUE(demo);
    sdk::Host host({CUTWATER_BINARY_DIR "/plugins-out"});
    const auto words = test::pluginWords(host, demo->project);
    EXPECT_GT(words.size(), 200u);
    const Catalogue here = german();
    for (const std::string& word : words)
        EXPECT_TRUE(here.count({"Plugins", QString::fromStdString(word)}))
            << word << ": run share/scripts/translate";
}

TEST(German, TheNamesOfAllEditsAreThere) {
    // A name begins with a capital letter; sentences of refusal do not.
    static const QRegularExpression name(QStringLiteral("\"([A-Z][^\"]*%1[^\"]*)\""));
    const Catalogue here = german();
    int count = 0;
    for (QDirIterator files(CUTWATER_SOURCE_DIR "/models/project/edits", {"*.cpp"});
         files.hasNext();)
        for (auto at = name.globalMatch(sourceText(files.next())); at.hasNext(); ++count) {
            QString text = at.next().captured(1);
            if (text.contains("{}")) continue; // filled in before it is translated: word by word
            EXPECT_TRUE(here.count({"Edits", text}))
                << text.toStdString() << ": add it to app/editor/session/edit_names.cpp";
        }
    EXPECT_GT(count, 10);
}
