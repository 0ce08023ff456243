// SPDX-License-Identifier: GPL-3.0-or-later
// kill -9 while editing and saving: the file is whole, and no more is lost than the interval.
#include "app/editor/session/recovery.h"
#include "models/document/document.h"
#include "tests/models/project/edits/small_tree.h"

#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>

#include <gtest/gtest.h>

#include <algorithm>
#include <random>

using namespace cutwater::test;
using namespace cutwater::editor;
namespace document = cutwater::document;

namespace {

constexpr int kInterval = 150; // ms; 4000 in the editor

int numberIn(const QString& path) {
    auto text = document::load(path.toStdString());
    if (text) return std::atoi(text->project.revision.c_str());
    // Incomplete trees are allowed in an editor: the form must be right.
    QFile file(path);
    EXPECT_TRUE(file.open(QIODevice::ReadOnly));
    const auto parsed = document::parse(file.readAll().toStdString());
    EXPECT_TRUE(parsed) << path.toStdString() << " is damaged";
    return parsed ? std::atoi(parsed->project.revision.c_str()) : -1;
}

} // namespace

TEST(Crash, KillMinusNineLosesNoMoreThanTheInterval) {
    std::mt19937 random(3);
    int withLeftover = 0;
    for (int round = 0; round < 6; ++round) {
        QTemporaryDir folder;
        const QString file = folder.filePath("plant.cutwater"), copies = folder.filePath("copies");
        Project start = smallTree();
        start.revision = "0";
        ASSERT_TRUE(document::save(start, file.toStdString()).empty());
        QProcess victim;
        victim.start(CUTWATER_VICTIM, {file, copies, QString::number(kInterval)});
        ASSERT_TRUE(victim.waitForStarted());

        // The time of every edit as it arrives here.
        struct Edit {
            qint64 at;
            int number;
        };
        std::vector<Edit> edits;
        int lastSaved = 0;
        QElapsedTimer clock;
        clock.start();
        const qint64 end = 500 + static_cast<qint64>(random() % 500);
        while (clock.elapsed() < end) {
            victim.waitForReadyRead(10);
            while (victim.canReadLine()) {
                const QList<QByteArray> words = victim.readLine().trimmed().split(' ');
                if (words[0] == "edit") edits.push_back({clock.elapsed(), words[1].toInt()});
                if (words[0] == "saved") lastSaved = words[1].toInt();
            }
        }
        const qint64 killed = clock.elapsed();
        victim.kill(); // SIGKILL
        ASSERT_TRUE(victim.waitForFinished());
        ASSERT_GT(edits.size(), 10u);

        const int inFile = numberIn(file);
        EXPECT_GE(inFile, lastSaved) << "what was saved is there";
        const auto leftovers = Recovery::leftovers(copies);
        int best = inFile;
        if (!leftovers.isEmpty()) {
            ++withLeftover;
            EXPECT_EQ(leftovers.front().path, file);
            best = std::max(best, numberIn(leftovers.front().copy));
        }
        // Three intervals: one to wait, and a slow machine's time to write.
        int mustHave = 0;
        for (const Edit& edit : edits)
            if (edit.at < killed - 3 * kInterval) mustHave = edit.number;
        EXPECT_GE(best, mustHave) << "of " << edits.back().number << " edits";
        // Nothing half written lies about beside the file.
        for (const QString& name : QDir(folder.path()).entryList({"*.cutwater"}, QDir::Files))
            EXPECT_EQ(name, "plant.cutwater");
    }
    EXPECT_GT(withLeftover, 0);
}
