// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/risk_drawing.h"

#include "app/drawing/palette.h"
#include "app/drawing/sheet_frame.h"

#include <fmt/format.h>

#include <algorithm>

namespace cutwater::drawing {
namespace {

using project::RiskLevel;
using worksheet::RiskItem;
using worksheet::RiskPicture;

// Points on a landscape A4.
constexpr double kWidth = 842, kHeight = 595, kMargin = 30;
constexpr double kTitleHeight = 54, kFootHeight = 54, kSideWidth = 120, kHeadHeight = 40;
constexpr double kSmall = 7, kNormal = 8.5, kLarge = 15;

// From white to a light grey-red: pale enough to vanish in grey print.
Ink shadeOf(double share) {
    const auto mix = [&](int from, int to) {
        return static_cast<std::uint8_t>(from + (to - from) * share);
    };
    return {mix(255, 240), mix(255, 200), mix(255, 190)};
}

class RiskSheet {
public:
    RiskSheet(const project::Project& project, const RiskPicture& risks, const Lettering& lettering)
        : m_project(project), m_risks(risks), m_lettering(lettering) {
        m_picture.width = kWidth;
        m_picture.height = kHeight;
        m_picture.family = lettering.family;
        m_picture.title = "Risk matrix: " + project.name;
        m_picture.description =
            fmt::format("Risk index by frequency and severity, after {}.", matrixName());
    }

    Picture draw() {
        frame();
        const auto& rows = m_risks.matrix.frequencies;
        const auto& columns = m_risks.matrix.severities;
        if (rows.empty() || columns.empty()) return std::move(m_picture);
        const double width =
            (kWidth - 2 * kMargin - kSideWidth) / static_cast<double>(columns.size());
        const double height = (kHeight - 2 * kMargin - kTitleHeight - kHeadHeight - kFootHeight) /
                              static_cast<double>(rows.size());
        const double top = kMargin + kTitleHeight + kHeadHeight;
        range();
        for (std::size_t c = 0; c < columns.size(); ++c)
            head(columns[c],
                 {kMargin + kSideWidth + static_cast<double>(c) * width, kMargin + kTitleHeight,
                  width, kHeadHeight},
                 "SI", "");
        for (std::size_t r = 0; r < rows.size(); ++r) {
            // The most frequent on top.
            const RiskLevel& row = rows[rows.size() - 1 - r];
            const double y = top + static_cast<double>(r) * height;
            head(row, {kMargin, y, kSideWidth, height}, "FI",
                 row.value ? fmt::format("{:g} /y", *row.value) : "");
            for (std::size_t c = 0; c < columns.size(); ++c)
                cell(row, columns[c],
                     {kMargin + kSideWidth + static_cast<double>(c) * width, y, width, height});
        }
        return std::move(m_picture);
    }

private:
    std::string matrixName() const {
        return m_risks.matrix.name.empty() ? "the project's own matrix" : m_risks.matrix.name;
    }

    void words(Group& group, Spot at, Anchor anchor, double size, bool bold, Ink ink,
               const std::string& text) {
        Text mark;
        mark.at = at;
        mark.anchor = anchor;
        mark.size = size;
        mark.bold = bold;
        mark.ink = ink;
        mark.words = text;
        mark.width = m_lettering.measure(text, size, bold);
        add(group.marks, std::move(mark));
    }

    // Lines from the top of the box down; those that do not fit are left out.
    void lines(Group& group, const Box& box, const std::string& text, double size, bool bold,
               Ink ink, std::size_t most) {
        const auto all = wrap(text, box.width - 8, most, size, bold, m_lettering.measure);
        double y = box.top + size + 3;
        for (const std::string& line : all) {
            if (y > box.bottom() - 1) return;
            words(group, {box.left + 4, y}, Anchor::start, size, bold, ink, line);
            y += size * 1.25;
        }
    }

    void outline(Group& group, const Box& box, std::optional<Ink> fill) {
        Path path = rectangle(box);
        path.width = kThin;
        path.line = kBlack;
        path.fill = fill;
        add(group.marks, std::move(path));
    }

