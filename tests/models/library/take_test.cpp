// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/document/document.h"
#include "models/library/take.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <stdexcept>

namespace cutwater::library {

using namespace project;
using ::testing::HasSubstr;

namespace {

Library pumps() {
    Mode stops;
    stops.facts.id = "stops";
    stops.facts.name = "stops";
    stops.facts.causes = {"wear"};
    stops.facts.model.kind = ModelKind::mission;
    stops.facts.model.clock = Clock::calendarHour;
    Quantity rate;
    rate.value = 3e-5;
    rate.unit = Unit::perHour;
    rate.uncertainty = Lognormal{3e-5, 10};
    rate.source = {"WASH-1400", "1975", "tables", "from memory", "", {}};
    stops.facts.model.set(Role::rate, rate);
    Mode leaks;
    leaks.facts.id = "leaks";
    leaks.facts.name = "leaks";
    leaks.noRate = "no public source was found";
    ComponentType type;
    type.id = "pump";
    type.name = "pump";
    type.function = "move oil";
    type.revision = "1";
    type.modes = {stops, leaks};
    Library library;
    library.id = "mine";
    library.types = {type};
    return library;
}

Project taken(const Library& library) {
    TakeWish wish;
    wish.id = "P-1";
    wish.location = "pump room";
    auto made = take({}, library, library.types[0], wish);
    if (!made) throw std::runtime_error(made.problems().front().what);
    return std::move(*made);
}

} // namespace

TEST(Take, BringsModesNumbersAndTheirSources) {
    const Library library = pumps();
    const Project p = taken(library);
    ASSERT_EQ(p.components.size(), 1u);
    EXPECT_EQ(p.components[0].tag, "P-1");
    EXPECT_EQ(p.components[0].function, "move oil");
    ASSERT_TRUE(p.components[0].origin);
    EXPECT_EQ(p.components[0].origin->revision, "1");
    ASSERT_EQ(p.modes.size(), 2u);
    EXPECT_EQ(p.modes[0].id, "P-1.stops");
    EXPECT_EQ(p.modes[0].component, "P-1");
    EXPECT_TRUE(p.modes[0].model == library.types[0].modes[0].facts.model);
    EXPECT_THAT(p.modes[1].remark, HasSubstr("No rate: no public source was found"));
    EXPECT_FALSE(hasErrors(validate(p)));
    // The origin survives the file.
    const auto again = document::parse(*document::write(p));
    ASSERT_TRUE(again);
    EXPECT_TRUE(again->project == p);
}

TEST(Take, RefusesWhatCannotBe) {
    const Library library = pumps();
    const Project p = taken(library);
    const auto what = [&](TakeWish wish) {
        const auto made = take(p, library, library.types[0], wish);
        EXPECT_FALSE(made);
        return made ? std::string() : made.problems().front().what;
    };
    EXPECT_THAT(what({"P-1", "", "", "", ""}), HasSubstr("a component P-1 already"));
    EXPECT_THAT(what({"a b", "", "", "", ""}), HasSubstr("is not an id"));
    EXPECT_THAT(what({"P-2", "", "", "", "B9"}), HasSubstr("no component B9"));
}

TEST(News, NoneWhileTheRevisionIsTheSame) {
    Library library = pumps();
    Project p = taken(library);
    EXPECT_TRUE(newsOf(p, {library}).empty());
    p.modes[0].causes = {"our own"}; // changed on purpose
    EXPECT_TRUE(newsOf(p, {library}).empty());
}

TEST(News, SayWhatTheLibrarySaysNow) {
    Library library = pumps();
    const Project p = taken(library);
    ComponentType& type = library.types[0];
    type.revision = "2";
    type.modes[0].facts.model.numbers[0].quantity.value = 5e-5;
    type.modes[1].facts.id = "drips";
    const auto news = newsOf(p, {library});
    std::vector<NewsKind> kinds;
    for (const News& one : news)
        kinds.push_back(one.kind);
    EXPECT_THAT(kinds, ::testing::ElementsAre(NewsKind::revision, NewsKind::differs,
                                              NewsKind::modeGone, NewsKind::modeAdded));
    EXPECT_EQ(news[0].here, "1");
    EXPECT_EQ(news[0].there, "2");
    EXPECT_EQ(news[1].fact, "failure model");
    EXPECT_THAT(news[1].here, HasSubstr("3e-05 /h"));
    EXPECT_THAT(news[1].there, HasSubstr("5e-05 /h"));
    EXPECT_THAT(news[1].there, HasSubstr("from memory"));
}

TEST(News, SayWhenTheTypeOrTheLibraryIsGone) {
    Library library = pumps();
    const Project p = taken(library);
    ASSERT_EQ(newsOf(p, {}).size(), 1u);
    EXPECT_EQ(newsOf(p, {})[0].kind, NewsKind::libraryMissing);
    library.types.clear();
    EXPECT_EQ(newsOf(p, {library})[0].kind, NewsKind::typeGone);
}

} // namespace cutwater::library
