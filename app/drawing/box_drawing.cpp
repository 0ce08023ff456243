// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/box_drawing.h"

#include "app/drawing/palette.h"

namespace cutwater::drawing {
namespace {

Text line(std::string words, Spot at, Anchor anchor, bool bold, const Lettering& lettering) {
    Text text;
    text.width = lettering.measure(words, kTextSize, bold);
    text.words = std::move(words);
    text.at = at;
    text.anchor = anchor;
    text.size = kTextSize;
    text.bold = bold;
    text.ink = kBlack;
    return text;
}

Path stroke(Path path, double width, Ink ink) {
    path.width = width;
    path.line = ink;
    return path;
}

// Where words stand inside a symbol: the wide part of a triangle is its foot, of a gate its middle.
double insideHeight(SymbolKind symbol) {
    switch (symbol) {
    case SymbolKind::transferIn: return 0.86;
    case SymbolKind::vote: return 0.64;
    case SymbolKind::house: return 0.78;
    default: return 0.58;
    }
}

// A triangle at the stem: this box is drawn here and used on the sheets named. On the left where
// the right is taken.
void addUsedOn(std::vector<Mark>& marks, const BoxWords& words, Spot at, double symbolTop,
               const Lettering& lettering) {
    constexpr double kTriangle = 7, kReach = kSymbolWide / 2 + 13;
    const Box box{at.x, symbolTop - kStem / 2 - kTriangle / 2, kReach, kTriangle};
    for (Path path : symbolPaths(SymbolKind::transferOut, box, {kThin, kBlack, true})) {
        if (words.rightTaken)
            for (Step& step : path.steps)
                step.end.x = 2 * at.x - step.end.x;
        add(marks, std::move(path));
    }
    const double side = words.rightTaken ? -1 : 1;
    add(marks, line(words.usedOn, {at.x + side * (kReach - kTriangle * 0.6), box.bottom() + 7},
                    Anchor::middle, false, lettering));
}

// A folded gate: its foot ends in a stack of lines, and the words say what lies in it.
void addFolded(std::vector<Mark>& marks, const BoxWords& words, Spot foot, double width, Ink ink,
               const Lettering& lettering) {
    const double room = lettering.measure(words.folded, kTextSize, true) / 2 + 4;
    constexpr double kHigh = 9.2;
    Path tab = stroke(rectangle({foot.x - room, foot.y + 0.8, 2 * room, kHigh}), width, ink);
    tab.fill = kWhite;
    add(marks, stroke(polygon({foot, {foot.x, foot.y + 0.8}}, false), width, ink));
    add(marks, std::move(tab));
    add(marks, stroke(polygon({{foot.x - room + 2, foot.y + kHigh + 2.2},
                               {foot.x + room - 2, foot.y + kHigh + 2.2}},
                              false),
                      width, ink));
    add(marks, line(words.folded, {foot.x, foot.y + kHigh - 1.4}, Anchor::middle, true, lettering));
}

} // namespace

double boxHeight(double text, bool isGate) {
    return text + kStem + kSymbolHigh + (isGate ? kGateFoot : kUnderText);
}

std::vector<Mark> drawBox(SymbolKind symbol, const BoxWords& words, Spot at, double text,
                          const Lettering& lettering) {
    std::vector<Mark> marks;
    const Ink ink = words.marked ? kMarked : kBlack;
    const double width = words.marked ? kHeavy : kLine;
    const double symbolTop = at.y + text + kStem;

    add(marks, stroke(polygon({{at.x, at.y + text}, {at.x, symbolTop}}, false), width, ink));
    Path frame = stroke(rectangle({at.x - kBoxWidth / 2, at.y, kBoxWidth, text}),
                        words.marked ? kHeavy : kThin, ink);
    frame.fill = kWhite;
    frame.dashed = words.dashed;
    add(marks, frame);
    double y = at.y + (text - static_cast<double>(words.label.lines()) * kLineHeight) / 2 + 6.6;
    for (const std::string& name : words.label.name) {
        add(marks, line(name, {at.x, y}, Anchor::middle, false, lettering));
        y += kLineHeight;
    }
    for (const std::string& id : words.label.id) {
        add(marks, line(id, {at.x, y}, Anchor::middle, true, lettering));
        y += kLineHeight;
    }

    const Box box{at.x - kSymbolWide / 2, symbolTop, kSymbolWide, kSymbolHigh};
    for (const Path& path : symbolPaths(symbol, box, {width, ink, true}))
        add(marks, path);
    if (words.hasFoot)
        add(marks, stroke(polygon({{at.x, box.bottom()}, {at.x, box.bottom() + kGateFoot}}, false),
                          kLine, kBlack));
    if (!words.inside.empty())
        add(marks, line(words.inside, {at.x, box.top + box.height * insideHeight(symbol)},
                        Anchor::middle, true, lettering));
    if (!words.under.empty())
        add(marks, line(words.under, {at.x, box.bottom() + 8}, Anchor::middle, false, lettering));
    if (!words.atLeft.empty())
        add(marks, line(words.atLeft, {box.left - 2, box.top + box.height * 0.8}, Anchor::end,
                        false, lettering));
    if (!words.folded.empty())
        addFolded(marks, words, {at.x, box.bottom()}, width * 0.7, ink, lettering);
    if (!words.usedOn.empty()) addUsedOn(marks, words, at, symbolTop, lettering);
    if (words.marked) {
        Path dot = stroke(ellipse({at.x - kBoxWidth / 2, at.y}, 3.4, 3.4), 0, ink);
        dot.fill = ink;
        add(marks, dot);
    }
    return marks;
}

void place(std::vector<Mark>& marks, double scale, Spot origin) {
    const auto moved = [&](Spot spot) {
        return Spot{origin.x + spot.x * scale, origin.y + spot.y * scale};
    };
    for (Mark& mark : marks) {
        if (Path* path = std::get_if<Path>(&mark))
            for (Step& step : path->steps)
                step = {step.kind, moved(step.first), moved(step.second), moved(step.end)};
        if (Text* text = std::get_if<Text>(&mark)) {
            text->at = moved(text->at);
            text->size *= scale;
            text->width *= scale;
        }
    }
}

} // namespace cutwater::drawing
