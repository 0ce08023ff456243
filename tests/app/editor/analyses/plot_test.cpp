// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/analyses/plot_page.h"
#include "app/editor/analyses/table_page.h"

#include <QApplication>
#include <QBarCategoryAxis>
#include <QBarSet>
#include <QChart>
#include <QCheckBox>
#include <QClipboard>
#include <QFile>
#include <QHorizontalBarSeries>
#include <QLabel>
#include <QLineSeries>
#include <QLogValueAxis>
#include <QMimeData>
#include <QSvgRenderer>
#include <QTableView>
#include <QTemporaryDir>
#include <QTest>
#include <QValueAxis>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace cutwater;
using editor::PlotPage;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

sdk::Series curve(const std::string& id, std::vector<double> x, std::vector<double> y) {
    sdk::Series one;
    one.id = id;
    one.title = "T1: " + id;
    one.xTitle = "time";
    one.xUnit = "h";
    one.yTitle = "chance";
    one.x = std::move(x);
    one.y = std::move(y);
    return one;
}

sdk::Series bars(const std::string& id, std::vector<double> y) {
    sdk::Series one = curve(id, {}, std::move(y));
    one.kind = sdk::PlotKind::bar;
    for (std::size_t i = 0; i < one.y.size(); ++i) {
        one.x.push_back(static_cast<double>(i));
        one.labels.push_back("e" + std::to_string(i));
    }
    return one;
}

std::shared_ptr<const sdk::Result> resultOf(std::vector<sdk::Series> series) {
    auto result = std::make_shared<sdk::Result>();
    result->series = std::move(series);
    return result;
}

template <typename Axis>
Axis* axisOf(const PlotPage& page, Qt::Orientation orientation) {
    const auto axes = page.chart()->axes(orientation);
    return axes.isEmpty() ? nullptr : qobject_cast<Axis*>(axes.first());
}

} // namespace

TEST(ChartGroups, WhatIsMeasuredAlikeStandsTogether) {
    sdk::Series other = curve("b", {0}, {1});
    other.yUnit = "/h";
    const auto groups = editor::chartGroups({curve("a", {0}, {1}), curve("a2", {0}, {1}), other,
                                             curve("c", {0}, {1}), bars("d", {1, 2}),
                                             bars("d2", {3, 4}), bars("e", {1, 2, 3})});
    EXPECT_THAT(groups, ElementsAre(ElementsAre(0u, 1u), ElementsAre(2u), ElementsAre(3u),
                                    ElementsAre(4u, 5u), ElementsAre(6u)));
}

TEST(PlotPage, DrawsCurvesOnPlainAndLogarithmicAxes) {
    const auto result = resultOf(
        {curve("low", {0, 10, 20}, {0, 1e-6, 1e-3}), curve("high", {0, 20}, {1e-4, 1e-2})});
    PlotPage page(result, {0, 1});
    page.resize(600, 400);
    page.show();
    ASSERT_EQ(page.chart()->series().size(), 2);
    EXPECT_EQ(qobject_cast<QLineSeries*>(page.chart()->series()[0])->count(), 3);
    ASSERT_TRUE(axisOf<QValueAxis>(page, Qt::Vertical));
    EXPECT_EQ(axisOf<QValueAxis>(page, Qt::Horizontal)->titleText(), "Time [h]");
    EXPECT_EQ(axisOf<QValueAxis>(page, Qt::Horizontal)->max(), 20);
    EXPECT_GE(axisOf<QValueAxis>(page, Qt::Vertical)->max(), 1e-2);
    EXPECT_FALSE(page.findChild<QLabel*>("leftOut")->isVisible());
    // The two are told apart by their lines, too.
    const auto pen = [&](int i) {
        return qobject_cast<QLineSeries*>(page.chart()->series()[i])->pen().style();
    };
    EXPECT_NE(pen(0), pen(1));

    page.findChild<QCheckBox*>("logY")->setChecked(true);
    auto* const axis = axisOf<QLogValueAxis>(page, Qt::Vertical);
    ASSERT_TRUE(axis);
    EXPECT_NEAR(axis->min(), 1e-6, 1e-12);
    EXPECT_NEAR(axis->max(), 1e-2, 1e-8);
    EXPECT_EQ(qobject_cast<QLineSeries*>(page.chart()->series()[0])->count(), 2);
    EXPECT_TRUE(page.findChild<QLabel*>("leftOut")->isVisible()); // and says so
    EXPECT_THAT(page.findChild<QLabel*>("leftOut")->text().toStdString(), HasSubstr("drawn: 1."));
    page.findChild<QCheckBox*>("logX")->setChecked(true);
    EXPECT_TRUE(axisOf<QLogValueAxis>(page, Qt::Horizontal));
}

