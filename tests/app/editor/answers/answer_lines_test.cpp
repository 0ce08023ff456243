// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/answers/answer_lines.h"
#include "app/editor/answers/answer_model.h"
#include "app/editor/answers/figure_words.h"

#include "tests/plugins/analyses/plants.h"

#include <QAbstractItemModelTester>
#include <QSignalSpy>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

using namespace cutwater;
using editor::AnswerLine;
using editor::AnswerLines;
using editor::AnswerModel;
using editor::FigureWords;
using editor::LineKind;
using editor::LiveFigure;

namespace {

LiveFigure exactly(double value) {
    return {value, value, true, "exact"};
}

std::string utf8(const QString& text) {
    return text.toStdString();
}

std::vector<AnswerLine> of(const std::vector<AnswerLine>& lines, LineKind kind) {
    std::vector<AnswerLine> found;
    for (const AnswerLine& line : lines)
        if (line.kind == kind) found.push_back(line);
    return found;
}

} // namespace

TEST(FigureWords, SayOneIn) {
    EXPECT_EQ(utf8(FigureWords::oneIn(exactly(0.00125))), "about 1 in 800");
    EXPECT_EQ(utf8(FigureWords::oneIn(exactly(0.0123))), "about 1 in 81");
    EXPECT_EQ(utf8(FigureWords::oneIn(exactly(0.3))), "about 1 in 3.3");
    EXPECT_EQ(utf8(FigureWords::oneIn(exactly(3.4e-7))), "about 1 in 2 900 000");
    EXPECT_EQ(utf8(FigureWords::oneIn(exactly(0.95))), "nearly certain");
    EXPECT_EQ(utf8(FigureWords::oneIn(exactly(1))), "certain");
    EXPECT_EQ(utf8(FigureWords::oneIn(exactly(0))), "cannot happen in this tree");
    EXPECT_EQ(utf8(FigureWords::oneIn({1e-3, 2e-3, false, ""})), "at most about 1 in 500");
    EXPECT_EQ(utf8(FigureWords::figure({1e-3, 2e-3, false, ""})), "1.000e-03 to 2.000e-03");
    EXPECT_EQ(utf8(FigureWords::figure({0, 2e-3, false, ""})), "at most 2.000e-03");
}

TEST(FigureWords, SayWhatChanged) {
    const auto change = [](double before, double now) {
        return utf8(FigureWords::change(exactly(before), exactly(now)));
    };
    EXPECT_EQ(change(1e-3, 1e-3), "as before the last change");
    EXPECT_EQ(change(1e-3, 2.5e-3),
              "\u25B2 higher by a factor of 2.5 than before the last change (1.000e-03)");
    EXPECT_EQ(change(1e-3, 5e-4),
              "\u25BC lower by a factor of 2 than before the last change (1.000e-03)");
    EXPECT_EQ(change(1e-3, 1.1e-3),
              "\u25B2 higher by 10 % than before the last change (1.000e-03)");
    EXPECT_EQ(change(0, 1e-3), "before the last change: 0");
}

TEST(AnswerLines, SingleFailuresInPlainWords) {
    editor::LiveAnswer answer;
    answer.ending = editor::LiveAnswer::Ending::answered;
    answer.setsKnown = true;
    answer.setCount = "3";
    answer.singleCount = 2;
    answer.singles = {{{"e1"}, false, "fouled", "electrodes ET-1", "boiler room, Boiler 1", 0.01},
                      {{"e2"}, true, "spare", "", "", {}}};
    const auto singles = of(AnswerLines::of(answer), LineKind::single);
    ASSERT_EQ(singles.size(), 2u);
    EXPECT_EQ(utf8(singles[0].text),
              "electrodes ET-1: fouled\nboiler room, Boiler 1  \u00B7  1.000e-02");
    EXPECT_EQ(utf8(singles[1].text), "not: spare");
    EXPECT_EQ(singles[0].nodes, std::vector<std::string>{"e1"});
    EXPECT_EQ(utf8(singles[0].reason), "single failure: electrodes ET-1: fouled");
}

