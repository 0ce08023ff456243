// SPDX-License-Identifier: GPL-3.0-or-later
// The libraries that are shipped: enough of them, whole, and no number without its source.
#include "models/document/library_file.h"
#include "models/project/project.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

namespace cutwater::library {

using ::testing::AnyOf;
using ::testing::HasSubstr;

namespace {

std::vector<std::filesystem::path> files() {
    std::vector<std::filesystem::path> all;
    for (const auto& entry :
         std::filesystem::directory_iterator(CUTWATER_SOURCE_DIR "/share/library"))
        if (entry.path().extension() == ".cutlib") all.push_back(entry.path());
    return all;
}

const std::vector<Library>& shipped() {
    static const std::vector<Library> all = [] {
        std::vector<Library> loaded;
        for (const auto& file : files()) {
            auto one = document::loadLibrary(file.string());
            if (!one) {
                ADD_FAILURE() << project::toSentence(one.problems().front(), file.string());
                continue;
            }
            for (const auto& warning : one->warnings)
                ADD_FAILURE() << project::toSentence(warning, file.string());
            loaded.push_back(std::move(one->library));
        }
        return loaded;
    }();
    return all;
}

template <typename See>
void eachMode(See see) {
    for (const Library& library : shipped())
        for (const ComponentType& type : library.types)
            for (const Mode& mode : type.modes)
                see(type, mode);
}

} // namespace

TEST(ShippedLibrary, HoldsTheWholePlant) {
    std::set<std::string> ids, groups, libraries;
    std::size_t types = 0;
    for (const Library& library : shipped()) {
        EXPECT_TRUE(libraries.insert(library.id).second);
        for (const ComponentType& type : library.types) {
            ++types;
            EXPECT_TRUE(ids.insert(type.id).second) << type.id << " stands in two libraries";
            groups.insert(type.group);
            EXPECT_FALSE(type.function.empty()) << type.id;
        }
    }
    EXPECT_GE(types, 40u);
    EXPECT_THAT(groups,
                ::testing::ElementsAre("air", "burner", "control", "fuel", "water and steam"));
}

TEST(ShippedLibrary, EveryModeIsWhole) {
    eachMode([](const ComponentType& type, const Mode& mode) {
        SCOPED_TRACE(type.id + "." + mode.facts.id);
        EXPECT_FALSE(mode.facts.causes.empty());
        EXPECT_FALSE(mode.facts.localEffect.empty());
        EXPECT_FALSE(mode.facts.detection.empty());
        ASSERT_FALSE(mode.facts.checks.empty());
        for (const project::Check& check : mode.facts.checks) {
            EXPECT_GT(check.minutes.value_or(0), 0);
            EXPECT_FALSE(check.look.empty() || check.tells.empty());
        }
        EXPECT_EQ(mode.facts.model.numbers.empty(), !mode.noRate.empty());
    });
}

// Recalled numbers say so; a source that was not opened is never marked as read.
TEST(ShippedLibrary, EveryNumberSaysWhereItComesFromAndHowFarToTrustIt) {
    int rated = 0, empty = 0;
    eachMode([&](const ComponentType& type, const Mode& mode) {
        SCOPED_TRACE(type.id + "." + mode.facts.id);
        empty += mode.facts.model.numbers.empty() ? 1 : 0;
        for (const auto& number : mode.facts.model.numbers) {
            ++rated;
            const project::SourceNote& source = number.quantity.source;
            EXPECT_FALSE(source.document.empty());
            for (const char* recalled : {"WASH-1400", "NUREG/CR-6928", "NUREG/CR-1278"})
                if (source.document == recalled) {
                    EXPECT_EQ(source.tag, "from memory");
                    EXPECT_FALSE(source.place.empty());
                    EXPECT_EQ(trustOf(source), "from memory: to be checked against the source");
                }
            EXPECT_THAT(source.tag, AnyOf("from memory", "seen", "common practice, no source"));
        }
    });
    EXPECT_GE(rated, 60);
    EXPECT_GE(empty, 30); // left empty rather than invented
}

// Trade notes, full, 3.2 (WASH-1400, from memory): medians and error factors as given there.
TEST(ShippedLibrary, CarriesRecalledMediansAsTheyWereGiven) {
    const auto expect = [](const char* type, const char* mode, double median, double factor) {
        SCOPED_TRACE(std::string(type) + "." + mode);
        for (const Library& library : shipped()) {
            const ComponentType* found = findType(library, type);
            if (!found) continue;
            const Mode* its = findMode(*found, mode);
            ASSERT_NE(its, nullptr);
            const auto& number = its->facts.model.numbers.front().quantity;
            const auto* spread = std::get_if<project::Lognormal>(&number.uncertainty);
            ASSERT_NE(spread, nullptr);
            EXPECT_EQ(number.value, median);
            EXPECT_EQ(spread->median, median);
            EXPECT_EQ(spread->errorFactor, factor);
            return;
        }
        FAIL() << "not there";
    };
    expect("relay", "not-close", 3e-7, 3);
    expect("relay", "not-open", 1e-8, 10);
    expect("relay", "coil-open", 1e-7, 10);
    expect("circuit-breaker", "trips", 1e-6, 3);
    expect("fuse", "open", 1e-6, 3);
    expect("fuse", "not-open", 1e-5, 3);
    expect("cable", "open", 3e-6, 3);
    expect("terminal", "loose", 1e-7, 10);
    expect("fuel-pump", "no-start", 1e-3, 3);
    expect("fuel-pump", "stops", 3e-5, 10);
    expect("electric-motor", "stops", 1e-5, 3);
    expect("battery", "no-output", 3e-6, 3);
    expect("air-pressure-switch", "not-close", 1e-4, 3);
}

TEST(LibraryFile, IsWrittenBackByteForByte) {
    for (const auto& file : files()) {
        std::ifstream stream(file, std::ios::binary);
        std::ostringstream text;
        text << stream.rdbuf();
        const auto library = document::parseLibrary(text.str());
        ASSERT_TRUE(library);
        const auto written = document::writeLibrary(*library);
        ASSERT_TRUE(written);
        const std::string before = text.str();
        const auto [left, right] =
            std::mismatch(before.begin(), before.end(), written->begin(), written->end());
        EXPECT_TRUE(left == before.end() && right == written->end())
            << file << " differs from line " << 1 + std::count(before.begin(), left, '\n');
    }
}

TEST(LibraryFile, KeepsWhatANewerOneSays) {
    const std::string text = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                             "<cutwater-library version=\"1.9\">\n"
                             "  <library>\n    <id>x</id>\n    <colour>red</colour>\n  </library>\n"
                             "  <types>\n    <type id=\"a\" revision=\"1\" shape=\"round\">\n"
                             "      <name>a</name>\n      <mode id=\"m\">\n        <name>m</name>\n"
                             "        <spin>up</spin>\n      </mode>\n    </type>\n  </types>\n"
                             "</cutwater-library>\n";
    const auto library = document::parseLibrary(text);
    ASSERT_TRUE(library) << project::toSentence(library.problems().front());
    EXPECT_EQ(*document::writeLibrary(*library), text);
}

TEST(LibraryFile, BadOnesEndInASentence) {
    const auto what = [](const std::string& text) {
        const auto library = document::parseLibrary(text);
        EXPECT_FALSE(library) << text;
        return library ? std::string() : library.problems().front().what;
    };
    EXPECT_THAT(what("<cutwater version=\"1.1\"/>"), HasSubstr("not a Cutwater library"));
    EXPECT_THAT(what("<cutwater-library/>"), HasSubstr("which version"));
    EXPECT_THAT(what("<cutwater-library version=\"2.0\"/>"), HasSubstr("newer"));
    EXPECT_THAT(what("<cutwater-library version=\"1.1\"><types><typ/></types></cutwater-library>"),
                HasSubstr("unknown element <typ>"));
}

TEST(LibraryRules, EachFindsItsFault) {
    Library library;
    library.id = "mine";
    ComponentType type;
    type.id = "pump";
    type.name = "pump";
    type.revision = "1";
    Mode mode;
    mode.facts.id = "stops";
    mode.facts.name = "stops";
    mode.noRate = "none found";
    type.modes = {mode};
    library.types = {type};
    ASSERT_TRUE(validate(library).empty());
    const auto found = [&](auto spoil) {
        Library bad = library;
        spoil(bad);
        const auto problems = validate(bad);
        return problems.size() == 1 ? problems.front().what : std::to_string(problems.size());
    };
    EXPECT_THAT(found([](Library& l) { l.id = "a b"; }), HasSubstr("no id"));
    EXPECT_THAT(found([](Library& l) {
                    l.types.push_back(l.types[0]);
                    l.types[1].modes.clear();
                    l.types[1].modes.push_back(l.types[0].modes[0]);
                    l.types[1].modes[0].facts.id = "other";
                }),
                HasSubstr("used twice"));
    EXPECT_THAT(found([](Library& l) { l.types[0].revision.clear(); }), HasSubstr("no revision"));
    EXPECT_THAT(found([](Library& l) { l.types[0].modes.clear(); }), HasSubstr("no failure mode"));
    EXPECT_THAT(found([](Library& l) { l.types[0].modes[0].noRate.clear(); }),
                HasSubstr("nothing says why"));
    EXPECT_THAT(found([](Library& l) { l.types[0].name.clear(); }), HasSubstr("no name"));
}

} // namespace cutwater::library
