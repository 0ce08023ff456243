// SPDX-License-Identifier: GPL-3.0-or-later
// PlantModel: what the rows say.
#include "app/editor/plant/plant_node.h"
#include "app/editor/plant/plant_words.h"

#include <QFont>
#include <QIcon>
#include <QPainter>
#include <QPalette>
#include <QPixmap>

#include <QGuiApplication>

namespace cutwater::editor {

namespace {

constexpr std::size_t kMostTops = 4; // named in a row

// A box for a part, a circle (as in the trees) for a way to fail.
QIcon iconOf(PlantModel::Kind kind) {
    QIcon icon;
    for (const auto& [mode, role] : {std::pair{QIcon::Normal, QPalette::Text},
                                     std::pair{QIcon::Selected, QPalette::HighlightedText}}) {
        QPixmap picture(32, 32);
        picture.setDevicePixelRatio(2);
        picture.fill(Qt::transparent);
        QPainter painter(&picture);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(QGuiApplication::palette().color(role), 1.3));
        if (kind == PlantModel::Kind::component)
            painter.drawRect(QRectF(2.5, 3.5, 11, 9));
        else
            painter.drawEllipse(QRectF(4, 4, 8, 8));
        painter.end();
        icon.addPixmap(picture, mode);
    }
    return icon;
}

} // namespace

QString PlantModel::textOf(const Node& node, int column) const {
    if (node.kind == Kind::mode) {
        const project::FailureMode* mode = lookup().mode(node.id);
        if (!mode) return {};
        if (column == textColumn) return wordsOf(*mode);
        if (column != treesColumn) return {};
        const auto& tops = places().topsOf(mode->id);
        if (tops.empty()) return tr("in no tree");
        QStringList ids;
        for (std::size_t i = 0; i < tops.size() && i < kMostTops; ++i)
            ids << QString::fromStdString(m_project->tops[tops[i]].id);
        const QString list = ids.join(QStringLiteral(", "));
        return tops.size() > kMostTops ? tr("%1 and %2 more").arg(list).arg(tops.size() - kMostTops)
                                       : list;
    }
    const project::Component* part = lookup().component(node.id);
    if (!part) return {};
    switch (column) {
    case textColumn: return wordsOf(*part);
    case typeColumn: return QString::fromStdString(part->type);
    case locationColumn: return QString::fromStdString(part->location);
    case treesColumn: {
        int modes = 0;
        for (const auto& child : node.children)
            modes += child->kind == Kind::mode && !child->id.empty();
        return modes ? tr("failure modes: %1").arg(modes) : QString();
    }
    default: return {};
    }
}

QString PlantModel::tipOf(const Node& node) const {
    if (const project::FailureMode* mode = lookup().mode(node.id); mode && node.kind == Kind::mode)
        return QString::fromStdString(mode->localEffect);
    const project::Component* part = lookup().component(node.id);
    return part ? QString::fromStdString(part->function) : QString();
}

QVariant PlantModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Node& node = *nodeAt(index);
    const bool draft = &node == m_draft;
    switch (role) {
    case Qt::DisplayRole: return draft ? QString() : textOf(node, index.column());
    case Qt::EditRole:
        return draft || index.column() != textColumn ? QVariant(QString())
                                                     : QVariant(textOf(node, textColumn));
    case Qt::ToolTipRole: return draft ? QVariant() : QVariant(tipOf(node));
    case Qt::DecorationRole:
        if (index.column() == textColumn) return iconOf(node.kind);
        return {};
    case Qt::AccessibleTextRole:
        if (index.column() != textColumn || draft) return {};
        return (node.kind == Kind::mode ? tr("failure mode %1") : tr("component %1"))
            .arg(textOf(node, textColumn));
    case Qt::FontRole: {
        if (node.kind != Kind::mode) return {};
        QFont font;
        font.setItalic(true);
        return font;
    }
    default: return {};
    }
}

QVariant PlantModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case textColumn: return tr("Part, or how it fails");
    case typeColumn: return tr("Type");
    case locationColumn: return tr("Location");
    case treesColumn: return tr("In trees");
    default: return {};
    }
}

Qt::ItemFlags PlantModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::ItemIsDropEnabled;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDropEnabled;
    if (!isDraft(index)) flags |= Qt::ItemIsDragEnabled;
    if (index.column() == textColumn) flags |= Qt::ItemIsEditable;
    return flags;
}

} // namespace cutwater::editor
