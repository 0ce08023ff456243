// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/options.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater;
using namespace cutwater::cli;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

Command drawing() {
    Command command;
    command.name = "sketch";
    command.operands = "FILE";
    sdk::Parameter format{"format", sdk::ParameterType::choice, "", {}, {}, {"svg", "png"}, {}, ""};
    sdk::Parameter size{"size", sdk::ParameterType::number, "", 0, 10, {}, sdk::Value(1.0), ""};
    sdk::Parameter bare{"bare", sdk::ParameterType::flag, "", {}, {}, {}, {}, ""};
    command.options = {format, size, bare};
    return command;
}

FirstLook look(const std::vector<std::string>& words) {
    auto outcome = firstLook(words);
    EXPECT_TRUE(std::holds_alternative<FirstLook>(outcome));
    return std::holds_alternative<FirstLook>(outcome) ? std::get<FirstLook>(outcome) : FirstLook{};
}

std::string mistake(const std::vector<std::string>& words) {
    const auto first = firstLook(words);
    if (const auto* sentence = std::get_if<UsageMistake>(&first)) return *sentence;
    const auto outcome = parse(std::get<FirstLook>(first), drawing());
    const auto* sentence = std::get_if<UsageMistake>(&outcome);
    return sentence ? *sentence : "(none)";
}

Parsed taken(const std::vector<std::string>& words) {
    const auto outcome = parse(look(words), drawing());
    EXPECT_TRUE(std::holds_alternative<Parsed>(outcome));
    return std::holds_alternative<Parsed>(outcome) ? std::get<Parsed>(outcome) : Parsed{};
}

} // namespace

TEST(FirstLook, FindsTheCommandBehindGlobalOptions) {
    EXPECT_EQ(look({"check", "f"}).command, "check");
    EXPECT_EQ(look({"--memory", "64", "check", "f"}).command, "check");
    EXPECT_EQ(look({"--format=json", "check"}).command, "check");
    EXPECT_EQ(look({"--quiet", "check", "f"}).command, "check");
    EXPECT_TRUE(look({"check", "--help"}).help);
    EXPECT_TRUE(look({"-h"}).help);
    EXPECT_TRUE(look({"--version"}).version);
    EXPECT_THAT(look({"--plugins", "a", "check", "--plugins=b"}).pluginFolders,
                ElementsAre("a", "b"));
}

TEST(Parse, TakesOptionsInAnyPlaceAndBothForms) {
    const Parsed parsed = taken({"sketch", "--size", "2.5", "f.cutwater", "--bare", "-o", "x.svg"});
    EXPECT_THAT(parsed.call.operands, ElementsAre("f.cutwater"));
    EXPECT_EQ(parsed.call.values.number("size"), 2.5);
    EXPECT_TRUE(parsed.call.values.flag("bare"));
    EXPECT_EQ(parsed.globals.output, "x.svg");
    EXPECT_EQ(taken({"sketch", "f", "--size=3"}).call.values.number("size"), 3);
    EXPECT_EQ(taken({"sketch", "f"}).call.values.number("size"), 1); // the standard
    EXPECT_FALSE(taken({"sketch", "f", "--bare=no"}).call.values.flag("bare"));
}

TEST(Parse, ACommandsOwnOptionGoesBeforeTheGlobalOne) {
    const Parsed parsed = taken({"sketch", "f", "--format", "png"});
    EXPECT_EQ(parsed.call.values.text("format"), "png");
    EXPECT_EQ(parsed.globals.format, Format::text);
    EXPECT_THAT(mistake({"sketch", "f", "--format", "json"}), HasSubstr("svg, png"));
}

TEST(Parse, ADashIsAFileAndTwoEndTheOptions) {
    EXPECT_THAT(taken({"sketch", "-"}).call.operands, ElementsAre("-"));
    EXPECT_THAT(taken({"sketch", "--", "--odd-name"}).call.operands, ElementsAre("--odd-name"));
}

TEST(Parse, EveryMistakeIsASentence) {
    EXPECT_THAT(mistake({"sketch", "f", "--sise", "2"}), HasSubstr("did you mean --size?"));
    EXPECT_THAT(mistake({"sketch", "f", "--zzzz"}), HasSubstr("cutwater help sketch"));
    EXPECT_THAT(mistake({"sketch", "f", "-x"}), HasSubstr("no option -x"));
    EXPECT_THAT(mistake({"sketch", "f", "--size"}), HasSubstr("needs a value"));
    EXPECT_THAT(mistake({"sketch", "f", "--size", "--bare"}), HasSubstr("needs a value"));
    EXPECT_THAT(mistake({"sketch", "f", "--size", "big"}), HasSubstr("not a number"));
    EXPECT_THAT(mistake({"sketch", "f", "--size", "-1"}), HasSubstr("from 0 to 10"));
    EXPECT_THAT(mistake({"sketch", "f", "--size", "1", "--size", "2"}), HasSubstr("twice"));
    EXPECT_THAT(mistake({"sketch"}), HasSubstr("needs a file"));
    EXPECT_THAT(mistake({"sketch", "f", "g"}), HasSubstr("'g'"));
    EXPECT_THAT(mistake({"sketch", "f", "--memory", "1"}), HasSubstr("16 to"));
    EXPECT_THAT(mistake({"sketch", "f", "--output="}), HasSubstr("empty"));
    EXPECT_THAT(mistake({"--fromat", "json", "sketch", "f"}), HasSubstr("--format"));
    EXPECT_THAT(mistake({"sketch", "f", "--plugins"}), HasSubstr("needs a value"));
    EXPECT_THAT(mistake({"sketch", "f", "--bare=perhaps"}), HasSubstr("yes or no"));
}
