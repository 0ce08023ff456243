// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/icons.h"

#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

namespace cutwater::editor {
namespace {

// On a field of 20 by 20; open paths are lines.
QPainterPath shape(const QString& action) {
    QPainterPath p;
    const auto line = [&](double x, double y, double x2, double y2) {
        p.moveTo(x, y);
        p.lineTo(x2, y2);
    };
    const auto glass = [&] {
        p.addEllipse(QPointF(8.5, 8.5), 5.5, 5.5);
        line(12.5, 12.5, 17.5, 17.5);
    };
    if (action == QLatin1String("showTree")) {
        p.addRect(7, 2.5, 6, 4);
        p.addRect(1.5, 13, 5, 4);
        p.addRect(7.5, 13, 5, 4);
        p.addRect(13.5, 13, 5, 4);
        line(10, 6.5, 10, 13);
        line(4, 13, 4, 10);
        line(4, 10, 16, 10);
        line(16, 10, 16, 13);
    } else if (action == QLatin1String("showSheets")) {
        p.addRect(6.5, 2.5, 10, 12);
        line(3.5, 5.5, 3.5, 17.5);
        line(3.5, 17.5, 13.5, 17.5);
        line(9, 6.5, 14, 6.5);
        line(9, 9.5, 14, 9.5);
    } else if (action == QLatin1String("previousSheet") || action == QLatin1String("nextSheet")) {
        const bool back = action == QLatin1String("previousSheet");
        line(back ? 12.5 : 7.5, 4, back ? 6.5 : 13.5, 10);
        line(back ? 6.5 : 13.5, 10, back ? 12.5 : 7.5, 16);
    } else if (action == QLatin1String("zoomIn") || action == QLatin1String("zoomOut")) {
        glass();
        line(6, 8.5, 11, 8.5);
        if (action == QLatin1String("zoomIn")) line(8.5, 6, 8.5, 11);
    } else if (action == QLatin1String("fit")) {
        p.addRect(6.5, 7, 7, 6);
        for (const double x : {2.5, 17.5})
            for (const double y : {3.0, 17.0}) {
                line(x, y, x + (x < 10 ? 4 : -4), y);
                line(x, y, x, y + (y < 10 ? 4 : -4));
            }
    } else if (action == QLatin1String("unfoldAll") || action == QLatin1String("foldAll")) {
        p.addRect(6.5, 2.5, 7, 4.5);
        const bool opens = action == QLatin1String("unfoldAll");
        line(10, opens ? 9 : 17.5, 10, opens ? 17.5 : 9);
        const double tip = opens ? 17.5 : 9, off = opens ? -3.5 : 3.5;
        line(6.5, tip + off, 10, tip);
        line(13.5, tip + off, 10, tip);
    }
    return p;
}

QPixmap drawn(const QPainterPath& path, const QColor& ink, int pixels) {
    QPixmap map(pixels, pixels);
    map.fill(Qt::transparent);
    QPainter painter(&map);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(pixels / 20.0, pixels / 20.0);
    painter.setPen(QPen(ink, 1.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPath(path);
    return map;
}

} // namespace

QIcon iconFor(const QString& action, const QPalette& palette) {
    const QPainterPath path = shape(action);
    if (path.isEmpty()) return {};
    QIcon icon;
    for (const int pixels : {20, 40, 60}) {
        icon.addPixmap(drawn(path, palette.color(QPalette::Active, QPalette::ButtonText), pixels));
        icon.addPixmap(drawn(path, palette.color(QPalette::Disabled, QPalette::ButtonText), pixels),
                       QIcon::Disabled);
    }
    return icon;
}

} // namespace cutwater::editor
