// SPDX-License-Identifier: GPL-3.0-or-later
// The supply network of the demo, traced wire by wire: what both legs of a control bus run through,
// and whether the trees say the same.
#include "tests/house/demo/demo.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

using namespace cutwater::project;
using testing::UnorderedElementsAre;

namespace {

const std::string kMedium = "24 V DC";

bool uses(const Connection& wire, const std::string& part) {
    return wire.from == part || wire.to == part ||
           std::any_of(wire.through.begin(), wire.through.end(),
                       [&](const Reference& device) { return device.id == part; });
}

// Can `path` be followed from one part to another where `lost` does not conduct?
bool reaches(SupplyPath path, const std::string& from, const std::string& to,
             const std::string& lost) {
    demo::Names reached{from};
    for (bool grown = true; grown;) {
        grown = false;
        for (const auto& wire : demo::project().connections)
            if (wire.medium == kMedium && wire.path == path && !uses(wire, lost) &&
                reached.contains(wire.from))
                grown |= reached.insert(wire.to).second;
    }
    return reached.contains(to);
}

// A bus lives where one source reaches it and its current comes back to the same source.
bool lives(const std::string& bus, const std::vector<std::string>& sources,
           const std::string& lost) {
    return std::any_of(sources.begin(), sources.end(), [&](const std::string& source) {
        return reaches(SupplyPath::feed, source, bus, lost) &&
               reaches(SupplyPath::back, bus, source, lost);
    });
}

// Every part but the bus itself whose loss alone takes the bus down.
demo::Names sharedByBothLegs(const std::string& bus, const std::vector<std::string>& sources) {
    demo::Names shared;
    for (const auto& component : demo::project().components)
        if (component.id != bus && !lives(bus, sources, component.id)) shared.insert(component.id);
    return shared;
}

// The parts whose failure alone makes the tree's control supply fail.
demo::Names singleParts(const std::string& gate, const std::string& bus) {
    demo::Names parts;
    for (const auto& event : demo::eventsBelow(gate)) {
        const auto* mode = demo::index().mode(event);
        if (mode && mode->component != bus && demo::holds(gate, {event}))
            parts.insert(mode->component);
    }
    return parts;
}

TEST(DemoSupply, BusesLiveOnEitherLeg) {
    for (const std::string n : {"1", "2"}) {
        const std::vector<std::string> both{"PS-" + n, "BAT"};
        EXPECT_TRUE(lives("CB-" + n, both, "PS-" + n));
        EXPECT_TRUE(lives("CB-" + n, both, "BAT"));
        EXPECT_TRUE(lives("CB-" + n, both, "BB-" + n));
    }
}

TEST(DemoSupply, BothLegsOfBoiler1RunThroughF7AndX43) {
    EXPECT_THAT(sharedByBothLegs("CB-1", {"PS-1", "BAT"}),
                UnorderedElementsAre("F7", "X4:3", "RM-1"));
}

TEST(DemoSupply, TheLegsOfBoiler2MeetInTheModuleOnly) {
    EXPECT_THAT(sharedByBothLegs("CB-2", {"PS-2", "BAT"}), UnorderedElementsAre("RM-2"));
}

TEST(DemoSupply, TheTreesSayWhatTheDrawingsSay) {
    EXPECT_EQ(singleParts("G-supply-1", "CB-1"), sharedByBothLegs("CB-1", {"PS-1", "BAT"}));
    EXPECT_EQ(singleParts("G-supply-2", "CB-2"), sharedByBothLegs("CB-2", {"PS-2", "BAT"}));
}

TEST(DemoSupply, F12FeedsBothLowWaterProtectionsOfBoiler1Only) {
    const auto fed = [](const std::string& fuse) {
        demo::Names loads;
        for (const auto& wire : demo::project().connections)
            if (wire.path == SupplyPath::feed && uses(wire, fuse)) loads.insert(wire.to);
        return loads;
    };
    EXPECT_THAT(fed("F12"), UnorderedElementsAre("LT-1", "LR-1"));
    EXPECT_THAT(fed("F22"), UnorderedElementsAre("LT-2"));
    EXPECT_THAT(fed("F24"), UnorderedElementsAre("LR-2"));
}

} // namespace
