// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/paint.h"

#include <QBuffer>
#include <QByteArray>
#include <QFont>
#include <QImage>
#include <QMarginsF>
#include <QPageSize>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPdfWriter>

#include <fmt/format.h>

#include <cmath>

namespace cutwater::drawing {
namespace {

project::Problem problem(std::string what, std::string remedy) {
    project::Problem result;
    result.what = std::move(what);
    result.remedy = std::move(remedy);
    return result;
}

QColor colour(const Ink& ink) {
    return QColor(ink.red, ink.green, ink.blue);
}

QPainterPath shapeOf(const Path& path, double k) {
    const auto at = [k](const Spot& s) { return QPointF(s.x * k, s.y * k); };
    QPainterPath shape;
    for (const Step& step : path.steps) {
        switch (step.kind) {
        case StepKind::move: shape.moveTo(at(step.end)); break;
        case StepKind::line: shape.lineTo(at(step.end)); break;
        case StepKind::curve: shape.cubicTo(at(step.first), at(step.second), at(step.end)); break;
        case StepKind::close: shape.closeSubpath(); break;
        }
    }
    return shape;
}

// On pixels letters are moved to whole ones, and a line grows out of its box: outlines do not.
QPainterPath lettersOf(const Text& text, QFont font, double k) {
    constexpr int kPixels = 200;
    font.setPixelSize(kPixels);
    QPainterPath letters;
    letters.addText(QPointF(0, 0), font, QString::fromStdString(text.words));
    double x = text.at.x * k;
    if (text.anchor == Anchor::middle) x -= text.width * k / 2;
    if (text.anchor == Anchor::end) x -= text.width * k;
    const double scale = text.size * k / kPixels;
    return QTransform(scale, 0, 0, scale, x, text.at.y * k).map(letters);
}

QFont fontOf(const Text& text, const std::string& family) {
    QFont font(QString::fromStdString(family));
    font.setBold(text.bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

void draw(QPainter& painter, const Path& path, double k) {
    const QPainterPath shape = shapeOf(path, k);
    QPen pen(Qt::NoPen);
    if (path.width > 0) {
        pen = QPen(colour(path.line), path.width * k, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
        if (path.dashed) pen.setDashPattern({3 / path.width, 2 / path.width});
    }
    painter.setPen(pen);
    painter.setBrush(path.fill ? QBrush(colour(*path.fill)) : QBrush(Qt::NoBrush));
    painter.drawPath(shape);
}

void draw(QPainter& painter, const Text& text, const std::string& family, double k) {
    QFont font = fontOf(text, family);
    if (painter.paintEngine()->type() == QPaintEngine::Pdf) {
        double x = text.at.x * k;
        if (text.anchor == Anchor::middle) x -= text.width * k / 2;
        if (text.anchor == Anchor::end) x -= text.width * k;
        font.setPointSizeF(text.size * k * 72 / painter.device()->logicalDpiY());
        painter.setFont(font);
        painter.setPen(colour(text.ink));
        painter.drawText(QPointF(x, text.at.y * k), QString::fromStdString(text.words));
        return;
    }
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour(text.ink));
    painter.drawPath(lettersOf(text, font, k));
}

QPageSize pageOf(const Picture& picture) {
    return QPageSize(QSizeF(picture.width, picture.height), QPageSize::Point, QString(),
                     QPageSize::ExactMatch);
}

} // namespace

QPainterPath outlineOf(const Path& path) {
    return shapeOf(path, 1);
}

QPainterPath outlineOf(const Text& text, const std::string& family) {
    return lettersOf(text, fontOf(text, family), 1);
}

void paint(QPainter& painter, const Picture& picture, double perPoint) {
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setRenderHint(QPainter::TextAntialiasing);
    for (const Group& group : picture.groups)
        for (const Mark& mark : group.marks) {
            if (const Path* path = std::get_if<Path>(&mark)) draw(painter, *path, perPoint);
            if (const Text* text = std::get_if<Text>(&mark))
                draw(painter, *text, picture.family, perPoint);
        }
}

project::Outcome<std::string> toPdf(const std::vector<Picture>& pictures,
                                    const std::string& title) {
    if (pictures.empty())
        return problem("there is no sheet to print", "give the project a top event");
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        constexpr int kResolution = 1200;
        writer.setResolution(kResolution);
        writer.setTitle(QString::fromStdString(title));
        writer.setCreator(QStringLiteral("Cutwater"));
        writer.setPageSize(pageOf(pictures.front()));
        writer.setPageMargins(QMarginsF(0, 0, 0, 0));
        QPainter painter;
        if (!painter.begin(&writer))
            return problem("the PDF cannot be written", "free some memory and try again");
        for (std::size_t i = 0; i < pictures.size(); ++i) {
            if (i > 0) {
                writer.setPageSize(pageOf(pictures[i]));
                writer.newPage();
            }
            paint(painter, pictures[i], kResolution / 72.0);
        }
        painter.end();
    }
    return bytes.toStdString();
}

project::Outcome<std::string> toPng(const Picture& picture, int dpi) {
    if (dpi < kMinDpi || dpi > kMaxDpi)
        return problem(fmt::format("a resolution of {} dpi cannot be drawn", dpi),
                       fmt::format("give {} to {}", kMinDpi, kMaxDpi));
    const double k = dpi / 72.0;
    QImage image(static_cast<int>(std::lround(picture.width * k)),
                 static_cast<int>(std::lround(picture.height * k)), QImage::Format_RGB32);
    if (image.isNull())
        return problem("there is not enough memory for the image", "give a smaller --dpi");
    image.setDotsPerMeterX(static_cast<int>(std::lround(dpi / 0.0254)));
    image.setDotsPerMeterY(static_cast<int>(std::lround(dpi / 0.0254)));
    image.fill(Qt::white);
    QPainter painter(&image);
    paint(painter, picture, k);
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    if (!image.save(&buffer, "PNG"))
        return problem("the image cannot be written as PNG", "give a smaller --dpi");
    return bytes.toStdString();
}

} // namespace cutwater::drawing
