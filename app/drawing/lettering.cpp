// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/lettering.h"

#include <QFont>
#include <QFontDatabase>
#include <QFontMetricsF>
#include <QGuiApplication>
#include <QRawFont>
#include <QString>

#include <array>

namespace cutwater::drawing {
namespace {

const std::string kEllipsis = "\xE2\x80\xA6";

// Where the next character of UTF-8 begins; broken bytes count as one character each.
std::size_t nextCharacter(const std::string& text, std::size_t at) {
    ++at;
    while (at < text.size() && (static_cast<unsigned char>(text[at]) & 0xC0) == 0x80)
        ++at;
    return at;
}

bool breaksAfter(char c) {
    return c == '-' || c == '/' || c == '_' || c == '.' || c == ':';
}

// The pieces between which a line may end; a piece keeps the space after it.
std::vector<std::string> pieces(const std::string& text) {
    std::vector<std::string> result;
    bool open = false;
    for (const char c : text) {
        const bool space = c == ' ' || c == '\n' || c == '\t' || c == '\r';
        if (space) {
            if (!result.empty() && result.back().back() != ' ') result.back() += ' ';
            open = false;
            continue;
        }
        if (!open) result.emplace_back();
        result.back() += c;
        open = !breaksAfter(c);
    }
    return result;
}

std::string trimmed(std::string text) {
    while (!text.empty() && text.back() == ' ')
        text.pop_back();
    return text;
}

} // namespace

project::Outcome<Lettering> findLettering() {
    project::Problem none;
    none.what = "no font is installed that can be drawn with";
    none.remedy = "install one, for instance the package fonts-dejavu-core";
    if (!qobject_cast<QGuiApplication*>(QCoreApplication::instance())) {
        none.what = "this program was started without fonts";
        none.remedy = "start it so that it may draw";
        return none;
    }
    const QStringList families = QFontDatabase::families();
    QString chosen;
    for (const char* name : {"Liberation Sans", "Arial", "Nimbus Sans", "Noto Sans", "DejaVu Sans"})
        if (chosen.isEmpty() && families.contains(QLatin1String(name)))
            chosen = QLatin1String(name);
    for (const QString& family : families)
        if (chosen.isEmpty() && QFontDatabase::isSmoothlyScalable(family) &&
            QFontDatabase::writingSystems(family).contains(QFontDatabase::Latin))
            chosen = family;
    if (chosen.isEmpty()) return none;

    // Measured large and without hinting, so that widths hold at every size and resolution.
    constexpr int kPixels = 200;
    QFont plain(chosen);
    plain.setPixelSize(kPixels);
    plain.setHintingPreference(QFont::PreferNoHinting);
    QFont bold = plain;
    bold.setBold(true);
    if (!QRawFont::fromFont(plain).supportsCharacter(QLatin1Char('A'))) return none;
    const std::array<QFontMetricsF, 2> metrics{QFontMetricsF(plain), QFontMetricsF(bold)};
    Lettering lettering;
    lettering.family = chosen.toStdString();
    lettering.measure = [metrics](const std::string& words, double size, bool isBold) {
        return metrics[isBold ? 1 : 0].horizontalAdvance(QString::fromStdString(words)) * size /
               kPixels;
    };
    return lettering;
}

std::vector<std::string> wrap(const std::string& text, double width, std::size_t most, double size,
                              bool bold, const Measure& measure) {
    const auto fits = [&](const std::string& line) {
        return measure(trimmed(line), size, bold) <= width;
    };
    std::vector<std::string> lines;
    std::string line;
    for (const std::string& piece : pieces(text)) {
        if (lines.size() > most) break;
        if (fits(line + piece)) {
            line += piece;
            continue;
        }
        if (!line.empty()) lines.push_back(trimmed(line));
        line.clear();
        if (fits(piece)) {
            line = piece;
            continue;
        }
        for (std::size_t at = 0; at < piece.size() && lines.size() <= most;) {
            const std::size_t next = nextCharacter(piece, at);
            const std::string character = piece.substr(at, next - at);
            if (!line.empty() && !fits(line + character)) {
                lines.push_back(line);
                line.clear();
            }
            line += character;
            at = next;
        }
    }
    if (!trimmed(line).empty()) lines.push_back(trimmed(line));
    if (lines.size() <= most) return lines;
    lines.resize(most);
    std::string& last = lines.back();
    while (!last.empty() && !fits(last + kEllipsis)) {
        last.pop_back();
        while (!last.empty() && (static_cast<unsigned char>(last.back()) & 0xC0) == 0x80)
            last.pop_back();
        // A first byte of a character that has lost the others goes as well.
        if (!last.empty() && (static_cast<unsigned char>(last.back()) & 0xC0) == 0xC0)
            last.pop_back();
    }
    last = trimmed(last) + kEllipsis;
    return lines;
}

} // namespace cutwater::drawing
