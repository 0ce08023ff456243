// SPDX-License-Identifier: GPL-3.0-or-later
// News of the library taken into a component, all of it or some.
#include "models/library/accept.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater::library {

using namespace project;
using ::testing::HasSubstr;

namespace {

Mode mode(const char* id, const char* effect) {
    Mode made;
    made.facts.id = made.facts.name = id;
    made.facts.localEffect = effect;
    made.noRate = "no public source was found";
    return made;
}

std::vector<Library> pumps() {
    ComponentType type;
    type.id = "pump";
    type.name = "pump";
    type.revision = "1";
    type.modes = {mode("stops", "no flow"), mode("leaks", "oil in the bilge")};
    Library library;
    library.id = "mine";
    library.types = {type};
    return {library};
}

// The same a year later: one mode is gone, one new, one says more.
std::vector<Library> later() {
    std::vector<Library> libraries = pumps();
    ComponentType& type = libraries[0].types[0];
    type.revision = "2";
    type.modes = {mode("stops", "no flow, no pressure"), mode("noisy", "none yet")};
    type.modes[0].facts.dormant = true;
    return libraries;
}

Project plant() {
    TakeWish wish;
    wish.id = "P-1";
    const std::vector<Library> libraries = pumps();
    return *take({}, libraries[0], libraries[0].types[0], wish);
}

} // namespace

TEST(AcceptNews, AllOfIt) {
    const Project before = plant();
    const auto news = newsOf(before, later());
    ASSERT_GE(news.size(), 4u);
    const auto made = acceptNews(before, later(), "P-1", news);
    ASSERT_TRUE(made) << made.problems().front().what;
    EXPECT_TRUE(newsOf(*made, later()).empty());
    EXPECT_EQ(made->components[0].origin->revision, "2");
    ASSERT_EQ(made->modes.size(), 3u) << "what the library has no more stays";
    EXPECT_EQ(made->modes[0].localEffect, "no flow, no pressure");
    EXPECT_TRUE(made->modes[0].dormant);
    EXPECT_EQ(made->modes[1].libraryMode, "") << "and is the project's own";
    EXPECT_EQ(made->modes[2].id, "P-1.noisy");
    EXPECT_THAT(made->modes[2].remark, HasSubstr("No rate: no public source"));
}

TEST(AcceptNews, WhatIsNotAcceptedCountsAsChangedOnPurpose) {
    const Project before = plant();
    const auto made = acceptNews(before, later(), "P-1", {});
    ASSERT_TRUE(made);
    EXPECT_EQ(made->modes, before.modes);
    EXPECT_TRUE(newsOf(*made, later()).empty());
}

TEST(AcceptNews, OneFactOnly) {
    auto news = newsOf(plant(), later());
    std::erase_if(news, [](const News& each) { return each.fact != "dormant"; });
    ASSERT_EQ(news.size(), 1u);
    const auto made = acceptNews(plant(), later(), "P-1", news);
    EXPECT_TRUE(made->modes[0].dormant);
    EXPECT_EQ(made->modes[0].localEffect, "no flow");
}

TEST(AcceptNews, NeedsTheLibraryAndAComponentFromIt) {
    EXPECT_THAT(acceptNews(plant(), {}, "P-1", {}).problems()[0].what, HasSubstr("not at hand"));
    EXPECT_THAT(acceptNews(plant(), later(), "P-2", {}).problems()[0].what,
                HasSubstr("no component P-2"));
    Project own = plant();
    own.components[0].origin.reset();
    EXPECT_THAT(acceptNews(own, later(), "P-1", {}).problems()[0].what, HasSubstr("no library"));
    Project taken = plant();
    taken.modes[1].id = "P-1.noisy";
    EXPECT_THAT(acceptNews(taken, later(), "P-1", newsOf(taken, later())).problems()[0].what,
                HasSubstr("already"));
}

} // namespace cutwater::library
