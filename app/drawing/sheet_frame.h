// SPDX-License-Identifier: GPL-3.0-or-later
// The frame of a printed sheet: border, legend, title block and the words of caution.
#pragma once

#include "app/drawing/lettering.h"
#include "app/drawing/picture.h"
#include "app/drawing/symbols.h"
#include "models/project/project.h"

#include <set>
#include <string>
#include <vector>

namespace cutwater::drawing {

inline constexpr const char* kStandingCaution =
    "This sheet helps thinking. It replaces no maker's manual, class or flag rule, permit, or "
    "competent person.";

struct FrameWords {
    std::string topEvent, topRemark; // name and id; the state of the plant it is asked in
    std::string sheetTitle;          // what this sheet shows
    std::string project, plant;
    std::string revision, date, preparedBy, checkedBy;
    std::vector<std::string> cautions; // after the standing one
    int sheet = 1, sheets = 1;
};

struct FrameLegend {
    std::set<SymbolKind> symbols;
    bool marked = false;      // something is drawn heavy
    std::string valuesRemark; // what the numbers at the events are
};

class SheetFrame {
public:
    // Paper size in points, the words of any of the sheets, and the legend of all of them together:
    // it decides how much room the frame takes.
    SheetFrame(double width, double height, const FrameWords& words, const FrameLegend& legend,
               const Lettering& lettering);

    const Box& room() const { return m_room; } // left for the tree

    // Adds border, legend and title block to the picture.
    void draw(Picture& picture, const FrameWords& words, const FrameLegend& legend) const;

private:
    std::vector<std::string> cautionLines(const FrameWords& words) const;
    double legendHeight(const FrameLegend& legend) const;
    void drawLegend(Picture& picture, const FrameLegend& legend) const;
    void drawTitleBlock(Picture& picture, const FrameWords& words) const;

    Lettering m_lettering;
    Box m_border, m_room, m_legend, m_title, m_caution;
};

} // namespace cutwater::drawing
