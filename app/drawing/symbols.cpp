// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/symbols.h"

#include "app/drawing/palette.h"

#include <algorithm>
#include <array>

namespace cutwater::drawing {
namespace {

struct Facts {
    SymbolKind kind;
    const char* name;
    const char* legend;
    Ink fill;
};

constexpr std::array<Facts, 13> kFacts = {{
    {SymbolKind::andGate, "and gate", "and: all inputs occur", kGateFill},
    {SymbolKind::orGate, "or gate", "or: any input occurs", kGateFill},
    {SymbolKind::vote, "vote gate", "vote: at least k of n occur", kGateFill},
    {SymbolKind::exactlyOne, "exclusive or gate", "exclusive or: exactly one occurs", kGateFill},
    {SymbolKind::notGate, "not gate", "not: the input does not occur", kGateFill},
    {SymbolKind::inhibit, "inhibit gate", "inhibit: input, while condition holds", kGateFill},
    {SymbolKind::priorityAnd, "priority and gate", "priority and: all, left to right", kGateFill},
    {SymbolKind::basic, "basic event", "basic event", kEventFill},
    {SymbolKind::undeveloped, "undeveloped event", "event not developed further", kUndevelopedFill},
    {SymbolKind::house, "house event", "house event: set true or false", kHouseFill},
    {SymbolKind::conditioning, "conditioning event", "condition", kConditionFill},
    {SymbolKind::transferIn, "transfer", "drawn on the sheet named", kWhite},
    {SymbolKind::transferOut, "transfer", "used on the sheets named", kWhite},
}};

const Facts& factsOf(SymbolKind kind) {
    return kFacts[static_cast<std::size_t>(kind)];
}

// Flat bottom, straight sides, dome.
Path domePath(const Box& b) {
    const double shoulder = b.top + b.height * 0.52;
    const double k = 0.5522847498, half = b.width / 2, rise = shoulder - b.top;
    Path path;
    path.moveTo({b.left, b.bottom()}).lineTo({b.left, shoulder});
    path.curveTo({b.left, shoulder - k * rise}, {b.middle() - k * half, b.top},
                 {b.middle(), b.top});
    path.curveTo({b.middle() + k * half, b.top}, {b.right(), shoulder - k * rise},
                 {b.right(), shoulder});
    return path.lineTo({b.right(), b.bottom()}).close();
}

// How far the bottom of an or gate is hollow.
double hollow(const Box& b) {
    return b.height * 0.2;
}

// Hollow bottom, sides that meet in a point.
Path pointedPath(const Box& b) {
    const double dip = hollow(b) * 4 / 3; // a cubic with both controls there reaches 3/4 of it
    Path path;
    path.moveTo({b.left, b.bottom()});
    path.curveTo({b.left, b.top + b.height * 0.5}, {b.left + b.width * 0.2, b.top + b.height * 0.2},
                 {b.middle(), b.top});
    path.curveTo({b.right() - b.width * 0.2, b.top + b.height * 0.2},
                 {b.right(), b.top + b.height * 0.5}, {b.right(), b.bottom()});
    path.curveTo({b.right() - b.width * 0.25, b.bottom() - dip},
                 {b.left + b.width * 0.25, b.bottom() - dip}, {b.left, b.bottom()});
    return path.close();
}

// The input line goes on to where the hollow begins.
Path stub(const Box& b) {
    return polygon({{b.middle(), b.bottom()}, {b.middle(), b.bottom() - hollow(b)}}, false);
}

std::vector<Path> exclusivePaths(const Box& b) {
    const double away = b.height * 0.13;
    const Box body{b.left, b.top, b.width, b.height - away};
    const double dip = hollow(b) * 4 / 3;
    Path second;
    second.moveTo({b.left, b.bottom()});
    second.curveTo({b.left + b.width * 0.25, b.bottom() - dip},
                   {b.right() - b.width * 0.25, b.bottom() - dip}, {b.right(), b.bottom()});
    return {pointedPath(body), second, stub(b)};
}

std::vector<Path> notPaths(const Box& b) {
    const double r = b.height * 0.12, tip = b.top + 2 * r, half = b.height * 0.5;
    return {
        polygon(
            {{b.middle(), tip}, {b.middle() + half, b.bottom()}, {b.middle() - half, b.bottom()}},
            true),
        ellipse({b.middle(), b.top + r}, r, r)};
}

Path hexagon(const Box& b) {
    const double quarter = b.height * 0.27;
    return polygon({{b.middle(), b.top},
                    {b.right(), b.top + quarter},
                    {b.right(), b.bottom() - quarter},
                    {b.middle(), b.bottom()},
                    {b.left, b.bottom() - quarter},
                    {b.left, b.top + quarter}},
                   true);
}

Path triangle(const Box& b) {
    return polygon({{b.middle(), b.top}, {b.right(), b.bottom()}, {b.left, b.bottom()}}, true);
}

std::vector<Path> outlines(SymbolKind kind, const Box& b) {
    const Spot centre{b.middle(), b.top + b.height / 2};
    const double half = std::min(b.width, b.height) / 2;
    switch (kind) {
    case SymbolKind::andGate: return {domePath(b)};
    case SymbolKind::orGate:
    case SymbolKind::vote: return {pointedPath(b), stub(b)};
    case SymbolKind::exactlyOne: return exclusivePaths(b);
    case SymbolKind::notGate: return notPaths(b);
    case SymbolKind::inhibit: return {hexagon(b)};
    case SymbolKind::priorityAnd:
        return {domePath(b), polygon({{b.left, b.bottom()},
                                      {b.middle(), b.top + b.height * 0.42},
                                      {b.right(), b.bottom()}},
                                     false)};
    case SymbolKind::basic: return {ellipse(centre, half, half)};
    case SymbolKind::undeveloped:
        return {polygon({{b.middle(), b.top},
                         {b.right(), centre.y},
                         {b.middle(), b.bottom()},
                         {b.left, centre.y}},
                        true)};
    case SymbolKind::house:
        return {polygon({{b.middle(), b.top},
                         {b.middle() + half, b.top + b.height * 0.4},
                         {b.middle() + half, b.bottom()},
                         {b.middle() - half, b.bottom()},
                         {b.middle() - half, b.top + b.height * 0.4}},
                        true)};
    case SymbolKind::conditioning: {
        const double halfHeight = b.height * 0.36;
        return {polygon({{b.middle(), b.top}, {b.middle(), centre.y - halfHeight}}, false),
                ellipse(centre, b.width * kOvalReach, halfHeight)};
    }
    case SymbolKind::transferIn: return {triangle(b)};
    case SymbolKind::transferOut: {
        // The line comes from the side: what stands there goes out to other sheets.
        const Box tip{b.right() - b.height * 1.2, b.top, b.height * 1.2, b.height};
        return {polygon({{b.left, centre.y}, {tip.left + tip.width / 4, centre.y}}, false),
                triangle(tip)};
    }
    }
    return {};
}

} // namespace

SymbolKind symbolOf(project::GateKind kind) {
    switch (kind) {
    case project::GateKind::andGate: return SymbolKind::andGate;
    case project::GateKind::orGate: return SymbolKind::orGate;
    case project::GateKind::vote: return SymbolKind::vote;
    case project::GateKind::inhibit: return SymbolKind::inhibit;
    case project::GateKind::exactlyOne: return SymbolKind::exactlyOne;
    case project::GateKind::notGate: return SymbolKind::notGate;
    case project::GateKind::priorityAnd: return SymbolKind::priorityAnd;
    }
    return SymbolKind::orGate;
}

SymbolKind symbolOf(project::EventKind kind) {
    switch (kind) {
    case project::EventKind::basic: return SymbolKind::basic;
    case project::EventKind::undeveloped: return SymbolKind::undeveloped;
    case project::EventKind::house: return SymbolKind::house;
    case project::EventKind::conditioning: return SymbolKind::conditioning;
    }
    return SymbolKind::basic;
}

std::string nameOf(SymbolKind kind) {
    return factsOf(kind).name;
}

std::string legendOf(SymbolKind kind) {
    return factsOf(kind).legend;
}

std::vector<Path> symbolPaths(SymbolKind kind, const Box& box, const SymbolLook& look) {
    std::vector<Path> paths = outlines(kind, box);
    for (Path& path : paths) {
        path.width = look.lineWidth;
        path.line = look.line;
        const bool closed = path.steps.back().kind == StepKind::close;
        if (closed && look.filled) path.fill = factsOf(kind).fill;
    }
    return paths;
}

} // namespace cutwater::drawing
