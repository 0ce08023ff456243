// SPDX-License-Identifier: GPL-3.0-or-later
// OutlineModel: what the rows say.
#include "app/editor/outline/node_icons.h"
#include "app/editor/outline/node_words.h"
#include "app/editor/outline/outline_node.h"

#include <QFont>

namespace cutwater::editor {

QVariant OutlineModel::text(const Node& node, int column) const {
    const project::Gate* gate = m_lookup->gate(node.id);
    const project::Event* event = gate ? nullptr : m_lookup->event(node.id);
    switch (column) {
    case textColumn:
        if (gate) return nameOf(*gate);
        if (event) return nameOf(*event);
        return tr("%1 (missing)").arg(QString::fromStdString(node.id));
    case kindColumn: {
        const QString kind = gate ? kindWords(*gate) : event ? kindWords(*event) : QString();
        if (node.kind == Kind::top) return tr("%1, top event").arg(kind);
        if (node.kind == Kind::loose) return tr("%1, in no tree").arg(kind);
        if (node.kind == Kind::condition)
            return tr("%1 of the gate").arg(words(project::EventKind::conditioning));
        return kind;
    }
    case usesColumn: {
        const int uses = usesOf(node.id);
        return uses > 1 ? tr("%1 places").arg(uses) : QString();
    }
    case modelColumn: {
        if (!event) return QString();
        if (event->kind == project::EventKind::house) return QString();
        const project::FailureModel* model = m_lookup->modelOf(*event);
        return model ? modelWords(*model) : QString();
    }
    default: return {};
    }
}

QString OutlineModel::inWords(const Node& node) const {
    QString sentence = text(node, textColumn).toString();
    sentence += QStringLiteral(", ") + text(node, kindColumn).toString();
    sentence += QStringLiteral(" ") + (m_lookup->gate(node.id) ? tr("gate") : tr("event"));
    if (const int uses = usesOf(node.id); uses > 1)
        sentence += QStringLiteral(", ") + tr("shared: stands at %1 places").arg(uses);
    return sentence;
}

QIcon OutlineModel::iconOf(const Node& node) const {
    drawing::SymbolKind kind = drawing::SymbolKind::basic;
    if (const project::Gate* gate = m_lookup->gate(node.id))
        kind = drawing::symbolOf(gate->kind);
    else if (const project::Event* event = m_lookup->event(node.id))
        kind = drawing::symbolOf(event->kind);
    else
        return {};
    QIcon& icon = m_icons[static_cast<int>(kind)];
    if (icon.isNull()) icon = nodeIcon(kind, m_ink);
    return icon;
}

void OutlineModel::setInk(const QColor& ink) {
    if (ink == m_ink) return;
    m_ink = ink;
    m_icons.clear();
    if (!m_root->children.empty())
        emit dataChanged(index(0, 0), index(rowCount() - 1, 0), {Qt::DecorationRole});
}

QVariant OutlineModel::data(const QModelIndex& index, int role) const {
    if (!index.isValid()) return {};
    const Node& node = *nodeAt(index);
    const int column = index.column();
    if (&node == m_draft) {
        if (role == Qt::AccessibleTextRole) return tr("new event, type what fails");
        return role == Qt::EditRole || role == Qt::DisplayRole ? QVariant(QString()) : QVariant();
    }
    switch (role) {
    case Qt::DisplayRole: return text(node, column);
    case Qt::EditRole: return column == textColumn ? text(node, column) : QVariant();
    case Qt::DecorationRole: return column == textColumn ? QVariant(iconOf(node)) : QVariant();
    case Qt::AccessibleTextRole: return column == textColumn ? inWords(node) : text(node, column);
    case Qt::ToolTipRole:
        return QString("%1\n%2").arg(inWords(node), QString::fromStdString(node.id));
    case Qt::FontRole: {
        QFont font;
        font.setBold(node.kind == Kind::top);
        font.setItalic(usesOf(node.id) > 1);
        return column == textColumn ? QVariant(font) : QVariant();
    }
    case nodeRole: return QString::fromStdString(node.id);
    case isGateRole: return m_lookup->gate(node.id) != nullptr;
    case usesRole: return usesOf(node.id);
    default: return {};
    }
}

QVariant OutlineModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole) return {};
    switch (section) {
    case textColumn: return tr("What fails");
    case kindColumn: return tr("Kind");
    case usesColumn: return tr("Shared");
    case modelColumn: return tr("Failure model");
    default: return {};
    }
}

Qt::ItemFlags OutlineModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::ItemIsDropEnabled;
    Qt::ItemFlags flags = Qt::ItemIsEnabled | Qt::ItemIsSelectable | Qt::ItemIsDropEnabled;
    if (!isDraft(index)) flags |= Qt::ItemIsDragEnabled;
    if (index.column() == textColumn) flags |= Qt::ItemIsEditable;
    return flags;
}

Qt::DropActions OutlineModel::supportedDropActions() const {
    return Qt::MoveAction | Qt::CopyAction;
}

Qt::DropActions OutlineModel::supportedDragActions() const {
    return Qt::MoveAction | Qt::CopyAction;
}

} // namespace cutwater::editor
