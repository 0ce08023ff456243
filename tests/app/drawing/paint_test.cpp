// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/paint.h"
#include "tests/app/drawing/samples.h"

#include <QImage>

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace cutwater {
namespace {

using drawing::Picture;
using drawing::toPdf;
using drawing::toPng;
using ::testing::HasSubstr;

Picture oneWord(const std::string& words) {
    Picture picture;
    picture.width = 100;
    picture.height = 30;
    picture.family = drawing::findLettering()->family;
    drawing::Text text;
    text.words = words;
    text.size = 20;
    text.at = {5, 22};
    text.anchor = drawing::Anchor::start;
    drawing::Group group;
    drawing::add(group.marks, text);
    picture.groups.push_back(group);
    return picture;
}

QImage image(const Picture& picture, int dpi) {
    const auto bytes = toPng(picture, dpi);
    EXPECT_TRUE(bytes) << bytes.problems()[0].what;
    return bytes ? QImage::fromData(QByteArray::fromStdString(*bytes), "PNG") : QImage();
}

std::size_t darkPixels(const QImage& picture) {
    std::size_t count = 0;
    for (int y = 0; y < picture.height(); ++y)
        for (int x = 0; x < picture.width(); ++x)
            if (qGray(picture.pixel(x, y)) < 128) ++count;
    return count;
}

std::size_t countOf(const std::string& text, const std::string& word) {
    std::size_t count = 0;
    for (std::size_t at = text.find(word); at != std::string::npos; at = text.find(word, at + 1))
        ++count;
    return count;
}

TEST(Png, HasTheSizeOfThePaperAndSomethingOnIt) {
    const auto answer = test::drawTop(test::everySymbol());
    ASSERT_TRUE(answer.content);
    const Picture& picture = answer.content->sheets[0].picture;
    const QImage drawn = image(picture, 144);
    EXPECT_NEAR(drawn.width(), picture.width * 2, 1);
    EXPECT_NEAR(drawn.height(), picture.height * 2, 1);
    EXPECT_NEAR(drawn.dotsPerMeterX() * 0.0254, 144, 0.1);
    EXPECT_GT(darkPixels(drawn), 5000u);
    EXPECT_EQ(drawn.pixel(2, 2), qRgb(255, 255, 255));
}

TEST(Png, LettersAreLettersAndNotBoxes) {
    // Without a font every letter is the same box: these three would look alike.
    const QImage i = image(oneWord("iiii"), 144), w = image(oneWord("WWWW"), 144),
                 o = image(oneWord("oooo"), 144);
    EXPECT_GT(darkPixels(i), 20u);
    EXPECT_GT(darkPixels(w), 2 * darkPixels(i));
    EXPECT_NE(w, o);
    EXPECT_NE(i, o);
}

TEST(Png, IsTheSameEveryTime) {
    EXPECT_EQ(*toPng(oneWord("same"), 100), *toPng(oneWord("same"), 100));
}

TEST(Png, AResolutionOutOfRangeIsRefusedWithTheRange) {
    for (const int dpi : {0, 29, 601, 100000}) {
        const auto bytes = toPng(oneWord("x"), dpi);
        ASSERT_FALSE(bytes);
        EXPECT_THAT(bytes.problems()[0].remedy, HasSubstr("30 to 600"));
    }
}

TEST(Pdf, HasOnePageASheetAndItsFontInside) {
    const auto answer = test::drawTop(test::randomProject(2, 90));
    ASSERT_TRUE(answer.content);
    std::vector<Picture> pictures;
    for (const drawing::Sheet& sheet : answer.content->sheets)
        pictures.push_back(sheet.picture);
    ASSERT_GT(pictures.size(), 2u);
    const auto pdf = toPdf(pictures, "title");
    ASSERT_TRUE(pdf);
    EXPECT_EQ(pdf->substr(0, 5), "%PDF-");
    EXPECT_EQ(countOf(*pdf, "/Type /Page\n"), pictures.size());
    EXPECT_GE(countOf(*pdf, "/FontFile2"), 1u);
    EXPECT_EQ(countOf(*pdf, "/Subtype /Image"), 0u); // vectors, not a picture of the sheet
}

TEST(Pdf, WithoutASheetIsAProblem) {
    EXPECT_FALSE(toPdf({}, "title"));
}

} // namespace
} // namespace cutwater
