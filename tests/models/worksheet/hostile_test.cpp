// SPDX-License-Identifier: GPL-3.0-or-later
// Tables from strangers: spoilt by chance that repeats itself, and large.
#include "models/worksheet/import.h"
#include "models/worksheet/sheet_text.h"
#include "tests/models/worksheet/boilers.h"

#include <gtest/gtest.h>

#include <random>

namespace cutwater::worksheet {

// Every row is taken or says why not; what comes out is valid; nothing crashes.
TEST(HostileTables, EndInAnAnswerOrASentence) {
    const project::Project p = test::boilers();
    const std::string whole = sheetAsText(p, ',');
    std::mt19937 random(11);
    int taken = 0, refused = 0;
    for (int round = 0; round < 400; ++round) {
        std::string text = whole;
        for (std::size_t spoilt = 1 + random() % 6; spoilt > 0; --spoilt) {
            const std::size_t at = random() % text.size();
            switch (random() % 4) {
            case 0: text.erase(at, random() % 40); break;
            case 1: text.insert(at, 1, ",;\t\"\n\r'=|\xFF"[random() % 10]); break;
            case 2: text[at] = static_cast<char>(random()); break;
            default: text.insert(at, text.substr(random() % text.size(), random() % 80)); break;
            }
        }
        ImportWish wish;
        wish.makeComponents = round % 2 == 0;
        const auto import = importRows(p, text, wish);
        if (!import) {
            EXPECT_FALSE(import.problems().front().what.empty());
            ++refused;
            continue;
        }
        ++taken;
        for (const ImportRow& row : import->rows)
            EXPECT_EQ(row.taken, row.why.empty());
        EXPECT_FALSE(hasErrors(validate(import->project))) << text;
    }
    EXPECT_GT(taken, 50);
    EXPECT_GT(refused, 50);
}

TEST(HostileTables, AThousandStrangersTakeNoTime) {
    project::Project p;
    for (int i = 0; i < 2000; ++i) {
        project::Component component;
        component.id = "component-number-" + std::to_string(i);
        p.components.push_back(component);
    }
    std::string text = "component,mode\n";
    for (int i = 0; i < 20000; ++i)
        text += "componemt-numbre-" + std::to_string(i) + ",x\n";
    const auto import = importRows(p, text, {});
    ASSERT_TRUE(import);
    EXPECT_EQ(import->rejected(), 20000u);
}

} // namespace cutwater::worksheet
