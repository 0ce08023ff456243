// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/editor/outline/node_icons.h"

#include "app/drawing/paint.h"

#include <QPainter>
#include <QPixmap>

namespace cutwater::editor {

namespace {

void addShape(QIcon& icon, drawing::SymbolKind kind, const QColor& line, QIcon::Mode mode) {
    drawing::SymbolLook look;
    look.lineWidth = 1.3;
    look.line = {static_cast<std::uint8_t>(line.red()), static_cast<std::uint8_t>(line.green()),
                 static_cast<std::uint8_t>(line.blue())};
    look.filled = false;
    const bool wide = kind == drawing::SymbolKind::conditioning;
    drawing::Picture picture;
    picture.width = picture.height = 16;
    drawing::Group group;
    group.id = "symbol";
    const drawing::Box box = wide ? drawing::Box{1, 4, 14, 8} : drawing::Box{2, 2, 12, 12};
    for (drawing::Path& path : drawing::symbolPaths(kind, box, look))
        drawing::add(group.marks, std::move(path));
    picture.groups.push_back(std::move(group));
    for (const int size : {16, 32, 48}) {
        QPixmap pixmap(size, size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        painter.setRenderHint(QPainter::Antialiasing);
        drawing::paint(painter, picture, size / 16.0);
        painter.end();
        icon.addPixmap(pixmap, mode);
    }
}

} // namespace

QIcon nodeIcon(drawing::SymbolKind kind, const QColor& line) {
    QIcon icon;
    addShape(icon, kind, line, QIcon::Normal);
    addShape(icon, kind, Qt::white, QIcon::Selected); // on the dark ground of a chosen row
    return icon;
}

} // namespace cutwater::editor
