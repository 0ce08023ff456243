// SPDX-License-Identifier: GPL-3.0-or-later
// Picture: what stands on a sheet, as a list of lines, areas and texts. Lengths in points (1/72
// inch) on the paper, y downwards. An SVG writer and a painter turn it into something to look at.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace cutwater::drawing {

struct Spot {
    double x = 0, y = 0;
    bool operator==(const Spot&) const = default;
};

struct Box {
    double left = 0, top = 0, width = 0, height = 0;
    double right() const { return left + width; }
    double bottom() const { return top + height; }
    double middle() const { return left + width / 2; }
    bool operator==(const Box&) const = default;
};

struct Ink {
    std::uint8_t red = 0, green = 0, blue = 0;
    bool operator==(const Ink&) const = default;
};

enum class StepKind { move, line, curve, close };

// A curve is a cubic one: two control points and its end. Move and line use `end` only.
struct Step {
    StepKind kind = StepKind::move;
    Spot first, second, end;
};

struct Path {
    std::vector<Step> steps;
    double width = 0.8; // of the line, points; 0: no line
    Ink line;
    std::optional<Ink> fill;
    bool dashed = false;

    Path& moveTo(Spot spot);
    Path& lineTo(Spot spot);
    Path& curveTo(Spot first, Spot second, Spot end);
    Path& close();
};

enum class Anchor { start, middle, end };

struct Text {
    Spot at; // on the base line
    Anchor anchor = Anchor::middle;
    double size = 7; // points
    bool bold = false;
    Ink ink;
    std::string words; // UTF-8, one line
    double width = 0;  // as measured with the font it was made for, points
};

using Mark = std::variant<Path, Text>;

// Not inline: g++ 12 sees uninitialised members where it inlines the variant's moves.
void add(std::vector<Mark>& marks, Path path);
void add(std::vector<Mark>& marks, Text text);

// Marks that belong together: an event, a gate, a line of the tree. An editor or a test finds it by
// `id`, a reader with a screen reader by `title` and `description`.
struct Group {
    std::string id;          // unique in the picture; letters, digits, '-', '_', '.'
    std::string kind;        // "gate", "event", "transfer", "line", "frame", "legend"
    std::string node;        // id of the event or gate, or empty
    std::string title;       // its whole name
    std::string description; // its kind and connections in words
    std::vector<Mark> marks;
};

struct Picture {
    double width = 0, height = 0;
    std::string title, description;
    std::string family; // of the font that texts were measured with
    std::vector<Group> groups;
};

Path rectangle(const Box& box);
Path ellipse(Spot centre, double halfWidth, double halfHeight);
// Closed where `closed` is set.
Path polygon(const std::vector<Spot>& spots, bool closed);

// The size of the smallest text in the picture; 0 where there is none.
double smallestType(const Picture& picture);

} // namespace cutwater::drawing
