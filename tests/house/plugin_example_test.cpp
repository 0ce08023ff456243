// SPDX-License-Identifier: GPL-3.0-or-later
// The plug-in that docs/plugins.md tells how to write does what the page says.
#include "plugins/sdk/host.h"

#include <gtest/gtest.h>

#include <filesystem>

using namespace cutwater;

TEST(PluginExample, OfThePageIsFoundAndCounts) {
    sdk::Host host({CUTWATER_EXAMPLE_FOLDER});
    EXPECT_TRUE(host.rejected().empty());
    const sdk::PluginFacts* facts = host.find(sdk::PluginKind::analysis, "event-count");
    ASSERT_NE(facts, nullptr);
    const sdk::Analysis* analysis = host.analysis("event-count");
    ASSERT_NE(analysis, nullptr);

    project::Project project;
    project.events.resize(3);
    const auto answer = sdk::runGuarded(*analysis, *facts, project, {}, {});
    ASSERT_EQ(answer.ending, sdk::Ending::finished);
    ASSERT_EQ(answer.content->tables.size(), 1u);
    const sdk::Table& table = answer.content->tables.front();
    ASSERT_EQ(table.rows.size(), 1u);
    EXPECT_EQ(table.rows.front(), std::vector<sdk::Cell>{std::int64_t{3}});
}

// Typed in a shell, a folder is mostly relative.
TEST(PluginExample, IsFoundInARelativeFolder) {
    const auto relative = std::filesystem::relative(CUTWATER_EXAMPLE_FOLDER);
    sdk::Host host({relative.string()});
    EXPECT_TRUE(host.rejected().empty());
    EXPECT_NE(host.analysis("event-count"), nullptr);
}
