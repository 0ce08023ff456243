// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/svg.h"

#include <fmt/format.h>

#include <cmath>
#include <iterator>

namespace cutwater::drawing {
namespace {

// Hundredths of a point are finer than any printer; shorter text is easier to compare.
std::string number(double value) {
    std::string text = fmt::format("{:.2f}", value);
    while (text.back() == '0')
        text.pop_back();
    if (text.back() == '.') text.pop_back();
    return text == "-0" ? "0" : text;
}

// Length of the well-formed UTF-8 character at `at` that XML allows, or 0.
std::size_t characterLength(const std::string& text, std::size_t at) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(at);
    if (lead < 0x80) return lead >= 0x20 || lead == '\t' || lead == '\n' ? 1 : 0;
    const std::size_t length = lead >= 0xF0 ? 4 : lead >= 0xE0 ? 3 : lead >= 0xC2 ? 2 : 0;
    if (length == 0 || lead > 0xF4 || at + length > text.size()) return 0;
    unsigned code = lead & (0xFFu >> (length + 1));
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(at + i) & 0xC0) != 0x80) return 0;
        code = code << 6 | (byte(at + i) & 0x3Fu);
    }
    const bool overlong = (length == 3 && code < 0x800) || (length == 4 && code < 0x10000);
    const bool forbidden =
        (code >= 0xD800 && code <= 0xDFFF) || code == 0xFFFE || code == 0xFFFF || code > 0x10FFFF;
    return overlong || forbidden ? 0 : length;
}

std::string escaped(const std::string& text) {
    std::string result;
    for (std::size_t i = 0; i < text.size();) {
        const std::size_t length = characterLength(text, i);
        if (length == 0) {
            result += "\xEF\xBF\xBD";
            ++i;
            continue;
        }
        switch (text[i]) {
        case '&': result += "&amp;"; break;
        case '<': result += "&lt;"; break;
        case '>': result += "&gt;"; break;
        case '"': result += "&quot;"; break;
        case '\n':
        case '\t': result += ' '; break;
        default: result += text.substr(i, length);
        }
        i += length;
    }
    return result;
}

std::string colour(const Ink& ink) {
    return fmt::format("#{:02x}{:02x}{:02x}", ink.red, ink.green, ink.blue);
}

std::string spot(const Spot& s) {
    return number(s.x) + " " + number(s.y);
}

void write(std::string& out, const Path& path) {
    out += "<path d=\"";
    for (const Step& step : path.steps) {
        switch (step.kind) {
        case StepKind::move: out += "M" + spot(step.end); break;
        case StepKind::line: out += "L" + spot(step.end); break;
        case StepKind::curve:
            out += "C" + spot(step.first) + " " + spot(step.second) + " " + spot(step.end);
            break;
        case StepKind::close: out += "Z"; break;
        }
    }
    out += "\" fill=\"" + (path.fill ? colour(*path.fill) : "none") + "\"";
    if (path.width > 0)
        out += " stroke=\"" + colour(path.line) + "\" stroke-width=\"" + number(path.width) + "\"";
    if (path.dashed) out += " stroke-dasharray=\"3 2\"";
    out += "/>\n";
}

void write(std::string& out, const Text& text) {
    out += "<text x=\"" + number(text.at.x) + "\" y=\"" + number(text.at.y) + "\" font-size=\"" +
           number(text.size) + "\"";
    if (text.anchor == Anchor::middle) out += " text-anchor=\"middle\"";
    if (text.anchor == Anchor::end) out += " text-anchor=\"end\"";
    if (text.bold) out += " font-weight=\"bold\"";
    // A viewer without our font squeezes its own into the same width: no line leaves its box.
    if (text.width > 0)
        out += " textLength=\"" + number(text.width) + "\" lengthAdjust=\"spacingAndGlyphs\"";
    out += " fill=\"" + colour(text.ink) + "\">" + escaped(text.words) + "</text>\n";
}

} // namespace

std::string toSvg(const Picture& picture) {
    std::string out = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    const std::string width = number(picture.width), height = number(picture.height);
    out +=
        fmt::format("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{}pt\" height=\"{}pt\" "
                    "viewBox=\"0 0 {} {}\" role=\"img\" aria-labelledby=\"title desc\" "
                    "font-family=\"{}\" stroke-linejoin=\"round\">\n",
                    width, height, width, height,
                    escaped("'" + picture.family +
                            "', 'Liberation Sans', Arial, Helvetica, 'DejaVu Sans', sans-serif"));
    out += "<title id=\"title\">" + escaped(picture.title) + "</title>\n";
    out += "<desc id=\"desc\">" + escaped(picture.description) + "</desc>\n";
    out += "<path d=\"M0 0L" + width + " 0L" + width + " " + height + "L0 " + height +
           "Z\" fill=\"#ffffff\"/>\n";
    for (const Group& group : picture.groups) {
        out += "<g id=\"" + escaped(group.id) + "\" class=\"" + escaped(group.kind) + "\"";
        if (!group.node.empty()) out += " data-node=\"" + escaped(group.node) + "\"";
        out += ">\n";
        if (!group.title.empty()) out += "<title>" + escaped(group.title) + "</title>\n";
        if (!group.description.empty()) out += "<desc>" + escaped(group.description) + "</desc>\n";
        for (const Mark& mark : group.marks)
            std::visit([&](const auto& one) { write(out, one); }, mark);
        out += "</g>\n";
    }
    out += "</svg>\n";
    return out;
}

} // namespace cutwater::drawing
