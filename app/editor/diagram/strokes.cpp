// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/diagram/strokes.h"

#include "app/drawing/paint.h"

#include <QPainter>

namespace cutwater::editor {

std::vector<Stroke> strokesOf(const std::vector<drawing::Mark>& marks, const std::string& family) {
    std::vector<Stroke> strokes;
    for (const drawing::Mark& mark : marks) {
        if (const auto* path = std::get_if<drawing::Path>(&mark)) {
            Stroke stroke;
            stroke.path = drawing::outlineOf(*path);
            stroke.width = path->width;
            stroke.line = path->line;
            stroke.fill = path->fill;
            stroke.dashed = path->dashed;
            strokes.push_back(std::move(stroke));
        }
        if (const auto* text = std::get_if<drawing::Text>(&mark)) {
            QPainterPath letters = drawing::outlineOf(*text, family);
            if (!strokes.empty() && strokes.back().letters && strokes.back().fill == text->ink) {
                strokes.back().path.addPath(letters);
                continue;
            }
            Stroke stroke;
            stroke.path = std::move(letters);
            stroke.fill = text->ink;
            stroke.letters = true;
            strokes.push_back(std::move(stroke));
        }
    }
    return strokes;
}

void paintStrokes(QPainter& painter, const std::vector<Stroke>& strokes, const Look& look,
                  bool letters) {
    for (const Stroke& stroke : strokes) {
        if (stroke.letters && !letters) continue;
        if (stroke.width > 0) {
            QPen pen(look.colour(stroke.line), stroke.width, Qt::SolidLine, Qt::FlatCap,
                     Qt::RoundJoin);
            if (stroke.dashed) pen.setDashPattern({3 / stroke.width, 2 / stroke.width});
            painter.setPen(pen);
        } else {
            painter.setPen(Qt::NoPen);
        }
        painter.setBrush(stroke.fill ? QBrush(look.colour(*stroke.fill)) : QBrush(Qt::NoBrush));
        painter.drawPath(stroke.path);
    }
}

} // namespace cutwater::editor
