// SPDX-License-Identifier: GPL-3.0-or-later
#include "plugins/paper-report/svg_painter.h"

#include <QFont>
#include <QFontMetricsF>
#include <QPainter>
#include <QPainterPath>
#include <QXmlStreamReader>

#include <optional>
#include <vector>

namespace cutwater::paper_report {
namespace {

struct Shape {
    QPainterPath path;
    QPen pen;
    QBrush brush;
};
struct Words {
    QString text;
    QPointF at;
    QFont font;
    QColor ink;
    double size = 0;  // units of the drawing
    double width = 0; // that they are squeezed to
    Qt::Alignment side = Qt::AlignLeft;
};
struct Mark { // one of the two
    std::optional<Shape> shape;
    std::optional<Words> words;
};

// M, L, C and Z with absolute numbers; nothing where there is anything else.
std::optional<QPainterPath> pathOf(QStringView data) {
    QPainterPath path;
    qsizetype at = 0;
    const auto number = [&]() -> std::optional<double> {
        while (at < data.size() && (data[at].isSpace() || data[at] == ','))
            ++at;
        const qsizetype from = at;
        while (at < data.size() && (data[at].isDigit() || data[at] == '.' || data[at] == '-' ||
                                    data[at] == 'e' || data[at] == '+'))
            ++at;
        bool good = false;
        const double value = data.mid(from, at - from).toDouble(&good);
        if (!good) return std::nullopt;
        return value;
    };
    const auto spot = [&]() -> std::optional<QPointF> {
        const auto x = number(), y = number();
        if (!x || !y) return std::nullopt;
        return QPointF(*x, *y);
    };
    while (at < data.size()) {
        const QChar letter = data[at++];
        if (letter.isSpace()) continue;
        if (letter == 'Z') {
            path.closeSubpath();
        } else if (letter == 'M' || letter == 'L') {
            const auto to = spot();
            if (!to) return std::nullopt;
            letter == 'M' ? path.moveTo(*to) : path.lineTo(*to);
        } else if (letter == 'C') {
            const auto first = spot(), second = spot(), to = spot();
            if (!first || !second || !to) return std::nullopt;
            path.cubicTo(*first, *second, *to);
        } else {
            return std::nullopt;
        }
    }
    return path;
}

QString attribute(const QXmlStreamReader& xml, const char* name) {
    return xml.attributes().value(QLatin1String(name)).toString();
}

std::optional<Shape> shapeOf(const QXmlStreamReader& xml) {
    const QString data = attribute(xml, "d");
    auto path = pathOf(data);
    if (!path) return std::nullopt;
    Shape shape{*path, Qt::NoPen, Qt::NoBrush};
    if (const QString fill = attribute(xml, "fill"); fill != "none") shape.brush = QColor(fill);
    if (const QString stroke = attribute(xml, "stroke"); !stroke.isEmpty()) {
        const double width = attribute(xml, "stroke-width").toDouble();
        shape.pen = QPen(QColor(stroke), width, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
        const QString dashes = attribute(xml, "stroke-dasharray");
        if (!dashes.isEmpty() && width > 0) {
            QList<qreal> pattern;
            for (const QString& dash : dashes.split(' ', Qt::SkipEmptyParts))
                pattern << dash.toDouble() / width;
            shape.pen.setDashPattern(pattern);
        }
    }
    return shape;
}

Words wordsOf(QXmlStreamReader& xml, const QString& family) {
    Words words;
    words.at = {attribute(xml, "x").toDouble(), attribute(xml, "y").toDouble()};
    words.font = QFont(family);
    words.font.setPixelSize(100); // scaled down: pixel sizes are whole numbers
    words.font.setBold(attribute(xml, "font-weight") == "bold");
    words.ink = QColor(attribute(xml, "fill"));
    words.width = attribute(xml, "textLength").toDouble();
    const QString anchor = attribute(xml, "text-anchor");
    words.side = anchor == "middle" ? Qt::AlignHCenter
                 : anchor == "end"  ? Qt::AlignRight
                                    : Qt::AlignLeft;
    words.size = attribute(xml, "font-size").toDouble();
    words.text = xml.readElementText();
    if (words.width <= 0)
        words.width = QFontMetricsF(words.font).horizontalAdvance(words.text) * words.size / 100;
    return words;
}

void paint(QPainter& painter, const Words& words) {
    const double natural = QFontMetricsF(words.font).horizontalAdvance(words.text);
    if (natural <= 0) return;
    painter.save();
    const double shift = words.side == Qt::AlignHCenter ? words.width / 2
                         : words.side == Qt::AlignRight ? words.width
                                                        : 0;
    painter.translate(words.at.x() - shift, words.at.y());
    painter.scale(words.width / natural, words.size / 100);
    painter.setFont(words.font);
    painter.setPen(words.ink);
    painter.drawText(QPointF(0, 0), words.text);
    painter.restore();
}

} // namespace

bool paintDrawing(QPainter& painter, const QByteArray& svg) {
    QXmlStreamReader xml(svg);
    QString family;
    std::vector<Mark> marks;
    while (!xml.atEnd()) {
        if (xml.readNext() != QXmlStreamReader::StartElement) continue;
        const QStringView name = xml.name();
        if (name == u"svg") {
            family = attribute(xml, "font-family").section(',', 0, 0).remove('\'').trimmed();
        } else if (name == u"path") {
            auto shape = shapeOf(xml);
            if (!shape) return false;
            marks.push_back({std::move(shape), std::nullopt});
        } else if (name == u"text") {
            marks.push_back({std::nullopt, wordsOf(xml, family)});
        } else if (name == u"title" || name == u"desc") {
            xml.skipCurrentElement();
        } else if (name != u"g") {
            return false;
        }
    }
    if (xml.hasError()) return false;
    for (const Mark& mark : marks) {
        if (mark.words) {
            paint(painter, *mark.words);
            continue;
        }
        painter.setPen(mark.shape->pen);
        painter.setBrush(mark.shape->brush);
        painter.drawPath(mark.shape->path);
    }
    return true;
}

} // namespace cutwater::paper_report
