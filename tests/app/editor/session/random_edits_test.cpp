// SPDX-License-Identifier: GPL-3.0-or-later
// Ten thousand edits by chance, with undo and redo in between; each time the project is compared
// with a replay that knows no undo.
#include "tests/app/editor/session/random_edits.h"

#include "models/document/document.h"
#include "tests/models/project/edits/small_tree.h"

#include <gtest/gtest.h>

#include <set>

using namespace cutwater::test;
using namespace cutwater::editor;

namespace {

// What may never be, however incomplete the project is.
std::string broken(const Project& project) {
    for (const auto& problem : validate(project)) {
        if (problem.severity != Severity::error) continue;
        // Incomplete is allowed.
        if (problem.what.find("has no inputs") != std::string::npos ||
            problem.what.find("without a condition") != std::string::npos ||
            problem.what.find("is a not gate and has") != std::string::npos ||
            problem.what.find(" needs ") != std::string::npos)
            continue;
        return toSentence(problem);
    }
    return {};
}

} // namespace

TEST(RandomEdits, TenThousandWithUndoAndRedo) {
    Session session;
    session.start(smallTree());
    std::mt19937 random(20261125);
    // The replay: the state after each edit that stands on the undo stack, as one would write down.
    std::vector<Snapshot> states{session.project()};
    std::size_t at = 0;
    int made = 0, refused = 0, undone = 0;
    std::set<std::string> names;
    QObject::connect(&session, &Session::refused, [&](const QString& text) {
        ++refused;
        EXPECT_TRUE(text.endsWith('.') && text.size() > 20) << text.toStdString();
    });
    for (int step = 0; step < 10000; ++step) {
        const auto choice = random() % 10;
        if (choice == 0 && at > 0) {
            for (std::size_t back = 1 + random() % 5; back > 0 && at > 0; --back, --at, ++undone)
                session.undoStack()->undo();
        } else if (choice == 1 && at + 1 < states.size()) {
            for (std::size_t on = 1 + random() % 5; on > 0 && at + 1 < states.size(); --on, ++at)
                session.undoStack()->redo();
        } else {
            const Edit edit = randomEdit(*session.project(), random);
            const Snapshot before = session.project();
            const auto expected = edit(*before);
            const bool applied = session.apply(edit);
            ASSERT_EQ(applied, static_cast<bool>(expected));
            if (!applied) {
                ASSERT_EQ(session.project(), before) << "a refused edit changes nothing";
                continue;
            }
            ASSERT_TRUE(*session.project() == expected->project);
            ASSERT_FALSE(expected->doing.empty());
            names.insert(expected->doing);
            if (!(expected->project == *before)) {
                states.resize(at + 1);
                states.push_back(session.project());
                ++at;
                ++made;
                // Old states are let go, so that memory stays small.
                if (states.size() > 400) {
                    states.erase(states.begin(), states.begin() + 200);
                    at -= 200;
                }
            }
            if (step % 10 == 0) {
                const std::string fault = broken(*session.project());
                ASSERT_EQ(fault, "") << "after " << expected->doing;
            }
        }
        ASSERT_TRUE(*session.project() == *states[at]) << "step " << step;
    }
    EXPECT_GT(made, 3000);
    EXPECT_GT(undone, 500);
    EXPECT_GT(refused, 300);
    EXPECT_GT(names.size(), 20u) << "every kind of edit took part";
    // All the way back, past what was let go.
    while (session.undoStack()->canUndo())
        session.undoStack()->undo();
    EXPECT_TRUE(*session.project() == smallTree());
}
