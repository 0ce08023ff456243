// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/sdk/parameter.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater::sdk;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

Parameter number(std::optional<double> minimum, std::optional<double> maximum,
                 const std::string& unit = {}) {
    Parameter parameter;
    parameter.name = "size";
    parameter.type = ParameterType::number;
    parameter.minimum = minimum;
    parameter.maximum = maximum;
    parameter.unit = unit;
    return parameter;
}

Parameter of(ParameterType type) {
    Parameter parameter;
    parameter.name = "thing";
    parameter.type = type;
    return parameter;
}

double parsed(const Parameter& parameter, const std::string& text) {
    const auto value = parseValue(parameter, text);
    return value ? std::get<double>(*value) : -999;
}

std::string refused(const Parameter& parameter, const std::string& text) {
    const auto value = parseValue(parameter, text);
    if (value) return "(taken)";
    const auto& problem = value.problems().front();
    return problem.what + "; " + problem.remedy;
}

} // namespace

TEST(ParseValue, Numbers) {
    EXPECT_EQ(parsed(number({}, {}), "2.5"), 2.5);
    EXPECT_EQ(parsed(number({}, {}), " +1e-6 "), 1e-6);
    EXPECT_EQ(parsed(number({}, {}), "-3"), -3);
    EXPECT_EQ(parsed(number(0, 1), "1"), 1); // both ends belong to the range
    EXPECT_EQ(parsed(number(0, 1), "0"), 0);
}

TEST(ParseValue, NumbersWithAUnitAreConverted) {
    EXPECT_EQ(parsed(number(0, {}, "h"), "24 h"), 24);
    EXPECT_EQ(parsed(number(0, {}, "h"), "2wk"), 336); // 2 x 7 x 24
    EXPECT_EQ(parsed(number(0, {}, "h"), "1 y"), 8760);
    EXPECT_EQ(parsed(number(0, {}, "h"), "90min"), 1.5);
    EXPECT_THAT(refused(number(0, {}, "h"), "3 A"), HasSubstr("not a number"));
    EXPECT_THAT(refused(number(0, {}), "3 h"), HasSubstr("not a number"));
}

TEST(ParseValue, WhatIsNoNumberIsRefused) {
    for (const char* text : {"", " ", "x", "1.2.3", "0x10", "1e", "--1", "nan", "inf", "1e999"})
        EXPECT_THAT(refused(number({}, {}), text), HasSubstr("not a number")) << text;
    EXPECT_THAT(refused(number({}, {}), "1,5"), HasSubstr("decimal point"));
}

TEST(ParseValue, NumbersOutOfRangeNameTheRange) {
    EXPECT_EQ(refused(number(0, 1), "1.5"), "size 1.5 is out of range; give a number from 0 to 1");
    EXPECT_EQ(refused(number(0, {}, "h"), "-1"),
              "size -1 is out of range; give a number of at least 0 h");
}

TEST(ParseValue, Integers) {
    Parameter parameter = of(ParameterType::integer);
    parameter.minimum = 1;
    parameter.maximum = 1000;
    EXPECT_EQ(std::get<std::int64_t>(*parseValue(parameter, "12")), 12);
    for (const char* text : {"1.5", "", "1e3", "ten", "0x1f"})
        EXPECT_THAT(refused(parameter, text), HasSubstr("not a whole number")) << text;
    EXPECT_THAT(refused(parameter, "0"), HasSubstr("from 1 to 1000"));
    EXPECT_THAT(refused(parameter, "99999999999999999999999"), HasSubstr("out of range"));
}

TEST(ParseValue, Flags) {
    EXPECT_TRUE(std::get<bool>(*parseValue(of(ParameterType::flag), "yes")));
    EXPECT_FALSE(std::get<bool>(*parseValue(of(ParameterType::flag), "no")));
    EXPECT_THAT(refused(of(ParameterType::flag), "perhaps"), HasSubstr("give yes or no"));
}

TEST(ParseValue, Choices) {
    Parameter parameter = of(ParameterType::choice);
    parameter.choices = {"order", "probability"};
    EXPECT_EQ(std::get<std::string>(*parseValue(parameter, "order")), "order");
    EXPECT_THAT(refused(parameter, "odrer"), HasSubstr("try 'order'"));
    EXPECT_THAT(refused(parameter, "colour"), HasSubstr("order, probability"));
}

TEST(ParseValue, TopEvents) {
    EXPECT_EQ(std::get<std::string>(*parseValue(of(ParameterType::topEvent), "T1")), "T1");
    EXPECT_THAT(refused(of(ParameterType::topEvent), " "), HasSubstr("empty"));
}

TEST(Complete, FillsInStandardsAndKeepsWhatWasGiven) {
    Parameter limit = of(ParameterType::integer);
    limit.name = "limit";
    limit.standard = Value(std::int64_t{1000});
    Parameter mission = number(0, {}, "h"); // no standard: not given stays not given
    Values given;
    given.set("thing", Value(std::string("a")));
    const auto values = complete({limit, mission, of(ParameterType::text)}, given);
    ASSERT_TRUE(values);
    EXPECT_EQ(values->integer("limit"), 1000);
    EXPECT_FALSE(values->has("size"));
    EXPECT_EQ(values->text("thing"), "a");
    EXPECT_THAT(values->names(), ElementsAre("limit", "thing"));
}

TEST(Complete, ReportsEveryMistakeAtOnce) {
    Values given;
    given.set("size", Value(7.0));
    given.set("thnig", Value(std::string("a")));
    given.set("thing", Value(true));
    const auto values = complete({number(0, 1), of(ParameterType::text)}, given);
    ASSERT_FALSE(values);
    ASSERT_EQ(values.problems().size(), 3u);
    EXPECT_THAT(values.problems()[0].what, HasSubstr("size 7 is out of range"));
    EXPECT_THAT(values.problems()[1].what, HasSubstr("wrong type"));
    EXPECT_THAT(values.problems()[2].what, HasSubstr("thnig"));
    EXPECT_THAT(values.problems()[2].remedy, HasSubstr("try 'thing'"));
}

TEST(Complete, AWholeNumberIsANumber) {
    Values given;
    given.set("size", Value(std::int64_t{1}));
    const auto values = complete({number(0, 1)}, given);
    ASSERT_TRUE(values);
    EXPECT_EQ(values->number("size"), 1.0);
}

TEST(Values, AnswerNothingForAnotherType) {
    Values values;
    values.set("a", Value(std::string("text")));
    EXPECT_FALSE(values.number("a"));
    EXPECT_FALSE(values.integer("a"));
    EXPECT_FALSE(values.flag("a"));
    EXPECT_FALSE(values.text("b"));
}
