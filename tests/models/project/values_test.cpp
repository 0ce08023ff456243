// SPDX-License-Identifier: GPL-3.0-or-later
// Tables, words, ids, dates, sentences.
#include "models/project/dates.h"
#include "models/project/index.h"
#include "models/project/nearest.h"
#include "models/project/project.h"

#include <gtest/gtest.h>
#include <map>
#include <random>

namespace cutwater::project {

TEST(Units, TableStandsInTheOrderOfTheEnumeration) {
    ASSERT_EQ(allUnits().size(), static_cast<std::size_t>(Unit::kilogramsPerHour) + 1);
    for (std::size_t i = 0; i < allUnits().size(); ++i) {
        const auto unit = static_cast<Unit>(i);
        EXPECT_EQ(facts(unit).unit, unit);
        EXPECT_EQ(unitFromSymbol(facts(unit).symbol), unit);
    }
    EXPECT_FALSE(unitFromSymbol("/H"));
}

TEST(Units, ConvertToHoursAndPerHour) {
    const auto base = [](double value, Unit unit) {
        Quantity quantity;
        quantity.value = value;
        quantity.unit = unit;
        return inBaseUnits(quantity);
    };
    EXPECT_DOUBLE_EQ(base(3, Unit::perHour), 3);
    EXPECT_DOUBLE_EQ(base(3, Unit::perMillionHours), 3e-6);
    EXPECT_DOUBLE_EQ(base(3, Unit::perBillionHours), 3e-9);
    EXPECT_DOUBLE_EQ(base(8760, Unit::perYear), 1); // a year is 8760 h here
    EXPECT_DOUBLE_EQ(base(7200, Unit::seconds), 2);
    EXPECT_DOUBLE_EQ(base(90, Unit::minutes), 1.5);
    EXPECT_DOUBLE_EQ(base(2, Unit::days), 48);
    EXPECT_DOUBLE_EQ(base(1, Unit::weeks), 168);
    EXPECT_DOUBLE_EQ(base(2, Unit::years), 17520);
    EXPECT_DOUBLE_EQ(base(0.25, Unit::perStart), 0.25);
    EXPECT_DOUBLE_EQ(base(0.25, Unit::unstated), 0.25);
    for (const UnitFacts& unit : allUnits())
        EXPECT_DOUBLE_EQ(base(1, unit.unit), unit.factor) << unit.symbol;
}

TEST(Models, TablesStandInTheOrderOfTheirEnumerations) {
    ASSERT_EQ(allRoles().size(), static_cast<std::size_t>(Role::frequency) + 1);
    for (std::size_t i = 0; i < allRoles().size(); ++i) {
        EXPECT_EQ(allRoles()[i].role, static_cast<Role>(i));
        EXPECT_EQ(roleFromWord(allRoles()[i].word), static_cast<Role>(i));
        EXPECT_FALSE(allRoles()[i].dimensions.empty());
    }
    ASSERT_EQ(allModels().size(), static_cast<std::size_t>(ModelKind::frequency) + 1);
    for (std::size_t i = 0; i < allModels().size(); ++i) {
        EXPECT_EQ(allModels()[i].kind, static_cast<ModelKind>(i));
        EXPECT_EQ(modelFromWord(allModels()[i].word), static_cast<ModelKind>(i));
    }
    ASSERT_EQ(allClocks().size(), static_cast<std::size_t>(Clock::demand) + 1);
    for (std::size_t i = 0; i < allClocks().size(); ++i) {
        EXPECT_EQ(allClocks()[i].clock, static_cast<Clock>(i));
        EXPECT_EQ(clockFromWord(allClocks()[i].word), static_cast<Clock>(i));
    }
}

TEST(Models, NumbersStayInTheOrderOfTheirRoles) {
    FailureModel model;
    Quantity quantity;
    for (Role role : {Role::coverage, Role::rate, Role::interval, Role::rate}) {
        quantity.value += 1;
        model.set(role, quantity);
    }
    ASSERT_EQ(model.numbers.size(), 3u);
    EXPECT_EQ(model.numbers[0].role, Role::rate);
    EXPECT_EQ(model.numbers[1].role, Role::interval);
    EXPECT_EQ(model.numbers[2].role, Role::coverage);
    EXPECT_EQ(model.find(Role::rate)->value, 4); // the second replaced the first
    EXPECT_EQ(model.find(Role::scale), nullptr);
}

template <typename Enum>
void expectWords(std::optional<Enum> (*from)(std::string_view),
                 std::initializer_list<std::string_view> words) {
    int i = 0;
    for (std::string_view one : words) {
        EXPECT_EQ(word(static_cast<Enum>(i)), one);
        EXPECT_EQ(from(one), static_cast<Enum>(i));
        ++i;
    }
    EXPECT_FALSE(from(""));
    EXPECT_FALSE(from("AND"));
}

TEST(Words, AreThoseOfTheFileFormat) {
    expectWords<EventKind>(eventKindFromWord, {"basic", "undeveloped", "house", "conditioning"});
    expectWords<GateKind>(gateKindFromWord,
                          {"and", "or", "vote", "inhibit", "xor", "not", "priority-and"});
    expectWords<SupplyPath>(supplyPathFromWord, {"feed", "return"});
    expectWords<CommonCauseKind>(commonCauseKindFromWord,
                                 {"beta", "mgl", "alpha", "alpha-staggered"});
    expectWords<CauseStatus>(causeStatusFromWord, {"not-found", "probable", "confirmed"});
    expectWords<AssessmentState>(assessmentStateFromWord, {"draft", "issued", "closed"});
}

TEST(Ids, HaveTheirForm) {
    for (const char* good : {"a", "ET-1.fouled", "_x", "9", "X4:3", "a/b"})
        EXPECT_TRUE(isWellFormedId(good)) << good;
    for (const char* bad : {"", "-a", ".a", "a b", "ü", "a\n", "a&b"})
        EXPECT_FALSE(isWellFormedId(bad)) << bad;
    EXPECT_TRUE(isWellFormedId(std::string(128, 'a')));
    EXPECT_FALSE(isWellFormedId(std::string(129, 'a')));
}

TEST(Dates, FollowTheCalendar) {
    for (const char* good : {"2024-02-29", "2026-12-31", "0001-01-01", "2000-02-29"})
        EXPECT_TRUE(isIsoDate(good)) << good;
    for (const char* bad :
         {"", "2023-02-29", "1900-02-29", "2024-13-01", "2024-00-01", "2024-01-00", "2024-1-1",
          "24-01-01", "2024/01/01", "2024-01-01 ", "2024-01-1x", "-024-01-01"})
        EXPECT_FALSE(isIsoDate(bad)) << bad;
    for (const char* good : {"00:00", "23:59", "03:10"})
        EXPECT_TRUE(isTimeOfDay(good)) << good;
    for (const char* bad : {"", "24:00", "3:10", "03:60", "03.10", "0310", "-1:10"})
        EXPECT_FALSE(isTimeOfDay(bad)) << bad;
}

TEST(Sentences, NameFileLineAndRemedy) {
    const Problem problem{Severity::error, "gate G4 has no inputs", "add an input", "gate G4", 12};
    EXPECT_EQ(toSentence(problem, "a.cutwater"),
              "a.cutwater:12: error: gate G4 has no inputs; add an input.");
    EXPECT_EQ(toSentence(problem), "line 12: error: gate G4 has no inputs; add an input.");
    const Problem bare{Severity::warning, "it is late", "", "", 0};
    EXPECT_EQ(toSentence(bare, "a.cutwater"), "a.cutwater: warning: it is late.");
    EXPECT_EQ(toSentence(bare), "warning: it is late.");
    const Problem quoting{Severity::error, "a\nb\tc", "", "", 0};
    EXPECT_EQ(toSentence(quoting), "error: a b c.");
    EXPECT_TRUE(hasErrors({bare, problem}));
    EXPECT_FALSE(hasErrors({bare}));
}

TEST(Nearest, CountsWhatAHandGetsWrong) {
    EXPECT_EQ(typingDistance("gate", "gate", 3), 0u);
    EXPECT_EQ(typingDistance("gate", "GATE", 3), 0u);
    EXPECT_EQ(typingDistance("gate", "gaet", 3), 1u); // exchanged
    EXPECT_EQ(typingDistance("gate", "gte", 3), 1u);
    EXPECT_EQ(typingDistance("gate", "grate", 3), 1u);
    EXPECT_EQ(typingDistance("gate", "gats", 3), 1u);
    EXPECT_EQ(typingDistance("kitten", "sitting", 5), 3u); // Levenshtein's usual example
    EXPECT_EQ(typingDistance("", "abc", 5), 3u);
    EXPECT_EQ(typingDistance("abcdef", "uvwxyz", 2), 3u); // beyond the limit
    EXPECT_EQ(typingDistance(std::string(500, 'a'), std::string(500, 'a'), 2), 3u); // too long
    EXPECT_EQ(nearestWord("remrak", {"name", "remark", "reason"}), "remark");
    EXPECT_EQ(nearestWord("colour", {"name", "remark", "reason"}), "");
    EXPECT_EQ(nearestWord("x", {}), "");
}

TEST(Index, FindsTheFirstOfTwoAndFollowsModesAndParameters) {
    Project project;
    project.events.resize(3);
    project.events[0].id = "e";
    project.events[1].id = "e";
    project.events[2].id = "of-mode";
    project.events[2].mode = "m";
    project.modes.resize(1);
    project.modes[0].id = "m";
    project.parameters.resize(1);
    project.parameters[0].id = "p";
    const Index index(project);
    EXPECT_EQ(index.event("e"), &project.events[0]);
    EXPECT_EQ(index.event("E"), nullptr);
    EXPECT_EQ(index.modelOf(project.events[0]), &project.events[0].model);
    EXPECT_EQ(index.modelOf(project.events[2]), &project.modes[0].model);
    Event stray;
    stray.mode = "nowhere";
    EXPECT_EQ(index.modelOf(stray), nullptr);
    Quantity quantity;
    EXPECT_EQ(index.resolved(quantity), &quantity);
    quantity.parameter = "p";
    EXPECT_EQ(index.resolved(quantity), &project.parameters[0].quantity);
    quantity.parameter = "q";
    EXPECT_EQ(index.resolved(quantity), nullptr);
}

// Ids of all lengths, many of which differ in little, beside a map; some stand twice.
TEST(Index, FindsEachOfManyIds) {
    std::mt19937 random(7);
    Project project;
    std::map<std::string, std::size_t> events, gates;
    const auto some = [&] {
        std::string id(1 + random() % 20, "Ex9/"[random() % 4]);
        if (random() % 4) id += std::to_string(random() % 2000);
        if (random() % 8 == 0) id.back() = static_cast<char>(random());
        return id;
    };
    for (std::size_t i = 0; i < 5000; ++i) {
        project.events.emplace_back().id = some();
        events.try_emplace(project.events.back().id, i);
        project.gates.emplace_back().id = i % 10 ? some() : project.events[i / 2].id;
        gates.try_emplace(project.gates.back().id, i);
    }
    const Index index(project);
    const auto check = [&](const std::string& id) {
        const auto event = events.find(id);
        const auto gate = gates.find(id);
        const Event* itsEvent = event == events.end() ? nullptr : &project.events[event->second];
        const Gate* itsGate = gate == gates.end() ? nullptr : &project.gates[gate->second];
        ASSERT_EQ(index.event(id), itsEvent) << id;
        ASSERT_EQ(index.gate(id), itsGate) << id;
        ASSERT_EQ(index.node(id).event, itsEvent) << id;
        ASSERT_EQ(index.node(id).gate, itsEvent ? nullptr : itsGate) << id; // an event goes first
        ASSERT_EQ(static_cast<bool>(index.node(id)), itsEvent || itsGate) << id;
    };
    for (std::size_t i = 0; i < 5000; ++i) {
        check(project.events[i].id);
        check(project.gates[i].id);
        check(some());
    }
    check("");
    EXPECT_FALSE(Index(Project{}).node("e"));
}

} // namespace cutwater::project