    void frame() {
        Group group;
        group.id = "frame";
        group.kind = "frame";
        group.title = "title and caution";
        words(group, {kMargin, kMargin + 14}, Anchor::start, 14, true, kBlack, "Risk matrix");
        // A project without a name has no such line.
        const auto name = wrap(fmt::format("{}{}{}", m_project.name,
                                           m_project.plant.empty() ? "" : "; ", m_project.plant),
                               kWidth - 2 * kMargin, 1, kNormal, false, m_lettering.measure);
        if (!name.empty())
            words(group, {kMargin, kMargin + 30}, Anchor::start, kNormal, false, kBlack,
                  name.front());
        const auto& source = m_risks.matrix.source;
        words(group, {kMargin, kMargin + 44}, Anchor::start, kSmall, false, kSoft,
              fmt::format("RI = FI + SI; {}{}. Revision {}, {}.", matrixName(),
                          source.document.empty()
                              ? ""
                              : fmt::format(" ({}, {})", source.document, source.place),
                          m_project.revision.empty() ? "-" : m_project.revision,
                          m_project.date.empty() ? "undated" : m_project.date));
        std::size_t left = 0;
        for (const RiskItem& item : m_risks.items)
            left += item.riskIndex ? 0 : 1;
        const double y = kHeight - kMargin - kFootHeight;
        std::string foot = fmt::format(
            "{} Who signs decides what may be borne. Placed by computed frequency; {} could not be "
            "placed. Probabilities are estimates with wide limits.",
            kStandingCaution, left);
        for (const std::string& own : m_project.cautions)
            foot += " " + own;
        lines(group, {kMargin - 4, y + 4, kWidth - 2 * kMargin + 8, kFootHeight}, foot, kSmall,
              false, kBlack, 5);
        m_picture.groups.push_back(std::move(group));
    }

    void head(const RiskLevel& level, const Box& box, const char* axis, const std::string& value) {
        Group group;
        const int index = level.index.value_or(0);
        group.id = fmt::format("{}-{}", axis, index);
        group.kind = "legend";
        group.title = fmt::format("{} {} {}", axis, index, level.word);
        group.description = level.meaning;
        outline(group, box, kGateFill);
        std::string text = fmt::format("{} {}", axis, index);
        if (!level.word.empty()) text += " " + level.word;
        lines(group, box, text, kNormal, true, kBlack, 2);
        const bool twoLines =
            wrap(text, box.width - 8, 2, kNormal, true, m_lettering.measure).size() > 1;
        const double down = kNormal * (twoLines ? 2.6 : 1.35);
        lines(group,
              {box.left, box.top + down, box.width, box.height - down - (value.empty() ? 0 : 9)},
              level.meaning, 6.5, false, kSoft, 3);
        if (!value.empty())
            words(group, {box.left + 4, box.bottom() - 4}, Anchor::start, kSmall, false, kSoft,
                  value);
        m_picture.groups.push_back(std::move(group));
    }

    void range() {
        const auto& rows = m_risks.matrix.frequencies;
        const auto& columns = m_risks.matrix.severities;
        m_lowest = rows.front().index.value_or(0) + columns.front().index.value_or(0);
        m_highest = rows.back().index.value_or(0) + columns.back().index.value_or(0);
    }

    void cell(const RiskLevel& frequency, const RiskLevel& severity, const Box& box) {
        const int fi = frequency.index.value_or(0), si = severity.index.value_or(0);
        const int index = fi + si;
        const auto items = m_risks.at(fi, si);
        std::vector<std::string> tops;
        std::size_t modes = 0;
        for (const RiskItem* item : items) {
            if (item->isTop)
                tops.push_back(item->id);
            else
                ++modes;
        }
        Group group;
        group.id = fmt::format("cell-{}-{}", fi, si);
        group.kind = "cell";
        group.title = fmt::format("risk index {}", index);
        group.description = fmt::format("{} top events and {} failure modes", tops.size(), modes);
        const double span = std::max(1, m_highest - m_lowest);
        outline(group, box, shadeOf((index - m_lowest) / span));
        words(group, {box.left + 5, box.top + kLarge + 1}, Anchor::start, kLarge, true, kBlack,
              fmt::format("{}", index));
        if (const auto* band = worksheet::bandOf(m_risks.matrix, index);
            band && !band->word.empty())
            words(group, {box.right() - 4, box.top + kNormal + 2}, Anchor::end, kSmall, false,
                  kSoft, band->word);
        std::string text = fmt::format("{}", fmt::join(tops, ", "));
        if (modes > 0)
            text += fmt::format("{}{} failure mode{}", text.empty() ? "" : "; ", modes,
                                modes == 1 ? "" : "s");
        if (!text.empty())
            lines(group, {box.left + 30, box.top + 9, box.width - 32, box.height - 9}, text,
                  kNormal, false, kBlack, 4);
        m_picture.groups.push_back(std::move(group));
    }

    const project::Project& m_project;
    const RiskPicture& m_risks;
    const Lettering& m_lettering;
    Picture m_picture;
    int m_lowest = 0, m_highest = 1;
};

} // namespace

Picture drawRisks(const project::Project& project, const RiskPicture& risks,
                  const Lettering& lettering) {
    return RiskSheet(project, risks, lettering).draw();
}

} // namespace cutwater::drawing