TEST(AnswerLines, SayWhereThereIsNothingAndWhereThereIsMore) {
    editor::LiveAnswer answer;
    answer.setsKnown = true;
    answer.setCount = "0";
    auto remarks = of(AnswerLines::of(answer), LineKind::remark);
    ASSERT_EQ(remarks.size(), 2u);
    EXPECT_THAT(utf8(remarks[0].text), testing::HasSubstr("no failure alone"));
    EXPECT_THAT(utf8(remarks[1].text), testing::HasSubstr("cannot happen"));
    answer.singles = {{{"e1"}, false, "fouled", "", "", {}}};
    answer.singleCount = 900;
    remarks = of(AnswerLines::of(answer), LineKind::remark);
    EXPECT_THAT(utf8(remarks[0].text), testing::HasSubstr("899 more"));
}

TEST(AnswerLines, CautionsAreShown) {
    const auto lines = AnswerLines::of(editor::computeLive(plants::twoPumps(), {}, {}));
    EXPECT_GE(of(lines, LineKind::caution).size(), 3u);
    EXPECT_GE(of(lines, LineKind::assumption).size(), 1u);
}

// Random changes: the model says what it does, and a line that stays the same keeps its place.
TEST(AnswerModel, KeepsTheRules) {
    AnswerModel model;
    const QAbstractItemModelTester tester(&model,
                                          QAbstractItemModelTester::FailureReportingMode::Fatal);
    std::mt19937 random(7);
    std::vector<AnswerLine> lines;
    for (int step = 0; step < 300; ++step) {
        const std::size_t at = lines.empty() ? 0 : random() % lines.size();
        const auto place = lines.begin() + static_cast<std::ptrdiff_t>(at);
        const auto kind = static_cast<LineKind>(random() % 9);
        switch (random() % 4) {
        case 0: lines.insert(place, {kind, QString::number(step), {}, {"a"}}); break;
        case 1: lines.push_back({kind, QString::number(step), {}, {}}); break;
        case 2:
            if (!lines.empty()) lines.erase(place);
            break;
        default:
            if (!lines.empty()) place->text += 'x';
        }
        model.show(lines);
        ASSERT_EQ(model.rowCount(), static_cast<int>(lines.size()));
        for (int row = 0; row < model.rowCount(); ++row)
            ASSERT_EQ(model.index(row).data().toString(),
                      lines[static_cast<std::size_t>(row)].text);
    }
    QSignalSpy removed(&model, &AnswerModel::rowsRemoved);
    model.show(lines);
    EXPECT_EQ(removed.count(), 0); // nothing new, nothing said
}

TEST(AnswerModel, AnotherFigureIsTheSameLine) {
    AnswerModel model;
    model.show(
        {{LineKind::single, "fouled\n0.1", {}, {"e1"}}, {LineKind::single, "b", {}, {"e2"}}});
    const QPersistentModelIndex first = model.index(0);
    QSignalSpy changed(&model, &AnswerModel::dataChanged);
    model.show(
        {{LineKind::single, "fouled\n0.2", {}, {"e1"}}, {LineKind::single, "b", {}, {"e2"}}});
    EXPECT_TRUE(first.isValid());
    EXPECT_EQ(first.data().toString(), "fouled\n0.2");
    EXPECT_EQ(changed.count(), 1);
    EXPECT_EQ(model.find({LineKind::single, "anything", {}, {"e2"}}), 1);
    EXPECT_EQ(model.find({LineKind::set, "b", {}, {"e2"}}), -1);
}

TEST(AnswerModel, SpeaksToScreenReaders) {
    AnswerModel model;
    model.show({{LineKind::heading, "Warnings", {}, {}},
                {LineKind::warning, "one\ntwo", "why", {"e1", "e2"}}});
    EXPECT_EQ(utf8(model.index(1).data(Qt::AccessibleTextRole).toString()), "Warning: one. two");
    EXPECT_EQ(model.index(1).data(AnswerModel::NodesRole).toStringList(),
              (QStringList{"e1", "e2"}));
    EXPECT_FALSE(model.index(0).flags().testFlag(Qt::ItemIsSelectable));
    EXPECT_TRUE(model.index(1).flags().testFlag(Qt::ItemIsSelectable));
}