TEST(PlotPage, StepsAreSteps) {
    sdk::Series one = curve("s", {0, 1, 2}, {5, 6, 7});
    one.kind = sdk::PlotKind::step;
    const PlotPage page(resultOf({one}), {0});
    const auto* const line = qobject_cast<QLineSeries*>(page.chart()->series()[0]);
    EXPECT_EQ(line->points(), (QList<QPointF>{{0, 5}, {1, 5}, {1, 6}, {2, 6}, {2, 7}}));
}

TEST(PlotPage, BarsStandInTheOrderOfTheAnalysis) {
    auto with = bars("b", {3, 2, 1});
    with.labels[2] = with.labels[1]; // twice the same
    PlotPage page(resultOf({with}), {0});
    page.show();
    auto* const categories = axisOf<QBarCategoryAxis>(page, Qt::Vertical);
    ASSERT_TRUE(categories);
    ASSERT_EQ(categories->count(), 3);
    EXPECT_EQ(categories->at(2), "e0"); // on top: they are drawn from below
    const auto* const series = qobject_cast<QHorizontalBarSeries*>(page.chart()->series()[0]);
    ASSERT_TRUE(series);
    EXPECT_EQ(series->barSets()[0]->at(2), 3);
    EXPECT_EQ(series->barSets()[0]->at(0), 1);
    std::string chosen;
    QObject::connect(&page, &PlotPage::labelChosen, &page,
                     [&](const QString& label) { chosen = label.toStdString(); });
    emit const_cast<QHorizontalBarSeries*>(series)->clicked(2, series->barSets()[0]);
    EXPECT_EQ(chosen, "e0");
}

TEST(PlotPage, SavesAnSvgThatAnotherProgramCanDraw) {
    const PlotPage page(resultOf({curve("c", {0, 1, 2}, {1, 4, 9})}), {0});
    const QTemporaryDir folder;
    const QString path = folder.filePath("plot.svg");
    EXPECT_EQ(page.saveSvg(path), QString());
    QSvgRenderer renderer(path);
    EXPECT_TRUE(renderer.isValid());
    EXPECT_EQ(renderer.viewBox(), QRect(0, 0, 800, 480));
    QFile file(path);
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_THAT(file.readAll().toStdString(), HasSubstr("Chance")); // text stays text
    EXPECT_THAT(page.saveSvg(folder.filePath("no/such/plot.svg")).toStdString(),
                HasSubstr("cannot be written"));
}

TEST(PlotPage, CopiesPictureSvgAndNumbersAtOnce) {
    PlotPage page(resultOf({curve("c", {0, 1}, {1, 4})}), {0});
    page.resize(500, 400);
    page.show();
    page.copy();
    const QMimeData* const mime = QApplication::clipboard()->mimeData();
    EXPECT_TRUE(mime->hasImage());
    EXPECT_TRUE(mime->data("image/svg+xml").startsWith("<?xml"));
    EXPECT_EQ(mime->data("text/csv").toStdString(), "x [h],y\n0,1\n1,4\n");
    EXPECT_THAT(mime->text().toStdString(), HasSubstr("time [h]"));
}

TEST(PlotPage, ShowsItsNumbersForThoseWhoCannotSeeIt) {
    PlotPage page(resultOf({curve("c", {0, 1}, {1, 4})}), {0});
    page.show();
    page.findChild<QCheckBox*>("numbers")->setChecked(true);
    const auto* const table = page.findChild<QTableView*>("table-c");
    ASSERT_TRUE(table);
    EXPECT_TRUE(table->isVisible());
    EXPECT_EQ(table->model()->index(1, 1).data().toString(), "4");
}

TEST(PlotPage, FollowsThePalette) {
    PlotPage page(resultOf({curve("c", {0, 1}, {1, 4})}), {0});
    QPalette dark = page.palette();
    dark.setColor(QPalette::Base, QColor(20, 20, 20));
    dark.setColor(QPalette::Text, Qt::white);
    page.setPalette(dark);
    EXPECT_EQ(page.chart()->backgroundBrush().color(), QColor(20, 20, 20));
    const auto* const line = qobject_cast<QLineSeries*>(page.chart()->series()[0]);
    EXPECT_GT(line->pen().color().lightness(), 128);
    EXPECT_THAT(page.svg().toStdString(), testing::Not(HasSubstr("#141414"))); // paper is white
}

TEST(PlotPage, StrangeSeriesAreDrawnAsFarAsTheyGo) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinity = std::numeric_limits<double>::infinity();
    for (const auto& y : std::vector<std::vector<double>>{
             {}, {0}, {nan}, {infinity, 1}, {0, 0}, {-1, -2}, {1e-320, 1e300}}) {
        for (const bool bar : {false, true}) {
            sdk::Series one = bar ? bars("b", y) : curve("c", std::vector<double>(y.size(), 1), y);
            for (const bool log : {false, true}) {
                one.logY = log;
                PlotPage page(resultOf({one}), {0});
                page.resize(300, 300);
                page.show();
                EXPECT_FALSE(page.grab().isNull());
                EXPECT_FALSE(page.svg().isEmpty());
            }
        }
    }
}
